import type { Finding, Place, Severity } from "#base";
import type { LastFeed, OperationWatch } from "./watch.ts";

/** Rules of the trade checks; what each demands stands in the catalogue of rules. */
export const tradeRules = [
  "job/material",
  "job/chip-load",
  "job/feed-left-over",
  "job/cutting-speed",
  "job/plunge",
  "job/plunge-feed",
  "job/flute-length",
  "job/low-rapid",
  "job/tiny-arc",
  "job/hole-twice",
  "job/tap-hole",
  "job/unused-tool",
] as const;

type TradeRule = (typeof tradeRules)[number];

const inJob = (offset: number): Place => ({ source: "job", offset });

function finding(severity: Severity, rule: TradeRule, place: Place, message: string, fix: string): Finding {
  return { rule, severity, message, place, fix };
}

const warning = (rule: TradeRule, offset: number, message: string, fix: string): Finding =>
  finding("warning", rule, inJob(offset), message, fix);

/** "Tool 5 (end-mill)". */
const named = ({ tool }: OperationWatch): string => `Tool ${tool.number} (${tool.kind})`;

export const unknownMaterial = (place: Place, material: string, known: readonly string[]): Finding =>
  finding(
    "note",
    "job/material",
    place,
    `Nothing is known here of cutting ${material}, so chip loads and cutting speeds are not looked at.`,
    `Where it is one of these, name it so in \`stock.material\`: ${known.join(", ")}.`,
  );

/** What a finding of chip load has to say, in words. */
export interface ChipLoadWords {
  readonly load: string;
  readonly feed: string;
  readonly rpm: string;
  readonly flutes: number;
  readonly material: string;
  readonly usual: string;
  readonly source: string;
  readonly feeds: string;
}

const chipLoadSentence = (watch: OperationWatch, words: ChipLoadWords): string =>
  `${named(watch)} takes ${words.load} a tooth in ${words.material}: feed / (speed x teeth) = ${words.feed} / (${words.rpm} x ${words.flutes}). Usual at its diameter: ${words.usual} (${words.source}).`;

const chipLoadFix = (words: ChipLoadWords): string =>
  `Feed at ${words.feeds}, or correct the speed, the tool's \`flutes\` or the material. How wide the tool cuts is not known and not counted; a thin cut may be fed up to 2.3 times as fast.`;

export const chipLoad = (offset: number, watch: OperationWatch, words: ChipLoadWords): Finding =>
  warning("job/chip-load", offset, chipLoadSentence(watch, words), chipLoadFix(words));

export const feedLeftOver = (
  offset: number,
  watch: OperationWatch,
  words: ChipLoadWords,
  { operation }: LastFeed,
): Finding =>
  warning(
    "job/feed-left-over",
    offset,
    `Operation \`${watch.operation.id}\` has the feed of \`${operation.id}\`, which is for tool ${operation.tool}. ${chipLoadSentence(watch, words)}`,
    chipLoadFix(words),
  );

export const cuttingSpeed = (
  offset: number,
  watch: OperationWatch,
  words: {
    readonly speed: string;
    readonly diameter: string;
    readonly rpm: string;
    readonly material: string;
    readonly bound: string;
    readonly source: string;
    readonly rightRpm: string;
  },
): Finding =>
  warning(
    "job/cutting-speed",
    offset,
    `${named(watch)} cuts ${words.material} at ${words.speed} m/min: pi x ${words.diameter} x ${words.rpm}. ${words.bound} m/min (${words.source}).`,
    `Turn it at ${words.rightRpm} rpm, or correct its \`diameter\` or the material.`,
  );

export const plunge = (offset: number, watch: OperationWatch): Finding =>
  warning(
    "job/plunge",
    offset,
    `${named(watch)} is fed straight down into the stock, and does not cut at its centre.`,
    "Go in on a ramp or a helix, from beside the stock or where it is open already; or state `centreCutting: true` if it can.",
  );

export const plungeFeed = (offset: number, watch: OperationWatch, feed: string, sideways: string): Finding =>
  warning(
    "job/plunge-feed",
    offset,
    `${named(watch)} is fed straight down into the stock at ${feed}, and sideways at ${sideways} at the most.`,
    "Feed down at 30 to 50 % of the cutting feed in wood, at 10 to 30 % in aluminium (from memory, no published source), or go in on a ramp.",
  );

export const fluteLength = (
  offset: number,
  watch: OperationWatch,
  depth: string,
  flutes: string,
  where: "hole" | "stock",
): Finding =>
  warning(
    "job/flute-length",
    offset,
    where === "hole"
      ? `${named(watch)} goes ${depth} into a hole, and its flutes are ${flutes} long: chips cannot get out.`
      : `${named(watch)} cuts ${depth} below the top of the stock, and its flutes are ${flutes} long: above them it rubs.`,
    where === "hole"
      ? "Use a longer tool, or correct `fluteLength`, `top` or `depth`."
      : "Use a longer tool or a relieved one (state its `shank`), or correct `fluteLength`.",
  );

export const lowRapid = (offset: number, gap: string, enough: string): Finding =>
  warning(
    "job/low-rapid",
    offset,
    `A rapid below clearance passes ${gap} over the top of the stock.`,
    `Go at clearance, or at least ${enough} over the stock: raw stock is seldom flat, and chips lie on it.`,
  );

export const tinyArc = (offset: number, radius: string, least: string): Finding =>
  warning(
    "job/tiny-arc",
    offset,
    `An arc has a radius of ${radius}: below ${least} the rounding of its ends and centre (0.002 mm, NISTIR 6556 3.5.3.2) is a good part of it.`,
    "Make a corner or a line of it, or correct its centre.",
  );

export const holeTwice = (offset: number, watch: OperationWatch): Finding =>
  warning(
    "job/hole-twice",
    offset,
    `${named(watch)} makes a hole where one of its kind is already, as deep and as wide.`,
    "Leave it out, or correct its place or depth.",
  );

export const tapTooDeep = (offset: number, watch: OperationWatch, over: string): Finding =>
  warning(
    "job/tap-hole",
    offset,
    `${named(watch)} goes ${over} deeper than the hole that is there.`,
    "Drill deeper, or tap less deep: a hole needs the thread, its run-out and the drill's point.",
  );

export const tapWithoutHole = (offset: number): Finding =>
  warning(
    "job/tap-hole",
    offset,
    "A thread is tapped where this job makes no hole, while it makes those of other threads.",
    "Drill it before, or correct its place.",
  );

export const unusedTool = (offset: number, numbers: readonly number[]): Finding => {
  const several = numbers.length > 1;
  return warning(
    "job/unused-tool",
    offset,
    `${several ? "Tools" : "Tool"} ${numbers.join(", ")} ${several ? "are" : "is"} not used by any operation.`,
    "Leave out what is not used, or correct the `tool` of an operation.",
  );
};
