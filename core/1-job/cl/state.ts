import type { CoolantMedium, Report, SpindleDirection, UnitSystem } from "#base";
import type { HoleKind } from "../job.ts";
import type { Scale } from "../scan/number.ts";
import type { ClOptions } from "./options.ts";

/** What a feed counts. */
export type FeedPer = "minute" | "revolution" | "inverse";

/** A feed as the source states it: atoms a minute, atoms a revolution, or 1e-6 a minute. */
export interface Feed {
  readonly value: number;
  readonly per: FeedPer;
}

/** CIRCLE, waiting for its end point; atoms. */
export interface Circle {
  readonly centre: readonly [number, number, number];
  /** Axis that it turns about: 0 x, 1 y, 2 z. */
  readonly axis: 0 | 1 | 2;
  readonly turn: "cw" | "ccw";
  readonly radius: number;
  readonly offset: number;
}

/** What CYCLE says; lengths in atoms. */
export interface Cycle {
  readonly kind: HoleKind | "mill";
  /** As FEDTO has it: see the option `depth`. */
  readonly depth: number;
  /** Heights above the point: where the feed starts, and where the tool goes between holes. */
  readonly start: number;
  readonly level: number | "initial";
  /** Undefined: the feed of FEDRAT. */
  readonly feed: Feed | undefined;
  readonly peck: number;
  /** Lead of a thread, atoms a revolution; 0 without. */
  readonly lead: number;
  /** Microseconds, or millionths of a revolution. */
  readonly dwell: number;
  readonly dwellTurns: boolean;
  readonly offset: number;
}

/** The tool of CUTTER; atoms. */
export interface Cutter {
  readonly diameter: number;
  readonly corner: number;
  readonly offset: number;
}

/**
 * What holds at a place of the source. Inner objects are replaced and never changed, so that a shallow copy is a copy.
 * Places are those of the tool tip in work coordinates, atoms.
 */
export interface ClState {
  /** Unit of the lengths that follow; undefined: not said yet. */
  scale: Scale | undefined;
  units: UnitSystem | undefined;
  /** The point that the source gave last, and which of its axes are known (axis bits). */
  x: number;
  y: number;
  z: number;
  known: number;
  /** Where the tool is in Z, which under a cycle is not the point given last; undefined: at clearance. */
  toolZ: number | undefined;
  /** Added to every place: what ORIGIN and TRANS say, and their sum. */
  origin: readonly [number, number, number];
  trans: readonly [number, number, number];
  shift: readonly [number, number, number];
  /** Whether RAPID holds. */
  rapid: boolean;
  /** Whether the motion before was a rapid, and nothing has been said about feed since. */
  afterRapid: boolean;
  feed: Feed | undefined;
  /** What the last feed counted that said it. */
  per: FeedPer | undefined;
  circle: Circle | undefined;
  cycle: Cycle | undefined;
  cycleOn: boolean;
  /** Z of the points of the holes that are open; undefined: none are. */
  holesTop: number | undefined;
  tool: number;
  cutter: Cutter | undefined;
  /** Whether CUTTER, SPINDL have been said since the last motion. */
  cutterFresh: boolean;
  spindleFresh: boolean;
  /** Milli-rpm; 0: none said. */
  rpm: number;
  direction: SpindleDirection | undefined;
  spindle: "unsaid" | "on" | "off";
  /** Where the tool first moved at rapid with the spindle off; undefined: nowhere. */
  movedWhileOff: number | undefined;
  coolant: readonly CoolantMedium[];
  /** What COOLNT/ON switches on. */
  lastCoolant: readonly CoolantMedium[];
  /** What CUTCOM/ON switches on. */
  lastSide: "left" | "right" | undefined;
  /** Whether cutter compensation is on. */
  compensated: boolean;
  /** Z of CLEARP, atoms. */
  clearancePlane: number | undefined;
  /** Place of the first FROM. */
  home: readonly [number, number, number] | undefined;
  /** Whether the tool has moved since it was taken up. */
  moved: boolean;
  ended: "no" | "section" | "source";
}

export function createState(): ClState {
  return {
    scale: undefined,
    units: undefined,
    x: 0,
    y: 0,
    z: 0,
    known: 0,
    toolZ: undefined,
    origin: [0, 0, 0],
    trans: [0, 0, 0],
    shift: [0, 0, 0],
    rapid: false,
    afterRapid: false,
    feed: undefined,
    per: undefined,
    circle: undefined,
    cycle: undefined,
    cycleOn: false,
    holesTop: undefined,
    tool: 0,
    cutter: undefined,
    cutterFresh: false,
    spindleFresh: false,
    rpm: 0,
    direction: undefined,
    spindle: "unsaid",
    movedWhileOff: undefined,
    coolant: [],
    lastCoolant: ["flood"],
    lastSide: undefined,
    compensated: false,
    clearancePlane: undefined,
    home: undefined,
    moved: false,
    ended: "no",
  };
}

/** An arc in one of the three planes; atoms. */
export interface ArcTo {
  readonly plane: 0 | 1 | 2;
  readonly turn: "cw" | "ccw";
  /** Centre on x, y, z; that of the plane's normal is not used. */
  readonly centre: readonly [number, number, number];
}

/** Holes of one height. */
export interface HolesHere {
  readonly cycle: Cycle;
  readonly kind: HoleKind;
  readonly top: number;
  readonly depth: number;
  readonly retract: number;
  readonly between: "retract" | "initial";
}

/**
 * What statements do. The outline gathers, the reading of moves writes rows. Motions go to the place that the state holds.
 * `source` is the byte offset of the statement.
 */
export interface ClActions {
  /** Called where a tool that has moved is followed by another one, or turns the other way: an operation ends here. */
  operation(source: number): void;
  tool(number: number, source: number): void;
  /** What LOADTL says of its tool. */
  toolData(
    data: { readonly length?: number; readonly lengthOffset?: number; readonly radiusOffset?: number },
    source: number,
  ): void;
  /** Called before the state takes the speed and direction on. */
  spindle(rpm: number, direction: SpindleDirection, source: number): void;
  coolant(media: readonly CoolantMedium[], source: number): void;
  /** Rapid of some axes (axis bits) to x, y and `toolZ` of the state; where that is undefined, to clearance. */
  rapid(axes: number, source: number): void;
  /** Line to x, y, z of the state; at another feed than that of the state where one is given. */
  line(source: number, feed?: Feed): void;
  arc(arc: ArcTo, source: number): void;
  holes(holes: HolesHere, source: number): void;
  hole(source: number): void;
  endHoles(source: number): void;
  note(text: string, source: number): void;
  pause(text: string, optional: boolean, source: number): void;
  dwell(time: number, source: number): void;
  compensation(side: "left" | "right" | "off", source: number): void;
}

/** Reading a source, statement by statement. */
export interface ClRun {
  readonly options: ClOptions;
  readonly state: ClState;
  readonly act: ClActions;
  readonly report: Report;
  /** Clearance of the head file, atoms. */
  readonly headClearance: number | undefined;
  /** Notes said, by what they are about: each is said once. */
  readonly told: Set<string>;
  /** Words that were gone over because they have no effect. */
  readonly withoutEffect: Set<string>;
}
