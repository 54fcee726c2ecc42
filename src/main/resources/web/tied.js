"use strict";
// Brings the gift that can be turned onto the page, where the browser can draw it. The still pictures stay in any case.

(() => {
  // The place may come and go with a part of the page; each canvas is drawn on by one of its own.
  let place = null;
  let turning = null;
  let shown = "";
  let can;
  const able = () => can ??= !!document.createElement("canvas").getContext("webgl2");

  function find() {
    const now = document.getElementById("turning");
    if (now === place) return;
    turning?.away();
    turning = null;
    shown = "";
    place = now;
    if (place) listen(place);
  }

  async function show() {
    find();
    if (!place || !able()) return;
    const source = document.querySelector("[data-model]");
    const from = source ? source.dataset.model : "";
    if (!from) {
      place.hidden = true;
      shown = "";
      return;
    }
    if (from === shown) return;
    shown = from;
    const here = place;
    // Its room is kept from the first, so that nothing moves when it comes.
    here.hidden = false;
    try {
      const response = await fetch(from);
      if (!response.ok) throw new Error(response.statusText);
      const model = await response.json();
      if (from !== shown || here !== place) return;
      const [{ Turning }, { tied }] = await Promise.all([import("/own/turn.js"), import("/own/drape.js")]);
      const things = await tied(model);
      if (from !== shown || here !== place) return;
      here.hidden = false;
      turning ??= new Turning(here.querySelector("canvas"));
      turning.show(things);
      here.dataset.shown = from;
      drape(from);
    } catch (trouble) {
      if (here !== place) return;
      shown = "";
      here.hidden = true;
    }
  }

  // The cloth brought to rest, once the workroom has it; until then, and where there is none, the flat pieces stay.
  async function drape(from) {
    try {
      const { tied } = await import("/own/drape.js");
      for (let wait = 700; from === shown; wait = Math.min(5000, wait * 1.4)) {
        const response = await fetch(from.replace("/model", "/drape"));
        if (response.status === 200) {
          const things = await tied(await response.json());
          if (from !== shown) return;
          turning.show(things, true);
          place.dataset.draped = from;
          return;
        }
        if (response.status !== 202) return;
        await new Promise(resolve => setTimeout(resolve, wait));
      }
    } catch (trouble) {
      // the flat pieces are there
    }
  }

  const step = Math.PI / 12;
  const ways = { left: [step, 0], right: [-step, 0], up: [0, step], down: [0, -step] };

  function listen(here) {
    const canvas = here.querySelector("canvas");
    here.addEventListener("click", event => {
      const button = event.target.closest("button");
      if (!button || !turning) return;
      const { turn, closer } = button.dataset;
      if (turn) turning.turn(...ways[turn]);
      if (closer) turning.closer(Number(closer));
      here.querySelector("[data-said]").textContent = button.dataset.says || button.getAttribute("aria-label");
    });
    // The small pictures beside it are the sides to look from; without script each is a link to its large picture.
    here.closest(".stage")?.querySelector(".views")?.addEventListener("click", event => {
      const side = event.target.closest("a[data-look]");
      if (!side || !turning || here.hidden || event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      turning.look(side.dataset.look);
      for (const other of here.closest(".stage").querySelectorAll("a[data-look]")) other.removeAttribute("aria-current");
      side.setAttribute("aria-current", "true");
      here.querySelector("[data-said]").textContent = side.textContent.trim();
    });
    canvas.addEventListener("webglcontextlost", event => {
      event.preventDefault();
      here.hidden = true;
    });
    canvas.addEventListener("webglcontextrestored", () => {
      here.hidden = !shown;
      turning?.redraw();
    });
  }

  // Still pictures are drawn from flat pieces first, and as soft cloth once the workroom has that.
  function soften() {
    for (const picture of document.querySelectorAll(able() ? ".views img[data-soft]" : "img[data-soft]")) {
      const from = picture.dataset.soft;
      const soft = new Image();
      soft.onload = () => { if (picture.dataset.soft === from && picture.isConnected) picture.src = from; };
      soft.src = from;
    }
  }

  const all = () => { soften(); show(); };
  document.addEventListener("htmx:afterSwap", all);
  all();
})();
