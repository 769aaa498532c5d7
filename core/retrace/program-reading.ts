import type { ByteSource } from "#base";
import type { Dialect } from "#dialect";

/** How a program is read as a job. */
export interface ProgramReading {
  readonly form: "program";
  /** The dialect that it is written in. */
  readonly dialect: Dialect;
  /** What a program cannot say: a job in JSON without `operations`. */
  readonly head?: ByteSource;
}
