/** The part of the outside reader that the tests use; the package brings no types. Lengths are millimetres. */
declare module "gcode-toolpath" {
  export interface Point {
    readonly x: number;
    readonly y: number;
    readonly z: number;
  }
  /** Modes in force, each as its code: `motion: "G2"`, `plane: "G17"`. */
  export interface Modal {
    readonly motion: string;
    readonly plane: string;
    readonly units: string;
    readonly distance: string;
  }
  export interface Options {
    readonly addLine: (modal: Modal, from: Point, to: Point) => void;
    /** Places in the order of the plane: x is its first axis, y its second, z its normal. */
    readonly addArcCurve: (modal: Modal, from: Point, to: Point, centre: Point) => void;
  }
  export default class Toolpath {
    constructor(options: Options);
    loadFromStringSync(text: string): unknown;
    setPosition(place: Point): void;
    getPosition(): Point;
    getModal(): Modal;
    setModal(modal: Partial<Modal>): unknown;
  }
}
