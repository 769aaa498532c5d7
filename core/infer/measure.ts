import type { Finding, UnitSystem } from "#base";
import type { Dialect } from "#dialect";
import type { Emitter } from "#emit";
import { read } from "#read";
import type { BlockComparison } from "./compare-blocks.ts";
import { compareBlocks } from "./compare-blocks.ts";
import type { Program } from "./program.ts";

/** How a program comes out when it is read under a dialect and written again. */
export interface Measured extends BlockComparison {
  readonly file: string;
  /** What the reader says of it, notes apart. */
  readonly findings: readonly Finding[];
}

/** A dialect ready to read and write. */
export interface Ready {
  readonly dialect: Dialect;
  readonly emitter: Emitter;
}

/**
 * Reads a program under a dialect, writes it again, and compares block by block.
 *
 * @param stated units that the program states
 */
export function measure(
  program: Program,
  { dialect, emitter }: Ready,
  stated: UnitSystem | undefined,
): Measured {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => {
    if (finding.severity !== "note") findings.push(inFile(finding, program.file));
  };
  const { format, machine } = dialect;
  const units = format.unitsIn === "job" ? (stated ?? "mm") : format.unitsIn;
  const rows = read([program.studied], format, machine, { units }, report);
  const decoder = new TextDecoder();
  let text = "";
  try {
    for (const chunk of emitter.emitUnproved(rows, { units, header: [] })) text += decoder.decode(chunk, { stream: true }); // prettier-ignore
  } catch (error) {
    // The emitter has no word for a step that the program has: the rest is not written, and counts as different.
    if (!(error instanceof Error)) throw error;
    findings.push(notWritten(program.file, error.message));
  }
  return { file: program.file, ...compareBlocks(program, text + decoder.decode(), format), findings };
}

function inFile(finding: Finding, file: string): Finding {
  return finding.place === undefined ? finding : { ...finding, place: { ...finding.place, file } };
}

function notWritten(file: string, why: string): Finding {
  const [reason = why] = why.split(";");
  return {
    rule: "dialect/inferred",
    severity: "warning",
    message: `The program cannot be written again to its end. ${reason}.`,
    place: { source: "program", offset: 0, file },
  };
}
