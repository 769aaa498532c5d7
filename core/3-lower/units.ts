import type { Capabilities, Report, UnitSystem } from "#base";
import type { Job } from "#job";
import { undeclared, unitsNotSaid } from "./findings.ts";

/** The units in which the program is written: the job's, or the one system that the dialect has. */
export function programUnits(job: Job, capabilities: Capabilities, report: Report): UnitSystem {
  const { programsIn, words } = capabilities;
  if (programsIn === undefined) {
    report(undeclared("units.programs-in", "to choose its units", "units: { programs-in: job }", 0));
    return job.units;
  }
  if (programsIn !== "job") return programsIn;
  const word = words[`units.${job.units}`];
  if (word === undefined)
    report(undeclared(`units.${job.units}`, "to state its units", `units: { ${job.units}: G2x }`, 0));
  if (word === false) report(unitsNotSaid(job.units, 0));
  return job.units;
}
