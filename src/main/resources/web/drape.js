// The cloth brought to rest, for three.js: one mesh with the pictures of both faces, the knots' strands as gathered
// tubes, and a soft shadow on the table.
import {
  BackSide, BufferAttribute, BufferGeometry, CanvasTexture, DirectionalLight, FrontSide, HemisphereLight, Mesh,
  MeshBasicMaterial, MeshLambertMaterial, PlaneGeometry, SRGBColorSpace, Vector3,
} from "./three/three.module.min.js";

// Light as in the flat pictures: from the near left above.
const LIGHT = new Vector3(-0.5, -0.6, 0.9).normalize();
const TEXTURE = 1024;
const SHADOW = 160;
const RING = 14;
const FOLDS = 5;
const FOLD_DEEP = 0.12;
const ROUND = 26;
const FULL = 65535;

const bytes = text => Uint8Array.from(atob(text), c => c.charCodeAt(0)).buffer;

// A face's drawing as a picture to lay on the mesh.
async function face(svg) {
  const from = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = from;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = canvas.height = TEXTURE;
    canvas.getContext("2d").drawImage(image, 0, 0, TEXTURE, TEXTURE);
    const texture = new CanvasTexture(canvas);
    texture.colorSpace = SRGBColorSpace;
    texture.flipY = false;
    texture.anisotropy = 4;
    return texture;
  } finally {
    URL.revokeObjectURL(from);
  }
}

function cloth(data) {
  const numbers = new Int16Array(bytes(data.places));
  const places = Float32Array.from(numbers, number => number * data.step);
  const shares = Float32Array.from(new Uint16Array(bytes(data.cloth)), number => number / FULL);
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(places, 3));
  geometry.setAttribute("uv", new BufferAttribute(shares, 2));
  geometry.setIndex(new BufferAttribute(new Uint16Array(bytes(data.triangles)), 1));
  geometry.computeVertexNormals();
  return geometry;
}

// A strand as a tube with small folds along it; what lies on the end's middle line is wound round it.
function strand(given) {
  let line = given.line.map((spot, i) => ({ at: new Vector3(spot.x, spot.y, spot.z), middle: given.middles[i] }));
  line = rounder(rounder(line));
  const places = [];
  const shares = [];
  const index = [];
  let side = new Vector3(0.3, 0.5, 0.8);
  line.forEach((here, i) => {
    const way = line[Math.min(i + 1, line.length - 1)].at.clone().sub(line[Math.max(i - 1, 0)].at).normalize();
    side = side.clone().addScaledVector(way, -side.dot(way)).normalize();
    const other = way.clone().cross(side);
    for (let k = 0; k <= RING; k++) {
      const angle = 2 * Math.PI * k / RING;
      const half = given.half * (1 + FOLD_DEEP * Math.sin(FOLDS * angle + i / 4));
      const spot = here.at.clone().addScaledVector(side, half * Math.cos(angle)).addScaledVector(other, half * Math.sin(angle));
      places.push(spot.x, spot.y, spot.z);
      const aside = ROUND * Math.sin(angle);
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
  return geometry;
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

// What keeps the light from the table, blurred.
function shadow(geometry) {
  const places = geometry.getAttribute("position");
  const index = geometry.getIndex();
  geometry.computeBoundingBox();
  const box = geometry.boundingBox;
  const reach = 1.35 * Math.max(box.max.x, -box.min.x, box.max.y, -box.min.y);
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = SHADOW;
  const pen = canvas.getContext("2d");
  pen.filter = "blur(5px)";
  pen.fillStyle = "rgba(40, 38, 34, 0.42)";
  pen.beginPath();
  for (let i = 0; i < index.count; i += 3) {
    for (let c = 0; c < 3; c++) {
      const k = index.getX(i + c);
      const fall = places.getZ(k) / LIGHT.z * 0.45;
      const x = (places.getX(k) - LIGHT.x * fall + reach) / (2 * reach) * SHADOW;
      const y = (reach - places.getY(k) + LIGHT.y * fall) / (2 * reach) * SHADOW;
      if (c === 0) pen.moveTo(x, y); else pen.lineTo(x, y);
    }
    pen.closePath();
  }
  pen.fill("nonzero");
  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  const ground = new Mesh(
    new PlaneGeometry(2 * reach, 2 * reach),
    new MeshBasicMaterial({ map: texture, transparent: true, depthWrite: false }));
  ground.position.z = box.min.z - 1;
  return ground;
}

/** The things to put into a scene for a draped cloth as the workroom sends it. */
export async function draped(data) {
  const [outer, inner] = await Promise.all([face(data.outer), face(data.inner)]);
  const body = cloth(data);
  const skin = (map, side) => new MeshLambertMaterial({ map, side });
  const sun = new DirectionalLight(0xffffff, 1.9);
  sun.position.copy(LIGHT);
  return [
    shadow(body),
    new Mesh(body, skin(inner, FrontSide)),
    new Mesh(body, skin(outer, BackSide)),
    ...data.strands.map(given => new Mesh(strand(given), skin(outer, 2))),
    sun,
    new HemisphereLight(0xffffff, 0xb9b2a6, 1.75),
  ];
}
