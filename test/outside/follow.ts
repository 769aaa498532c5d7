import Toolpath from "gcode-toolpath";
import type { Modal, Point } from "gcode-toolpath";

/** A motion as the outside reader has it; places in the machine's axes, millimetres. */
export interface OutsideMotion {
  readonly motion: string;
  readonly plane: string;
  readonly from: Point;
  readonly to: Point;
  /** Arcs alone. */
  readonly centre: Point | undefined;
}

/** The outside reader, fed block by block. */
export interface Follower {
  /** Motions of one block. */
  follow(block: string): OutsideMotion[];
  /** Puts it where the tool is, after a block that it does not know. */
  place(point: Point): void;
  where(): Point;
}

/** Where the plane's first, second and normal axis stand in x, y, z. */
const turned: Readonly<Record<string, (point: Point) => Point>> = {
  G17: (point) => point,
  G18: ({ x: z, y: x, z: y }) => ({ x, y, z }),
  G19: ({ x: y, y: z, z: x }) => ({ x, y, z }),
};

/** Starts the outside reader at zero, with the modes that it takes for granted: millimetres, absolute, XY plane. */
export function createFollower(): Follower {
  const motions: OutsideMotion[] = [];
  const add = (modal: Modal, from: Point, to: Point, centre?: Point): void => {
    const back = centre === undefined ? turned["G17"] : turned[modal.plane];
    const { motion, plane } = modal;
    motions.push({ motion, plane, from: back(from), to: back(to), centre: centre && back(centre) });
  };
  const reader = new Toolpath({ addLine: add, addArcCurve: add });
  return {
    follow(block) {
      motions.length = 0;
      reader.loadFromStringSync(block);
      return [...motions];
    },
    place: (point) => reader.setPosition(point),
    where: () => reader.getPosition(),
  };
}
