import type { Ballot, Observed, Value } from "../evidence.ts";
import { counted, lineOf, settle, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import { withG } from "../sample.ts";
import { unitsOf } from "../units.ts";
import type { Block } from "../walk.ts";

/** How programs begin and end: units, retract, park, end code, coolant that shares a block. */
export function ends(sample: Sample): Observed[] {
  return [
    ...endCode(sample),
    ...retract(sample),
    ...park(sample),
    ...units(sample),
    ...coolant(sample),
    ...distances(sample),
    ...rapids(sample),
  ];
}

function endCode({ byProgram }: Sample): Observed[] {
  const ballots = byProgram.flatMap((blocks): Ballot[] => {
    const last = blocks.findLast(({ m }) => m.includes(20) || m.includes(300));
    if (!last) return [];
    return [{ value: last.m.includes(300) ? "M30" : "M02", line: last.line }];
  });
  return vote("stops.end", ballots, "programs");
}

/** Z in machine coordinates, or by the return to the reference position. */
function retract(sample: Sample): Observed[] {
  const moves = withG(sample, 530).filter(
    ({ words }) => words.has("Z") && !words.has("X") && !words.has("Y"),
  );
  const returns = withG(sample, 280, 740).filter(({ g, words }) => words.has("Z") && !(g.includes(740) && words.has("R"))); // prettier-ignore
  if (moves.length > 0) return machineMoves(moves);
  if (returns.length === 0) return [];
  const incremental = returns.every(({ absolute }) => !absolute);
  return [
    settle("machine.retract.by", "reference-return", counted(returns, returns.length, "returns of Z to the reference position")), // prettier-ignore
    settle("machine.retract.intermediate", incremental ? "incremental-zero" : "none", `Z0 ${incremental ? "under" : "without"} G91, e.g. ${lineOf(returns[0].line)}`), // prettier-ignore
  ];
}

/** The swap height: the place of most retracts, by the units of the program. */
function machineMoves(moves: readonly Block[]): Observed[] {
  const places = moves.map(({ words, line }): Ballot => ({ value: words.get("Z")!.value, line }));
  const zero = places.filter(({ value }) => value === 0);
  const by = settle("machine.retract.by", "machine-move", counted(moves, moves.length, "moves of Z alone in machine coordinates")); // prettier-ignore
  if (zero.length * 2 < places.length) return [by];
  return [
    by,
    settle("machine.retract.z", 0, counted(zero, places.length, "moves of Z alone in machine coordinates")),
  ];
}

/** X and Y in machine coordinates in the last blocks before the end. */
function park({ byProgram }: Sample): Observed[] {
  const found = byProgram.map((blocks) => blocks.slice(-6).find(({ g, words }) => g.includes(530) && words.has("X") && words.has("Y"))); // prettier-ignore
  const [first] = found;
  if (!first || found.some((block) => block === undefined)) return [];
  const place = ({ words }: Block): Value => ["X", "Y"].map((letter) => words.get(letter)!.value);
  return vote(
    "machine.park",
    found.map((block): Ballot => ({ value: place(block!), line: block!.line })),
    "programs",
  );
}

/** Whether the word of the units stands alone in the first block, and nowhere else. */
function units(sample: Sample): Observed[] {
  const { byProgram } = sample;
  const codes = [200, 210, 700, 710];
  const ballots = byProgram.flatMap((blocks): Ballot[] => {
    const stating = blocks.filter(({ g }) => g.some((code) => codes.includes(code)));
    const [first] = stating;
    if (!first) return [];
    const begins = blocks.find(({ line }) => line.words.length > 0);
    const alone = first === begins && first.line.words.length === 1 && stating.length === 1;
    // Where each mode has a block of its own, so has this one.
    const shared = blocks.some(({ g, line }) => g.length > 1 && g.length === line.words.length);
    if (alone && !shared) return [];
    return [{ value: alone ? "first-block" : "with-modes", line: first.line }];
  });
  const own = unitsOf(sample);
  const fits = (inherited: Value | undefined): boolean => inherited === "job" || inherited === own;
  const inJob = own === undefined ? [] : [settle("units.programs-in", "job", `the programs are in ${own} and say so`, { holds: fits })]; // prettier-ignore
  return [...vote("units.stated", ballots, "programs"), ...inJob];
}

/** Media that are switched behind one another. */
function coolant(sample: Sample): Observed[] {
  const media = [70, 80, 500, 510];
  const together = sample.blocks.filter(({ m }) => m.filter((code) => media.includes(code)).length > 1);
  const apart = sample.blocks.filter(
    ({ m }, index) =>
      m.some((code) => media.includes(code)) &&
      sample.blocks[index + 1]?.m.some((code) => media.includes(code)),
  );
  if (together.length > 0)
    return [
      settle("coolant.blocks", "together", counted(together, together.length, "blocks switch several media")),
    ];
  return apart.length === 0 ? [] : [settle("coolant.blocks", "apart", counted(apart, apart.length, "media are switched one by one"))]; // prettier-ignore
}

/** Absolute or incremental: in which of the two most work motion goes. */
function distances({ blocks }: Sample): Observed[] {
  const moving = blocks.flatMap(({ motion, line, g }): Ballot[] =>
    motion?.frame === "work" && !g.includes(280)
      ? [{ value: motion.absolute ? "absolute" : "incremental", line }]
      : [],
  );
  const stated = withStated(blocks);
  if (!stated || moving.length === 0) return [];
  const incremental = moving.filter(({ value }) => value === "incremental").length;
  if (incremental === 0 || incremental > 0.5 * moving.length)
    return [settle("distance.programs-in", incremental === 0 ? "absolute" : "incremental", counted(moving.slice(0, Math.max(incremental, moving.length - incremental)), moving.length, "motion blocks"))]; // prettier-ignore
  return [{ kind: "contradiction", key: "distance.programs-in", message: `${String(incremental)} of ${String(moving.length)} motion blocks are incremental`, lines: moving.filter(({ value }) => value === "incremental").map(({ line }) => line) }]; // prettier-ignore
}

function withStated(blocks: readonly Block[]): boolean {
  return blocks.some(({ g }) => g.includes(900) || g.includes(910));
}

/** How many axes a rapid moves at once. */
function rapids(sample: Sample): Observed[] {
  const all = sample.blocks.filter(({ motion }) => motion?.code === 0 && motion.frame === "work");
  const moves = ({ motion }: Block): number =>
    (["X", "Y", "Z"] as const).filter((letter) => motion!.before[letter] !== motion!.after[letter]).length;
  const several = all.filter((block) => moves(block) > 1);
  if (several.length > 0)
    return [
      settle("motion.rapid-axes", "together", counted(several, all.length, "rapids move several axes")),
    ];
  if (all.length < 8 || pairs(all) < 4) return [];
  return [settle("motion.rapid-axes", "one-at-a-time", `none of ${String(all.length)} rapids moves two axes, e.g. ${lineOf(all[0].line)}`)]; // prettier-ignore
}

/** Rapids of X and Y behind one another, which could have been one. */
function pairs(all: readonly Block[]): number {
  return all.filter((block, index) => {
    const next = all[index + 1] as Block | undefined;
    return next?.line.number === block.line.number + 1 && block.words.has("X") && next.words.has("Y");
  }).length;
}
