import { cautions } from "./cautions.ts";
import { clean } from "./clean.ts";
import type {
  CompareAnswer,
  ComparedLines,
  ComparedPair,
  ComparedProgram,
  DifferenceGroup,
  DifferenceKey,
  DifferencePlace,
  StatedAt,
} from "./compare-answer.ts";
import { exampleWords, lettered, letterOf, placesIn } from "./compare-places.ts";
import { counted, groupedDigits } from "./counts.ts";
import { findingsText } from "./text-findings.ts";
import type { Layout } from "./text-findings.ts";
import { row } from "./row.ts";
import { bullets, tally } from "./text-result.ts";
import { hang, length } from "./wrap.ts";

/** From this width on, what two programs say stands side by side. */
const wide = 120;

/** Lines of a program that are shown of a place. */
const shownLines = 4;

type Letters = readonly [string, string];

/**
 * A comparison as text: the programs, then each pair with its differences, meaning before form, and the sizes.
 *
 *     1  spindle speed: order of words                           9 places
 *        A  N470 M03 S6000                                       line 64
 *        B  S6000 M3                                             line 21
 *        because spindle.order
 *          A  start-first (explicit-words.dialect.yaml:31)
 *          B  speed-first (iso-6983.dialect.yaml:60)
 */
export function compareText(answer: CompareAnswer, page: string | undefined, layout: Layout): string[] {
  const { job, programs, pairs } = answer;
  const isProved = programs.some(({ verdict }) => verdict === "proved");
  return [
    ...row("job", clean(job), layout),
    ...programs.flatMap((program, index) => programRow(program, index, layout)),
    ...(page === undefined ? [] : row("page", clean(page), layout)),
    ...programs.flatMap((program, index) => findingsOf(program, index, layout)),
    ...pairs.flatMap((pair) => ["", ...pairText(pair, layout)]),
    ...(pairs.length === 0 ? ["", "There are no two programs to compare."] : []),
    "",
    ...sizesText(programs, layout),
    ...(isProved
      ? ["", layout.paint("warning", "Before one of them runs"), ...bullets(cautions, layout)]
      : []),
  ];
}

function programRow(program: ComparedProgram, index: number, layout: Layout): string[] {
  const { name, title, verdict, findings } = program;
  const state = verdict === "proved" ? layout.paint("good", "proved") : layout.paint("error", "refused");
  const said = findings.length === 0 ? "" : `; ${tally({ findings })}`;
  return row(letterOf(index), `${clean(name)}: ${state}${said}\n${clean(title)}`, layout);
}

/** Errors and warnings of one program; notes stand in the report for programs. */
function findingsOf({ name, findings }: ComparedProgram, index: number, layout: Layout): string[] {
  const grave = findings.filter(({ severity }) => severity !== "note");
  if (grave.length === 0) return [];
  const lines = findingsText(grave, layout);
  while (lines.at(-1) === "") lines.pop();
  return ["", layout.paint("rule", `What was found under ${letterOf(index)}, ${clean(name)}`), "", ...lines];
}

function pairText(pair: ComparedPair, layout: Layout): string[] {
  const letters: Letters = [letterOf(pair.of[0]), letterOf(pair.of[1])];
  const head = `${letters[0]} ${clean(pair.first)}, and ${letters[1]} ${clean(pair.second)}`;
  const [meaning, form] = (["meaning", "form"] as const).map((level) =>
    pair.groups.filter((group) => group.level === level),
  );
  const open = pair.groups.filter(({ keys }) => keys.length === 0).length;
  return [
    layout.paint("rule", head),
    ...hang("", pairSummary(pair, meaning, form), layout.width),
    ...(open === 0
      ? []
      : hang("", `${counted(open, "kind")} of difference that no key accounts for.`, layout.width)),
    "",
    layout.paint("rule", "What differs in meaning"),
    ...(meaning.length === 0 ? ["  nothing: every step of the one is a step of the other"] : []),
    ...meaning.flatMap((group, index) => groupText(group, index + 1, letters, layout)),
    "",
    layout.paint("rule", "What is written otherwise"),
    ...(form.length === 0 ? ["  nothing"] : []),
    ...form.flatMap((group, index) => groupText(group, meaning.length + index + 1, letters, layout)),
  ];
}

/** "1,683 steps are said alike. 15 kinds of difference in meaning at 47 places, 27 of form at 5,012." */
export function pairSummary(
  { alikeSteps }: ComparedPair,
  meaning: readonly DifferenceGroup[],
  form: readonly DifferenceGroup[],
): string {
  const kinds = (groups: readonly DifferenceGroup[], of: string): string =>
    `${counted(groups.length, "kind")} of difference in ${of} at ${counted(placesIn(groups), "place")}`;
  return `${counted(alikeSteps, "step means", "steps mean")} the same in both. ${kinds(meaning, "meaning")}, ${kinds(form, "form")}.`;
}

function groupText(group: DifferenceGroup, number: number, letters: Letters, layout: Layout): string[] {
  const { count, places, keys } = group;
  const found = counted(count, "place");
  const title = hang(
    `${`${number}`.padStart(3)}  `,
    clean(titled(group, letters)),
    layout.width - found.length - 2,
  );
  const room = layout.width - length(title[0]) - found.length;
  const inner = "     ";
  const [place] = places;
  const hasLines = place.first !== undefined || place.second !== undefined;
  return [
    layout.paint("label", title[0]) + " ".repeat(Math.max(2, room)) + found,
    ...title.slice(1),
    ...(hasLines ? placeText(place, letters, layout) : exampleText(group, letters, layout)),
    ...becauseText(keys, letters, layout),
    ...elsewhere(places, letters, { ...layout, width: layout.width - inner.length }).map(
      (line) => inner + line,
    ),
  ];
}

/** "axis words: digits after the point (Z0.000 / Z0)" */
function titled(group: DifferenceGroup, letters: Letters): string {
  const words = exampleWords(group);
  return words === "" ? lettered(group, letters) : `${lettered(group, letters)} (${words})`;
}

/** A difference that stands at no line of its own, such as a sentence of the header. */
function exampleText({ example }: DifferenceGroup, letters: Letters, { width }: Layout): string[] {
  return [example.first, example.second].flatMap((text, side) =>
    text === "" ? [] : hang(`     ${letters[side]}  `, clean(text), width),
  );
}

function placeText(place: DifferencePlace, letters: Letters, layout: Layout): string[] {
  const columns = [place.first, place.second].map((lines, side) => [
    ...linesText(lines),
    ...(place.said?.[side === 0 ? "first" : "second"] ?? []).map((text) => `= ${clean(text)}`),
  ]);
  return layout.width >= wide
    ? sideBySide(columns, letters, layout)
    : columns.flatMap((lines, side) =>
        lines.flatMap((line, index) =>
          hang(`     ${index === 0 ? letters[side] : " "}  `, line, layout.width),
        ),
      );
}

function linesText(lines: ComparedLines | undefined): string[] {
  if (lines === undefined) return [];
  const { texts, more } = lines;
  const left = more + Math.max(0, texts.length - shownLines);
  const shown = texts.slice(0, shownLines).map((text) => clean(text.replaceAll("\t", " ")));
  return left === 0 ? shown : [...shown, `... ${counted(left, "line")} more`];
}

function sideBySide(columns: readonly string[][], letters: Letters, { width }: Layout): string[] {
  const half = Math.floor((width - 5) / 2);
  const cells = columns.map((lines, side) =>
    (lines.length === 0 ? ["-"] : lines).flatMap((line, index) =>
      hang(`${index === 0 ? letters[side] : " "}  `, line, half - 2),
    ),
  );
  const rows = Math.max(cells[0].length, cells[1].length);
  return Array.from({ length: rows }, (_, index) => {
    const [left, right] = [cells[0][index] ?? "", cells[1][index] ?? ""];
    return `     ${left}${" ".repeat(Math.max(2, half - length(left)))}${right}`.trimEnd();
  });
}

function becauseText(keys: readonly DifferenceKey[], letters: Letters, layout: Layout): string[] {
  const { width, paint } = layout;
  if (keys.length === 0) return ["     " + paint("warning", "no key accounts for it: look at the lines")];
  return keys.flatMap(({ key, first, second }) => [
    `     because ${paint("rule", clean(key))}`,
    ...(width >= wide
      ? sideBySide([[statedText(first)], [statedText(second)]], letters, layout)
      : [first, second].flatMap((said, side) => hang(`       ${letters[side]}  `, statedText(said), width))),
  ]);
}

/** "start-first (explicit-words.dialect.yaml:31)" */
export function statedText(said: StatedAt | undefined): string {
  return said === undefined ? "(not stated)" : clean(`${said.value} (${said.file}:${said.line})`);
}

/** Where else: lines of both programs, and lines of the job. */
function elsewhere(places: readonly DifferencePlace[], letters: Letters, { width }: Layout): string[] {
  const lines = (side: "first" | "second"): number[] => [
    ...new Set(places.flatMap((place) => place[side]?.line ?? [])),
  ];
  const named = (["first", "second"] as const).flatMap((side, index) =>
    lines(side).length === 0 ? [] : [`${letters[index]} ${lines(side).join(", ")}`],
  );
  const job = places.flatMap((place) => place.job?.line ?? []);
  if (named.length === 0) return [];
  const jobLines = job.length === 0 ? "" : `; job ${[...new Set(job)].join(", ")}`;
  return hang("lines ", `${named.join("; ")}${jobLines}`, width);
}

/** What the programs amount to, a column each. */
function sizesText(programs: readonly ComparedProgram[], layout: Layout): string[] {
  const proved = programs
    .map((program, index) => ({ program, index }))
    .filter(({ program }) => program.bytes !== undefined);
  if (proved.length === 0) return [];
  const names = ["bytes", "lines", "steps", "dwells, seconds", "dwells by turns", "waits on a signal"];
  const cells = proved.map(({ program, index }) => [
    letterOf(index),
    ...sizesOf(program).map((value) => (value === undefined ? "-" : groupedDigits(value))),
  ]);
  const rows = ["", ...names].map((name, at) =>
    [name.padEnd(20), ...cells.map((column) => column[at].padStart(12))].join(""),
  );
  return [
    layout.paint("rule", "In all"),
    ...rows,
    ...hang(
      "",
      "Dwells in fixed cycles are not counted, and a wait lasts as long as it lasts. Cutting time is not worked out.",
      layout.width,
    ),
  ];
}

/** Bytes, lines, steps, and what is stated of time. */
export function sizesOf({ bytes, lines, steps, times }: ComparedProgram): (number | undefined)[] {
  return [bytes, lines, steps, times?.dwellSeconds, times?.dwellsInTurns, times?.waits];
}
