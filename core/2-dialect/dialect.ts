import type {
  AuxiliaryAction,
  Axis,
  Capabilities,
  CoolantMedium,
  CycleKind,
  MachineFacts,
  ModeStep,
  PerUnit,
  Plane,
  UnitSystem,
} from "#base";
import type { VariableFormat } from "./variable-format.ts";

/** A dialect, resolved over its chain of `extends`: plain data, so that it can be kept as JSON. */
export interface Dialect {
  readonly name: string;
  readonly title: string;
  /** The files of the chain, the leaf first, as they are named to the user. */
  readonly files: readonly string[];
  /** What writing and reading need. */
  readonly format: Format;
  /** What lowering and sequencing need. */
  readonly capabilities: Capabilities;
  /** What sequencing and the guard need. */
  readonly machine: MachineFacts;
  /**
   * Origins of the work offsets in machine coordinates, atoms, where the leaf states them ("machine.work-zero"); index is
   * the offset number. A set-up file overrides them.
   */
  readonly workZero: readonly (readonly [number, number, number] | undefined)[];
  /** Keys of which nobody has said yet that they are true of the machine. Key "unanswered". */
  readonly unanswered: readonly string[];
  /** Where each value stands, by key path; `file` is an index into `files`, `line` counts from 1. */
  readonly origins: Readonly<Record<string, { readonly file: number; readonly line: number }>>;
}

/** A code such as G59.1: `value` is in tenths (591), as NISTIR 6556 3.3 compares codes. */
export interface Code {
  readonly letter: "G" | "M";
  readonly value: number;
  /** A word with a fixed number that belongs to the code, such as P2 in G54.1 P2. */
  readonly word?: { readonly letter: string; /** As the file has them. */ readonly digits: string };
}

/** How numbers of one address are written. */
export interface NumberFormat {
  /** Digits after the point; 0 writes no point at all. */
  readonly decimals: number;
  /** "never" is an implied point: the number counts least increments. */
  readonly point: "always" | "when-needed" | "never";
  /** Zeros at the end: kept, dropped, or dropped down to one. */
  readonly trailingZeros: "keep" | "drop" | "one";
  /** Whether 0.5 is written 0.5 or .5 */
  readonly leadingZero: boolean;
  readonly plus: boolean;
  /** Implied point: which zeros are left out, and how many digits stand if not both ends are free. */
  readonly suppressed: "leading" | "trailing" | "none";
  readonly digits: number;
  /** Most digits before the point; 0: no limit. */
  readonly wholeDigits: number;
}

/** A number format that differs by the program's units. */
export type UnitFormats = Readonly<Record<UnitSystem, NumberFormat>>;

/** Everything that shapes text. Values left undefined are undeclared; null means that there is no such thing. */
export interface Format {
  readonly extension: string;
  readonly lineEnd: "\n" | "\r\n" | "\r";
  readonly lastLineEnd: boolean;
  /** Whether the text begins with the three bytes that mark UTF-8. */
  readonly byteOrderMark: boolean;
  /** Blank lines before the first line. */
  readonly leader: number;
  /** Whether a blank line stands before each section, is passed over, or ends the program. */
  readonly blankLines: "between-sections" | "skipped" | "none";
  /** Text at the end of each block, before the line end. */
  readonly blockEnd: "" | ";" | "*";
  /** A `%` line of its own first and last. */
  readonly delimiter: "none" | "percent";
  readonly programNumber: {
    readonly letter: "O" | ":" | "%";
    readonly digits: number;
    readonly from: number;
    readonly to: number;
  } | null;
  /** Characters of comments and of the whole text: upper case ASCII, ASCII, or any UTF-8 in comments. */
  readonly characters: "upper" | "ascii" | "utf-8";
  readonly comments: {
    readonly style: "parentheses" | "semicolon" | "none";
    /** Most characters in one comment, marks not counted. */
    readonly longest: number;
    /** Whether a comment may share its block with words. */
    readonly place: "anywhere" | "own-block";
  };
  readonly blockNumber: {
    readonly on: "all" | "sections";
    readonly start: number;
    readonly step: number;
    /** After this number it begins again at `start`. */
    readonly to: number;
    /** Digits; 0: as many as needed. */
    readonly width: number;
  } | null;
  readonly sections: {
    /** What begins a section. */
    readonly beginAt: "operation" | "tool";
    /** The address of the block number of its first block. */
    readonly mark: "N" | ":";
    /** Whether a comment with its name stands before that. */
    readonly comments: boolean;
    /** Whether it states all modes that the start of the program states. */
    readonly modes: "restated" | "kept";
  };
  readonly separator: "" | " " | "\t";
  /** Addresses in the order in which a block has them; G and M once each, "N" first. */
  readonly order: readonly string[];
  /** Most characters of a block, its line end not counted; 0: no limit. */
  readonly longest: number;
  /** Most words of a block, its number not counted; 0: no limit. */
  readonly mostWords: number;
  /** One G word a block, or one of each modal group. */
  readonly gWords: "one" | "any";
  readonly mWords: number;
  /** Whether consecutive modes share a block. */
  readonly modes: "together" | "apart";
  /** The mark of a block that the operator's switch skips, and whether it stands before or behind the block number. */
  readonly blockDelete: {
    readonly mark: "slash" | "numbered";
    readonly place: "before-number" | "after-number";
  } | null;
  /** The mark of an optional stop that is a stop with a block delete mark: "/" or "/2"; "" where it has a code of its own. */
  readonly optionalStopMark: string;
  /** Whether M05 and M09 act before or after the motion of their block; M00, M01 and the end act after it in any case. */
  readonly stopsAct: "before-motion" | "after-motion";
  /** Whether words act in the order of their kinds, or each where it stands. */
  readonly executes: "by-kind" | "left-to-right";
  /** What the controller works out while it reads; undefined where not all of it is declared. The emitter writes none of it. */
  readonly variables?: VariableFormat | undefined;
  readonly numbers: {
    readonly length: UnitFormats;
    readonly arcCentre: UnitFormats;
    /** Of the peck and back-off words of cycles. */
    readonly peck: UnitFormats;
    readonly angle: NumberFormat;
    readonly feedPerMinute: UnitFormats;
    readonly feedPerRevolution: UnitFormats | undefined;
    readonly inverseTime: NumberFormat | undefined;
    readonly speed: NumberFormat;
    /** Of the dwell word, counted in `dwell.unit`. */
    readonly dwell: NumberFormat;
    /** Of the dwell in a cycle, counted in `cycles.dwellUnit`. */
    readonly cycleDwell: NumberFormat;
    /** Of the timeout of a wait, counted in `waitValues.timeoutUnit`. Key "numbers.timeout". */
    readonly timeout: NumberFormat | undefined;
    /** Least digits of the codes and of the whole numbers of T H D. */
    readonly width: Readonly<Record<"G" | "M" | "T" | "H" | "D", number>>;
  };
  readonly modal: {
    readonly motion: "modal" | "each-block";
    readonly axes: "changed" | "all";
    readonly arcEnd: "changed" | "both";
    readonly arcCentre: "non-zero" | "both";
    /** modal: when it changes; after-rapid: also on the first feed block after a rapid; each-block: on every feed block. */
    readonly feed: "modal" | "after-rapid" | "each-block";
    /** Whether each start of the spindle says its speed, or only one that is not the last one said. */
    readonly speed: "each-start" | "changed";
  };
  readonly motion: {
    /** Whether a move in machine coordinates leaves the work offset suspended until one is stated anew. */
    readonly machineMoveLasts: "block" | "until-work-offset";
    readonly rapidAxes: "together" | "one-at-a-time";
    /** Feed of the lines that are rapids, by the units of the program, atoms a minute; null where there are rapids. */
    readonly rapidFeed: PerUnit | null;
    /** The most axes that one block may move. */
    readonly axesAtOnce: number;
    /** Letters of the axes. */
    readonly letters: Readonly<Record<Axis, string>>;
    /** What F counts in inverse time; undefined where there is no inverse time. */
    readonly inverseTimeUnit: "per-minute" | "per-second" | undefined;
  };
  readonly unitsIn: "job" | UnitSystem;
  readonly unitsStated: "first-block" | "with-modes";
  readonly distance: "absolute" | "incremental";
  readonly codes: Codes;
  readonly arc: {
    readonly form: "incremental-centre" | "absolute-centre" | "radius" | "none" | undefined;
    /** Letter of the radius word. */
    readonly radiusWord: string;
    /** Letter of the word for turns, if one block can hold several. */
    readonly turnsWord: string | null;
    readonly helix: boolean | undefined;
    readonly fullCircle: boolean | undefined;
    /** Largest sweep in one block, micro-degrees. */
    readonly largestSweep: number | undefined;
    /** Whether one block may cross the quadrant lines of its circle, or stays in one quadrant. */
    readonly quadrants: "any" | "one" | undefined;
    readonly planes: readonly Plane[] | undefined;
  };
  readonly dwell:
    | {
        readonly word: string;
        readonly unit: "s" | "ms" | "rev";
        /** Whether the dwell behind a start of the spindle shares its block. */
        readonly blocks: "apart" | "with-start";
      }
    | undefined;
  readonly cycles:
    | {
        /** Whether later holes of a series restate the cycle's own words, or only positions. */
        readonly repeat: "positions" | "all";
        /** Whether Z and R are absolute, or R counts from the initial level and Z from R or from the initial level, too. */
        readonly levels: "absolute" | "relative" | "from-initial";
        /** Word of the retract level, the peck and the dwell. */
        readonly retractWord: string;
        readonly peckWord: string;
        readonly dwellWord: string;
        readonly dwellUnit: "s" | "ms" | "rev";
        /** Level without a return word, where the dialect has none. */
        readonly levelWithout: "retract" | "initial" | undefined;
        /** Back-offs that the controller fixes, atoms. */
        readonly backOff: { readonly peck: number | undefined; readonly chipBreak: number | undefined };
        /** Word of the back-off and of the repeats; null where the dialect has none. */
        readonly backOffWord: string | null;
        readonly repeatWord: string | null;
        /** Whether the block that defines a cycle states its first hole. */
        readonly definition: "with-first-hole" | "apart";
        /** Whether a hole states both X and Y, or those that differ. */
        readonly positions: "changed" | "both";
        /** Whether the initial level is the one before the series, or the one at each block with a cycle's code. */
        readonly initialLevel: "before-series" | "current";
        /** Whether holes go along Z in any plane. */
        readonly alongZ: boolean;
        /** Whether the feed word of a tap is the lead of its thread. */
        readonly tapLead: boolean;
        /** Whether a motion code ends a series by itself, or the cancel code alone does. */
        readonly endedBy: "any-motion" | "cancel-code";
      }
    | undefined;
  readonly spindle:
    | {
        /** Speed word before or behind the start word, in a block and from block to block. */
        readonly order: "speed-first" | "start-first";
        readonly blocks: "together" | "apart";
      }
    | undefined;
  /** Milli-rpm in 1 of the S word: a thousand, or a hundredth of the full speed. */
  readonly speedUnit: number;
  /** Gear ranges with their codes in the order of the file, milli-rpm; empty where there is one range. */
  readonly gears: readonly { readonly code: Code; readonly from: number; readonly to: number }[];
  /** Whether media that are switched behind one another share a block. */
  readonly coolantBlocks: "apart" | "together";
  readonly stops: {
    /** Whether the message of a stop stands in a block before it, or behind its code. */
    readonly comment: "own-block" | "with-stop";
    /** What is in force when the program goes on behind a stop. */
    readonly resume: "keeps-modes" | "loses-modes";
  };
  readonly tools:
    | {
        /** Whether the tool word and the change code share a block, and which comes first. */
        readonly blocks: "together" | "apart";
        readonly order: "select-first" | "change-first";
        /** Whether the next tool is selected behind each change. */
        readonly preselect: boolean | undefined;
        /** What changes the tool: a code, or the tool word alone. */
        readonly changedBy: "code" | "tool-word";
        /** Whether the program names tools by tool words; otherwise the message to the operator names the tool to load. */
        readonly named: boolean;
        /** Number of the tool word that leaves the spindle empty; undefined where the dialect has none. */
        readonly empty: number | undefined;
      }
    | undefined;
  readonly lengthOffset:
    | {
        readonly word: string;
        readonly form: "with-first-z" | "own-block" | "in-tool-word" | "none";
        /** What is added to its number where it is written, 0 apart. */
        readonly added: number;
        /** Whether a tool may have the length offset of another number than its own. */
        readonly free: boolean;
        /** What cancels it: a code, or its own code with number 0. */
        readonly cancelledBy: "code" | "number";
      }
    | undefined;
  /** Whether compensation and cycles are cancelled anew before each swap. */
  readonly cancelsBeforeChange: boolean;
  readonly compensationWord: string | null | undefined;
  /** Letter of the word beside the code of the blended path that holds it to a tolerance. */
  readonly toleranceWord: string | null | undefined;
  /** Reference return: whether an intermediate point of zero increment is written. */
  readonly referenceIntermediate: "none" | "incremental-zero" | undefined;
  readonly waitValues:
    { readonly on: number; readonly off: number; readonly timeoutUnit: "s" | "ms" } | undefined;
  readonly idioms: Readonly<Partial<Record<IdiomName, Idiom>>>;
  /** Lines of the header and the footer; undefined: the header that every program has, and no footer. */
  readonly header: readonly PageLine[] | undefined;
  readonly footer: readonly PageLine[] | undefined;
  /** What words outside the keys above mean to the reader; worked out from idioms and the `codes` key. */
  readonly extraCodes: readonly ExtraCode[];
}

/** Codes of the keys; null: the dialect says `none`; undefined: undeclared. */
export interface Codes {
  readonly rapid: Code | null | undefined;
  readonly line: Code | null | undefined;
  readonly arcCw: Code | null | undefined;
  readonly arcCcw: Code | null | undefined;
  /** By mode and value, such as `modes["plane"]["zx"]`. */
  readonly modes: {
    readonly [K in ModeStep["kind"]]: Readonly<
      Partial<Record<Extract<ModeStep, { kind: K }>["value"], Code | null>>
    >;
  };
  readonly dwell: Code | null | undefined;
  readonly compensation: Readonly<Partial<Record<"off" | "left" | "right", Code | null>>>;
  readonly lengthOn: Code | null | undefined;
  readonly lengthOff: Code | null | undefined;
  /** Index is the offset number, 1 to 9; index 0 is unused. */
  readonly workOffsets: readonly (Code | null | undefined)[];
  readonly machineMove: Code | null | undefined;
  readonly referenceReturn: Code | null | undefined;
  readonly cycles: Readonly<Partial<Record<CycleKind, Code | null>>>;
  /** Locks spindle and feed for the tapping cycle that follows. */
  readonly tapSynchronised: Code | null | undefined;
  readonly cycleReturn: Readonly<Partial<Record<"initial" | "retract", Code | null>>>;
  readonly spindleCw: Code | null | undefined;
  readonly spindleCcw: Code | null | undefined;
  readonly spindleStop: Code | null | undefined;
  readonly spindleOrient: Code | null | undefined;
  readonly coolant: Readonly<Partial<Record<CoolantMedium, Code | null>>>;
  /** Turns all media off; undefined where each has a code of its own. */
  readonly coolantOff: Code | null | undefined;
  readonly coolantOffOne: Readonly<Partial<Record<CoolantMedium, Code | null>>>;
  readonly toolChange: Code | null | undefined;
  readonly stop: Code | null | undefined;
  readonly optionalStop: Code | null | undefined;
  readonly end: Code | null | undefined;
}

/** Idioms: templates for what a dialect says in its own way. */
export type IdiomName =
  | "message"
  | "wait-signal"
  | "output-on"
  | "output-off"
  | "release"
  | "clamp"
  | "taper-air-on"
  | "taper-air-off"
  | "cover-open"
  | "cover-close"
  | "hood-up"
  | "hood-down"
  | "measure";

/** Values that a template may name. */
export type IdiomValue = "signal" | "level" | "timeout" | "output" | "text";

/** One part of a block of a template: literal text, or a named value. */
export type IdiomPart = { readonly literal: string } | { readonly value: IdiomValue };

/** A template as its blocks, each a list of parts. */
export interface Idiom {
  readonly blocks: readonly (readonly IdiomPart[])[];
}

/** What the lines of a header or footer may go through. */
export type PageList = "tools" | "operations" | "assumptions";

/** One part of a line: literal text, or a named value. */
export type PagePart = { readonly literal: string } | { readonly name: string };

/** A comment line of a header or footer; with `each` one for each of a list. */
export interface PageLine {
  readonly each: PageList | undefined;
  readonly parts: readonly PagePart[];
}

/** What a code outside the keys means, and which words go with it. */
export interface ExtraCode {
  readonly letter: "G" | "M";
  /** Tenths. */
  readonly value: number;
  readonly meaning:
    | { readonly kind: "wait" }
    | { readonly kind: "output"; readonly on: boolean }
    | { readonly kind: "auxiliary"; readonly action: AuxiliaryAction };
  /** Words beside the code: a letter with the value it carries, or the fixed number it must have. */
  readonly words: Readonly<Record<string, IdiomValue | number>>;
  /** Key that declares it, such as "idioms.release". */
  readonly key: string;
}
