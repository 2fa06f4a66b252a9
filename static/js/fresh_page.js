// The bench PC is shared: a page that the browser kept in memory is asked for again, so that "back" shows nothing
// of the person before.

window.addEventListener("pageshow", (event) => {
  if (event.persisted) window.location.reload();
});
