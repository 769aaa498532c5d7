import { memorySource } from "#base";
import type { Setup } from "#dialect";
import type { SetupSheet, SheetPlan } from "#report";
import { createSha256 } from "../../core/index.ts";
import type { ProgramOptions } from "../../core/index.ts";
import type { SheetOutcome } from "../../core/sheet/index.ts";
import { sheet } from "../../core/sheet/index.ts";
import { ready } from "../support/ready.ts";

/** What a sheet of a test is made of. */
export interface SheetCase {
  readonly job: string;
  readonly dialect: string;
  /** Dialect files that stand in the test alone. */
  readonly texts?: Readonly<Record<string, string>>;
  readonly options?: ProgramOptions;
  readonly setup?: Setup;
}

/** Makes the sheet of a job that stands in memory. */
export async function sheetOf({
  job,
  dialect,
  texts,
  options = {},
  setup,
}: SheetCase): Promise<SheetOutcome> {
  return sheet({
    ...(await ready(dialect, texts)),
    source: memorySource(new TextEncoder().encode(job)),
    createDigest: createSha256,
    options,
    ...(setup === undefined ? {} : { setup }),
    named: {
      job: { file: "plate.job.json", sha256: "0".repeat(64) },
      dialect: [{ file: "router.dialect.yaml", sha256: "1".repeat(64) }],
      program: "plate.tap",
      options: [],
    },
  });
}

/** The plan of a sheet; it is there where the job can be read. */
export function planOf({ plan }: SetupSheet): SheetPlan {
  if (plan === undefined) throw new Error("the sheet has no plan");
  return plan;
}
