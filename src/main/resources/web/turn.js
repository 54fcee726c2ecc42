// The tied gift as something to turn: the flat pieces of the workroom's own fold, drawn with three.js. Draws only when
// something has changed; nothing moves by itself.
import {
  Box3, BufferGeometry, Color, DoubleSide, Float32BufferAttribute, LineBasicMaterial, LineSegments, Mesh,
  MeshBasicMaterial, PerspectiveCamera, Scene, SRGBColorSpace, Vector3, WebGLRenderer,
} from "./three/three.module.min.js";

// Light and shade as in the still pictures (draw.tied.View): from the near left above.
const LIGHT = new Vector3(-0.5, -0.6, 0.9).normalize();
const DARKEST = 0.7;
const LIT = 0.4;

// Millimetres by which cloth lies off what is under it, so that the nearer one is seen.
const FELL = 0.2;
const STITCH = 0.35;
const LAYER = 0.5;

const STITCH_LONG = 3;
const STITCH_GAP = 2.2;
const STEP = Math.PI / 12;
const HIGHEST = Math.PI / 2 - 0.01;
const ROUND = 10;

// While it turns it is drawn at the screen's own points, as fast as can be; at rest twice as fine, for smooth edges.
const REST_AFTER = 160;
const FINE = 2;

const vector = spot => new Vector3(spot.x, spot.y, spot.z);
const shade = out => DARKEST + LIT * Math.max(0, out.dot(LIGHT));

class Surface {
  places = [];
  colours = [];

  triangle(a, b, c, colour) {
    for (const corner of [a, b, c]) {
      this.places.push(corner.x, corner.y, corner.z);
      this.colours.push(colour.r, colour.g, colour.b);
    }
  }

  mesh() {
    const geometry = new BufferGeometry();
    geometry.setAttribute("position", new Float32BufferAttribute(this.places, 3));
    geometry.setAttribute("color", new Float32BufferAttribute(this.colours, 3));
    return new Mesh(geometry, new MeshBasicMaterial({ vertexColors: true, side: DoubleSide }));
  }
}

const lit = (hex, light) => {
  const colour = new Color(hex).convertLinearToSRGB();
  return colour.multiplyScalar(Math.min(1, light)).convertSRGBToLinear();
};

// How far off its plane each polygon lies: closed cloth not at all, loose layers one over the other.
function lifts(polygons) {
  const layers = new Map();
  return polygons.map(polygon => {
    if (!polygon.loose) return polygon.fell ? FELL : 0;
    const key = [polygon.out.x, polygon.out.y, polygon.out.z].map(n => n.toFixed(3)).join(" ");
    const layer = (layers.get(key) || 0) + 1;
    layers.set(key, layer);
    return Math.min(layer * LAYER / 4, 4 * LAYER);
  });
}

function cloth(model, lift) {
  const surface = new Surface();
  model.polygons.forEach((polygon, i) => {
    const out = vector(polygon.out);
    const colour = lit(polygon.colour, shade(out));
    const corners = polygon.corners.map(spot => vector(spot).addScaledVector(out, lift[i]));
    for (let k = 2; k < corners.length; k++) surface.triangle(corners[0], corners[k - 1], corners[k], colour);
  });
  return surface.mesh();
}

// Rows of stitches as short straight lines with gaps between.
function stitches(model, lift) {
  const places = [];
  for (const row of model.rows) {
    const out = vector(model.polygons[row.on].out);
    const from = vector(row.from).addScaledVector(out, lift[row.on] + STITCH);
    const way = vector(row.to).sub(vector(row.from));
    const length = way.length();
    way.normalize();
    for (let gone = 0; gone < length; gone += STITCH_LONG + STITCH_GAP) {
      const a = from.clone().addScaledVector(way, gone);
      const b = from.clone().addScaledVector(way, Math.min(length, gone + STITCH_LONG));
      places.push(a.x, a.y, a.z, b.x, b.y, b.z);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new Float32BufferAttribute(places, 3));
  return new LineSegments(geometry, new LineBasicMaterial({ color: model.thread }));
}

// A strand of a knot: a round band along its line.
function strand(given, surface) {
  const line = given.line.map(vector);
  const rings = line.map((place, i) => {
    const way = line[Math.min(i + 1, line.length - 1)].clone().sub(line[Math.max(i - 1, 0)]).normalize();
    const side = Math.abs(way.z) < 0.9 ? new Vector3(0, 0, 1) : new Vector3(1, 0, 0);
    const one = side.cross(way).normalize();
    const two = way.clone().cross(one);
    return [...Array(ROUND).keys()].map(k => {
      const angle = 2 * Math.PI * k / ROUND;
      const out = one.clone().multiplyScalar(Math.cos(angle)).addScaledVector(two, Math.sin(angle));
      return { out, place: place.clone().addScaledVector(out, given.half) };
    });
  });
  for (let i = 1; i < rings.length; i++) {
    for (let k = 0; k < ROUND; k++) {
      const next = (k + 1) % ROUND;
      const [a, b, c, d] = [rings[i - 1][k], rings[i - 1][next], rings[i][next], rings[i][k]];
      const colour = lit(given.colours[i - 1], shade(a.out.clone().add(b.out).normalize()));
      surface.triangle(a.place, b.place, c.place, colour);
      surface.triangle(a.place, c.place, d.place, colour);
    }
  }
}

function knots(model) {
  const surface = new Surface();
  model.strands.forEach(given => strand(given, surface));
  return surface.mesh();
}

/** Shows a model in a canvas, turned by finger, mouse, arrow keys or {@code turn}. Throws where WebGL is missing. */
export class Turning {
  constructor(canvas) {
    this.canvas = canvas;
    this.renderer = new WebGLRenderer({ canvas, antialias: false, alpha: true, stencil: false });
    this.renderer.outputColorSpace = SRGBColorSpace;
    this.renderer.setClearColor(0, 0);
    this.scene = new Scene();
    this.camera = new PerspectiveCamera(24, 1, 10, 100000);
    this.camera.up.set(0, 0, 1);
    this.middle = new Vector3();
    this.reach = 1;
    this.look("corner");
    this.listen();
    this.sized = new ResizeObserver(() => this.redraw());
    this.sized.observe(canvas);
  }

  // Its canvas is gone from the page.
  away() {
    clearTimeout(this.resting);
    this.sized.disconnect();
    this.clear();
    this.renderer.dispose();
    this.renderer.forceContextLoss();
    this.gone = true;
  }

  clear() {
    for (const old of [...this.scene.children]) {
      this.scene.remove(old);
      old.geometry?.dispose();
      old.material?.map?.dispose();
      old.material?.dispose();
    }
  }

  // The cloth brought to rest in place of its flat pieces; the view stays.
  drape(things) {
    this.clear();
    this.scene.add(...things);
    this.redraw();
  }

  show(model) {
    this.clear();
    const lift = lifts(model.polygons);
    this.scene.add(cloth(model, lift), stitches(model, lift), knots(model));
    const room = new Box3().setFromPoints(model.polygons.flatMap(polygon => polygon.corners));
    room.getCenter(this.middle);
    this.reach = room.getSize(new Vector3()).length() / 2;
    this.redraw();
  }

  look(from) {
    [this.round, this.tip] = { front: [0, 0.2], above: [0, HIGHEST], corner: [0.55, 0.58], back: [Math.PI, 0.2] }[from];
    this.near = 1;
    this.redraw();
  }

  turn(round, tip) {
    this.round += round;
    this.tip = Math.max(-HIGHEST, Math.min(HIGHEST, this.tip + tip));
    this.redraw();
  }

  closer(times) {
    this.near = Math.max(0.5, Math.min(4, this.near * times));
    this.redraw();
  }

  // The fine picture follows the quick one, also where that comes late.
  redraw() {
    clearTimeout(this.resting);
    if (this.gone) return;
    this.canvas.removeAttribute("data-rest");
    if (this.waiting) return;
    this.waiting = true;
    requestAnimationFrame(() => {
      this.waiting = false;
      this.draw(1);
      this.resting = setTimeout(() => this.draw(FINE), REST_AFTER);
    });
  }

  draw(fine) {
    if (this.gone) return;
    const { clientWidth: width, clientHeight: height } = this.canvas;
    if (!width || !height) return;
    const ratio = Math.min(FINE, fine * (window.devicePixelRatio || 1));
    if (this.canvas.width !== Math.round(width * ratio) || this.canvas.height !== Math.round(height * ratio)) {
      this.renderer.setPixelRatio(ratio);
      this.renderer.setSize(width, height, false);
    }
    const half = Math.tan(this.camera.fov * Math.PI / 360) * Math.min(1, width / height);
    const away = this.reach / half / this.near * 1.02;
    this.camera.aspect = width / height;
    this.camera.position.set(
      this.middle.x + away * Math.sin(this.round) * Math.cos(this.tip),
      this.middle.y - away * Math.cos(this.round) * Math.cos(this.tip),
      this.middle.z + away * Math.sin(this.tip));
    this.camera.near = Math.max(1, away - 2 * this.reach);
    this.camera.far = away + 2 * this.reach;
    this.camera.lookAt(this.middle);
    this.camera.updateProjectionMatrix();
    this.renderer.render(this.scene, this.camera);
    this.canvas.toggleAttribute("data-rest", fine === FINE);
  }

  listen() {
    const fingers = new Map();
    let spread = 0;
    const apart = () => {
      const [one, two] = [...fingers.values()];
      return two ? Math.hypot(one.x - two.x, one.y - two.y) : 0;
    };
    this.canvas.addEventListener("pointerdown", event => {
      fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      this.canvas.setPointerCapture(event.pointerId);
      spread = apart();
    });
    this.canvas.addEventListener("pointermove", event => {
      const from = fingers.get(event.pointerId);
      if (!from) return;
      fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
      if (fingers.size === 1) {
        this.turn((from.x - event.clientX) / 150, (event.clientY - from.y) / 150);
      } else if (spread) {
        this.closer(apart() / spread);
        spread = apart();
      }
    });
    for (const end of ["pointerup", "pointercancel", "lostpointercapture"]) {
      this.canvas.addEventListener(end, event => fingers.delete(event.pointerId));
    }
    this.canvas.addEventListener("keydown", event => {
      const act = {
        ArrowLeft: () => this.turn(STEP, 0), ArrowRight: () => this.turn(-STEP, 0),
        ArrowUp: () => this.turn(0, STEP), ArrowDown: () => this.turn(0, -STEP),
        "+": () => this.closer(1.2), "=": () => this.closer(1.2), "-": () => this.closer(1 / 1.2),
        Home: () => this.look("corner"),
      }[event.key];
      if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      act();
    });
  }
}
