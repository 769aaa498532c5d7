import type { Capabilities, JobFacts, MachineFacts, UnitSystem } from "#base";
import type { Job } from "#job";

/** What belongs to one set-up of the machine; it overrides the dialect's leaf. */
export interface Setup {
  /** Origins of work offsets in machine coordinates, atoms; index is the offset number, 0 is unused. */
  readonly workOffsets: readonly (readonly [number, number, number] | undefined)[];
  /** Gauge lengths by tool number, atoms. */
  readonly lengths: Readonly<Record<number, number>>;
  /** Tool in each pocket, index 0 is pocket 1, 0 means empty; undefined: tools are placed in order of first use. */
  readonly rack: readonly number[] | undefined;
  /** Tool in the spindle at the start: its number, 0 for none, undefined for unknown. */
  readonly spindleHolds: number | undefined;
}

/** What the guard knows of the job, and what sequencing plans besides. */
export interface PlannedFacts extends JobFacts {
  /** Pocket of the tool that the spindle holds at the start, counted from 0; undefined where none is planned. */
  readonly heldPocket: number | undefined;
}

/** What the facts of a job are planned from. */
export interface PlanRequest {
  readonly job: Job;
  /** Operations that are posted, as indexes into the job's, in order. */
  readonly operations: readonly number[];
  readonly capabilities: Capabilities;
  readonly machine: MachineFacts;
  /** Unit system of the program. */
  readonly units: UnitSystem;
  readonly setup: Setup;
  /** Origins of work offsets that the leaf states (`machine.work-zero`), as in `Setup`. */
  readonly workZero: readonly (readonly [number, number, number] | undefined)[];
}

/** What sequencing works from. */
export interface SequenceRequest {
  readonly job: Job;
  /** Operations that are posted, as indexes into the job's, in order. */
  readonly operations: readonly number[];
  readonly capabilities: Capabilities;
  readonly machine: MachineFacts;
  readonly facts: PlannedFacts;
  /** Unit system of the program. */
  readonly units: UnitSystem;
  /** A dry run above the stock: the spindle is never started. */
  readonly airCut: boolean;
  /** Text as the emitter writes it, so that what is read back is the same. */
  readonly cleanText: (text: string) => string;
}
