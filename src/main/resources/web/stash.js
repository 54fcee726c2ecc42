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
