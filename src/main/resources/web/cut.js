"use strict";
// A foot switch sends Page Down and Page Up; with wet hands one key is enough.
document.addEventListener("keydown", event => {
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
  const at = event.target;
  if (event.key === "Escape") {
    const open = document.querySelector(".slip-of[open]");
    if (open) { open.open = false; open.querySelector("summary").focus(); }
    return;
  }
  if (at.closest && at.closest("input, select, textarea")) return;
  const onButton = at.closest && at.closest("button, a, summary");
  const press = id => { const found = document.getElementById(id); if (found) { event.preventDefault(); found.click(); } };
  if (event.key === "PageDown" || event.key === " " && !onButton) press("done");
  if (event.key === "PageUp") press("back");
});

// The piece of now is in view in the row of all.
const inRow = () => document.querySelector(".pieces [aria-current]")?.scrollIntoView({ block: "nearest", inline: "nearest" });
document.addEventListener("htmx:afterSettle", event => { if (event.detail.target && event.detail.target.id === "mat") inRow(); });
inRow();
