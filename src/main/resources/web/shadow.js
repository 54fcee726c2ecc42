// The soft shadow of a tied cloth on the table, drawn once: neither it nor the light moves when the gift is turned.
import { BufferAttribute, BufferGeometry, CanvasTexture, GLSL3, Mesh, RawShaderMaterial, Vector3 } from "./three/three.module.min.js";

/** The way to the light, from the near left above. */
export const LIGHT = new Vector3(-0.5, -0.6, 0.9).normalize();
const SHADOW = 128;
const DARK = 0.34;
const TILES = 32;

const PLACED = `
  in vec3 position; in vec2 uv;
  uniform mat4 projectionMatrix; uniform mat4 modelViewMatrix;
  out vec2 at;
  void main() { at = uv; gl_Position = projectionMatrix * (modelViewMatrix * vec4(position, 1.0)); }`;
const DARKENED = `
  precision mediump float;
  uniform sampler2D map; in vec2 at; out vec4 colour;
  void main() { colour = vec4(0.0, 0.0, 0.0, texture(map, at).a * ${DARK}); }`;

/** What keeps the light from the table: close under the cloth sharp, farther off ever softer. */
export function shadow(geometry) {
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
  const ground = new Mesh(tiles(pen, reach, floor - 1), new RawShaderMaterial({
    glslVersion: GLSL3, vertexShader: PLACED, fragmentShader: DARKENED, uniforms: { map: { value: new CanvasTexture(sum) } },
    transparent: true, depthWrite: false,
  }));
  ground.renderOrder = -1;
  return ground;
}

// The parts of the table that a shadow falls on; where there is none, nothing need be drawn.
function tiles(pen, reach, height) {
  const wide = SHADOW / TILES;
  const dark = pen.getImageData(0, 0, SHADOW, SHADOW).data;
  const falls = (left, top) => {
    for (let y = Math.max(0, top - 1); y < Math.min(SHADOW, top + wide + 1); y++) {
      for (let x = Math.max(0, left - 1); x < Math.min(SHADOW, left + wide + 1); x++) {
        if (dark[4 * (y * SHADOW + x) + 3]) return true;
      }
    }
    return false;
  };
  const places = [];
  const shares = [];
  const corner = (x, y) => {
    places.push((2 * x / SHADOW - 1) * reach, (1 - 2 * y / SHADOW) * reach, height);
    shares.push(x / SHADOW, 1 - y / SHADOW);
  };
  for (let top = 0; top < SHADOW; top += wide) {
    for (let left = 0; left < SHADOW; left += wide) {
      if (!falls(left, top)) continue;
      [[0, wide], [wide, wide], [wide, 0], [0, wide], [wide, 0], [0, 0]].forEach(([x, y]) => corner(left + x, top + y));
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(places), 3));
  geometry.setAttribute("uv", new BufferAttribute(new Float32Array(shares), 2));
  return geometry;
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
