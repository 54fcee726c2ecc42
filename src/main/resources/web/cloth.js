"use strict";
// Widths by dragging: the chosen bar's outer edge can be pulled in or out. What is dragged is a number, shown all the
// while; let go, the workroom draws the cloth anew. The number can be typed in the field as well.


document.addEventListener("pointerdown", event => {
  const handle = event.target.closest && event.target.closest(".handle");
  if (!handle || event.button > 0) return;
  event.preventDefault();
  const svg = handle.ownerSVGElement;
  const scale = svg.viewBox.baseVal.width / svg.getBoundingClientRect().width;
  const upright = handle.dataset.upright === "true";
  const out = Number(handle.dataset.out);
  const cut = Number(handle.dataset.cut);
  const step = Number(handle.dataset.step);
  const from = upright ? event.clientX : event.clientY;
  const words = svg.querySelector(".pulled");
  let marks = Math.round(cut / step);
  const first = marks;
  handle.setPointerCapture(event.pointerId);

  const pull = moved => {
    const way = ((upright ? moved.clientX : moved.clientY) - from) * scale * out;
    marks = Math.max(1, Math.round((cut + way) / step));
    const shift = (marks * step - cut) * out;
    handle.setAttribute("transform", upright ? `translate(${shift} 0)` : `translate(0 ${shift})`);
    words.textContent = written(marks, handle.dataset.parts);
  };
  const done = () => {
    handle.removeEventListener("pointermove", pull);
    words.textContent = "";
    if (marks === first) return;
    const field = document.getElementById("bar-width");
    field.value = written(marks, handle.dataset.parts);
    field.dispatchEvent(new Event("change", { bubbles: true }));
  };
  handle.addEventListener("pointermove", pull);
  handle.addEventListener("pointerup", done, { once: true });
  handle.addEventListener("pointercancel", () => { marks = first; done(); }, { once: true });
});

// Whole marks of the ruler as she would write them: 2 3/8, or 7.4 where a unit has ten parts.
function written(marks, parts) {
  const n = Number(parts);
  const whole = Math.floor(marks / n);
  let rest = marks % n;
  if (n === 10) return (marks / 10).toFixed(1).replace(/\.0$/, "");
  if (rest === 0) return String(whole);
  let of = n;
  while (rest % 2 === 0) { rest /= 2; of /= 2; }
  return (whole ? whole + " " : "") + rest + "/" + of;
}
