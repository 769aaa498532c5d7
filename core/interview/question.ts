import type { PlainValue } from "#dialect";

/** What the five blocks of a sample are taken from. */
export type Moment =
  | "frame"
  | "units"
  | "motion"
  | "rapid"
  | "arc"
  | "holes"
  | "dwell"
  | "spindle"
  | "stop"
  | "swap"
  | "comment";

/** What a detail must look like. */
export type DetailForm = "time" | "whole-number" | "text";

/** Something more that an answer needs, such as the number of an input. */
export interface Detail {
  /** Its key in an answers file, beside `answer`. */
  readonly id: string;
  /** The question, in the user's words. */
  readonly ask: string;
  readonly form: DetailForm;
  /** What is taken where nothing is typed at the terminal; an answers file states it. Absent: it must be said. */
  readonly usual?: string;
  /** For instance, where there is nothing usual. */
  readonly example: string;
  /** Asked only where the dialect that the answers start from does not state this key, or says `none`. */
  readonly unless?: string;
}

/** Key paths with their values; a text `<id>` stands for the detail of that id. */
export type KeyValues = Readonly<Record<string, PlainValue>>;

/** One answer that can be given. */
export interface Choice {
  /** Its word in an answers file. */
  readonly id: string;
  readonly words: string;
  /** What it means for the dialect. */
  readonly sets: KeyValues;
  /** What must follow where one of these keys changes anything; left out inside a group that is `none`. */
  readonly with?: KeyValues;
  readonly asks?: readonly Detail[];
  /** Not offered where this key has this value by the answers before, or else in the dialect that is extended. */
  readonly clashes?: { readonly key: string; readonly value: string; readonly why: string };
}

/** A question of the interview. */
export interface Question {
  /** Its key in an answers file. */
  readonly id: string;
  /** The question, in the user's words. */
  readonly ask: string;
  /** The same in a few words, for the comments of the file that is written. */
  readonly short: string;
  readonly moment: Moment;
  readonly choices: readonly Choice[];
  /**
   * Where the dialect that the answers start from states this key, leaving it as it is is no answer: that the controller
   * can be trusted is not taken over unread.
   */
  readonly notInherited?: string;
}

/** The answer of every question that has none of its own: what the file that is extended states. */
export const keep = "keep";
