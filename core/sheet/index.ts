/**
 * A set-up sheet: what the machinist who walks to the machine has to know of a job and of its program, as plain data that
 * 8-report shows.
 *
 *     job × dialect ──post──▶ verdict, proof, findings ─┐
 *     job × dialect ──row pairs──▶ rows with lines ──count──▶ extents, feeds, stops ─┴─▶ sheet
 *
 * The program is written twice: once to be proved, once to be counted. A job that is refused has a sheet, too, which says so and has
 * no program. No file access here.
 */
import { gather } from "#report";
import type { SetupSheet, SheetProgram } from "#report";
import { post } from "../compile.ts";
import type { Outcome } from "../inputs.ts";
import { undertake } from "../undertaking.ts";
import type { NamedInputs, SheetInput } from "./input.ts";
import { sheetPlan } from "./plan.ts";
import { provedRows, refusedRows } from "./program-rows.ts";

export type { NamedInputs, SheetInput } from "./input.ts";

/** What came of it. */
export interface SheetOutcome {
  readonly outcome: Outcome;
  readonly sheet: SetupSheet;
}

/** Posts a job to nowhere, and makes the sheet of its program. */
export function sheet(input: SheetInput): SheetOutcome {
  const outcome = post({ ...input, sink: { write: () => undefined } });
  const program = programOf(outcome, input.named);
  const work = undertake(input, input, gather());
  const { name, title, machine } = input.dialect;
  const { job, head, setup, readAs, dialect: files, options } = input.named;
  return {
    outcome,
    sheet: {
      verdict: program === undefined ? "refused" : "proved",
      job,
      ...(head === undefined ? {} : { head }),
      ...(setup === undefined ? {} : { setup }),
      ...(readAs === undefined ? {} : { readAs }),
      dialect: { name, title, files, hasMachine: machine.declared },
      options,
      ...(program === undefined ? {} : { program }),
      ...(work === undefined
        ? {}
        : {
            plan: sheetPlan(input, work, program ? provedRows(input) : refusedRows(work), {
              program,
              simulation: outcome.summary.simulation,
              time: outcome.summary.time,
            }),
          }),
    },
  };
}

function programOf({ proof }: Outcome, { program }: NamedInputs): SheetProgram | undefined {
  if (proof === undefined) return undefined;
  const { bytes, steps, sha256, facts } = proof;
  return { file: program, bytes, steps, sha256, facts };
}
