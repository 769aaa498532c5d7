import type { Ballot, Observed, Settled } from "../evidence.ts";
import { vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import type { AxisLetter, Block, Motion } from "../walk.ts";

interface Moving extends Block {
  readonly motion: Motion;
}

/** Which words are repeated although they have not changed. */
export function modality(sample: Sample): Observed[] {
  const moving = sample.blocks.filter((block): block is Moving => block.motion?.frame === "work");
  const straight = moving.filter(({ motion }) => motion.code <= 10);
  const arcs = moving.filter(({ motion }) => motion.code === 20 || motion.code === 30);
  const feeding = moving.filter(({ motion }) => !motion.isCycle && motion.code > 0);
  return [
    ...vote("modal.motion", moving.flatMap(motionWord), "motion blocks behind one of the same kind"),
    ...vote("modal.axes", straight.flatMap(axisWords), "straight blocks with an axis that does not move"),
    ...vote("modal.arc-end", arcs.flatMap(arcEnds), "arcs of which one end coordinate does not change"),
    ...vote("modal.arc-centre", arcs.flatMap(arcCentres), "arcs with a centre word of 0"),
    ...feedWords(sample, feeding),
  ];
}

/** A motion word that an earlier block has said already: left out, or said. */
function motionWord({ motion, line }: Moving): Ballot[] {
  if (motion.isCycle || motion.previous !== motion.code) return [];
  return [{ value: motion.stated ? "each-block" : "modal", line }];
}

/** An axis whose place is known and stays: its word is left out, or said. */
function axisWords({ motion, words, line }: Moving): Ballot[] {
  const known = (["X", "Y", "Z"] as const).filter((letter) => motion.before[letter] !== undefined);
  const still = known.filter((letter) => motion.before[letter] === motion.after[letter]);
  if (still.length === 0 || known.length < 2 || motion.previous === undefined) return [];
  const said = still.filter((letter) => words.has(letter));
  if (said.length > 0 && said.length < still.length) return [];
  return [{ value: said.length > 0 ? "all" : "changed", line }];
}

const planeAxes = { 17: ["X", "Y"], 18: ["Z", "X"], 19: ["Y", "Z"] } as const satisfies Record<
  number,
  readonly AxisLetter[]
>;
const centreLetters = { 17: ["I", "J"], 18: ["K", "I"], 19: ["J", "K"] } as const satisfies Record<
  number,
  readonly string[]
>;

/** The letters of the axes of a plane, and those of the centre words, in the same order. */
export function lettersOf({ plane }: Motion): { axes: readonly AxisLetter[]; centre: readonly string[] } {
  return { axes: planeAxes[plane], centre: centreLetters[plane] };
}

function arcEnds({ motion, words, line }: Moving): Ballot[] {
  const { axes } = lettersOf(motion);
  const still = axes.filter(
    (letter) => motion.before[letter] !== undefined && motion.before[letter] === motion.after[letter],
  );
  if (still.length === 0) return [];
  const said = still.filter((letter) => words.has(letter));
  // The end of a full circle may be said because there would be no end otherwise.
  if (said.length > 0 && (said.length < still.length || still.length === axes.length)) return [];
  return [{ value: said.length > 0 ? "both" : "changed", line }];
}

/** Arcs with one of both centre words, or with a word of 0. */
function arcCentres({ motion, words, line }: Moving): Ballot[] {
  const { centre } = lettersOf(motion);
  const said = centre.filter((letter) => words.has(letter));
  if (said.length === 0) return [];
  if (said.length < centre.length) return [{ value: "non-zero", line }];
  return said.some((letter) => words.get(letter)?.value === 0) ? [{ value: "both", line }] : [];
}

/**
 * How often the feed is said. A feed word that repeats the feed in force behind another feed block speaks for each-block, one
 * that does so behind a rapid for after-rapid, and a block that leaves it out against either.
 */
function feedWords({ blocks }: Sample, feeding: readonly Moving[]): Observed[] {
  const before = new Map(blocks.map((block, index) => [block, blocks[index - 1] as Block | undefined]));
  const isFeed = (block: Block | undefined): boolean =>
    block?.motion !== undefined &&
    block.motion.frame === "work" &&
    block.motion.code > 0 &&
    !block.motion.isCycle;
  const same = feeding.filter(({ motion }) => motion.feedBefore !== undefined && (motion.feed === undefined || motion.feed.value === motion.feedBefore)); // prettier-ignore
  const cutting = same.filter((block) => isFeed(before.get(block)));
  const behindRapid = same.filter((block) => before.get(block)?.motion?.code === 0);
  const inRuns = vote("modal.feed", cutting.map(({ motion, line }): Ballot => ({ value: motion.feed ? "each-block" : "modal", line })), "feed blocks behind one with the same feed"); // prettier-ignore
  const ofRuns = inRuns.find((one) => one.kind === "settled");
  if (ofRuns?.value === "each-block") return inRuns;
  const doubts = inRuns.filter(({ kind }) => kind === "contradiction");
  const behind = vote("modal.feed", behindRapid.map(({ motion, line }): Ballot => ({ value: motion.feed ? "after-rapid" : "modal", line })), "feed blocks behind a rapid with the feed of the cut before"); // prettier-ignore
  return [...doubts, ...withRuns(behind, ofRuns)];
}

/** Either observation alone leaves two of the three ways open: what is inherited stands if it is one of them. */
function withRuns(behind: readonly Observed[], ofRuns: Settled | undefined): Observed[] {
  const settled = behind.find((one) => one.kind === "settled");
  if (settled === undefined)
    return [...behind, ...(ofRuns ? [{ ...ofRuns, holds: (inherited: unknown) => inherited === "modal" || inherited === "after-rapid" }] : [])]; // prettier-ignore
  if (ofRuns !== undefined || settled.value === "modal") return [...behind];
  const holds = (inherited: unknown): boolean => inherited === "after-rapid" || inherited === "each-block";
  return behind.map((one) => (one === settled ? { ...settled, holds } : one));
}
