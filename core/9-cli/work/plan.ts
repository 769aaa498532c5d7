import type { SimulationChoice } from "#compile";
import type { Setup } from "#dialect";
import type { ClOptions } from "#job";
import type { AirCut } from "#lower";
import type { LoadedDialect } from "../dialects/loaded.ts";
import type { Input } from "../files/input.ts";
import type { Staged } from "../files/staged.ts";

/** Choices that change a program. */
export interface ProgramOptions {
  /** Ids of the operations to write; undefined: all. */
  readonly only: readonly string[] | undefined;
  /** Id of the operation to begin with. */
  readonly from: string | undefined;
  /** Tool in the spindle at the start. */
  readonly spindleHolds: number | "none" | undefined;
  /** Tool in each pocket now, pocket 1 first. */
  readonly rackNow?: readonly number[];
  readonly airCut: AirCut | undefined;
  readonly optionalStops: boolean;
}

/** In which form a job stands in its file, and what that form lacks. */
export type PlannedReading =
  | { readonly form: "json" }
  | { readonly form: "cl"; readonly options: ClOptions; readonly head: Input | undefined }
  | { readonly form: "program"; readonly dialect: LoadedDialect; readonly head: Input | undefined };

/** A job with what belongs to it. */
export interface PlannedJob {
  readonly input: Input;
  readonly reading: PlannedReading;
  readonly setup: { readonly input: Input; readonly content: Setup } | undefined;
  /** The file that says what is in the rack now; what it says is in the options. */
  readonly rack: Input | undefined;
  readonly options: ProgramOptions;
}

/** Work that is ready to start: every file is open, so that nothing of the world is asked for in the middle. Plain data. */
export type Plan = PostPlan | ProvePlan;

export interface PostPlan {
  readonly kind: "post";
  readonly dialect: LoadedDialect;
  readonly job: PlannedJob;
  readonly simulate: SimulationChoice | undefined;
  readonly staged: Staged;
}

export interface ProvePlan {
  readonly kind: "prove";
  readonly dialect: LoadedDialect;
  readonly program: Input;
  readonly against: PlannedJob | undefined;
  readonly simulate: SimulationChoice | undefined;
}

/** Called as the work goes on: how much of the input is done, of how much. */
export type Progress = (done: number, total: number) => void;
