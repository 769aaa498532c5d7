/**
 * The rare steps of a controller: everything but motion. They follow the canonical machining functions of NISTIR 6556
 * section 4.3, and add a wait on a signal and the outputs of a retrofitted machine.
 */

/** Planes of arcs; the order of the letters gives the first and second axis (NISTIR 6556 Table 9: ZX has Z first). */
export type Plane = "xy" | "zx" | "yz";

/** What the feed word means. */
export type FeedMode = "per-minute" | "per-revolution" | "inverse-time";

/** Sense of the spindle seen from the spindle towards the work: cw (M03) drives a right-hand screw into the work. */
export type SpindleDirection = "cw" | "ccw";

/** What a coolant word switches. */
export type CoolantMedium = "mist" | "flood" | "air" | "through-tool";

/** Fixed cycles (NISTIR 6556 3.5.16); what the tool does at depth and how it comes out. */
export type CycleKind =
  | "drill" // feed in, rapid out (G81)
  | "dwell" // feed in, dwell, rapid out (G82)
  | "peck" // full retract pecks (G83)
  | "chip-break" // small back-off pecks (G73)
  | "tap" // right-hand, reverse at depth, feed out (G84)
  | "tap-left" // left-hand, reverse at depth, feed out (G74)
  | "ream" // feed in, feed out (G85)
  | "bore-dwell" // feed in, dwell, feed out (G89)
  | "bore-stop" // feed in, dwell, spindle stop, rapid out (G86)
  | "bore-manual"; // feed in, dwell, spindle stop, program stop (G88)

/** A mode that stays in force; each has one word, `value` says which. */
export type ModeStep =
  | { readonly kind: "units"; readonly value: "mm" | "inch" }
  | { readonly kind: "plane"; readonly value: Plane }
  | { readonly kind: "distance"; readonly value: "absolute" | "incremental" }
  | { readonly kind: "arc-centre"; readonly value: "absolute" | "incremental" }
  | { readonly kind: "feed-mode"; readonly value: FeedMode }
  | {
      readonly kind: "path";
      readonly value: "exact" | "stop" | "blend";
      /** How far a blended path may leave its corners, atoms above 0; absent where nothing bounds it. */
      readonly tolerance?: number;
    }
  | { readonly kind: "look-ahead"; readonly value: "on" | "off" }
  | { readonly kind: "corner-feed"; readonly value: "on" | "off" }
  | { readonly kind: "overrides"; readonly value: "on" | "off" }
  | { readonly kind: "cycle"; readonly value: "off" }
  | { readonly kind: "local-shift"; readonly value: "off" }
  | { readonly kind: "rotation"; readonly value: "off" }
  | { readonly kind: "scale"; readonly value: "off" };

/** The name of a mode. */
export type ModeKind = ModeStep["kind"];

/** What a fixed cycle does at each hole row that follows, until the cycle mode is off. */
export interface CycleDefinition {
  readonly kind: "cycle-definition";
  readonly cycle: CycleKind;
  /** Absolute Z of the bottom, atoms. */
  readonly depth: number;
  /** Absolute Z where the feed starts, atoms. */
  readonly retract: number;
  /** Absolute Z of the level between holes and after the last, atoms: `retract`, or the initial level. */
  readonly level: number;
  /** Whether `level` is the initial level (G98) or the retract level (G99). */
  readonly between: "initial" | "retract";
  /** Whether the definition says so by a word of its own, and does not rely on the one before. */
  readonly levelStated: boolean;
  /** Depth of one peck counted from `retract`, atoms; 0 where the cycle has none. */
  readonly peck: number;
  /** Dwell at depth, microseconds, or what `dwellIs` says; 0 where the cycle has none. */
  readonly dwell: number;
  /** `dwell` counts millionths of a revolution of the spindle; absent where it is a time. */
  readonly dwellIs?: "revolutions";
  /** Back-off of pecks as the cycle's own word says it, atoms; absent where no word does. */
  readonly backOff?: number;
  /** The feed column of its holes holds the lead of the thread, atoms a revolution, whatever the feed mode; otherwise absent. */
  readonly feedIs?: "lead";
}

/** What an auxiliary code works. */
export type AuxiliaryAction =
  | "release" // drawbar lets the tool go
  | "clamp" // drawbar holds the tool
  | "taper-air-on"
  | "taper-air-off"
  | "cover-open"
  | "cover-close"
  | "hood-up"
  | "hood-down"
  | "measure" // the controller measures the tool's length and makes it its length offset
  | "opaque"; // a code of the builder with declared effects and no other meaning

/** One canonical action of a controller that is not motion. */
export type Step =
  | { readonly kind: "program-start"; /** 0: none stated. */ readonly number: number }
  | ModeStep
  | {
      readonly kind: "compensation";
      readonly value: "off" | "left" | "right";
      /** Number of the radius offset; 0 where none is said. */ readonly offset: number;
    }
  | { readonly kind: "work-offset"; /** 1 to 9. */ readonly number: number }
  | { readonly kind: "length-offset"; /** 0: cancelled. */ readonly number: number }
  | {
      readonly kind: "select-tool";
      readonly tool: number;
      /** Length offset that the tool word states; absent where it states none. */ readonly offset?: number;
    }
  | { readonly kind: "change-tool" }
  | { readonly kind: "spindle-speed"; /** Milli-rpm. */ readonly rpm: number }
  | { readonly kind: "spindle-start"; readonly direction: SpindleDirection }
  | { readonly kind: "spindle-stop" }
  | { readonly kind: "spindle-orient" }
  | {
      readonly kind: "coolant";
      /** "all" goes with `on: false` alone. */ readonly medium: CoolantMedium | "all";
      readonly on: boolean;
    }
  | { readonly kind: "output"; readonly number: number; readonly on: boolean }
  | {
      readonly kind: "wait";
      readonly input: number;
      readonly level: "on" | "off";
      /** Microseconds; 0: waits for ever. */ readonly timeout: number;
    }
  | {
      readonly kind: "dwell";
      /** Microseconds; 0 where the dwell is counted in revolutions. */ readonly time: number;
      /**
       * Millionths of a revolution of the spindle; absent where the dwell is a time. How long it lasts is up to the spindle, so
       * that it confirms nothing.
       */
      readonly revolutions?: number;
    }
  | { readonly kind: "pause"; readonly optional: boolean }
  | { readonly kind: "message"; readonly text: string }
  | CycleDefinition
  | {
      readonly kind: "auxiliary";
      readonly action: AuxiliaryAction;
      /** Opaque codes: the code as the dialect writes it, such as "M93". Otherwise empty. */ readonly code: string;
    }
  | { readonly kind: "reference-return"; /** Axis mask. */ readonly axes: number }
  | { readonly kind: "program-end" };

/** The name of a rare step. */
export type StepKind = Step["kind"];
