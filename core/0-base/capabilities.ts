import type { UnitSystem } from "./lengths.ts";
import type { CycleKind, Plane } from "./step.ts";

/** A quantity that differs by the program's units. */
export type PerUnit = Readonly<Record<UnitSystem, number>>;

/**
 * What a dialect can say, for lowering and sequencing. A value that is `undefined` stands in no file of the chain: who
 * needs it refuses with `dialect/undeclared` and the key path given in the comment.
 */
export interface Capabilities {
  /**
   * Words by the key path of their code, such as "units.mm", "plane.zx", "cycles.peck", "coolant.mist", "work-offset.3",
   * "length-offset.on", "compensation.left", "stops.optional", "spindle.ccw", "idioms.release". True: it has a word.
   * False: the file says `none`, so it cannot be said. Absent: undeclared.
   */
  readonly words: Readonly<Record<string, boolean>>;
  /** Key "units.programs-in". */
  readonly programsIn: "job" | UnitSystem | undefined;
  /** Program numbers that are free for programs; absent where programs have none. Keys "file.program-number.from" and "to". */
  readonly programNumbers?: { readonly from: number; readonly to: number };
  /** What begins a section of the program. Key "blocks.sections.begin-at". */
  readonly sectionsBeginAt?: "operation" | "tool";
  /** Whether a section states all modes that the start of the program states. Key "blocks.sections.modes". */
  readonly sectionModes?: "restated" | "kept";
  /** Largest numbers by what they are, in base units; absent where no address has a limit. Keys "numbers.digits", "numbers.whole-digits". */
  readonly largest?:
    | {
        readonly length: PerUnit;
        readonly "per-minute": PerUnit;
        readonly "per-revolution": PerUnit | undefined;
        readonly "inverse-time": number | undefined;
        readonly speed: number;
        readonly dwell: number;
      }
    | undefined;
  /** Key "distance.programs-in". */
  readonly distance: "absolute" | "incremental" | undefined;
  /** Least increment of X Y Z, atoms. Key "numbers.length". */
  readonly lengthGrid: PerUnit | undefined;
  /** Of I J K and R, atoms. Key "numbers.arc-centre". */
  readonly centreGrid: PerUnit | undefined;
  /** Of A B C, micro-degrees. Key "numbers.angle". */
  readonly angleGrid: number | undefined;
  /** Of F, atoms a minute. Key "numbers.feed-per-minute". */
  readonly feedPerMinuteGrid: PerUnit | undefined;
  /** Of F, atoms a revolution. Key "numbers.feed-per-revolution". */
  readonly feedPerRevolutionGrid: PerUnit | undefined;
  /** Of F, 1e-6 a minute. Key "numbers.inverse-time". */
  readonly inverseTimeGrid: number | undefined;
  /** Of S, milli-rpm. Key "numbers.speed". */
  readonly speedGrid: number | undefined;
  /** Of the dwell word, microseconds or millionths of a revolution. Key "numbers.dwell" with "dwell.unit". */
  readonly dwellGrid: number | undefined;
  /** Present where dwells are counted in revolutions of the spindle. Key "dwell.unit". */
  readonly dwellByTurns?: true;
  /** Key "motion.rapids". */
  readonly rapids: "straight" | "dog-leg" | undefined;
  /** Feed of the lines that are rapids, atoms a minute; null where there are rapids. Key "motion.rapid-feed". */
  readonly rapidFeed: PerUnit | null | undefined;
  /** Key "units.stated". */
  readonly unitsStated: "first-block" | "with-modes" | undefined;
  /** The most axes that a rapid may name in one block, and those of a line. Keys "motion.rapid-axes", "motion.axes-at-once". */
  readonly axesOfRapid: number | undefined;
  readonly axesAtOnce: number | undefined;
  readonly arcs: ArcCapabilities;
  readonly cycles: CycleCapabilities;
  /** Key "length-offset.form" (machine). */
  readonly spindleOrder: "speed-first" | "start-first" | undefined;
  /** Whether speed and start share a block. Key "spindle.blocks". */
  readonly spindleBlocks: "together" | "apart" | undefined;
  /** Gear ranges in the order of the file, milli-rpm; empty where there is one range. Key "spindle.gears". */
  readonly gears: readonly { readonly from: number; readonly to: number }[];
  /** Key "stops.comment". */
  readonly stopComment: "own-block" | "with-stop" | undefined;
  /**
   * Digits of the tool in a tool word that states the length offset behind it in as many; 0 where it states none. Key
   * "numbers.code-width.T" with "machine.length-offset.form".
   */
  readonly toolDigits: number;
  /** Whether a tool word names the tool; otherwise the message to the operator does. Key "tools.in-operator-swap". */
  readonly toolsNamed: boolean;
  /** Number that no tool may have, since its word leaves the spindle empty; 0 where there is none. Key "tools.empty". */
  readonly emptyTool: number;
  /** Whether a tool may have the length offset of another number than its own. Key "length-offset.number". */
  readonly freeOffsets: boolean;
  /** Whether compensation and cycles are cancelled anew before each swap. Key "cancel.before-change". */
  readonly cancelsBeforeChange: boolean | undefined;
  /** Key "tools.preselect". */
  readonly preselect: boolean | undefined;
}

/** Circular motion. Key group "arc". */
export interface ArcCapabilities {
  /** How an arc is said; "none": chords take its place. Key "arc.form". */
  readonly form: "incremental-centre" | "absolute-centre" | "radius" | "none" | undefined;
  /** Largest sweep in one block, micro-degrees. Key "arc.largest-sweep". */
  readonly largestSweep: number | undefined;
  /** Whether one block may cross the quadrant lines of its circle, or stays in one quadrant. Key "arc.quadrants". */
  readonly quadrants: "any" | "one" | undefined;
  /** Whether one block can be a full circle. Key "arc.full-circle". */
  readonly fullCircle: boolean | undefined;
  /** Planes with arcs. Key "arc.planes". */
  readonly planes: readonly Plane[] | undefined;
  /** Whether the third axis may move. Key "arc.helix". */
  readonly helix: boolean | undefined;
  /** Whether one block can hold several turns. Key "arc.turns-word". */
  readonly turns: boolean | undefined;
  /** What F means on a helix: speed along the helix, or along its circle. Key "arc.feed-along". */
  readonly feedAlong: "path" | "circle" | undefined;
  /** Smallest and largest radius, atoms; 0 and infinity where none is declared. Keys "arc.smallest-radius", "arc.largest-radius". */
  readonly smallestRadius: number;
  readonly largestRadius: number;
  /** Largest distance between a chord and its arc, atoms. Key "arc.chord-tolerance". */
  readonly chordTolerance: number | undefined;
}

/** Fixed cycles. Key group "cycles"; whether a kind has a code is in `words` ("cycles.drill"). */
export interface CycleCapabilities {
  /** Back-off that the controller's peck and chip-break cycles fix, atoms. Keys "cycles.peck-back-off", "cycles.chip-break-back-off". */
  readonly backOff: Partial<Record<Extract<CycleKind, "peck" | "chip-break">, number>>;
  /** Whether the level between holes can be chosen by a word; otherwise it is the one level. Key "cycles.return". */
  readonly levels: "both" | "retract" | "initial" | undefined;
  /** Least increment of the peck and back-off words, atoms. Key "numbers.peck". */
  readonly peckGrid: PerUnit | undefined;
  /** Whether a word says the back-off. Key "cycles.words.back-off". */
  readonly saysBackOff: boolean;
  /** Whether holes go along Z in any plane. Key "cycles.axis". */
  readonly alongZ: boolean;
  /** Whether the feed word of a tap is its lead. Key "cycles.tap-feed". */
  readonly tapLead: boolean;
  /** Grid of the dwell in a cycle, microseconds or millionths of a revolution. Key "cycles.words.dwell-unit". */
  readonly dwellGrid: number | undefined;
  /** Present where that dwell is counted in revolutions of the spindle. Key "cycles.words.dwell-unit". */
  readonly dwellByTurns?: true;
}
