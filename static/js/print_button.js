// A button that prints; shown only where script runs, since without it it would do nothing.

function offer() {
  document.querySelectorAll("[data-print]").forEach((button) => { button.hidden = false; });
}

document.addEventListener("click", (event) => {
  if (event.target.closest("[data-print]")) window.print();
});

document.addEventListener("htmx:afterSwap", offer);
offer();
