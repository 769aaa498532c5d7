/** How bad a finding is: an error stops the output, a warning and a note do not. */
export type Severity = "error" | "warning" | "note";

/** Which text a place lies in. */
export type SourceName = "job" | "head" | "program" | "dialect" | "setup" | "command";

/** A place in an input; line, column and the quoted frame are worked out from the offset when it is shown. */
export interface Place {
  readonly source: SourceName;
  /** Byte offset in that text. */
  readonly offset: number;
  /** Name of the file where it is not the one that the command was given (a dialect of the chain). */
  readonly file?: string;
}

/** The dialect key behind a finding, and where its value stands. */
export interface KeyOrigin {
  /** Path of the key, such as "spindle.order". */
  readonly key: string;
  /** File that states the value; empty where none does. */
  readonly file: string;
  /** 1-based; 0 where none does. */
  readonly line: number;
}

/** A message to the user: what is wrong, where, and the way out. */
export interface Finding {
  /** Rule id, such as "spindle/at-speed". */
  readonly rule: string;
  readonly severity: Severity;
  /** One sentence that says what is wrong. */
  readonly message: string;
  readonly place?: Place;
  /** The way out: what to change. */
  readonly fix?: string;
  /** Key path that decides this; the report adds its origin. */
  readonly key?: string;
  /** On a program: the corrected block or blocks, as the dialect writes them. */
  readonly corrected?: string;
}

/** Where a stage hands its findings. */
export type Report = (finding: Finding) => void;
