// The tied gift as something to turn, drawn with three.js. Draws only when something has changed; nothing moves by
// itself.
import { Box3, PerspectiveCamera, Scene, Vector3, WebGLRenderer } from "./three/three.module.min.js";

const STEP = Math.PI / 12;
const HIGHEST = Math.PI / 2 - 0.01;

// As the still pictures look (draw.tied.Eye).
const LOOKS = {
  above: [0, HIGHEST], front: [0, 0.2], corner: [0.555, 0.585], spine: [Math.PI, 0.2], behind: [Math.PI + 0.555, 0.585],
};

// While it turns it is drawn at the screen's own points, or coarser where the machine cannot keep up; at rest twice as
// fine, for smooth edges.
const REST_AFTER = 160;
const FINE = 2;
const COARSEST = 0.5;
const COARSER = 0.84;
// Frames that take longer than this many milliseconds are too slow; so many in a row are judged together.
const SLOW = 20;
const JUDGED = 4;

/** Shows a model in a canvas, turned by finger, mouse, arrow keys or {@code turn}. Throws where WebGL is missing. */
export class Turning {
  constructor(canvas) {
    this.canvas = canvas;
    this.renderer = new WebGLRenderer({ canvas, antialias: false, alpha: true, stencil: false });
    this.renderer.setClearColor(0, 0);
    this.scene = new Scene();
    this.camera = new PerspectiveCamera(24, 1, 10, 100000);
    this.camera.up.set(0, 0, 1);
    this.middle = new Vector3();
    this.reach = 1;
    this.quick = 1;
    this.frames = [];
    this.first = canvas.dataset.first || "corner";
    this.look(this.first);
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
      old.material?.uniforms?.map?.value.dispose();
      old.material?.dispose();
    }
  }

  // Shows other things. What is the same gift in another shape is looked at from where it was; of another, all is seen.
  show(things, same = false) {
    this.clear();
    this.scene.add(...things);
    if (!same) {
      const room = new Box3();
      things.slice(1).filter(thing => thing.isMesh).forEach(thing => room.expandByObject(thing));
      room.getCenter(this.middle);
      this.reach = room.getSize(new Vector3()).length() / 2;
    }
    this.redraw();
  }

  look(from) {
    [this.round, this.tip] = LOOKS[from] || LOOKS.corner;
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
    requestAnimationFrame(now => {
      this.waiting = false;
      this.draw(this.quick);
      requestAnimationFrame(next => this.judge(next - now));
      this.resting = setTimeout(() => this.rest(), REST_AFTER);
    });
  }

  // It is drawn coarser where frames take long; after each rest a little finer is tried again.
  judge(took) {
    this.frames.push(took);
    if (this.frames.length < JUDGED) return;
    const usual = this.frames.sort((a, b) => a - b)[JUDGED / 2];
    this.frames = [];
    if (usual > SLOW) this.quick = Math.max(COARSEST, this.quick * COARSER);
  }

  rest() {
    this.draw(FINE);
    this.quick = Math.min(1, this.quick / COARSER);
    this.frames = [];
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
        Home: () => this.look(this.first),
      }[event.key];
      if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
      event.preventDefault();
      act();
    });
  }
}
