import type { KeyFacts } from "#dialect";
import { clean } from "./clean.ts";
import type { Layout } from "./text-findings.ts";
import { placeText } from "./text-findings.ts";
import { row } from "./row.ts";
import type {
  ExplainedBlock,
  ProgramPart,
  QuotedPlace,
  ShapedLines,
  ShapedWord,
  WhyAnswer,
} from "./why-answer.ts";
import { hang, length } from "./wrap.ts";

/**
 * An answer as text, a block after the other:
 *
 *     line 14    N120 G01 Z-1.500 F200
 *     says       step 31: line to X 10 Y 5 Z -1.5 at 200 mm/min
 *     from       op10, Face
 *       at     plate.job.json:41:7
 *              41  { "line": { "z": -1.5 } },
 *                  ^
 *     G01        motion.line: G01 (own.dialect.yaml:12)
 *                modal.motion: each-block (own.dialect.yaml:3)
 *                  or modal
 *
 * @param places in the job, one for each block
 */
export function whyText(
  answer: WhyAnswer,
  places: readonly (QuotedPlace | undefined)[],
  layout: Layout,
): string[] {
  const { blocks, shaped, lines } = answer;
  const head = shaped === undefined ? [] : shapedText(shaped, lines, blocks.length, layout);
  const texts = blocks.map((block, index) => blockText(block, places[index], lines, layout));
  const apart = texts.flatMap((text, index) => (index === 0 ? text : ["", ...text]));
  return [...head, ...(head.length > 0 && apart.length > 0 ? [""] : []), ...apart];
}

/** Of a key that shapes no word, though it may shape the program. */
const decidesOtherwise =
  "no word names this key: it decides which moves, waits and stops there are, what is refused or how a program is read. " +
  "To see what it does here, compare the program with that of a file that extends this dialect and says it otherwise.";

function shapedText(
  { key, named, count, runs, moreRuns }: ShapedLines,
  lines: number,
  shown: number,
  layout: Layout,
): string[] {
  const listed = runs.map(([first, last]) => (first === last ? `${first}` : `${first}-${last}`));
  const more = moreRuns === 0 ? "" : ` and ${moreRuns} more runs of lines`;
  const where = count === 0 ? "no word of this program" : `${listed.join(", ")}${more}`;
  return [
    ...row("key", clean(key), layout),
    ...(named ? row("shaped", `${count} of ${lines} lines`, layout) : []),
    ...row("lines", named ? where : decidesOtherwise, layout),
    ...(shown < count ? row("shown", `the first ${shown}`, layout) : []),
  ];
}

const parts = {
  start: "the start of the program",
  operation: "the job",
  end: "the end of the program",
} as const satisfies Record<ProgramPart, string>;

function blockText(
  block: ExplainedBlock,
  place: QuotedPlace | undefined,
  lines: number,
  layout: Layout,
): string[] {
  const { line, text, words, operation, part } = block;
  const from = operation === undefined ? parts[part] : clean(operationText(operation));
  return [
    ...row("line", `${line} of ${lines}`, layout),
    ...row("block", clean(text), { ...layout, width: Infinity }),
    ...saysText(block, layout),
    ...row("from", from, layout),
    ...(place === undefined ? [] : placeText({ ...place, severity: "note" }, layout)),
    ...words.flatMap((word) => wordText(word, layout)),
  ];
}

function saysText({ steps, moreSteps }: ExplainedBlock, layout: Layout): string[] {
  if (steps.length === 0) return row("says", "nothing to the machine", layout);
  const said = steps.map(({ step, text }) => `step ${step}: ${clean(text)}`);
  return row("says", [...said, ...(moreSteps === 0 ? [] : [`and ${moreSteps} more`])].join("\n"), layout);
}

const wordColumn = 11;

/** A word, and behind it the keys that shaped it; a long one stands above them. */
function wordText({ text, keys }: ShapedWord, { width, paint }: Layout): string[] {
  const indent = " ".repeat(wordColumn);
  const lines = keys.flatMap((key) => keyText(key, width));
  const name = text === "" ? "(blank)" : clean(text);
  if (length(name) > wordColumn - 3)
    return [`  ${paint("rule", name)}`, ...lines.map((line) => indent + line)];
  const head = `  ${paint("rule", name)}${" ".repeat(wordColumn - 2 - length(name))}`;
  return lines.map((line, index) => (index === 0 ? head : indent) + line);
}

function keyText({ key, value, file, line, others }: KeyFacts, width: number): string[] {
  const room = width - wordColumn;
  const stated = value === undefined ? `${key}, which no file states` : `${key}: ${value} (${file}:${line})`;
  return [
    ...hang("", clean(stated), room).map((text, index) => (index === 0 ? text : `  ${text}`)),
    ...(others.length === 0 ? [] : hang("  or ", others.join(", "), room)),
  ];
}

/** "op30, Slot two" -> and which tool does it, where that is not the one that the job names */
function operationText({ id, name, spare }: NonNullable<ExplainedBlock["operation"]>): string {
  const by = spare === undefined ? "" : `; tool ${spare.by}, a spare, does it for tool ${spare.tool}`;
  return `${id}, ${name}${by}`;
}
