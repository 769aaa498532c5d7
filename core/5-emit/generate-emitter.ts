import ts from "typescript";
import type { Format } from "#dialect";
import { exported, list, str } from "./builders.ts";
import type { FunctionDeclaration, Statement } from "./builders.ts";
import type { Context } from "./context.ts";
import { createContext } from "./context.ts";
import { defineCharacters } from "./characters.ts";
import { defineFault } from "./fault.ts";
import type { ModuleOrigin } from "./module-header.ts";
import { moduleHeader } from "./module-header.ts";
import { reachable } from "./reachable.ts";
import { tidy } from "./tidy.ts";
import { defineSteps } from "./step-writers.ts";
import { defineArcs } from "./write-arc.ts";
import { defineBlocks } from "./write-block.ts";
import { defineDecimals, defineWholes } from "./write-decimals.ts";
import { defineFeed } from "./write-feed.ts";
import { defineFrame } from "./write-frame.ts";
import { defineSettle } from "./write-held.ts";
import { defineHole } from "./write-hole.ts";
import { defineCleanText } from "./write-idiom.ts";
import { defineNumbers } from "./write-number.ts";
import { defineEmit, defineRowKinds, defineRows, defineStep } from "./write-rows.ts";
import { defineSection } from "./write-section.ts";
import { defineChunkSize, defineState } from "./write-state.ts";
import { defineStraights } from "./write-straight.ts";
import { defineComment, defineTexts } from "./write-text.ts";

/** What is generated. */
export interface GenerateOptions {
  readonly traced: boolean;
  readonly origin?: ModuleOrigin;
}

/** What a reader of the module has to know about its numbers. */
const conventions = `// Axes are bits of a mask: x 1, y 2, z 4, a 8, b 16, c 32. A row's frame is 0 in work and 1 in machine coordinates. Lengths
// are whole atoms of 0.1 nm, angles micro-degrees, times microseconds, speeds 0.001 rpm. A writer takes the place in the
// chunk where it begins to write, and returns the place behind what it wrote.
`;

/**
 * Compiles the format of a dialect into an emitter: the source of an ES module that exports `emitUnproved` (see Emitter),
 * the traced one `traceKeys`, too. The dialect is decided here once; what is left for run time is the sequence and the
 * units of the program.
 *
 * @param options traced: each word reports the dialect keys behind it, the text is the same; origin: what its header says of
 * where it comes from
 * @throws where a number format is finer than the base units, which a dialect is refused for
 */
export function generateEmitter(format: Format, options: GenerateOptions): string {
  const context = createContext(format, options.traced);
  const functions = tidy(defineFunctions(context));
  const keys = options.traced ? [exported("traceKeys", list(context.keys.map(str), true))] : [];
  const groups: readonly Group[] = [
    { about: "A chunk is handed on as soon as it is longer, in bytes.", statements: [defineChunkSize()] },
    { about: "Kinds of rows.", statements: defineRowKinds() },
    { about: "Codes of characters.", statements: defineCharacters() },
    { about: "The dialect keys that words report, by their index.", statements: keys },
    { about: undefined, statements: functions },
  ];
  return `${moduleHeader(options.origin, options)}\n${conventions}${print(groups)}`;
}

/** Statements under a common comment. */
interface Group {
  readonly about: string | undefined;
  readonly statements: readonly Statement[];
}

/** What is needed of each group. Declarations stand line by line, functions apart. */
function print(groups: readonly Group[]): string {
  const printer = ts.createPrinter({ newLine: ts.NewLineKind.LineFeed });
  const file = ts.createSourceFile("emitter.js", "", ts.ScriptTarget.ES2022, false, ts.ScriptKind.JS);
  const needed = new Set(reachable(groups.flatMap(({ statements }) => statements)));
  return groups
    .map(({ about, statements }) => {
      const texts = statements
        .filter((statement) => needed.has(statement))
        .map((statement) => printer.printNode(ts.EmitHint.Unspecified, statement, file));
      if (about === undefined) return texts.map((text) => `\n${text}\n`).join("");
      return texts.length === 0 ? "" : `\n// ${about}\n${texts.join("\n")}\n`;
    })
    .join("");
}

/** All functions, from the page down to the digits. */
function defineFunctions(context: Context): FunctionDeclaration[] {
  const page = [defineEmit(context), defineCleanText(context), defineRows(context), defineStep()];
  const rows = [...defineStraights(context), ...defineArcs(context), defineHole(context)];
  const steps = [...defineSteps(context), ...defineFrame(context), defineSettle(context)];
  const blocks = [
    ...defineBlocks(context),
    ...defineSection(context),
    ...defineState(context),
    ...defineComment(context),
  ];
  const numbers = [defineFeed(context), ...defineNumbers(context)];
  const printers = [...context.printers].map(([name, format]) => defineDecimals(name, format));
  return [
    ...page,
    ...rows,
    ...steps,
    ...blocks,
    ...numbers,
    ...printers,
    ...defineWholes(),
    ...defineTexts(context),
    defineFault(),
  ];
}
