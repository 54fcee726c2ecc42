"use strict";
// Hands are wet: one key, or a foot switch that sends it, says that a step is done. The screen stays awake.
document.addEventListener("keydown", event => {
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
  const at = event.target;
  if (event.key === "Escape") {
    const open = document.querySelector(".needle details[open]");
    if (open) { open.open = false; open.querySelector("summary").focus(); }
    return;
  }
  if (at.closest && at.closest("input, select, textarea")) return;
  const onButton = at.closest && at.closest("button, a, summary");
  const press = id => { const found = document.getElementById(id); if (found) { event.preventDefault(); found.click(); } };
  if (event.key === "PageDown" || !onButton && (event.key === " " || event.key === "Enter" || event.key === "ArrowRight")) press(document.getElementById("done") ? "done" : "next");
  if (event.key === "PageUp" || !onButton && event.key === "ArrowLeft") press("back");
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

// Reads the step aloud where this machine has a voice of its own in the page's language; nothing is sent anywhere. Once asked
// for, it goes on with every step, until it is asked for again.
let reading = false;
function stepLang() {
  const title = document.querySelector("#needle h2");
  return title && title.lang || document.documentElement.lang;
}
function ownVoice() {
  const voices = window.speechSynthesis ? window.speechSynthesis.getVoices() : [];
  const tag = stepLang();
  return voices.find(voice => voice.localService && voice.lang.toLowerCase().split(/[-_]/)[0] === tag) || null;
}
function offerVoice() {
  document.querySelectorAll("[data-speak]").forEach(button => {
    button.hidden = !ownVoice();
    button.setAttribute("aria-pressed", String(reading));
  });
}
function readStep() {
  const needle = document.getElementById("needle");
  const voice = ownVoice();
  if (!reading || !needle || !voice) return;
  const words = [needle.querySelector("h2").textContent, ...[...needle.querySelectorAll(".todo li")].map(line => line.textContent)].join(" ");
  const said = new SpeechSynthesisUtterance(words);
  said.voice = voice;
  said.lang = voice.lang;
  window.speechSynthesis.speak(said);
}
if (window.speechSynthesis) window.speechSynthesis.addEventListener?.("voiceschanged", offerVoice);
offerVoice();
document.addEventListener("click", event => {
  const button = event.target.closest && event.target.closest("[data-speak]");
  if (!button) return;
  reading = !reading;
  window.speechSynthesis.cancel();
  readStep();
  offerVoice();
  listen();
});

// While it reads, the word "next" does what the button does, where the browser understands speech on this machine itself.
const NEXT = { en: /\b(next|done)\b/i, ko: /다음|됐/, ja: /次|できた/, fr: /\b(suivant|suite)\b/i, de: /\b(weiter|fertig)\b/i, es: /\b(siguiente|listo)\b/i };
let ear = null;
let deaf = false;
async function listen() {
  if (!reading || ear || deaf) {
    if (!reading && ear) ear.stop();
    return;
  }
  const tag = stepLang();
  const lang = ownVoice() ? ownVoice().lang.replace("_", "-") : listening.placed(tag);
  if (!await listening.hears(lang) || !reading || ear) return;
  ear = listening.ear(lang, heard => {
    // It must not obey its own voice.
    if (window.speechSynthesis.speaking || !NEXT[tag] || !NEXT[tag].test(heard)) return;
    const found = document.getElementById("done") || document.getElementById("next");
    if (found) found.click();
  });
  // Silence is no reason to stop; a microphone that may not be used is.
  ear.addEventListener("error", event => { deaf = !["no-speech", "aborted"].includes(event.error); });
  ear.addEventListener("end", () => { ear = null; setTimeout(listen, 300); });
  ear.start();
}

// After a step the next one is read from its top; focus must not stay on a button that is gone.
document.addEventListener("htmx:afterSettle", event => {
  if (event.detail.target && event.detail.target.id === "needle") {
    if (window.speechSynthesis) window.speechSynthesis.cancel();
    sayAwake();
    offerVoice();
    readStep();
    window.scrollTo(0, 0);
    document.getElementById("main").focus({ preventScroll: true });
  }
});

// The step follows the other device; but never while a measure is being typed or a step is read in full.
document.addEventListener("htmx:beforeRequest", event => {
  if (event.detail.elt.matches("[hx-trigger^=every]") && document.querySelector(".needle details[open]")) event.preventDefault();
});
