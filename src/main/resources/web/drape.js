// A tied cloth for three.js, as flat pieces or brought to rest: one mesh with the pictures of both faces, the knots'
// strands as gathered tubes, light as in the flat pictures, and a soft shadow on the table.
import {
  AmbientLight, BackSide, BufferAttribute, BufferGeometry, CanvasTexture, DirectionalLight, DoubleSide, FrontSide,
  HemisphereLight, Mesh, MeshBasicMaterial, MeshLambertMaterial, PlaneGeometry, SRGBColorSpace, Vector3,
} from "./three/three.module.min.js";

// From the near left above.
const LIGHT = new Vector3(-0.5, -0.6, 0.9).normalize();
const TEXTURE = 1024;
const SHADOW = 128;
const DARK = 0.34;
const RING = 18;
const FOLDS = 6;
const FOLD_DEEP = 0.07;
const ROUND = 26;
const FULL = 65535;
// Pieces that meet at less than this angle are one round surface; its cosine.
const SOFT = 0.6;

// Numbers come as what each adds to the one so many before; Kind says how sixteen bits are read.
function numbers(text, apart, Kind) {
  const row = new Kind(Uint8Array.from(atob(text), c => c.charCodeAt(0)).buffer);
  for (let i = apart; i < row.length; i++) row[i] += row[i - apart];
  return row;
}

// The faces' drawings last used, so that one that has not changed is not drawn anew.
const drawn = new Map();

// A face's drawing as a picture to lay on the mesh.
async function face(svg) {
  if (!drawn.has(svg)) {
    if (drawn.size > 3) drawn.delete(drawn.keys().next().value);
    drawn.set(svg, canvasOf(svg));
  }
  const texture = new CanvasTexture(await drawn.get(svg));
  texture.colorSpace = SRGBColorSpace;
  texture.flipY = false;
  texture.anisotropy = 2;
  return texture;
}

async function canvasOf(svg) {
  const from = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = from;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = canvas.height = TEXTURE;
    canvas.getContext("2d").drawImage(image, 0, 0, TEXTURE, TEXTURE);
    return canvas;
  } finally {
    URL.revokeObjectURL(from);
  }
}

function cloth(data) {
  const places = Float32Array.from(numbers(data.places, 3, Int16Array), number => number * data.step);
  const shares = Float32Array.from(numbers(data.cloth, 2, Uint16Array), number => number / FULL);
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(places, 3));
  geometry.setAttribute("uv", new BufferAttribute(shares, 2));
  geometry.setIndex(new BufferAttribute(numbers(data.triangles, 1, Uint16Array), 1));
  geometry.computeVertexNormals();
  rounded(geometry, data.step);
  return geometry;
}

// Flat pieces that meet in one line with little turn between them are shaded as one round surface.
function rounded(geometry, step) {
  const places = geometry.getAttribute("position");
  const normals = geometry.getAttribute("normal");
  const meeting = new Map();
  for (let k = 0; k < places.count; k++) {
    const key = [places.getX(k), places.getY(k), places.getZ(k)].map(n => Math.round(n / step / 8)).join(" ");
    if (!meeting.has(key)) meeting.set(key, []);
    meeting.get(key).push(k);
  }
  const own = normals.array.slice();
  const turn = (a, b) => own[3 * a] * own[3 * b] + own[3 * a + 1] * own[3 * b + 1] + own[3 * a + 2] * own[3 * b + 2];
  for (const points of meeting.values()) {
    if (points.length < 2) continue;
    for (const k of points) {
      const sum = new Vector3();
      for (const q of points) {
        if (turn(k, q) > SOFT) sum.add(new Vector3(own[3 * q], own[3 * q + 1], own[3 * q + 2]));
      }
      sum.normalize();
      normals.setXYZ(k, sum.x, sum.y, sum.z);
    }
  }
}

// A strand as a tube with small folds along it; what lies on the end's middle line is wound round it.
function strand(given) {
  let line = given.line.map((spot, i) => ({ at: new Vector3(spot.x, spot.y, spot.z), middle: given.middles[i] }));
  line = rounder(rounder(line));
  const places = [];
  const shares = [];
  const index = [];
  let side = new Vector3(0.3, 0.5, 0.8);
  let gone = 0;
  const whole = line.reduce((sum, here, i) => i ? sum + here.at.distanceTo(line[i - 1].at) : 0, 0);
  line.forEach((here, i) => {
    if (i) gone += here.at.distanceTo(line[i - 1].at);
    // Its end closes round where the free end comes out.
    const left = Math.min(1, (whole - gone) / given.half);
    const full = given.half * Math.max(0.05, Math.sqrt(1 - (1 - left) * (1 - left)));
    const way = line[Math.min(i + 1, line.length - 1)].at.clone().sub(line[Math.max(i - 1, 0)].at).normalize();
    side = side.clone().addScaledVector(way, -side.dot(way)).normalize();
    const other = way.clone().cross(side);
    for (let k = 0; k <= RING; k++) {
      const angle = 2 * Math.PI * k / RING;
      const half = full * (1 + FOLD_DEEP * Math.sin(FOLDS * angle + gone / given.half / 3));
      const spot = here.at.clone().addScaledVector(side, half * Math.cos(angle)).addScaledVector(other, half * Math.sin(angle));
      places.push(spot.x, spot.y, spot.z);
      const aside = ROUND * Math.sin(angle / 2);
      shares.push(here.middle.x + aside * given.left.x, here.middle.y + aside * given.left.y);
      if (i > 0 && k > 0) {
        const b = i * (RING + 1) + k;
        const a = b - RING - 1;
        index.push(a - 1, a, b, a - 1, b, b - 1);
      }
    }
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(places), 3));
  geometry.setAttribute("uv", new BufferAttribute(new Float32Array(shares), 2));
  geometry.setIndex(index);
  geometry.computeVertexNormals();
  seamless(geometry);
  return geometry;
}

// First and last of a ring lie in one place and face one way.
function seamless(geometry) {
  const normals = geometry.getAttribute("normal");
  for (let k = 0; k < normals.count; k += RING + 1) {
    const sum = new Vector3().fromBufferAttribute(normals, k)
      .add(new Vector3().fromBufferAttribute(normals, k + RING)).normalize();
    normals.setXYZ(k, sum.x, sum.y, sum.z);
    normals.setXYZ(k + RING, sum.x, sum.y, sum.z);
  }
}

// The line with its corners cut.
function rounder(line) {
  const between = (a, b, t) => ({
    at: a.at.clone().lerp(b.at, t),
    middle: { x: a.middle.x + (b.middle.x - a.middle.x) * t, y: a.middle.y + (b.middle.y - a.middle.y) * t },
  });
  const finer = [line[0]];
  for (let i = 1; i < line.length; i++) finer.push(between(line[i - 1], line[i], 0.25), between(line[i - 1], line[i], 0.75));
  return [...finer, line[line.length - 1]];
}

// What keeps the light from the table: close under the cloth sharp, farther off ever softer.
function shadow(geometry) {
  const places = geometry.getAttribute("position");
  const index = geometry.getIndex();
  geometry.computeBoundingBox();
  const box = geometry.boundingBox;
  const floor = box.min.z;
  const tall = box.max.z - floor;
  const reach = 1.25 * Math.max(box.max.x, -box.min.x, box.max.y, -box.min.y) + 0.5 * tall;
  const sum = document.createElement("canvas");
  sum.width = sum.height = SHADOW;
  const pen = sum.getContext("2d");
  const casts = [0, 0.14, 0.28, 0.42];
  casts.forEach((share, n) => {
    const one = document.createElement("canvas");
    one.width = one.height = SHADOW;
    const fine = one.getContext("2d");
    fine.fillStyle = "#000";
    for (let i = 0; i < index.count; i += 3) {
      fine.beginPath();
      for (let c = 0; c < 3; c++) {
        const k = index.getX(i + c);
        const fall = (places.getZ(k) - floor) / LIGHT.z * share;
        const x = (places.getX(k) - LIGHT.x * fall + reach) / (2 * reach) * SHADOW;
        const y = (reach - places.getY(k) + LIGHT.y * fall) / (2 * reach) * SHADOW;
        if (c === 0) fine.moveTo(x, y); else fine.lineTo(x, y);
      }
      fine.fill();
    }
    smear(pen, one, 1 + n * 1.6, 1 / casts.length);
  });
  const texture = new CanvasTexture(sum);
  texture.colorSpace = SRGBColorSpace;
  const ground = new Mesh(
    new PlaneGeometry(2 * reach, 2 * reach),
    new MeshBasicMaterial({ map: texture, transparent: true, depthWrite: false, opacity: DARK }));
  ground.position.z = floor - 1;
  ground.renderOrder = -1;
  return ground;
}

// Draws a picture many times, each a little aside: soft in every browser.
function smear(pen, picture, wide, share) {
  const turns = 24;
  for (let i = 0; i < turns; i++) {
    const far = wide * Math.sqrt((i + 0.5) / turns);
    const angle = i * 2.39996;
    pen.globalAlpha = share * 2 / turns;
    pen.drawImage(picture, far * Math.cos(angle), far * Math.sin(angle));
  }
}

/** The things to put into a scene for a tied cloth as the workroom sends it. */
export async function tied(data) {
  const [outer, inner] = await Promise.all([face(data.outer), face(data.inner)]);
  const body = cloth(data);
  const skin = (map, side) => new MeshLambertMaterial({ map, side });
  const sun = new DirectionalLight(0xffffff, 1.75);
  sun.position.copy(LIGHT);
  const sky = new HemisphereLight(0xffffff, 0x8f877a, 1.5);
  sky.position.set(0, 0, 1);
  return [
    shadow(body),
    new Mesh(body, skin(inner, FrontSide)),
    new Mesh(body, skin(outer, BackSide)),
    ...data.strands.map(given => new Mesh(strand(given), skin(outer, DoubleSide))),
    sun,
    sky,
    new AmbientLight(0xffffff, 0.35),
  ];
}
