"use strict";
// Listening to speech, for the line of the stash and for the steps of sewing: only where the browser does it on this machine
// itself, so that no word leaves it.
const listening = (() => {
  const usual = { en: "en-GB", ko: "ko-KR", ja: "ja-JP", fr: "fr-FR", de: "de-DE", es: "es-ES" };

  // The language as this browser has it, with its place: de-AT rather than de.
  const placed = tag => (navigator.languages || []).find(one => one.toLowerCase().startsWith(tag + "-")) || usual[tag] || tag;

  // Whether speech in this language is understood here.
  const hears = async lang => {
    const Ear = window.SpeechRecognition;
    return Boolean(Ear && Ear.available)
      && await Ear.available({ langs: [lang], processLocally: true }).catch(() => "") === "available";
  };

  // One ear, which tells what it hears so far; started and stopped by whoever asks for it.
  const ear = (lang, told) => {
    const one = new window.SpeechRecognition();
    one.lang = lang;
    one.processLocally = true;
    one.addEventListener("result", event => told([...event.results].map(part => part[0].transcript).join(" ").trim()));
    return one;
  };

  return { placed, hears, ear };
})();
