// Draws every [data-figure] of the page from the JSON block or the address that it names, in the colours of the
// scheme that is on. Without script the drawing for paper stands in its place.

const drawn = new Map();   // element -> its figure as the server sent it
let library;

let loading;

// The library writes its few rules into a sheet of this name; linked from here it needs no inline style.
function ready(element) {
  const { figureSheet: href, figureLibrary: src } = element.dataset;
  loading ??= loaded("link", { id: "plotly.js-style-global", rel: "stylesheet", href })
    .then(() => loaded("script", { src }))
    .then(() => { library = window.Plotly; });
  return loading;
}

function loaded(tag, attributes) {
  const node = Object.assign(document.createElement(tag), attributes);
  return new Promise((done, failed) => {
    node.addEventListener("load", done);
    node.addEventListener("error", () => failed(new Error(`${attributes.src || attributes.href} did not load`)));
    document.head.append(node);
  });
}

async function figureOf(element) {
  const { figure: id, figureUrl: url } = element.dataset;
  if (!url) return JSON.parse(document.getElementById(id).textContent);
  const answer = await fetch(url, { headers: { Accept: "application/json" }, credentials: "same-origin" });
  if (!answer.ok) throw new Error(`${url} answered ${answer.status}`);
  return answer.json();
}

// The colours that the figure came with, each replaced by what its custom property is now.
function inScheme(figure) {
  const now = getComputedStyle(document.documentElement);
  const colours = Object.fromEntries(
    Object.entries(figure.scheme || {}).map(([hex, property]) => [hex, now.getPropertyValue(property).trim() || hex]),
  );
  return JSON.parse(JSON.stringify(figure), (_key, value) => (Object.hasOwn(colours, value) ? colours[value] : value));
}

function put(element, figure) {
  const { data, layout, config } = inScheme(figure);
  const height = Number(element.dataset.figureHeight) || 420;
  const still = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
  return library.react(element, data, { ...layout, height, transition: { duration: still ? 0 : 150 } }, config);
}

function forPaperOnly(drawing) {
  if (!drawing) return;
  drawing.classList.add("paper");   // which the sheet for print shows, hidden or not
  drawing.hidden = true;
}

async function draw(element) {
  if (drawn.has(element)) return;
  drawn.set(element, null);
  try {
    const [figure] = await Promise.all([figureOf(element), ready(element)]);
    drawn.set(element, figure);
    element.hidden = false;
    await put(element, figure);
    forPaperOnly(element.closest("figure")?.querySelector("[data-figure-paper]"));
  } catch (error) {
    element.hidden = true;   // the drawing for paper and the table still say it all
    drawn.delete(element);
    console.error(error);
  }
}

function all() {
  for (const element of drawn.keys()) {
    if (!element.isConnected) {
      library?.purge(element);
      drawn.delete(element);
    }
  }
  document.querySelectorAll("[data-figure]").forEach(draw);
}

function recolour() {
  for (const [element, figure] of drawn) if (figure && element.isConnected) put(element, figure);
}

for (const query of ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"]) {
  window.matchMedia(query).addEventListener("change", recolour);
}
document.addEventListener("htmx:afterSwap", all);
all();
