// Keys with two modifiers only, so that speech input and a dropped glove set nothing off. A control declares its own
// in aria-keyshortcuts ("Alt+Shift+F"); by place on the keyboard, because Alt changes the letter on some systems.

function wanted(event) {
  const parts = [event.ctrlKey && "Control", event.altKey && "Alt", event.shiftKey && "Shift"].filter(Boolean);
  return [...parts, event.code.replace(/^(Key|Digit)/, "")].join("+");
}

function withKeys() {
  return [...document.querySelectorAll("#page [aria-keyshortcuts]")].filter((control) => !control.closest("[hidden]"));
}

function wordsOf(control) {
  return control.dataset.keyLabel ?? control.getAttribute("aria-label") ?? control.textContent.trim();
}

function showKeys() {
  const list = document.getElementById("key-list");
  const rows = withKeys().map((control) => {
    const row = document.createElement("tr");
    const key = document.createElement("kbd");
    const head = document.createElement("th");
    head.scope = "row";
    key.textContent = control.getAttribute("aria-keyshortcuts").replaceAll("+", " + ");
    head.append(key);
    row.append(head, Object.assign(document.createElement("td"), { textContent: wordsOf(control) }));
    return row;
  });
  list.querySelector("tbody").replaceChildren(...rows);
  list.showModal();
}

document.addEventListener("keydown", (event) => {
  if (!event.altKey || !event.shiftKey || document.querySelector("dialog[open]")) return;
  const control = withKeys().find((one) => one.getAttribute("aria-keyshortcuts") === wanted(event));
  if (!control) return;
  event.preventDefault();
  if (control.matches("input:not([type=submit]), select, textarea")) {
    control.focus();
    control.select?.();
  } else {
    control.click();
  }
});

const opener = document.querySelector("[data-key-list]");
if (opener) {
  opener.hidden = false;
  opener.addEventListener("click", showKeys);
}
