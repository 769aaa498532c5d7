import { axisBit } from "#base";
import * as findings from "../findings.ts";
import { above0, length, lengthAbove0, tellOnce, wholeNumber, withinLengths } from "../items.ts";
import { scales } from "../../scan/number.ts";
import type { ClRun, Cycle, Feed } from "../state.ts";
import type { Item, Statement } from "../statement.ts";
import type { CycleItem, CycleWord } from "./cycle-items.ts";
import { sortItems } from "./cycle-items.ts";
import { feedUnits, readFeed } from "./feed.ts";
import { dwellsLong } from "./spindle.ts";

type Sorted = ReadonlyMap<CycleWord, CycleItem>;

/** What a cycle of a name does, and the words that it needs and may have beside depth, feed and heights [memory]. */
interface CycleForm {
  readonly kind: Cycle["kind"];
  readonly needs: readonly CycleWord[];
  readonly may: readonly CycleWord[];
}

const forms: Readonly<Record<string, CycleForm>> = {
  DRILL: { kind: "drill", needs: [], may: ["DWELL"] },
  THRU: { kind: "drill", needs: [], may: [] },
  FACE: { kind: "dwell", needs: ["DWELL"], may: [] },
  CSINK: { kind: "dwell", needs: [], may: ["DWELL"] },
  DEEP: { kind: "peck", needs: ["STEP"], may: [] },
  BRKCHP: { kind: "chip-break", needs: ["STEP"], may: [] },
  TAP: { kind: "tap", needs: [], may: ["TPI"] },
  BORE: { kind: "bore", needs: [], may: ["DWELL"] },
  REAM: { kind: "ream", needs: [], may: [] },
  MILL: { kind: "mill", needs: [], may: [] },
};

const common: readonly CycleWord[] = ["FEDTO", "feed", "CLEAR", "RAPTO", "RTRCTO", "RETURN"];

/** CYCLE/kind, FEDTO,d, ...; CYCLE/OFF; CYCLE/ON. */
export function cycle(run: ClRun, statement: Statement): void {
  const { state } = run;
  const { items, offset } = statement;
  const name = items[0]?.text ?? "";
  if (state.circle) run.report(findings.circleWithoutEnd(offset, "CYCLE"));
  state.circle = undefined;
  if (name === "OFF" && items.length === 1) endCycle(run);
  else if (name === "ON" && items.length === 1) {
    if (state.cycle === undefined) run.report(findings.noCycle(offset));
    else state.cycleOn = true;
  } else if (!Object.hasOwn(forms, name)) {
    run.report(findings.wrongItem(items[0]?.offset ?? offset, "CYCLE", [...Object.keys(forms), "OFF", "ON"]));
    // What follows is meant for a cycle; without one it would be taken for lines.
    state.cycle = undefined;
    state.cycleOn = true;
  } else {
    state.cycle = readCycle(run, statement, forms[name]);
    state.cycleOn = true;
  }
}

/** Behind the last hole the tool is not at the point that was given last; behind CYCLE/MILL it is at the bottom. */
function endCycle({ state }: ClRun): void {
  const stays = state.cycle?.kind === "mill" && state.toolZ !== undefined;
  if (state.cycleOn && stays) {
    state.z = state.toolZ ?? state.z;
    state.known |= axisBit.z;
  } else if (state.cycleOn) state.known &= ~axisBit.z;
  state.cycleOn = false;
}

function readCycle(run: ClRun, statement: Statement, form: CycleForm): Cycle | undefined {
  const [name] = statement.items;
  const sorted = sortItems(run, statement);
  if (sorted === undefined) return undefined;
  for (const word of ["FEDTO", ...form.needs] as const)
    if (!sorted.has(word)) run.report(findings.cycleNeeds(name.offset, name.text, word));
  for (const [word, { word: item }] of sorted)
    if (![...common, ...form.needs, ...form.may].includes(word))
      run.report(findings.cycleStray(item.offset, name.text, item.text));
  const depth = readDepth(run, sorted.get("FEDTO"));
  const heights = readHeights(run, name, sorted);
  const dwell = readDwell(run, sorted.get("DWELL"));
  const feed = readCycleFeed(run, sorted.get("feed"));
  const step = sorted.get("STEP")?.number;
  const peck = step && form.needs.includes("STEP") ? lengthAbove0(run, step, "The peck") : 0;
  const lead = form.kind === "tap" ? readLead(run, name, sorted, feed) : 0;
  if (name.text === "THRU") tellOnce(run, "thru", throughNote(name));
  if (depth === undefined || heights === undefined || dwell === undefined) return undefined;
  if (peck === undefined || lead === undefined) return undefined;
  // A countersink that need not dwell is a hole like any other.
  const kind = form.kind === "dwell" && dwell === 0 ? "drill" : form.kind;
  return {
    kind: form.kind === "drill" && dwell > 0 ? "dwell" : kind,
    depth,
    ...heights,
    feed,
    peck,
    lead,
    dwell,
    dwellTurns: sorted.get("DWELL")?.unit === "REV",
    offset: statement.offset,
  };
}

const throughNote = ({ offset }: Item) =>
  findings.cycleNote(
    offset,
    "CYCLE/THRU drills to FEDTO with the tip: nothing is added for the point of the drill.",
    "Give FEDTO as deep as the tip is to go.",
  );

function readDepth(run: ClRun, item: CycleItem | undefined): number | undefined {
  if (item?.number === undefined) return undefined;
  const depth = length(run, item.number);
  if (depth === undefined || depth > 0 || run.options.depth !== "distance") return depth;
  run.report(findings.depthSign(item.number.offset));
  return undefined;
}

/** Heights above the point: the feed starts at RAPTO or CLEAR, the tool goes on at RTRCTO or CLEAR [memory]. */
function readHeights(run: ClRun, name: Item, sorted: Sorted): Pick<Cycle, "start" | "level"> | undefined {
  const read = (word: CycleWord): number | undefined => {
    const number = sorted.get(word)?.number;
    const value = number && length(run, number);
    if (value === undefined || value >= 0) return value;
    run.report(findings.outOfRange(number?.offset ?? name.offset, word, "at least 0"));
    return undefined;
  };
  const [clear, rapto, rtrcto] = [read("CLEAR"), read("RAPTO"), read("RTRCTO")];
  const start = rapto ?? clear;
  if (!sorted.has("CLEAR") && !sorted.has("RAPTO"))
    run.report(findings.cycleNeeds(name.offset, name.text, "CLEAR"));
  if (start === undefined) return undefined;
  const level = rtrcto ?? clear ?? start;
  if (level < start) run.report(findings.cycleLevel(sorted.get("RTRCTO")?.word.offset ?? name.offset));
  if (sorted.has("RETURN") && sorted.has("RTRCTO"))
    run.report(findings.cycleTwice(sorted.get("RETURN")?.word.offset ?? name.offset, "RETURN"));
  return { start, level: sorted.has("RETURN") ? "initial" : level };
}

function readDwell(run: ClRun, item: CycleItem | undefined): number | undefined {
  if (item?.number === undefined) return 0;
  if (item.unit !== "REV") return above0(run, item.number, scales.second, "The dwell");
  const turns = above0(run, item.number, scales.revolution, "The dwell");
  return turns === undefined || !dwellsLong(run, turns, item.number.offset) ? undefined : turns;
}

function readCycleFeed(run: ClRun, item: CycleItem | undefined): Feed | undefined {
  if (item?.number === undefined) return undefined;
  return readFeed(run, item.number, item.unit === undefined ? undefined : feedUnits[item.unit]);
}

/** The lead of a thread: TPI, a feed per revolution, or a feed per minute at the speed that holds. */
function readLead(run: ClRun, name: Item, sorted: Sorted, feed: Feed | undefined): number | undefined {
  const perInch = sorted.get("TPI")?.number;
  if (perInch !== undefined) {
    const count = wholeNumber(run, perInch, "TPI");
    return count && Math.round(scales.inch.multipliers[0] / count);
  }
  if (feed?.per === "revolution") return feed.value;
  if (feed?.per === "minute" && run.state.rpm > 0) {
    const lead = Math.round((feed.value * 1000) / run.state.rpm);
    if (lead > 0 && withinLengths(run, name.offset, lead)) return lead;
    run.report(findings.outOfRange(name.offset, "The lead, feed by speed,", "above 0"));
    return undefined;
  }
  if (!sorted.has("feed")) run.report(findings.cycleNeeds(name.offset, name.text, "MMPR, IPR or TPI"));
  else if (feed !== undefined) run.report(findings.cycleNeeds(name.offset, name.text, "a speed before it"));
  return undefined;
}
