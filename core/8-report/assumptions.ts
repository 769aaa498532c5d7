import type { JobFacts, MachineFacts } from "#base";
import type { Job, Operation } from "#job";

/** What a program is written for. */
export interface Undertaking {
  readonly job: Job;
  readonly operations: readonly Operation[];
  readonly machine: MachineFacts;
  readonly facts: JobFacts;
}

/**
 * What the program takes for granted at the machine, one short sentence each: it stands in the report, at the head of the
 * program and on the set-up sheet.
 */
export function assumptions({ job, operations, machine, facts }: Undertaking): string[] {
  const offsets = [...new Set(operations.map((operation) => operation.workOffset))].sort((a, b) => a - b);
  const tools = toolsUsed(operations);
  return [
    // Without machine coordinates nothing goes by the reference position: such machines may have none.
    ...(machine.retract?.by === "clearance" ? [] : ["The machine is homed."]),
    `Work offset${offsets.length === 1 ? "" : "s"} ${offsets.join(", ")} ${offsets.length === 1 ? "is" : "are"} set.`,
    ...spindleSentence(facts, machine),
    ...(machine.swap === "rack" ? rackSentences(facts) : []),
    ...lengthSentence(machine),
    ...(machine.retract?.by === "clearance"
      ? ["Z is set for the tool now in the spindle, and the way up to clearance is free."]
      : []),
    ...(machine.confirm.air === undefined ? [] : ["Air is on, the drawbar is clamped."]),
    ...(job.stock === undefined ? ["No stock is stated: rapids are not checked against it."] : []),
    `Tools: ${tools.map((number) => toolWords(job, number)).join("; ")}.`,
  ];
}

/** Tool numbers in the order of first use. */
export function toolsUsed(operations: readonly Operation[]): number[] {
  return [...new Set(operations.map((operation) => operation.tool))];
}

function toolWords(job: Job, number: number): string {
  const tool = job.tools.find((one) => one.number === number);
  return `${String(number)} ${tool?.description || tool?.kind || "unknown"}`;
}

function spindleSentence(facts: JobFacts, machine: MachineFacts): string[] {
  if (facts.spindleHolds === 0) return ["The spindle is empty."];
  if (facts.spindleHolds !== undefined) return [`The spindle holds tool ${String(facts.spindleHolds)}.`];
  return machine.swap === "rack" ? ["The program stops first and asks for an empty spindle."] : [];
}

function rackSentences(facts: JobFacts): string[] {
  const filled = facts.rack.flatMap((tool, index) =>
    tool === 0 ? [] : [`pocket ${String(index + 1)} tool ${String(tool)}`],
  );
  const empty = facts.rack.flatMap((tool, index) => (tool === 0 ? [String(index + 1)] : []));
  return [
    ...(filled.length === 0 ? [] : [`The rack is loaded: ${filled.join(", ")}.`]),
    ...(empty.length === 0 ? [] : [`Empty pockets: ${empty.join(", ")}.`]),
  ];
}

function lengthSentence(machine: MachineFacts): string[] {
  if (machine.lengths === "table") return ["Tool lengths are measured and stand in the controller's table."];
  if (machine.lengths === "operator") return ["Z is set by hand for each tool."];
  return [];
}
