"use strict";
// Enter takes the line; a line break that was pasted, or Shift and Enter, stays in it.
document.addEventListener("keydown", event => {
  if (event.target.id !== "line" || event.key !== "Enter" || event.shiftKey || event.isComposing) return;
  event.preventDefault();
  event.target.form.requestSubmit();
});

// Whoever types the next piece before the last one is answered keeps what she has typed.
let sent = null;
const HEARD_AT_ONCE = 5000; // letters that fit into an address; longer ones are understood when they are added
document.addEventListener("htmx:configRequest", event => {
  const line = document.getElementById("line");
  if (event.detail.verb === "post" && line) sent = line.value;
  if (event.detail.elt.id === "line" && line.value.length > HEARD_AT_ONCE) event.preventDefault();
});
document.addEventListener("htmx:oobBeforeSwap", event => {
  const line = document.getElementById("line");
  const about = event.detail.target && (event.detail.target.id === "line" || event.detail.target.id === "heard");
  if (about && line && sent !== null && line.value !== sent && line.value !== "") event.detail.shouldSwap = false;
});

// What is chosen, in words. Without this the bar still counts.
const tellChosen = () => {
  const chosen = [...document.querySelectorAll(".lot input:checked")];
  const many = document.querySelector(".choice .many"), said = document.getElementById("chosen");
  if (!many || !said) return;
  const of = new Map();
  chosen.forEach(one => of.set(one.dataset.of, (of.get(one.dataset.of) || 0) + Number(one.dataset.many)));
  many.classList.add("told");
  many.textContent = many.closest(".choice").dataset.chosen.replace("%d", [...of.values()].reduce((sum, one) => sum + one, 0));
  said.textContent = [...of].map(([name, count]) => name + " " + count).join(", ");
};
document.addEventListener("change", event => { if (event.target.closest(".lot")) tellChosen(); });
document.addEventListener("htmx:afterSettle", tellChosen);

// Keys on the table: arrows go from piece to piece, plus and minus come nearer and go farther.
document.addEventListener("keydown", event => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.target.id === "line" || event.target.matches("input:not([type=checkbox])")) return;
  const look = { "+": "nearer", "-": "farther" }[event.key];
  if (look) {
    document.getElementById(look)?.click();
    return;
  }
  const lots = [...document.querySelectorAll(".lot input")];
  const at = lots.indexOf(event.target);
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (at < 0 || !step) return;
  event.preventDefault();
  lots[Math.min(lots.length - 1, Math.max(0, at + step))].focus();
});

// Speaking is offered only where the browser listens on this machine itself, so that no word leaves it.
(async () => {
  const button = document.getElementById("speak");
  if (!button) return;
  const lang = listening.placed(button.dataset.language);
  if (!await listening.hears(lang)) return;
  button.hidden = false;
  let ear = null;
  button.addEventListener("click", () => {
    if (ear) {
      ear.stop();
      return;
    }
    ear = listening.ear(lang, heard => {
      const line = document.getElementById("line");
      line.value = heard;
      line.dispatchEvent(new Event("input", { bubbles: true }));
    });
    ear.addEventListener("end", () => { ear = null; button.classList.remove("listening"); button.setAttribute("aria-label", button.dataset.speak); });
    button.classList.add("listening");
    button.setAttribute("aria-label", button.dataset.listening);
    ear.start();
  });
})();
