/** How the picture is looked at: without perspective, so that what is parallel stays so and lengths can be compared. */
import type { Extent } from "../plot.ts";

export interface Camera {
  /** Turn about Z and tilt, radians; 0 and 0 look from the front along Y, a tilt of a quarter turn from above. */
  turn: number;
  tilt: number;
  /** What is in the middle, micrometres from the centre of the data. */
  readonly target: [number, number, number];
  /** Pixels of the page in a micrometre. */
  scale: number;
}

/** Standard views. */
export const standardViews = {
  top: [0, Math.PI / 2],
  front: [0, 0],
  right: [Math.PI / 2, 0],
  oblique: [-Math.PI / 6, Math.PI / 5],
} as const;

export type ViewName = keyof typeof standardViews;

/** Directions on the screen in space: to the right, up, and towards who looks. */
export function directions({ turn, tilt }: Camera) {
  const [ct, st, cl, sl] = [Math.cos(turn), Math.sin(turn), Math.cos(tilt), Math.sin(tilt)];
  return {
    right: [ct, st, 0],
    up: [-st * sl, ct * sl, cl],
    near: [st * cl, -ct * cl, sl],
  } as const;
}

/** Puts a place, from the centre of the data, onto the screen: pixels from its middle, y down. */
export function createProjection(
  camera: Camera,
): (x: number, y: number, z: number) => readonly [number, number] {
  const { right, up } = directions(camera);
  const { target, scale } = camera;
  return (x, y, z) => {
    const [dx, dy, dz] = [x - target[0], y - target[1], z - target[2]];
    return [
      scale * (dx * right[0] + dy * right[1] + dz * right[2]),
      -scale * (dx * up[0] + dy * up[1] + dz * up[2]),
    ];
  };
}

/** Moves what is looked at by pixels. */
export function pan(camera: Camera, dx: number, dy: number): void {
  const { right, up } = directions(camera);
  for (let axis = 0; axis < 3; axis++)
    camera.target[axis] -= (right[axis] * dx - up[axis] * dy) / camera.scale;
}

/** Turns by pixels; a picture that stands on its head helps nobody, so the tilt ends straight above and below. */
export function turnBy(camera: Camera, dx: number, dy: number): void {
  camera.turn -= dx * 0.008;
  camera.tilt = Math.min(Math.PI / 2, Math.max(-Math.PI / 2, camera.tilt + dy * 0.008));
}

/** Puts a box into the picture as large as it fits. */
export function fit(
  camera: Camera,
  box: Extent,
  centre: readonly number[],
  size: { readonly width: number; readonly height: number },
): void {
  for (let axis = 0; axis < 3; axis++)
    camera.target[axis] = (box.min[axis] + box.max[axis]) / 2 - centre[axis];
  const { right, up } = directions(camera);
  const span = (direction: readonly number[]): number =>
    direction.reduce((sum, part, axis) => sum + Math.abs(part) * (box.max[axis] - box.min[axis]), 0);
  const wanted = Math.min(size.width / Math.max(span(right), 1), size.height / Math.max(span(up), 1));
  camera.scale = wanted * 0.88;
}
