"use strict";
// The chosen picture, small, with what would keep it from being read well: told within a moment, before it is sent. It is only advice;
// what the workroom reads from the whole picture counts.
(() => {
  // Picture for the hints: so many pixels on its longer side. Means and shares are of 255 (common sense, tried on real pictures).
  const SIDE = 480, DARK = 62, DARK_PAPER = 95, LEAST_SHARE = 0.006, MOST_TILT = 25, FOCAL = 0.74;

  const small = async file => {
    const whole = await createImageBitmap(file);
    const by = SIDE / Math.max(whole.width, whole.height);
    const canvas = new OffscreenCanvas(Math.max(1, Math.round(whole.width * by)), Math.max(1, Math.round(whole.height * by)));
    const pen = canvas.getContext("2d", { willReadFrequently: true });
    pen.imageSmoothingQuality = "medium";
    pen.drawImage(whole, 0, 0, canvas.width, canvas.height);
    // A middle part at its own size tells whether it is sharp.
    const part = Math.min(400, whole.width, whole.height);
    const crops = [[0.5, 0.5], [0.3, 0.35], [0.7, 0.35], [0.3, 0.65], [0.7, 0.65]].map(([u, v]) => {
      const close = new OffscreenCanvas(part, part).getContext("2d", { willReadFrequently: true });
      const left = Math.max(0, Math.min(whole.width - part, u * whole.width - part / 2));
      const top = Math.max(0, Math.min(whole.height - part, v * whole.height - part / 2));
      close.drawImage(whole, left, top, part, part, 0, 0, part, part);
      return close.getImageData(0, 0, part, part);
    });
    const seen = pen.getImageData(0, 0, canvas.width, canvas.height);
    whole.close();
    return { seen, crops };
  };

  const light = (data, i) => 0.299 * data[i] + 0.587 * data[i + 1] + 0.114 * data[i + 2];

  const isDark = seen => {
    const values = [];
    for (let i = 0; i < seen.data.length; i += 16) values.push(light(seen.data, i));
    values.sort((a, b) => a - b);
    return values[values.length >> 1] < DARK && values[Math.floor(values.length * 0.95)] < DARK_PAPER;
  };

  // A step of height h through a blur of deviation s is h / (s √(2π)) steep in its middle: the sharpest third of the clear steps tells s.
  const blur = crops => {
    const found = [];
    crops.forEach(({ data, width, height }) => {
      for (let y = 4; y < height; y += 6) {
        for (let x = 8; x + 8 < width; x++) {
          const at = d => data[(y * width + x + d) * 4 + 1];
          const step = at(7) - at(-7);
          const own = at(1) - at(-1);
          if (Math.abs(step) < 50 || own * step <= 0) continue;
          let steepest = true;
          for (let d = -6; d <= 6 && steepest; d++) steepest = Math.abs(at(d + 1) - at(d - 1)) <= Math.abs(own);
          if (steepest) {
            found.push(Math.abs(step) / (Math.abs(own) / 2) / 2.507);
            x += 7;
          }
        }
      }
    });
    found.sort((a, b) => a - b);
    return found.length < 30 ? 0 : found[Math.floor(found.length * 0.3)];
  };

  // The largest bright, colourless shape that does not run off the picture.
  const paper = ({ data, width, height }) => {
    const levels = [];
    for (let i = 0; i < data.length; i += 16) levels.push(light(data, i));
    levels.sort((a, b) => a - b);
    const usual = levels[levels.length >> 1];
    const bright = levels[Math.floor(levels.length * 0.99)];
    const limit = Math.max(usual + 18, (usual + bright) / 2);
    const pale = new Uint8Array(width * height);
    for (let p = 0; p < pale.length; p++) {
      const i = 4 * p;
      const most = Math.max(data[i], data[i + 1], data[i + 2]);
      const least = Math.min(data[i], data[i + 1], data[i + 2]);
      pale[p] = light(data, i) > limit && most - least < 0.3 * most ? 1 : 0;
    }
    let best = [];
    const queue = new Int32Array(pale.length);
    for (let seed = 0; seed < pale.length; seed++) {
      if (!pale[seed]) continue;
      let end = 0, off = false;
      queue[end++] = seed;
      pale[seed] = 0;
      for (let next = 0; next < end; next++) {
        const x = queue[next] % width, y = (queue[next] - x) / width;
        off = off || !x || !y || x === width - 1 || y === height - 1;
        for (let side = 0; side < 4; side++) {
          const u = x + (side === 0 ? -1 : side === 1 ? 1 : 0), v = y + (side === 2 ? -1 : side === 3 ? 1 : 0);
          if (u >= 0 && v >= 0 && u < width && v < height && pale[v * width + u]) {
            pale[v * width + u] = 0;
            queue[end++] = v * width + u;
          }
        }
      }
      if (!off && end > best.length && end > LEAST_SHARE * pale.length) best = queue.slice(0, end);
    }
    return [...best].map(p => ({ x: p % width, y: Math.floor(p / width) }));
  };

  // Its four corners: the two that lie farthest apart, and the farthest to each side of the line between them.
  const corners = shape => {
    const far = (from) => shape.reduce((best, p) => Math.hypot(p.x - from.x, p.y - from.y) > Math.hypot(best.x - from.x, best.y - from.y) ? p : best);
    const a = far(shape[0]);
    const c = far(a);
    const side = p => (c.x - a.x) * (p.y - a.y) - (c.y - a.y) * (p.x - a.x);
    const b = shape.reduce((best, p) => side(p) > side(best) ? p : best);
    const d = shape.reduce((best, p) => side(p) < side(best) ? p : best);
    return [a, b, c, d];
  };
  const area = c => Math.abs(c.reduce((sum, p, i) => sum + p.x * c[(i + 1) % 4].y - p.y * c[(i + 1) % 4].x, 0)) / 2;

  // The plane of a rectangle is told by where its sides vanish: the line through both places, seen with a telephone's usual lens.
  const tilt = (c, { width, height }) => {
    const unit = FOCAL * Math.max(width, height);
    const rays = c.map(p => [(p.x - width / 2) / unit, (p.y - height / 2) / unit, 1]);
    const cross = (u, v) => [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const one = cross(cross(rays[0], rays[1]), cross(rays[3], rays[2]));
    const two = cross(cross(rays[1], rays[2]), cross(rays[0], rays[3]));
    const normal = cross(one, two);
    return Math.acos(Math.min(1, Math.abs(normal[2]) / Math.hypot(...normal))) * 180 / Math.PI;
  };

  const hints = ({ seen, crops }, isWhite, words) => {
    const said = [];
    if (isDark(seen)) said.push(words.dark);
    else if (blur(crops) > 2.6) said.push(words.blurred);
    if (!isWhite) return said;
    const shape = paper(seen);
    const four = shape.length ? corners(shape) : [];
    const isSheet = four.length && shape.length > 0.8 * area(four) && shape.length < 1.15 * area(four);
    if (!isSheet) said.push(words.noSheet);
    else if (tilt(four, seen) > MOST_TILT) said.push(words.slant);
    return said;
  };

  const show = async input => {
    const form = input.closest(".send");
    const place = form && form.querySelector(".preview");
    const file = input.files[0];
    if (!place || !file) return;
    const began = performance.now();
    try {
      const picture = await small(file);
      if (input.files[0] !== file) return;
      const canvas = place.querySelector("canvas");
      canvas.width = picture.seen.width;
      canvas.height = picture.seen.height;
      canvas.getContext("2d").putImageData(picture.seen, 0, 0);
      const sheet = new FormData(form).get("sheet");
      const said = hints(picture, sheet === "a4" || sheet === "letter", form.dataset);
      place.querySelector(".hints").replaceChildren(...(said.length ? said : [form.dataset.fine]).map(words => {
        const line = document.createElement("li");
        line.textContent = words;
        return line;
      }));
      place.dataset.took = Math.round(performance.now() - began);
      place.hidden = false;
    } catch (e) {
      // A picture that this browser cannot open is judged by the workroom.
      place.hidden = true;
    }
  };
  document.addEventListener("change", event => {
    if (event.target.matches && event.target.matches(".pick input")) show(event.target);
  });
})();
