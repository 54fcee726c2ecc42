// A tied cloth for three.js, as flat pieces or brought to rest: one mesh with the pictures of both faces, the knots'
// strands as gathered tubes, light as in the still pictures, and a soft shadow on the table. Neither cloth nor light moves
// when it is turned, so how light each point is, is reckoned once and not for every frame.
import {
  BackSide, BufferAttribute, BufferGeometry, CanvasTexture, FrontSide, GLSL3, LinearMipmapNearestFilter, Mesh,
  RawShaderMaterial, Vector3,
} from "./three/three.module.min.js";
import { LIGHT, shadow } from "./shadow.js";

// How much of all light comes from the near left above, from the sky and from all round; and what the table throws back
// of the sky's in red, green and blue.
const SUN = 0.557;
const SKY = 0.477;
const ROUND_ABOUT = 0.111;
const TABLE = [0.275, 0.242, 0.195];
// Numbers of a screen's colours are about this root of their light.
const GAMMA = 2.2;
const TEXTURE = 1024;
const RING = 15;
const FOLDS = 5;
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
  texture.flipY = false;
  texture.minFilter = LinearMipmapNearestFilter;
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

// All strands in one, which is quicker to draw than each by itself.
function knots(all) {
  const places = [];
  const shares = [];
  const index = [];
  all.forEach(given => strand(given, places, shares, index));
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(places), 3));
  geometry.setAttribute("uv", new BufferAttribute(new Float32Array(shares), 2));
  geometry.setIndex(index);
  geometry.computeVertexNormals();
  seamless(geometry);
  return geometry;
}

// A strand as a tube with small folds along it; what lies on the end's middle line is wound round it.
function strand(given, places, shares, index) {
  const first = places.length / 3;
  let line = given.line.map((spot, i) => ({ at: new Vector3(spot.x, spot.y, spot.z), middle: given.middles[i] }));
  line = rounder(line);
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
        const b = first + i * (RING + 1) + k;
        const a = b - RING - 1;
        index.push(a - 1, a, b, a - 1, b, b - 1);
      }
    }
  });
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

// How light each point is where cloth is looked at from this side, as numbers of a screen's colours.
function lit(geometry, side) {
  const normals = geometry.getAttribute("normal");
  const light = new Float32Array(3 * normals.count);
  for (let k = 0; k < normals.count; k++) {
    const x = side * normals.getX(k);
    const y = side * normals.getY(k);
    const z = side * normals.getZ(k);
    const sun = SUN * Math.max(0, x * LIGHT.x + y * LIGHT.y + z * LIGHT.z) + ROUND_ABOUT;
    TABLE.forEach((back, c) => {
      light[3 * k + c] = (sun + SKY * (back + (1 - back) * (z + 1) / 2)) ** (1 / GAMMA);
    });
  }
  return new BufferAttribute(light, 3);
}

const PLACED = `
  in vec3 position; in vec2 uv; in vec3 light;
  uniform mat4 projectionMatrix; uniform mat4 modelViewMatrix;
  out vec2 at; out vec3 lit;
  void main() { at = uv; lit = light; gl_Position = projectionMatrix * (modelViewMatrix * vec4(position, 1.0)); }`;
const CLOTHED = `
  precision mediump float;
  uniform sampler2D map; in vec2 at; in vec3 lit; out vec4 colour;
  void main() { colour = vec4(texture(map, at).rgb * lit, 1.0); }`;

// One side of a surface with the picture of a face.
function skin(body, map, side) {
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", body.getAttribute("position"));
  geometry.setAttribute("uv", body.getAttribute("uv"));
  geometry.setAttribute("light", lit(body, side === BackSide ? -1 : 1));
  geometry.setIndex(body.getIndex());
  return new Mesh(geometry, new RawShaderMaterial({
    glslVersion: GLSL3, vertexShader: PLACED, fragmentShader: CLOTHED, uniforms: { map: { value: map } }, side,
  }));
}

/** The things to put into a scene for a tied cloth as the workroom sends it. */
export async function tied(data) {
  const [outer, inner] = await Promise.all([face(data.outer), face(data.inner)]);
  const body = cloth(data);
  return [
    shadow(body),
    skin(body, inner, FrontSide),
    skin(body, outer, BackSide),
    ...(data.strands.length ? [skin(knots(data.strands), outer, FrontSide)] : []),
  ];
}
