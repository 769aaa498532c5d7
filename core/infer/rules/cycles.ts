import type { Ballot, Observed } from "../evidence.ts";
import { counted, lineOf, settle, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import type { Block } from "../walk.ts";

/** A fixed cycle: the block with its code and the blocks of its later holes. */
interface Series {
  readonly first: Block;
  readonly later: readonly Block[];
  /** Z before the series. */
  readonly initial: number | undefined;
}

/** How fixed cycles are defined, what later holes state, and from where levels count. */
export function cycles({ byProgram }: Sample): Observed[] {
  const all = byProgram.flatMap(seriesOf);
  if (all.length === 0) return [];
  const later = all.flatMap((series) => series.later.map((block) => ({ block, series })));
  return [
    ...vote("cycles.definition", all.map(({ first, later: more }): Ballot => ({ value: hasPlace(first) || more.length === 0 ? "with-first-hole" : "apart", line: first.line })), "blocks that define a cycle"), // prettier-ignore
    ...vote("cycles.repeat", later.flatMap(({ block }): Ballot[] => [{ value: block.words.has("R") ? "all" : "positions", line: block.line }]), "later holes"), // prettier-ignore
    ...positions(later.map(({ block }) => block)),
    ...letters(all),
    ...levels(all),
    ...dwellUnit(all),
    ...returnWords(all),
  ];
}

function seriesOf(blocks: readonly Block[]): Series[] {
  const found: { first: Block; later: Block[]; initial: number | undefined }[] = [];
  let open: (typeof found)[number] | undefined;
  let code: number | undefined;
  for (const block of blocks) {
    const isHole = block.cycle !== undefined && (block.motion?.isCycle === true || statesCode(block));
    if (!isHole) {
      open = undefined;
      continue;
    }
    if (open && block.cycle === code && sameDefinition(open.first, block)) open.later.push(block);
    else found.push((open = { first: block, later: [], initial: block.motion?.before.Z }));
    code = block.cycle;
  }
  return found;
}

function statesCode({ g, cycle }: Block): boolean {
  return cycle !== undefined && g.includes(cycle);
}

/** Whether a block with the code of a cycle is another hole of the same one. */
function sameDefinition(first: Block, block: Block): boolean {
  return ["Z", "R", "Q", "P"].every((letter) => {
    const word = block.words.get(letter);
    return word === undefined || word.value === first.words.get(letter)?.value;
  });
}

function hasPlace({ words }: Block): boolean {
  return words.has("X") || words.has("Y");
}

/** Whether a hole on the line of the one before states the coordinate that stays. */
function positions(later: readonly Block[]): Observed[] {
  const ballots = later.flatMap(({ motion, words, line }): Ballot[] => {
    if (!motion) return [];
    // By increments a coordinate that stays is a word of 0, or none.
    if (!motion.absolute) {
      const zero = ["X", "Y"].some((letter) => words.get(letter)?.value === 0);
      if (words.has("X") && words.has("Y")) return zero ? [{ value: "both", line }] : [];
      return [{ value: "changed", line }];
    }
    const still = (["X", "Y"] as const).filter((letter) => motion.before[letter] !== undefined && motion.before[letter] === motion.after[letter]); // prettier-ignore
    if (still.length === 0) return [];
    return [{ value: still.every((letter) => words.has(letter)) ? "both" : "changed", line }];
  });
  return vote("cycles.positions", ballots, "holes of which one coordinate stays");
}

/** Letters of pecks and repeats. */
function letters(all: readonly Series[]): Observed[] {
  const pecking = all.filter(({ first }) => first.g.includes(830) || first.g.includes(730));
  const peck = pecking.flatMap(({ first }): Ballot[] => {
    const letter = ["Q", "K", "I", "D"].find((one) => first.words.has(one));
    return letter === undefined ? [] : [{ value: letter, line: first.line }];
  });
  const zero = all.flatMap(({ first }): Ballot[] => {
    const letter = ["K", "L"].find((one) => first.words.get(one)?.value === 0);
    return letter === undefined || hasPlace(first) ? [] : [{ value: letter, line: first.line }];
  });
  const dwelling = all.filter(({ first }) => [820, 860, 880, 890].some((code) => first.g.includes(code)));
  const dwell = dwelling.flatMap(({ first }): Ballot[] => {
    const letter = ["P", "X", "F"].find((one) => one !== "X" && one !== "F" && first.words.has(one));
    return letter === undefined ? [] : [{ value: letter, line: first.line }];
  });
  const retract = all.flatMap(({ first }): Ballot[] => (first.words.has("R") ? [{ value: "R", line: first.line }] : [])); // prettier-ignore
  return [
    ...vote("cycles.words.peck", peck, "cycles with pecks"),
    ...vote(
      "cycles.words.repeat",
      zero.length === 0 ? withoutWord(all) : zero,
      "cycles that are defined without a hole",
    ),
    ...vote("cycles.words.dwell", dwell, "cycles with a dwell"),
    ...vote("cycles.words.retract", retract, "cycles"),
  ];
}

/** Cycles that are defined without a place, and without a word that says so. */
function withoutWord(all: readonly Series[]): Ballot[] {
  return all.flatMap(({ first, later }) => (hasPlace(first) || later.length === 0 ? [] : [{ value: "none", line: first.line }])); // prettier-ignore
}

/** Absolute levels have the bottom below the retract level and that not above where the tool stands. */
function levels(all: readonly Series[]): Observed[] {
  const ballots = all.flatMap(({ first, initial }): Ballot[] => {
    const [bottom, retract] = [first.words.get("Z")?.value, first.words.get("R")?.value];
    if (bottom === undefined || retract === undefined || initial === undefined) return [];
    if (retract < 0 && bottom > retract) return [{ value: "relative", line: first.line }];
    if (retract > 0 && bottom < retract && retract <= initial)
      return [{ value: "absolute", line: first.line }];
    return [];
  });
  return vote("cycles.levels", ballots, "cycles, by the places of bottom and retract level");
}

/** The unit of the dwell of a cycle, where its numbers can be nothing else: nobody lets a drill rub for 100 seconds. */
function dwellUnit(all: readonly Series[]): Observed[] {
  const dwells = all.flatMap(({ first }) => {
    const word = first.words.get("P");
    return word === undefined ? [] : [{ word, line: first.line }];
  });
  const broken = dwells.filter(({ word }) => word.value % 1 !== 0);
  const large = dwells.filter(({ word }) => word.value >= 100);
  if (dwells.length === 0) return [];
  if (broken.length > 0 && large.length === 0)
    return [settle("cycles.words.dwell-unit", "s", counted(broken, dwells.length, "dwells of cycles have a part behind the point"))]; // prettier-ignore
  if (large.length === dwells.length)
    return [settle("cycles.words.dwell-unit", "ms", counted(large, dwells.length, "dwells of cycles are 100 or more"), { only: (base) => base("cycles.words.dwell-unit") !== "rev" })]; // prettier-ignore
  return [];
}

/** Which levels have a word. Where cycles have none, the level without a word is asked. */
function returnWords(all: readonly Series[]): Observed[] {
  const bare = all.filter(({ first }) => !first.g.includes(980) && !first.g.includes(990));
  if (bare.length < all.length || all.length === 0) return [];
  const evidence = `${String(all.length)} cycles state no level, e.g. ${lineOf(all[0].first.line)}`;
  const holds = (inherited: unknown): boolean => inherited === "none";
  return [
    settle("cycles.return.initial", "none", evidence, { holds }),
    settle("cycles.return.retract", "none", evidence, { holds }),
  ];
}
