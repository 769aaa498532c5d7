import type { ByteSource, Finding, UnitSystem } from "#base";
import type { Dialect } from "#dialect";
import type { Emitter } from "#emit";
import type { Proof } from "#prove";
import type { Summary, Verdict } from "#report";
import type { InputReading } from "#retrace";
import type { Setup } from "#sequence";

/** A running hash: SHA-256, handed in because the core runs without Node. */
export interface Digest {
  update(chunk: Uint8Array): void;
  /** Hexadecimal; called once, at the end. */
  hex(): string;
}

/** Options that change a program. */
export interface ProgramOptions {
  /** Ids of the operations to post; all where it is absent. */
  readonly only?: readonly string[];
  /** Id of the operation to begin with. */
  readonly from?: string;
  /** Tool in the spindle at the start; unknown where it is absent. */
  readonly spindleHolds?: number | "none";
  /** Tool in each pocket now, index 0 is pocket 1, 0 means empty: the rack is loaded with the least change. */
  readonly rackNow?: readonly number[];
}

/** A job and what belongs to it. */
export interface JobInput {
  readonly source: ByteSource;
  /** In which form the job stands there; as JSON where it is absent. */
  readonly reading?: InputReading;
  readonly setup?: Setup;
  readonly options: ProgramOptions;
}

/** What both ways need. */
export interface Means {
  readonly dialect: Dialect;
  /** Compiled from the dialect's format. */
  readonly emitter: Emitter;
  readonly createDigest: () => Digest;
  /** Called now and then with the bytes of the input that are done, and all of them. */
  readonly progress?: (done: number, total: number) => void;
}

/** How the stock is simulated. */
export interface SimulationChoice {
  /** Width of a cell in the job's units; chosen by stock and tools where it is absent. */
  readonly resolution?: number;
}

/** Post a job. */
export interface PostInput extends JobInput, Means {
  /** Simulate the stock; it changes no program. */
  readonly simulate?: SimulationChoice;
  /** Where the text goes while it is being proved; it is not to be used before there is a proof. */
  readonly sink: { write(chunk: Uint8Array): void };
}

/** Read a program, and compare it with a job if there is one. */
export interface ProveInput extends Means {
  readonly program: ByteSource;
  readonly against?: JobInput;
  /** Simulate the stock of that job, cut as the program says. */
  readonly simulate?: SimulationChoice;
  /** Units of the program, where neither it nor the dialect has words for them and there is no job. */
  readonly units?: UnitSystem;
}

/** What came of it. */
export interface Outcome {
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  /** Present exactly where the verdict is "proved". */
  readonly proof?: Proof;
  readonly summary: Summary;
}
