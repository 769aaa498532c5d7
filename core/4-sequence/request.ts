import type { Capabilities, JobFacts, MachineFacts, UnitSystem } from "#base";
import type { Setup } from "#dialect";
import type { Job } from "#job";

/** What the guard knows of the job, and what sequencing plans besides. */
export interface PlannedFacts extends JobFacts {
  /** Pocket of the tool that the spindle holds at the start, counted from 0; undefined where none is planned. */
  readonly heldPocket: number | undefined;
  /** The operation before which each of `reloads` stands, as an index into the job's. */
  readonly reloadsBefore?: readonly number[];
  /** Tool in each pocket before the rack is loaded for this program; absent where nobody says. */
  readonly rackNow?: readonly number[];
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
  /** Tool in each pocket now, before the rack is loaded for the program; absent where nobody says. */
  readonly rackNow?: readonly number[];
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
