// What is wrong is said first: the summary takes the focus, its links go to the field and show the label too.

function announce(root) {
  const summary = root.querySelector("[data-error-summary]");
  if (summary) summary.focus();
}

document.addEventListener("click", (event) => {
  const link = event.target.closest("[data-error-summary] a[href^='#']");
  const field = link && document.getElementById(link.hash.slice(1));
  if (!field) return;
  event.preventDefault();
  const shown = field.closest("fieldset.field")?.querySelector("legend") ?? field.labels?.[0] ?? field;
  shown.scrollIntoView({ block: "center" });
  field.focus({ preventScroll: true });
});

document.addEventListener("htmx:afterSwap", (event) => announce(event.detail.target.parentElement ?? document));
announce(document);
