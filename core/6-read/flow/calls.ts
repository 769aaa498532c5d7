import type { Reader } from "../reader.ts";
import * as variableFindings from "../variables/findings-variables.ts";
import { closeScope, openScope } from "../variables/parameters.ts";
import * as findings from "./findings-flow.ts";
import type { Flow } from "./flow.ts";
import type { PlacedLine } from "./structures.ts";

/** A call as its line says it. */
interface Wanted {
  readonly label: string;
  /** Values of #1 on; undefined where parameters are shared. */
  readonly given: readonly number[] | undefined;
  /** How often the subprogram is to run. */
  readonly times: number;
}

/**
 * Begins a subprogram. O words call what SUB begins, with parameters of its own; M98 calls what O and a number begin.
 *
 * @returns byte offset of its first line; -1 where there is none, or calls are too deep, which is reported
 */
export function beginCall(reader: Reader, flow: Flow, line: PlacedLine, wanted: Wanted): number {
  const { label, given, times } = wanted;
  const subprogram = flow.structures?.subprograms.get(label);
  const keyword = given === undefined ? "O" : "SUB";
  if (subprogram === undefined) {
    reader.report(findings.unknownSubprogram(line.offset, label));
    return -1;
  }
  if (subprogram.keyword !== keyword) {
    const how =
      keyword === "SUB" ? "M98, and here it is called by an O word" : "an O word, and here M98 calls it";
    const message = `The subprogram ${label} is written for calls by ${how}.`;
    reader.report(findings.badStructure(line.offset, message, "Call it by its own kind of word."));
    return -1;
  }
  if (flow.calls.length >= flow.nesting) {
    reader.report(variableFindings.tooDeep(line.offset, "Calls", flow.nesting));
    return -1;
  }
  flow.called.add(label);
  flow.calls.push({ subprogram, returnTo: line.next, left: times, rounds: new Map() });
  openScope(reader.parameters, given);
  return subprogram.start.next;
}

/** Ends the subprogram at hand, or begins it again where it is to run more often. */
export function endCall({ parameters }: Reader, flow: Flow): number {
  const call = flow.calls.at(-1);
  // Subprograms are passed over where they stand, so that their ends are come to in calls alone.
  if (call === undefined) throw new Error("A subprogram ends that was not called.");
  call.left--;
  closeScope(parameters);
  if (call.left > 0) {
    openScope(parameters, undefined);
    call.rounds.clear();
    return call.subprogram.start.next;
  }
  flow.calls.pop();
  return call.returnTo;
}
