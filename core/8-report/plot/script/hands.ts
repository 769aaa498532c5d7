/** Pointers, touch, wheel and keys on the picture. */
import type { Camera, ViewName } from "./camera.ts";
import { pan, turnBy } from "./camera.ts";

/** What hands may ask for. */
export interface Handled {
  readonly camera: Camera;
  /** The picture moves: it is to be drawn anew. */
  readonly moved: () => void;
  readonly clicked: (x: number, y: number) => void;
  readonly view: (name: ViewName) => void;
}

const keySteps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const keyViews: Readonly<Record<string, ViewName>> = {
  "1": "top",
  "2": "front",
  "3": "right",
  "4": "oblique",
};

/** Pixels of a key, and how far a pointer may stray in a click. */
const keyPixels = 16;
const clickPixels = 4;

export function takeHands(surface: HTMLElement, handled: Handled): void {
  takeKeys(surface, handled);
  takePointers(surface, handled);
  surface.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      zoomAt(surface, handled.camera, Math.exp(-event.deltaY * 0.0015), event.clientX, event.clientY);
      handled.moved();
    },
    { passive: false },
  );
}

/** Zooms so that what is under a place of the window stays there. */
function zoomAt(surface: HTMLElement, camera: Camera, factor: number, x: number, y: number): void {
  const { left, top, width, height } = surface.getBoundingClientRect();
  const [dx, dy] = [x - left - width / 2, y - top - height / 2];
  pan(camera, -dx, -dy);
  camera.scale *= factor;
  pan(camera, dx, dy);
}

function takeKeys(surface: HTMLElement, { camera, moved, view }: Handled): void {
  surface.addEventListener("keydown", (event) => {
    const step = keySteps[event.key];
    if (step !== undefined && event.shiftKey) pan(camera, -step[0] * keyPixels, -step[1] * keyPixels);
    else if (step !== undefined) turnBy(camera, step[0] * keyPixels, step[1] * keyPixels);
    else if (event.key === "+" || event.key === "=") camera.scale *= 1.2;
    else if (event.key === "-") camera.scale /= 1.2;
    else if (keyViews[event.key] !== undefined) return view(keyViews[event.key]);
    else return;
    event.preventDefault();
    moved();
  });
}

function takePointers(surface: HTMLElement, handled: Handled): void {
  const { camera, moved } = handled;
  const down = new Map<number, { x: number; y: number }>();
  let strayed = 0;
  surface.addEventListener("pointerdown", (event) => {
    surface.setPointerCapture(event.pointerId);
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    strayed = 0;
  });
  surface.addEventListener("pointermove", (event) => {
    const last = down.get(event.pointerId);
    if (last === undefined) return;
    const [dx, dy] = [event.clientX - last.x, event.clientY - last.y];
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    if (other !== undefined) {
      const before = Math.hypot(last.x - other.x, last.y - other.y);
      const now = Math.hypot(event.clientX - other.x, event.clientY - other.y);
      pan(camera, dx / 2, dy / 2);
      if (before > 0)
        zoomAt(surface, camera, now / before, (event.clientX + other.x) / 2, (event.clientY + other.y) / 2);
    } else if (event.shiftKey || (event.buttons & 6) !== 0) pan(camera, dx, dy);
    else turnBy(camera, dx, dy);
    strayed += Math.abs(dx) + Math.abs(dy);
    [last.x, last.y] = [event.clientX, event.clientY];
    moved();
  });
  const lift = (event: PointerEvent): void => {
    if (!down.delete(event.pointerId)) return;
    const { left, top } = surface.getBoundingClientRect();
    if (event.type === "pointerup" && strayed < clickPixels)
      handled.clicked(event.clientX - left, event.clientY - top);
  };
  surface.addEventListener("pointerup", lift);
  surface.addEventListener("pointercancel", lift);
  surface.addEventListener("contextmenu", (event) => event.preventDefault());
}
