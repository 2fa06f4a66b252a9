// One more line in a table of typed lines. Without script the spare rows that the server sent are there.

function renumber(body) {
  body.querySelectorAll(":scope > tr").forEach((row, index) => {
    row.querySelectorAll("[data-row-number]").forEach((number) => { number.textContent = index + 1; });
  });
}

function copyDown(from, to) {
  if (!from) return;
  to.querySelectorAll("[data-copy-down]").forEach((field) => {
    const suffix = field.name.replace(/^.*-\d+-/, "");
    const above = [...from.querySelectorAll("[data-copy-down]")].find((other) => other.name.endsWith(`-${suffix}`));
    if (above) field.value = above.value;
  });
}

function addLine(lines) {
  const total = lines.querySelector(`[name="${lines.dataset.lines}-TOTAL_FORMS"]`);
  const body = lines.querySelector("tbody");
  const above = body.lastElementChild;
  const made = lines.querySelector("template[data-line-template]").innerHTML.replaceAll("__prefix__", total.value);
  body.insertAdjacentHTML("beforeend", made);
  const row = body.lastElementChild;
  total.value = Number(total.value) + 1;
  copyDown(above, row);
  renumber(body);
  window.htmx?.process(row);
  row.querySelector("input:not([type=hidden]), select, textarea")?.focus();
}

document.addEventListener("click", (event) => {
  const button = event.target.closest("[data-add-line]");
  if (button) addLine(button.closest("[data-lines]"));
});

function offer(root) {
  root.querySelectorAll("[data-add-line]").forEach((button) => { button.hidden = false; });
}

document.addEventListener("htmx:afterSwap", () => offer(document));
offer(document);
