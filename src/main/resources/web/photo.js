"use strict";
// A photograph of scraps. Sizes are measured by the workroom; here corners and lines only follow the hand.
(() => {
  // Says which picture was chosen, and that a very large one cannot be sent.
  const picked = input => {
    const form = input.closest("form");
    const said = form.querySelector(".picked");
    form.querySelectorAll(".pick input").forEach(other => {
      if (other !== input && input.files.length) other.value = "";
      other.toggleAttribute("data-chosen", other.files.length > 0);
    });
    const file = input.files[0];
    if (!file) return;
    if (file.size > Number(form.dataset.most)) {
      said.textContent = form.dataset.large.replace("%s", () => file.name);
      input.value = "";
    } else {
      said.textContent = form.dataset.picked.replace("%s", () => file.name);
    }
  };
  document.addEventListener("change", event => {
    if (event.target.matches && event.target.matches(".pick input")) picked(event.target);
  });
  // One that was chosen before this script was there.
  document.querySelectorAll(".pick input").forEach(input => { if (input.files.length) picked(input); });
  document.addEventListener("submit", event => {
    if (!event.target.matches(".send")) return;
    const said = event.target.querySelector(".picked");
    said.textContent = [...event.target.querySelectorAll(".pick input")].some(input => input.files.length)
      ? event.target.dataset.sending : event.target.dataset.none;
  });
  document.addEventListener("focusin", event => {
    if (event.target.matches && event.target.matches(".sheets input[name=size], .sheets input[name=line]"))
      event.target.closest(".sheets").querySelector("input[value=" + (event.target.name === "size" ? "size" : "sheet") + "]").checked = true;
  });

  // Words and handles keep their size on the screen, however large the picture is shown. Told by a sheet of rules, not on
  // the drawing itself: the workroom's policy allows no styles there, not even copied ones.
  const rules = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
  const units = {};
  const kind = svg => svg.matches(".closeup") ? ".closeup" : svg.matches(".drawing") ? ".drawing" : ".whole .photo";
  const fit = svg => {
    const box = svg.viewBox.baseVal;
    const rect = svg.getBoundingClientRect();
    if (!rect.width || !box.width) return;
    const unit = Math.max(box.width / rect.width, box.height / rect.height);
    units[kind(svg)] = unit;
    rules.replaceSync(Object.keys(units).map(which => which + " { --u: " + units[which] + "; }").join(" "));
    svg.querySelectorAll("[data-room]").forEach(piece => {
      const words = piece.querySelector(".size");
      piece.classList.toggle("tight", !words || Number(piece.dataset.room) / unit < words.textContent.length * 6.6);
    });
  };
  const sizes = new ResizeObserver(all => all.forEach(one => fit(one.target)));
  const watch = () => document.querySelectorAll("svg.photo").forEach(svg => { fit(svg); sizes.observe(svg); });
  watch();
  document.addEventListener("photo:seen", event => fit(event.target));
  document.addEventListener("htmx:afterSettle", () => {
    sizes.disconnect();
    watch();
  });

  // What was asked for comes into sight. After a change everything stays as she left it: the folds that she opened, and under
  // her finger what was there; where that is gone, the piece she looks at has the focus, or the list.
  let left = null;
  const opened = () => {
    const there = document.getElementById("close") || document.getElementById("drawing");
    const back = document.getElementById(left.from);
    if (there) {
      there.focus({ preventScroll: true });
      there.scrollIntoView({ block: window.innerWidth < 992 ? "start" : "nearest" });
    } else if (back) {
      back.focus({ preventScroll: true });
      back.scrollIntoView({ block: "nearest" });
    }
  };
  const kept = () => {
    const again = left.held && document.getElementById(left.held);
    window.scrollTo({ top: left.scrolled, behavior: "instant" });
    if (again) {
      again.focus({ preventScroll: true });
      window.scrollBy({ top: again.getBoundingClientRect().top - left.top, behavior: "instant" });
    } else if (left.held !== null) {
      (document.getElementById("close") || document.getElementById("fabrics-of"))?.focus({ preventScroll: true });
    }
  };
  document.addEventListener("htmx:beforeSwap", event => {
    const sort = document.getElementById("sort");
    if (!sort || event.detail.target !== sort || !event.detail.shouldSwap) return;
    const asked = event.detail.requestConfig;
    const held = document.activeElement;
    const close = document.getElementById("close");
    left = {
      folds: [...sort.querySelectorAll("details[id][open]")].map(fold => fold.id),
      isAsked: asked.verb === "get" || asked.elt.id === "draw",
      from: close ? "to-" + close.dataset.piece : "missed",
      held: sort.contains(held) ? held.id : null,
      top: sort.contains(held) ? held.getBoundingClientRect().top : 0,
      scrolled: window.scrollY
    };
  });
  document.addEventListener("htmx:afterSwap", () => {
    if (left) left.folds.forEach(id => document.getElementById(id)?.setAttribute("open", ""));
  });
  document.addEventListener("htmx:afterSettle", event => {
    if (!left || event.detail.target.id === "said") return;
    if (left.isAsked) opened();
    else kept();
    left = null;
  });

  // What was refused is told where it is seen, and the outline shows again as it is kept.
  document.addEventListener("htmx:afterSettle", event => {
    if (event.target.id === "said" && event.target.textContent.trim()) event.target.scrollIntoView({ block: "nearest" });
  });
  document.addEventListener("htmx:responseError", event => {
    const handle = event.detail.elt;
    if (!handle || !handle.matches(".corner") || !handle.isConnected) return;
    const piece = handle.closest("#close").dataset.piece;
    window.htmx.ajax("GET", "?piece=" + piece, { target: "#sort", swap: "outerHTML" });
  });

  // A piece of the picture is looked at closely by its entry in the list.
  document.addEventListener("click", event => {
    const piece = event.target.closest && event.target.closest(".whole [data-piece]");
    const link = piece && document.getElementById("to-" + piece.dataset.piece);
    if (link) link.click();
  });

  const at = handle => ({ x: Number(handle.dataset.x), y: Number(handle.dataset.y) });
  const unit = svg => units[kind(svg)] || 1;
  const place = (svg, event) => {
    const spot = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    return { x: spot.x, y: spot.y };
  };
  const put = (handle, spot) => {
    const svg = handle.ownerSVGElement;
    const image = svg.querySelector("image");
    const x = Math.max(0, Math.min(Number(image.getAttribute("width")), spot.x));
    const y = Math.max(0, Math.min(Number(image.getAttribute("height")), spot.y));
    handle.dataset.x = x.toFixed(1);
    handle.dataset.y = y.toFixed(1);
    handle.querySelectorAll("circle").forEach(circle => { circle.setAttribute("cx", x); circle.setAttribute("cy", y); });
    if (handle.matches(".corner")) {
      const points = [...svg.querySelectorAll(".corner")].map(one => one.dataset.x + "," + one.dataset.y).join(" ");
      svg.querySelectorAll("polygon.case, polygon.live").forEach(polygon => polygon.setAttribute("points", points));
    } else {
      const end = handle.dataset.end;
      svg.querySelectorAll("line").forEach(line => { line.setAttribute("x" + end, x); line.setAttribute("y" + end, y); });
      const form = document.getElementById("line");
      form.elements[end === "1" ? "x" : "x2"].value = handle.dataset.x;
      form.elements[end === "1" ? "y" : "y2"].value = handle.dataset.y;
    }
  };
  const send = handle => {
    if (!handle.matches(".corner")) return;
    const close = handle.closest("#close");
    window.htmx.ajax("POST", "/stash/photo/" + close.dataset.id + "/change", {
      source: handle.isConnected ? handle : "#sort", target: "#sort", swap: "outerHTML",
      values: { what: "corner", piece: close.dataset.piece, i: handle.dataset.i, x: handle.dataset.x, y: handle.dataset.y,
        version: document.getElementById("version").value }
    });
  };
  const current = handle => {
    handle.ownerSVGElement.querySelectorAll(".current").forEach(one => one.classList.remove("current"));
    handle.classList.add("current");
    handle.focus({ preventScroll: true });
  };

  // Dragged by finger, pen or mouse.
  let held = null;
  document.addEventListener("pointerdown", event => {
    const handle = event.target.closest && event.target.closest(".corner, .end");
    if (!handle || event.button) return;
    event.preventDefault();
    current(handle);
    const from = place(handle.ownerSVGElement, event);
    held = { handle, pointer: event.pointerId, dx: at(handle).x - from.x, dy: at(handle).y - from.y, moved: false };
    handle.setPointerCapture(event.pointerId);
  });
  document.addEventListener("pointermove", event => {
    if (!held || event.pointerId !== held.pointer) return;
    const spot = place(held.handle.ownerSVGElement, event);
    held.moved = true;
    put(held.handle, { x: spot.x + held.dx, y: spot.y + held.dy });
  });
  const letGo = event => {
    if (!held || event.pointerId !== held.pointer) return;
    const { handle, moved } = held;
    held = null;
    if (moved) send(handle);
  };
  document.addEventListener("pointerup", letGo);
  document.addEventListener("pointercancel", letGo);

  // Tapped: first the corner, then where it belongs. The ends of a line take turns.
  document.addEventListener("click", event => {
    const svg = event.target.closest && event.target.closest("svg.closeup");
    if (!svg || event.target.closest(".corner, .end")) return;
    const ends = [...svg.querySelectorAll(".end")];
    const chosen = svg.querySelector(".current") || ends[0];
    if (!chosen) return;
    put(chosen, place(svg, event));
    if (ends.length) current(ends[chosen.dataset.end === "1" ? 1 : 0]);
    else send(chosen);
  });

  // Moved by the arrow keys.
  let pause = 0;
  let led = null;
  // A corner that the keys still lead stays where they have led it when an answer draws the piece anew.
  document.addEventListener("htmx:afterSettle", () => {
    if (!led || led.isConnected) return;
    const close = document.getElementById("close");
    const again = close && close.dataset.piece === led.closest("#close").dataset.piece && document.getElementById(led.id);
    if (!again) return;
    put(again, at(led));
    led = again;
  });
  document.addEventListener("keydown", event => {
    const handle = event.target.closest && event.target.closest(".corner, .end");
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    if (!handle || !step) return;
    event.preventDefault();
    const far = unit(handle.ownerSVGElement) * (event.shiftKey ? 10 : 1);
    put(handle, { x: at(handle).x + step[0] * far, y: at(handle).y + step[1] * far });
    if (led && led !== handle && led.id !== handle.id) send(led);
    led = handle.matches(".corner") ? handle : null;
    clearTimeout(pause);
    pause = setTimeout(() => { const last = led; led = null; if (last) send(last); }, 500);
  });
})();

// The sheet's corners are tapped on a picture as wide as the page; without this script it is small.
(() => {
  "use strict";
  document.querySelectorAll(".tapping").forEach(form => {
    const picture = form.querySelector("input[type=image]");
    form.classList.add("wide");
    picture.addEventListener("click", event => {
      if (event.detail === 0) return;
      event.preventDefault();
      const box = picture.getBoundingClientRect();
      const share = document.createElement("input");
      share.type = "hidden";
      share.name = "share";
      share.value = ((event.clientX - box.left) / box.width).toFixed(4) + " " + ((event.clientY - box.top) / box.height).toFixed(4);
      form.append(share);
      form.submit();
    });
  });
})();
