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
  const words = document.querySelector("svg.marks .pulled");
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

// A bar thinner than a finger is met within 44 pixels: of all bars so near, the one whose edge is nearest.
const FINGER = 44;
document.addEventListener("click", event => {
  const shown = event.target.closest && event.target.closest(".shown");
  if (!shown || event.detail === 0 || event.target.closest(".handle")) return;
  const hit = event.target.closest(".tap");
  const bars = [...shown.querySelectorAll(".tap")].map(tap => ({ tap, at: tap.querySelector(".room").getBoundingClientRect() }));
  const thin = bar => Math.min(bar.at.width, bar.at.height) < FINGER;
  if (hit && thin(bars.find(bar => bar.tap === hit))) return;
  const away = ({ at }) => Math.max(at.left - event.clientX, event.clientX - at.right, at.top - event.clientY, event.clientY - at.bottom, 0);
  const near = bars.filter(bar => bar.tap !== hit && thin(bar) && away(bar) <= (FINGER - Math.min(bar.at.width, bar.at.height)) / 2);
  near.sort((one, other) => away(one) - away(other));
  if (!near.length) return;
  event.preventDefault();
  event.stopImmediatePropagation();
  near[0].tap.dispatchEvent(new MouseEvent("click", { bubbles: true, cancelable: true }));
}, true);

// The picture alone, as large as the wall.
document.addEventListener("click", event => {
  const wall = event.target.closest && event.target.closest("[data-wall]");
  if (!wall) return;
  if (document.fullscreenElement) document.exitFullscreen();
  else document.querySelector(".stage").requestFullscreen?.();
});

// Keys: 1 to 4 the four views, arrows between bars, Escape closes what is chosen. Letters are free while she types.
document.addEventListener("keydown", event => {
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
  const at = event.target;
  if (at.closest && at.closest("input:not([type=hidden]), select, textarea")) return;
  const press = found => { if (found && !found.disabled) { event.preventDefault(); found.click(); } };
  if (/^[1-4]$/.test(event.key)) press(document.querySelectorAll(".views a")[Number(event.key) - 1]);
  if (event.key === "Escape" && !document.fullscreenElement) press(document.getElementById("close"));
  const tap = at.closest && at.closest(".tap");
  if (!tap) return;
  if (event.key === " ") press(tap);
  const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  const way = ways[event.key];
  if (!way) return;
  event.preventDefault();
  const middle = one => { const box = one.querySelector(".room").getBoundingClientRect(); return [box.x + box.width / 2, box.y + box.height / 2]; };
  const [x, y] = middle(tap);
  const ahead = [...document.querySelectorAll(".tap")].filter(one => one !== tap).map(one => {
    const [u, v] = middle(one);
    const along = (u - x) * way[0] + (v - y) * way[1];
    const aside = Math.abs((u - x) * way[1]) + Math.abs((v - y) * way[0]);
    return { one, along, cost: along + 2 * aside };
  }).filter(({ along }) => along > 1).sort((a, b) => a.cost - b.cost);
  ahead[0]?.one.focus();
});
