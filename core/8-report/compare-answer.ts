import type { Located } from "./locate.ts";

/** A value of a dialect, and where a file of it states that. */
export interface StatedAt {
  /** As YAML has it on one line. */
  readonly value: string;
  readonly file: string;
  /** Counted from 1. */
  readonly line: number;
}

/** A key about which two dialects differ; undefined: no file of that dialect states it. */
export interface DifferenceKey {
  readonly key: string;
  readonly first: StatedAt | undefined;
  readonly second: StatedAt | undefined;
}

/** Lines of one program. */
export interface ComparedLines {
  /** Number of the first of them, counted from 1. */
  readonly line: number;
  /** The first of them; a comparison keeps no more than it shows. */
  readonly texts: readonly string[];
  /** Lines that are not kept. */
  readonly more: number;
}

/** Where two programs differ. */
export interface DifferencePlace {
  /** Byte offset in the job; undefined at the start of the program. */
  readonly source: number | undefined;
  /** The same as a person looks it up. */
  readonly job?: { readonly file: string; readonly line: number; readonly column: number };
  readonly first: ComparedLines | undefined;
  readonly second: ComparedLines | undefined;
  /** What either says, in trade words, where that is the difference. */
  readonly said?: { readonly first: readonly string[]; readonly second: readonly string[] };
}

/** Differences of one kind with one cause. */
export interface DifferenceGroup {
  /** "order/spindle": the same for the same kind in any comparison. */
  readonly id: string;
  /** Whether the steps differ, or only how they are written. */
  readonly level: "meaning" | "form";
  /** "spindle start and stop: order of words" */
  readonly what: string;
  /** Which program alone says it; absent where both do. */
  readonly only?: "first" | "second";
  /** "M03 S6000" and "S6000 M03": the words of the first place; "" where one side has none. */
  readonly example: { readonly first: string; readonly second: string };
  readonly count: number;
  /** The first of them. */
  readonly places: readonly DifferencePlace[];
  /** Empty: no key accounts for it. */
  readonly keys: readonly DifferenceKey[];
}

/** A row of the listing side by side. */
export interface ListedRow {
  readonly first: ComparedLines | undefined;
  readonly second: ComparedLines | undefined;
  /** Numbers of the groups that these lines belong to, counted from 1 in the order of the report. */
  readonly groups: readonly number[];
}

/** Two programs compared. */
export interface ComparedPair {
  /** Places of the two in the list of programs. */
  readonly of: readonly [number, number];
  /** Names of the dialects. */
  readonly first: string;
  readonly second: string;
  /** Those of meaning before those of form, the more frequent first. */
  readonly groups: readonly DifferenceGroup[];
  /** Steps that both programs say alike. */
  readonly alikeSteps: number;
  /** What either program takes in time, as far as it says so. */
  readonly times: readonly [ProgramTimes, ProgramTimes];
  /** The beginning of both programs side by side. */
  readonly listing: readonly ListedRow[];
  /** Rows of the listing that are left out. */
  readonly unlisted: number;
}

/** The times that a program states outside fixed cycles. */
export interface ProgramTimes {
  /** Sum of the dwells that are stated as times, seconds. */
  readonly dwellSeconds: number;
  /** Dwells that are counted in revolutions of the spindle. */
  readonly dwellsInTurns: number;
  /** Waits on a signal, which last as long as they last. */
  readonly waits: number;
}

/** What the program of one dialect amounts to. */
export interface ComparedProgram {
  /** Name of the dialect. */
  readonly name: string;
  readonly title: string;
  readonly files: readonly string[];
  readonly verdict: "proved" | "refused";
  readonly findings: readonly Located[];
  /** Absent where it was refused, as all that follows. */
  readonly bytes?: number;
  /** Lines of the text. */
  readonly lines?: number;
  readonly steps?: number;
  readonly times?: ProgramTimes;
  readonly assumptions?: readonly string[];
}

/** One job under two dialects or more. */
export interface CompareAnswer {
  readonly job: string;
  readonly programs: readonly ComparedProgram[];
  readonly pairs: readonly ComparedPair[];
}
