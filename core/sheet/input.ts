import type { HashedFile } from "#report";
import type { JobInput, Means, SimulationChoice } from "../inputs.ts";

/** What a sheet is made from. */
export interface SheetInput extends JobInput, Means {
  readonly named: NamedInputs;
  /** Simulate the stock; it changes no program. */
  readonly simulate?: SimulationChoice;
}

/** The files behind a sheet as the user knows them, with their hashes. */
export interface NamedInputs {
  readonly job: HashedFile;
  readonly head?: HashedFile;
  readonly setup?: HashedFile;
  /** The chain of the dialect under which a program is read as a job. */
  readonly readAs?: readonly HashedFile[];
  /** The chain of the dialect, the leaf first. */
  readonly dialect: readonly HashedFile[];
  /** Name under which `post` writes the program. */
  readonly program: string;
  /** Options that change the program, as the command line has them. */
  readonly options: readonly string[];
}
