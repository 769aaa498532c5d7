/** How a sequence passes by the simulation of the stock, where one is asked for. */
import type { Batch } from "#base";
import { atomsPerMillimetre, atomsPerUnit } from "#base";
import type { Gathering, Summary } from "#report";
import { createSimulation } from "#simulate";
import type { SimulationFacts } from "#simulate";
import type { SimulationChoice } from "./inputs.ts";
import type { Undertaking } from "./undertaking.ts";
import { shownTo } from "./undertaking.ts";

/** A simulation of one undertaking, and what its report says in the end. */
export interface Simulating {
  /** Passes a sequence on, and shows it to the simulation. */
  readonly passing: (batches: Iterable<Batch>) => Iterable<Batch>;
  /** Reports the findings; gives what the summary tells. Called once, when all has passed. */
  readonly figures: (findings: Gathering) => Pick<Summary, "simulation">;
}

/** What passes where nothing is simulated. */
const none: Simulating = { passing: (batches) => batches, figures: () => ({}) };

/**
 * Makes a simulation ready.
 *
 * @param work the job that says tools, stock and fixtures; undefined for a program without one
 * @param source what the sequence comes from: the job itself, whose operations are told apart, or a program, by its tools
 */
export function simulating(
  work: Undertaking | undefined,
  choice: SimulationChoice | undefined,
  source: SimulationFacts["source"],
): Simulating {
  if (choice === undefined) return none;
  const simulation = createSimulation(work ? factsOf(work, source) : unknownFacts, sizesOf(work, choice));
  return {
    passing: (batches) => shownTo(batches, simulation),
    figures: (findings) => {
      const { findings: found, done } = simulation.end();
      found.forEach(findings.reportOf("simulate"));
      if (!done) return {};
      const { map: _, ...figures } = done;
      return { simulation: figures };
    },
  };
}

function factsOf(
  { job, operations, units, machine, facts }: Undertaking,
  source: "job" | "program",
): SimulationFacts {
  const parts = operations.map(({ id, tool, source: from }) => ({ id, tool, from }));
  return {
    units,
    source,
    tools: job.tools,
    stock: job.stock,
    fixtures: job.fixtures,
    parts: source === "job" ? parts : [],
    workOffset: job.workOffset,
    machine,
    spindleHolds: facts.spindleHolds,
    rack: facts.rack,
  };
}

/** A program from elsewhere: neither tools nor stock. */
const unknownFacts: SimulationFacts = {
  units: "mm",
  source: "program",
  tools: [],
  stock: undefined,
  fixtures: [],
  parts: [],
  workOffset: 1,
  machine: { rapids: undefined, swap: undefined, rack: undefined },
  spindleHolds: undefined,
  rack: [],
};

function sizesOf(work: Undertaking | undefined, { resolution }: SimulationChoice): { resolution?: number } {
  if (resolution === undefined) return {};
  return { resolution: (resolution * atomsPerUnit[work?.job.units ?? "mm"]) / atomsPerMillimetre };
}
