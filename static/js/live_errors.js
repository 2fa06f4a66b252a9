// Errors of a form that is checked while somebody types arrive in slots beside the fields; the field says so too.

function mark(slot) {
  const field = document.getElementById(slot.dataset.errorSlot);
  const wrong = slot.childElementCount > 0;
  field.closest(".field").classList.toggle("wrong", wrong);
  if (wrong) field.setAttribute("aria-invalid", "true");
  else field.removeAttribute("aria-invalid");
}

document.addEventListener("htmx:afterSettle", () => {
  document.querySelectorAll("[data-error-slot]").forEach(mark);
});
