/** What is ticked off before the start, and how the program is proved out: the trade's ladder, with the numbers of this job. */
import { unitWord } from "#base";
import type { AirCut, CheckStep, SheetPlan, SheetProgram } from "#report";

/** What the steps are made from. */
export type ChecksInput = Pick<
  SheetPlan,
  "tools" | "fixtures" | "stock" | "workOffsets" | "assumptions" | "machine" | "units" | "rack"
> & { readonly program: SheetProgram | undefined; readonly airCut: AirCut | undefined };

function step(text: string, each: readonly string[] = []): CheckStep {
  return { text, each };
}

/** To be ticked off before the start: the set-up, and each thing that the program takes for granted. */
export function beforeStart(input: ChecksInput): CheckStep[] {
  const { stock, fixtures, tools, program, assumptions, rack } = input;
  const clamps = fixtures.map(({ name }) => name);
  // Tools and pockets have a tick for each; the sentences that list them would ask for the same twice.
  const sentences = assumptions.filter((text) => !/^(Tools: |The rack is loaded|Empty pockets)/.test(text));
  return [
    ...(program === undefined
      ? []
      : [step(`The file in the control is the one of this sheet: its SHA-256 is the number above.`)]),
    ...(stock === undefined ? [] : [step("The stock lies as drawn, and is held so that it cannot move.")]),
    ...(clamps.length === 0 ? [] : [step("Clamps and fixtures are where they are drawn:", clamps)]),
    step(
      "Tools are in their places, sharp, clean at the taper, tight, and stick out as listed:",
      tools.map(
        ({ number, pocket }) => `tool ${number}${pocket === undefined ? "" : ` in pocket ${pocket}`}`,
      ),
    ),
    ...(rack.some(({ tool }) => tool === 0) ? [step("Pockets that are listed as empty are empty.")] : []),
    ...sentences.map((text) => step(text)),
    step("Guards are shut, nobody is in reach, the emergency stop is known and works."),
  ];
}

/** How it is proved out, step by step; nothing of it for a job without a program. */
export function proveOutSteps(input: ChecksInput): CheckStep[] {
  if (input.program === undefined) return [];
  const { tools } = input;
  const each = tools.map(({ number }) => `tool ${number}`);
  return [
    step(
      "Look at the program in the control's graphics, if it has them: it stays inside the extents of this sheet.",
    ),
    ...airCutSteps(input, each),
    step(
      "First approach of each tool: single block on, rapids at their lowest, a hand on feed hold, eyes on the distance to go. Stop well above the work and measure if in doubt.",
      each,
    ),
    step(
      "First part: softer or spare material if you have it, feeds turned down, optional stops on. Listen, look at the chips.",
    ),
    step("Measure the first part, and write down what was changed; only then let it run at its full rates."),
  ];
}

function airCutSteps({ airCut, units, machine }: ChecksInput, each: readonly string[]): CheckStep[] {
  if (airCut === undefined) return [];
  const { lowest, above, raise, room } = airCut;
  const unit = unitWord[units];
  const how = machine.lengths === "operator" ? "Set Z zero" : "Raise the work offsets in Z by";
  const higher = machine.lengths === "operator" ? " higher than it is" : "";
  const why = `the lowest point, Z${lowest}, then stays at or above the clearance, Z${above}`;
  if (room !== undefined && room < raise)
    return [
      step(
        `An air cut would need the work offsets ${raise} ${unit} higher, and the travel of Z leaves ${room} ${unit}: run it with the machine locked, if the control can, and go on block by block with special care.`,
        each,
      ),
    ];
  const limit = room === undefined ? " See first that the travel of Z allows it." : "";
  return [
    step(
      `Air cut. ${how} ${raise} ${unit}${higher}: ${why}. Run the whole program, block by block, rapids at their lowest, a hand on feed hold.${limit}`,
      each,
    ),
    step(`Put the work offsets back as they were, and look at them once more.`),
  ];
}
