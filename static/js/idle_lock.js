// An idle screen is covered and comes back to the same field with what was typed still there. The page is hidden, not
// blurred, so that neither the eye nor the keyboard nor a screen reader gets behind the cover.

const cover = document.getElementById("lock-screen");
const page = document.getElementById("page");
const warning = document.getElementById("lock-warning");
const message = document.getElementById("lock-message");
const password = document.getElementById("lock-password");
const form = password?.form;
const idleMs = Number(cover?.dataset.idleSeconds) * 1000;
const WARN_MS = Math.min(30_000, idleMs / 2);
// Windows of one browser share the bench: work in one keeps the others open, and they lock and open together.
const windows = "BroadcastChannel" in window ? new BroadcastChannel("bench") : null;
const { title } = document;

let lastTouch = Date.now();
let lastTold = 0;
let place = null;

function token() {
  const cookie = document.cookie.match(/(?:^|; )(?:__Host-csrf|csrftoken)=([^;]+)/);
  return cookie ? cookie[1] : form.elements.csrfmiddlewaretoken.value;
}

function renewTokens() {
  const fresh = token();
  document.querySelectorAll("[name=csrfmiddlewaretoken]").forEach((input) => { input.value = fresh; });
  if (document.body.hasAttribute("hx-headers")) {
    document.body.setAttribute("hx-headers", JSON.stringify({ "X-CSRFToken": fresh }));
  }
}

function post(url, body) {
  return fetch(url, {
    method: "POST",
    body,
    headers: { "X-CSRFToken": token(), Accept: "application/json" },
    redirect: "manual",
  });
}

function lock({ tellServer = true, tellWindows = true } = {}) {
  if (!cover.hidden) return;
  const at = document.activeElement;
  place = { at, start: at?.selectionStart, end: at?.selectionEnd, x: window.scrollX, y: window.scrollY };
  document.querySelectorAll("dialog[open]").forEach((dialog) => dialog.close());
  page.hidden = true;
  page.inert = true;
  warning.hidden = true;
  cover.hidden = false;
  document.title = `Locked – ${title.split(" – ").at(-1)}`;
  message.textContent = "";
  password.value = "";
  password.focus();
  if (tellServer) post(cover.dataset.lockUrl).catch(() => {});
  if (tellWindows) windows?.postMessage("lock");
}

function open({ tellWindows = true } = {}) {
  if (cover.hidden) return;
  lastTouch = Date.now();
  password.value = "";
  renewTokens();
  cover.hidden = true;
  page.hidden = false;
  page.inert = false;
  document.title = title;
  if (place?.at?.isConnected && place.at !== document.body) {
    place.at.focus({ preventScroll: true });
    // Only fields of text have a selection; the others throw when it is set.
    if (typeof place.start === "number") place.at.setSelectionRange(place.start, place.end);
  }
  window.scrollTo(place?.x ?? 0, place?.y ?? 0);
  document.dispatchEvent(new CustomEvent("bench:open"));
  if (tellWindows) windows?.postMessage("open");
}

async function reasonOf(response) {
  if (response.type === "opaqueredirect") {
    return "The sign-in has ended. Sign in again in a second window, then give the password here; what was typed is still here.";
  }
  try {
    return (await response.json()).error;
  } catch {
    return `The notebook did not open (${response.status}). Try again.`;
  }
}

async function unlock(event) {
  event.preventDefault();
  message.textContent = "";
  try {
    const response = await post(cover.dataset.unlockUrl, new FormData(form));
    if (response.ok) {
      open();
      return;
    }
    message.textContent = await reasonOf(response);
  } catch {
    message.textContent = "The server cannot be reached. What was typed is still here; try again.";
  }
  password.select();
}

function touched() {
  if (!cover.hidden) return;
  lastTouch = Date.now();
  warning.hidden = true;
  if (lastTouch - lastTold > 5000) {
    lastTold = lastTouch;
    windows?.postMessage("touched");
  }
}

// By the clock, not by one long timer: a laptop that slept must wake up locked.
function look() {
  const left = idleMs - (Date.now() - lastTouch);
  if (left <= 0) {
    lock();
  } else if (left <= WARN_MS && cover.hidden && warning.hidden) {
    warning.textContent = `The screen locks in ${Math.ceil(left / 1000)} seconds. Any key or touch keeps it open.`;
    warning.hidden = false;
  }
}

function heard({ data }) {
  if (data === "lock") lock({ tellServer: false, tellWindows: false });
  if (data === "open") open({ tellWindows: false });
  if (data === "touched") lastTouch = Date.now();
}

function start() {
  for (const name of ["keydown", "pointerdown", "pointermove", "wheel", "input"]) {
    document.addEventListener(name, touched, { passive: true, capture: true });
  }
  document.addEventListener("visibilitychange", look);
  document.addEventListener("click", (event) => {
    if (!event.target.closest("[data-lock-now]")) return;
    event.preventDefault();
    lock();
  });
  // 423 Locked: the server locked this session first (RFC 4918).
  document.addEventListener("htmx:beforeOnLoad", (event) => {
    if (event.detail.xhr.status === 423) lock({ tellServer: false });
  });
  document.addEventListener("bench:locked", () => lock({ tellServer: false }));
  windows?.addEventListener("message", heard);
  form.addEventListener("submit", unlock);
  setInterval(look, Math.min(1000, idleMs / 4));
}

if (cover && form && idleMs > 0) start();
