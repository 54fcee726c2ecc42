"use strict";
// Many lines pasted into the line box go to the box for many, instead of running into one.
document.addEventListener("paste", event => {
  if (event.target.id !== "line") return;
  const text = event.clipboardData ? event.clipboardData.getData("text/plain") : "";
  if (!/\S\s*\n\s*\S/.test(text)) return;
  event.preventDefault();
  const lines = document.getElementById("lines");
  document.getElementById("many").open = true;
  lines.value = (lines.value.trim() === "" ? "" : lines.value.trimEnd() + "\n") + text.trim();
  lines.focus();
});

// Whoever types the next piece before the last one is answered keeps what she has typed.
let sent = null;
document.addEventListener("htmx:configRequest", event => {
  const line = document.getElementById("line");
  if (event.detail.verb === "post" && line) sent = line.value;
});
document.addEventListener("htmx:oobBeforeSwap", event => {
  const line = document.getElementById("line");
  const about = event.detail.target && (event.detail.target.id === "line" || event.detail.target.id === "heard");
  if (about && line && sent !== null && line.value !== sent && line.value !== "") event.detail.shouldSwap = false;
});
