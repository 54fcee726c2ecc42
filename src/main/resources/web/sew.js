"use strict";
// Hands are wet: one key, or a foot pedal that sends it, says that a step is done. The screen stays awake.
document.addEventListener("keydown", event => {
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
  const at = event.target;
  if (at.closest && at.closest("input, select, textarea, button, a, summary")) return;
  const press = id => { const found = document.getElementById(id); if (found) { event.preventDefault(); found.click(); } };
  if (event.key === " " || event.key === "Enter" || event.key === "ArrowRight") press(document.getElementById("done") ? "done" : "next");
  if (event.key === "ArrowLeft") press("back");
});

let lamp = null;
async function stayAwake() {
  if (document.visibilityState !== "visible") return;
  try { lamp = await navigator.wakeLock.request("screen"); } catch (refused) { lamp = null; }
  sayAwake();
}
// Browsers keep the screen on only for pages of the machine itself; elsewhere she is told.
function sayAwake() {
  document.querySelectorAll(".awake").forEach(line => { line.hidden = lamp !== null; });
}
document.addEventListener("visibilitychange", () => { if (!lamp || lamp.released) stayAwake(); });
stayAwake();

// After a step the next one is read from its top; focus must not stay on a button that is gone.
document.addEventListener("htmx:afterSettle", event => {
  if (event.detail.target && event.detail.target.id === "needle") {
    sayAwake();
    window.scrollTo(0, 0);
    document.getElementById("main").focus({ preventScroll: true });
  }
});

// The step follows the other device; but never while a measure is being typed.
document.addEventListener("htmx:beforeRequest", event => {
  if (event.detail.elt.matches("[hx-trigger^=every]") && document.querySelector(".mine[open]")) event.preventDefault();
});
