/** A comparison in the form that its page asks for: texts alone, and numbers as people read them. */
import Handlebars from "handlebars";
import { cautions } from "../cautions.ts";
import { clean } from "../clean.ts";
import type {
  CompareAnswer,
  ComparedLines,
  ComparedPair,
  ComparedProgram,
  DifferenceGroup,
  DifferencePlace,
  ListedRow,
  StatedAt,
} from "../compare-answer.ts";
import { exampleWords, lettered, letterOf } from "../compare-places.ts";
import { counted, groupedDigits } from "../counts.ts";
import { findingView } from "../finding-view.ts";
import { pairSummary, sizesOf } from "../text-compare.ts";
import { pageStyle } from "./style.ts";
import { pageTemplate } from "./template.ts";

const template = Handlebars.compile(pageTemplate, { strict: true, preventIndent: true });

type Letters = readonly [string, string];

/** Renders the page; every text of a job, program or dialect is escaped by the template. */
export function renderPage(answer: CompareAnswer): string {
  const { job, programs, pairs } = answer;
  return template({
    style: new Handlebars.SafeString(pageStyle),
    job: clean(job),
    names: programs.map(({ name }) => clean(name)).join(", "),
    programs: programs.map(programView),
    found: programs.flatMap(foundView),
    pairs: pairs.map(pairView),
    isAlone: pairs.length === 0,
    cautions,
  });
}

function programView(program: ComparedProgram, index: number) {
  const { name, title, verdict, files } = program;
  const isProved = verdict === "proved";
  return {
    letter: letterOf(index),
    name: clean(name),
    title: clean(title),
    files: files.map(clean).join(", which extends "),
    verdict: isProved ? "✓ proved" : "✕ refused",
    state: isProved ? "good" : "bad",
    sizes: sizesOf(program).map((value) => (value === undefined ? "–" : groupedDigits(value))),
  };
}

/** Findings of a program, but for notes, which say nothing about what differs. */
function foundView({ name, findings }: ComparedProgram, index: number) {
  const grave = findings.filter(({ severity }) => severity !== "note");
  if (grave.length === 0) return [];
  return [{ letter: letterOf(index), name: clean(name), findings: grave.map(findingView) }];
}

function pairView(pair: ComparedPair, index: number) {
  const letters: Letters = [letterOf(pair.of[0]), letterOf(pair.of[1])];
  const id = `pair-${index + 1}`;
  const numbered = pair.groups.map((group, at) => groupView(group, at + 1, id, letters));
  const [meaning, form] = (["meaning", "form"] as const).map((level) =>
    pair.groups.filter((group) => group.level === level),
  );
  return {
    id,
    a: letters[0],
    b: letters[1],
    first: clean(pair.first),
    second: clean(pair.second),
    summary: pairSummary(pair, meaning, form),
    levels: [
      { level: "meaning", title: "What differs in meaning", groups: numbered.slice(0, meaning.length), id },
      { level: "form", title: "What is written otherwise", groups: numbered.slice(meaning.length), id },
    ].map((level) => ({ ...level, isEmpty: level.groups.length === 0 })),
    listing: pair.listing.map((row) => listedView(row, id, pair.groups)),
    hasListing: pair.listing.length > 0,
    left: pair.unlisted === 0 ? "" : counted(pair.unlisted, "further row"),
  };
}

function groupView(group: DifferenceGroup, number: number, pair: string, letters: Letters) {
  const { places, keys, count, level, example } = group;
  const [place] = places;
  const hasLines = place.first !== undefined || place.second !== undefined;
  return {
    id: `${pair}-${number}`,
    number,
    level,
    what: clean(lettered(group, letters)),
    words: clean(exampleWords(group)),
    places: counted(count, "place"),
    because: keys.length === 0 ? "no key accounts for it" : keys.map(({ key }) => clean(key)).join(", "),
    keys: keys.map(({ key, first, second }) => ({
      key: clean(key),
      sides: [statedView(first), statedView(second)],
    })),
    hasKeys: keys.length > 0,
    a: letters[0],
    b: letters[1],
    sides: hasLines
      ? [
          sideView(place.first, place.said?.first, letters[0]),
          sideView(place.second, place.said?.second, letters[1]),
        ]
      : [exampleView(example.first, letters[0]), exampleView(example.second, letters[1])],
    elsewhere: elsewhere(places, letters),
  };
}

function statedView(said: StatedAt | undefined) {
  if (said === undefined) return { value: "(not stated)", at: "" };
  return { value: clean(said.value), at: clean(`${said.file}:${said.line}`) };
}

function sideView(lines: ComparedLines | undefined, said: readonly string[] | undefined, letter: string) {
  return {
    letter,
    at: lines === undefined ? "" : `line ${groupedDigits(lines.line)}`,
    text: textOf(lines),
    isEmpty: lines === undefined,
    said: (said ?? []).map(clean),
  };
}

function exampleView(text: string, letter: string) {
  return { letter, at: "", text: clean(text), isEmpty: text === "", said: [] };
}

function textOf(lines: ComparedLines | undefined): string {
  if (lines === undefined) return "";
  const more = lines.more === 0 ? [] : [`… ${counted(lines.more, "line")} more`];
  return [...lines.texts.map(clean), ...more].join("\n");
}

/** "lines 64, 119 of A; 21, 52 of B; lines 19, 50 of the job" */
function elsewhere(places: readonly DifferencePlace[], [a, b]: Letters): string {
  const list = (numbers: readonly number[], of: string): string[] => {
    const own = [...new Set(numbers)];
    return own.length === 0 ? [] : [`${own.length === 1 ? "line" : "lines"} ${own.join(", ")} of ${of}`];
  };
  return [
    ...list(
      places.flatMap(({ first }) => first?.line ?? []),
      a,
    ),
    ...list(
      places.flatMap(({ second }) => second?.line ?? []),
      b,
    ),
    ...list(
      places.flatMap(({ job }) => job?.line ?? []),
      "the job",
    ),
  ].join("; ");
}

function listedView(
  { first, second, groups: numbers }: ListedRow,
  id: string,
  groups: readonly DifferenceGroup[],
) {
  const isMeaning = numbers.some((number) => groups[number - 1].level === "meaning");
  return {
    first: textOf(first),
    firstLine: first === undefined ? "" : groupedDigits(first.line),
    second: textOf(second),
    secondLine: second === undefined ? "" : groupedDigits(second.line),
    links: numbers.map((number) => ({ number, id: `${id}-${number}` })),
    level: numbers.length === 0 ? "same" : isMeaning ? "meaning" : "form",
    mark: numbers.length === 0 ? "" : isMeaning ? "meaning" : "form",
  };
}
