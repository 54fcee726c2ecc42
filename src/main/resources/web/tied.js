"use strict";
// Brings the gift that can be turned onto the page, where the browser can draw it. The still pictures stay in any case.

(() => {
  const place = document.getElementById("turning");
  if (!place || !document.createElement("canvas").getContext("webgl2")) return;
  const canvas = place.querySelector("canvas");
  const said = place.querySelector("[data-said]");
  let turning;
  let shown = "";

  async function show() {
    const source = document.querySelector("[data-model]");
    const from = source ? source.dataset.model : "";
    if (!from) {
      place.hidden = true;
      shown = "";
      return;
    }
    if (from === shown) return;
    shown = from;
    try {
      const response = await fetch(from);
      if (!response.ok) throw new Error(response.statusText);
      const model = await response.json();
      if (from !== shown) return;
      if (!turning) {
        const { Turning } = await import("/own/turn.js");
        place.hidden = false;
        turning = new Turning(canvas);
      }
      place.hidden = false;
      turning.show(model);
      place.dataset.shown = from;
      drape(from);
    } catch (trouble) {
      shown = "";
      place.hidden = true;
    }
  }

  // The cloth brought to rest, once the workroom has it; until then, and where there is none, the flat pieces stay.
  async function drape(from) {
    try {
      const { draped } = await import("/own/drape.js");
      for (let wait = 700; from === shown; wait = Math.min(5000, wait * 1.4)) {
        const response = await fetch(from.replace("/model", "/drape"));
        if (response.status === 200) {
          const things = await draped(await response.json());
          if (from !== shown) return;
          turning.drape(things);
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

  const words = { left: "turned to the left", right: "turned to the right", up: "tipped towards you", down: "tipped away" };
  const step = Math.PI / 12;
  const ways = { left: [step, 0], right: [-step, 0], up: [0, step], down: [0, -step] };

  place.addEventListener("click", event => {
    const button = event.target.closest("button");
    if (!button || !turning) return;
    const { turn, look, closer } = button.dataset;
    if (turn) turning.turn(...ways[turn]);
    if (look) turning.look(look);
    if (closer) turning.closer(Number(closer));
    said.textContent = turn ? words[turn] : button.textContent;
  });

  canvas.addEventListener("webglcontextlost", event => {
    event.preventDefault();
    place.hidden = true;
  });
  canvas.addEventListener("webglcontextrestored", () => {
    place.hidden = !shown;
    turning.redraw();
  });

  document.addEventListener("htmx:afterSwap", show);
  show();
})();
