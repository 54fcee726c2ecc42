"use strict";
// The gallery's gifts are drawn from flat pieces first. Once the workroom looks for no more, each is drawn as soft cloth, one
// after the other, and takes the flat one's place.
(() => {
  const drawn = new Map();
  let busy = false;

  async function picture(from) {
    if (!drawn.has(from)) {
      const answer = await fetch(from);
      if (!answer.ok) throw new Error(answer.statusText);
      drawn.set(from, new DOMParser().parseFromString(await answer.text(), "image/svg+xml").documentElement);
    }
    return document.importNode(drawn.get(from), true);
  }

  // A part of the page that came anew shows flat pieces again.
  const next = () => [...document.querySelectorAll("[data-soft]")].find(card => card.querySelector("svg:not([data-is-soft])"));

  async function soften() {
    if (busy || document.querySelector("#proposals .progress")) return;
    busy = true;
    try {
      for (let card = next(); card; card = next()) {
        const soft = await picture(card.dataset.soft);
        soft.dataset.isSoft = "";
        if (card.isConnected) card.querySelector("svg").replaceWith(soft);
      }
    } catch (trouble) {
      // the flat ones are there
    } finally {
      busy = false;
    }
  }

  document.addEventListener("htmx:afterSettle", soften);
  soften();
})();
