"use strict";
// A page is shown once it and its letters are there whole, so that nothing moves when the rest comes. They lie beside the
// pages and take a moment; three seconds after the page, as long as browsers themselves wait for letters, it is shown in others.
(() => {
  const root = document.documentElement;
  const show = () => root.classList.remove("unlettered");
  const after = time => new Promise(done => setTimeout(done, time));
  root.classList.add("unlettered");
  const whole = new Promise(done => document.addEventListener("DOMContentLoaded", done));
  const letters = Promise.all([400, 600, 700].map(weight => document.fonts.load(weight + " 1em 'Source Sans 3'")));
  whole.then(() => Promise.race([letters, after(3000)])).then(show, show);
  // A page that stops half way is shown as far as it came.
  after(15000).then(show);
})();
