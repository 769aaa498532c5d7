/** One call of a canonical machining function (NISTIR 6556 4.3), as the interpreter prints it. */
export interface CanonicalCall {
  /** Name of the function, such as "STRAIGHT_FEED". */
  readonly name: string;
  /** Arguments that are numbers, in their order; lengths in program units, with the 4 decimals that were printed. */
  readonly numbers: readonly number[];
  /** Arguments that are names, in their order, such as "CANON_PLANE_XY". */
  readonly words: readonly string[];
  /** What a comment or a message says; "" elsewhere. */
  readonly text: string;
  /** Block number (N word) of the block that was being executed; undefined where it has none. */
  readonly block: number | undefined;
  /** Number of the line of the interpreter's output, from 1. */
  readonly line: number;
}

/**
 * "   52 N20    STRAIGHT_TRAVERSE(1.0000, 2.0000)": number of the call, block number or dots, function, arguments. Behind a
 * number of six digits there is no blank.
 */
const printed = /^\s*\d+\s+N(\d*|\.+)\s*([A-Z_][A-Z_0-9]*)\((.*)\)$/;
const quoted = /^"(.*)"$/;
const number = /^[-+]?(\d+\.?\d*|\.\d+)$/;

/**
 * Reads what the interpreter printed.
 *
 * @param output standard output of the interpreter: one call a line
 * @returns the calls, in their order
 * @throws Error where a line is no call, since a call that is overlooked would compare as none
 */
export function readCanonicalCalls(output: string): CanonicalCall[] {
  const calls: CanonicalCall[] = [];
  for (const [index, line] of output.split(/\r?\n/).entries()) {
    if (line.trim() === "") continue;
    calls.push(readCall(line, index + 1));
  }
  return calls;
}

function readCall(line: string, at: number): CanonicalCall {
  const parts = printed.exec(line);
  if (!parts) throw new Error(`Line ${at} of the interpreter's output is no canonical call: ${line}`);
  const [, block, name, inner] = parts;
  const text = quoted.exec(inner)?.[1];
  // Lengths of tool offsets stand apart by blanks, everything else by commas.
  const items = text === undefined ? inner.split(/[,\s]+/).filter((item) => item !== "") : [];
  return {
    name,
    numbers: items.filter((item) => number.test(item)).map(Number),
    words: items.filter((item) => !number.test(item)),
    text: text ?? "",
    block: block === "" || block.startsWith(".") ? undefined : Number(block),
    line: at,
  };
}
