"use strict";
// A page is shown once it and its letters are there whole, so that nothing moves when the rest comes. They lie beside the
// pages and take a moment; after three seconds, as long as browsers themselves wait for letters, it is shown in others.
(() => {
  const root = document.documentElement;
  const show = () => root.classList.remove("unlettered");
  root.classList.add("unlettered");
  setTimeout(show, 3000);
  const whole = new Promise(done => document.addEventListener("DOMContentLoaded", done));
  const letters = [400, 600, 700].map(weight => document.fonts.load(weight + " 1em 'Source Sans 3'"));
  Promise.all([whole, ...letters]).then(show, show);
})();
