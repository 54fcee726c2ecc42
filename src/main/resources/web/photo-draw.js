"use strict";
// A piece that was missed is drawn in, corner by corner. What it measures is told by the workroom.
(() => {
  // All in pixels of the screen: a press that moves less is a tap; so near a corner takes hold of it, or closes; how sure a tap or a
  // click is once it is seen where it fell (common sense, no source); the smallest stretch of picture that is worth seeing.
  const TAP = 8, GRIP = 16, FINGER = 2, POINTER = 1, CLOSEST = 1.2;
  const drawings = new WeakMap();
  const shape = (name, known) => {
    const made = document.createElementNS("http://www.w3.org/2000/svg", name);
    Object.entries(known).forEach(([key, value]) => made.setAttribute(key, value));
    return made;
  };
  const limit = (low, value, high) => Math.max(low, Math.min(high, value));
  // How much nearer a turn of the wheel comes: a notch is about 100, or 3 lines; fingers spread on a pad come as many small turns with
  // Ctrl, so each counts for more (common sense, no source).
  const turned = event => {
    const far = event.deltaY * (event.deltaMode === 1 ? 33 : 1) * (event.ctrlKey ? 5 : 1);
    return Math.exp(-limit(-100, far, 100) / 700);
  };

  class Drawing {
    constructor(svg) {
      const image = svg.querySelector("image");
      this.svg = svg;
      // Two fingers are never the page's, also where one would scroll it.
      ["touchstart", "touchmove"].forEach(name => svg.addEventListener(name, event => {
        if (event.touches.length > 1 && event.cancelable) event.preventDefault();
      }, { passive: false }));
      this.form = document.getElementById("draw");
      this.width = Number(image.getAttribute("width"));
      this.height = Number(image.getAttribute("height"));
      this.most = Number(svg.dataset.most);
      this.corners = [];
      this.cross = { x: this.width / 2, y: this.height / 2 };
      this.fingers = new Map();
      this.see({ x: 0, y: 0, across: Infinity });
      this.show();
    }

    get unit() { return this.view.across / this.svg.getBoundingClientRect().width; }

    // Shows a stretch of the picture, as wide as asked and as high as the drawing is; at most half of it lies beside the
    // picture, so that what is looked at stays where it is, also at the rim.
    see({ x, y, across }) {
      const rect = this.svg.getBoundingClientRect();
      const steep = rect.height / rect.width;
      const all = Math.max(this.width, this.height / steep);
      const wide = limit(Math.min(all, CLOSEST * rect.width), across, all);
      const high = wide * steep;
      const part = wide < all * 0.999;
      const from = (start, length, seen) => part ? limit(-seen / 2, start, length - seen / 2) : (length - seen) / 2;
      this.view = {
        x: from(x, this.width, wide),
        y: from(y, this.height, high),
        across: wide };
      this.svg.setAttribute("viewBox", [this.view.x, this.view.y, wide, high].join(" "));
      this.svg.classList.toggle("near", part);
      this.button("closer").disabled = wide <= CLOSEST * rect.width * 1.001;
      this.button("farther").disabled = !part;
      this.svg.dispatchEvent(new CustomEvent("photo:seen", { bubbles: true }));
    }

    // Comes nearer, or goes back, so that one place stays where it is on the screen.
    zoom(by, about) {
      const { x, y, across } = this.view;
      this.see({ x, y, across: across / by });
      const share = this.view.across / across;
      this.see({ x: about.x - (about.x - x) * share, y: about.y - (about.y - y) * share, across: this.view.across });
    }

    button(what) { return this.form.querySelector("[data-draw=" + what + "]"); }

    place(event) {
      const rect = this.svg.getBoundingClientRect();
      return { x: this.view.x + (event.clientX - rect.left) * this.unit, y: this.view.y + (event.clientY - rect.top) * this.unit };
    }

    within(spot) { return { x: limit(0, spot.x, this.width), y: limit(0, spot.y, this.height) }; }

    // A corner more; near the first one, the end.
    add(spot, sure) {
      if (this.corners.length > 2 && this.near(spot) === 0) {
        this.form.requestSubmit();
        return;
      }
      const last = this.corners[this.corners.length - 1];
      if (this.corners.length >= this.most || (last && Math.hypot(last.x - spot.x, last.y - spot.y) < 1)) return;
      this.corners.push({ ...this.within(spot), off: sure * this.unit });
      this.cross = this.within(spot);
      this.show();
    }

    back() {
      this.corners.pop();
      this.show();
    }

    move(i, spot) {
      this.corners[i] = { ...this.within(spot), off: POINTER * this.unit };
      this.show();
    }

    show() {
      const points = this.corners.map(c => c.x.toFixed(1) + "," + c.y.toFixed(1));
      this.svg.querySelectorAll(".grown").forEach(one => one.setAttribute("points", points.join(" ")));
      this.line(this.svg.querySelector(".shut"), this.corners.length > 2 ? this.corners[this.corners.length - 1] : null, this.corners[0]);
      this.spots();
      this.hairs();
      this.form.elements.corners.value = this.corners.map((c, i) => points[i] + "," + Math.min(999, c.off).toFixed(2)).join(" ");
      this.button("back").disabled = !this.corners.length;
      document.getElementById("measure").disabled = this.corners.length < 3;
      document.getElementById("find").disabled = this.corners.length !== 1;
      document.querySelector(".draw .told").textContent = this.said();
    }

    said() {
      const count = this.corners.length;
      const words = this.svg.dataset;
      if (count < 2) return count ? words.one : words.none;
      return (count < 3 ? words.few : count < this.most ? words.some : words.full).replace("%d", count);
    }

    line(line, from, to) {
      const ends = from ? [from.x, from.y, to.x, to.y] : [0, 0, 0, 0];
      ["x1", "y1", "x2", "y2"].forEach((name, i) => line.setAttribute(name, ends[i]));
    }

    spots() {
      const group = this.svg.querySelector(".spots");
      while (group.children.length > this.corners.length) group.lastChild.remove();
      while (group.children.length < this.corners.length) {
        const spot = shape("g", { class: "spot", role: "button", tabindex: 0, "data-i": group.children.length });
        ["reach", "dot", "pip"].forEach(name => spot.append(shape("circle", { class: name })));
        group.append(spot);
      }
      this.corners.forEach((corner, i) => {
        const spot = group.children[i];
        spot.setAttribute("aria-label", this.svg.dataset.corner.replace("%1", i + 1).replace("%2", this.corners.length));
        spot.querySelectorAll("circle").forEach(circle => { circle.setAttribute("cx", corner.x); circle.setAttribute("cy", corner.y); });
      });
    }

    hairs() {
      const { x, y } = this.cross;
      const far = 16 * this.unit;
      const cross = document.getElementById("cross");
      cross.querySelectorAll("line").forEach((line, i) => i % 2
        ? this.line(line, { x, y: y - far }, { x, y: y + far }) : this.line(line, { x: x - far, y }, { x: x + far, y }));
      cross.querySelector("circle").setAttribute("cx", x);
      cross.querySelector("circle").setAttribute("cy", y);
    }

    // The picture follows when the cross, or a corner, is led out of sight.
    follow(spot) {
      const high = this.view.across * this.svg.getBoundingClientRect().height / this.svg.getBoundingClientRect().width;
      const rim = 30 * this.unit;
      this.see({
        x: limit(spot.x + rim - this.view.across, this.view.x, spot.x - rim),
        y: limit(spot.y + rim - high, this.view.y, spot.y - rim),
        across: this.view.across });
    }

    // The corner under a finger, by where it is alone: browsers move a touch to what can be pressed nearby.
    near(spot) {
      const far = this.corners.map(corner => Math.hypot(corner.x - spot.x, corner.y - spot.y) / this.unit);
      const nearest = far.indexOf(Math.min(...far));
      return far[nearest] < GRIP ? nearest : -1;
    }

    // Fingers, pen and mouse: a tap places, a drag moves a corner or the picture, two fingers come nearer.
    down(event) {
      if (event.button) return;
      this.fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      if (this.fingers.size > 1) {
        this.press = null;
        this.pinch = this.apart();
        return;
      }
      this.press = { x: event.clientX, y: event.clientY, view: { ...this.view }, moved: false, corner: this.near(this.place(event)) };
      this.svg.setPointerCapture(event.pointerId);
    }

    drag(event) {
      if (!this.fingers.has(event.pointerId)) return;
      this.fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      if (this.fingers.size === 2) {
        this.spread();
      } else if (this.press) {
        const dx = event.clientX - this.press.x;
        const dy = event.clientY - this.press.y;
        this.press.moved = this.press.moved || Math.hypot(dx, dy) > TAP;
        if (!this.press.moved) return;
        if (this.press.corner >= 0) this.move(this.press.corner, this.place(event));
        else this.see({ x: this.press.view.x - dx * this.unit, y: this.press.view.y - dy * this.unit, across: this.view.across });
      }
    }

    apart() {
      const [a, b] = [...this.fingers.values()];
      return { far: Math.hypot(a.x - b.x, a.y - b.y), clientX: (a.x + b.x) / 2, clientY: (a.y + b.y) / 2 };
    }

    spread() {
      const now = this.apart();
      const was = this.place(this.pinch);
      const here = this.place(now);
      this.see({ x: this.view.x + was.x - here.x, y: this.view.y + was.y - here.y, across: this.view.across });
      this.zoom(now.far / Math.max(1, this.pinch.far), was);
      this.pinch = now;
    }

    up(event, given) {
      this.fingers.delete(event.pointerId);
      if (this.fingers.size > 1) this.pinch = this.apart();
      const press = this.press;
      this.press = null;
      if (!given || !press || press.moved) return;
      const spot = this.place(event);
      if (press.corner > 0 || (press.corner === 0 && this.corners.length < 3)) {
        this.svg.querySelectorAll(".spot")[press.corner].focus({ preventScroll: true });
      } else {
        this.add(spot, event.pointerType === "touch" ? FINGER : POINTER);
      }
    }

    key(event) {
      const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
      const spot = event.target.closest(".spot");
      if (step) {
        const far = this.unit * (event.shiftKey ? 10 : 1);
        const from = spot ? this.corners[Number(spot.dataset.i)] : this.cross;
        const to = this.within({ x: from.x + step[0] * far, y: from.y + step[1] * far });
        if (spot) this.move(Number(spot.dataset.i), to);
        else this.cross = to;
        this.follow(to);
        this.hairs();
      } else if ((event.key === "Enter" || event.key === " ") && !spot) {
        this.add(this.cross, POINTER);
      } else if (event.key === "Backspace" || event.key === "Delete") {
        this.back();
        document.getElementById("cross").focus({ preventScroll: true });
      } else if (event.key === "+" || event.key === "-") {
        this.zoom(event.key === "+" ? 1.6 : 1 / 1.6, this.cross);
      } else {
        return;
      }
      event.preventDefault();
    }
  }

  const of = target => {
    const svg = target.closest && target.closest("svg.drawing");
    return svg ? drawings.get(svg) : undefined;
  };
  const begin = () => document.querySelectorAll("svg.drawing").forEach(svg => {
    if (!drawings.has(svg)) drawings.set(svg, new Drawing(svg));
  });
  const all = act => document.querySelectorAll("svg.drawing").forEach(svg => drawings.has(svg) && act(drawings.get(svg)));

  begin();
  document.addEventListener("htmx:afterSettle", begin);
  window.addEventListener("resize", () => all(one => { one.see(one.view); one.hairs(); }));
  document.addEventListener("photo:seen", event => { const one = of(event.target); if (one) one.hairs(); });
  document.addEventListener("pointerdown", event => { const one = of(event.target); if (one) one.down(event); });
  document.addEventListener("pointermove", event => all(one => one.drag(event)));
  document.addEventListener("pointerup", event => all(one => one.up(event, true)));
  document.addEventListener("pointercancel", event => all(one => one.up(event, false)));
  document.addEventListener("keydown", event => { const one = of(event.target); if (one) one.key(event); });
  document.addEventListener("wheel", event => {
    const one = of(event.target);
    if (!one || !(event.ctrlKey || one.svg.matches(".near"))) return;
    event.preventDefault();
    one.zoom(turned(event), one.place(event));
  }, { passive: false });
  document.addEventListener("click", event => {
    const what = event.target.closest && event.target.closest("[data-draw]");
    if (!what) return;
    all(one => {
      const last = one.corners[one.corners.length - 1] || one.cross;
      if (what.dataset.draw === "back") one.back();
      else one.zoom(what.dataset.draw === "closer" ? 1.6 : 1 / 1.6, last);
    });
  });
})();
