import type { Axis, Model } from "./model.ts";
import {
  absolute,
  axesOfPlane,
  centres,
  feedWord,
  goTo,
  knowsAll,
  length,
  motionWord,
  near,
} from "./model.ts";
import type { Word } from "./spell.ts";
import { code } from "./spell.ts";

const all: readonly Axis[] = [0, 1, 2];

/** Words that take all three axes to places that are told. */
export function settle(model: Model): Word[] {
  const mode = absolute(model);
  return [...motionWord(model, 0), ...mode, ...all.map((axis) => goTo(model, axis, near(model, axis)))];
}

/** A rapid or a line by some of the axes; a change between absolute and incremental now and then. */
export function straight(model: Model): Word[] {
  const { chance } = model;
  if (!knowsAll(model)) return settle(model);
  const words: Word[] = [];
  if (chance.happens(0.1)) {
    model.incremental = !model.incremental;
    words.push(code("G", model.incremental ? 91 : 90));
  }
  const cuts = chance.happens(0.7);
  words.push(...motionWord(model, cuts ? 1 : 0), ...(cuts ? feedWord(model) : []));
  const named = all.filter(() => chance.happens(0.6));
  for (const axis of named.length === 0 ? [chance.pick(all)] : named)
    words.push(goTo(model, axis, near(model, axis)));
  return words;
}

/** An arc in the plane in force, or in another one that its block names: by its centre or its radius, flat or as a helix. */
export function arc(model: Model, mayClose = true): Word[] {
  const { chance } = model;
  if (!knowsAll(model)) return settle(model);
  const words: Word[] = [];
  if (chance.happens(0.15)) {
    model.plane = chance.pick([17, 17, 18, 19] as const);
    words.push(code("G", model.plane));
  }
  const sense = chance.pick([2, 3]);
  words.push(...motionWord(model, sense), ...feedWord(model));
  const [, , normal] = axesOfPlane[model.plane];
  words.push(...(chance.happens(0.6) ? byCentre(model, mayClose) : byRadius(model)));
  if (chance.happens(0.25)) words.push(goTo(model, normal, near(model, normal)));
  return words;
}

/** The end is a corner of the octagon on the circle that has the start: its radius is just the same. It may be the start itself. */
function byCentre(model: Model, mayClose: boolean): Word[] {
  const { chance, at } = model;
  const [first, second] = axesOfPlane[model.plane];
  const [i, j] = chance.pick([
    [chance.between(50, 20_000), 0],
    [0, -chance.between(50, 20_000)],
    [-chance.between(50, 20_000), chance.between(50, 20_000)],
    [chance.between(50, 20_000), chance.between(50, 20_000)],
  ]);
  const corners = [[-i, -j], [i, j], [-j, -i], [j, i], [-i, j], [i, -j], [-j, i], [j, -i]]; // prettier-ignore
  const [u, v] = chance.pick(corners.filter(([x, y]) => mayClose || x !== -i || y !== -j));
  const [from1, from2] = [at[first], at[second]];
  const words = [length(model, centres[first], i), length(model, centres[second], j)].filter(
    ({ steps }) => steps !== 0 || chance.happens(0.5),
  );
  const ending = [goTo(model, first, from1 + i + u), goTo(model, second, from2 + j + v)];
  const stays = [at[first] === from1, at[second] === from2];
  // A word that does not move its axis may stay away, but one end word there is.
  const kept = ending.filter((_, index) => !stays[index] || chance.happens(0.5));
  return [...(kept.length === 0 ? ending : kept), ...words];
}

function byRadius(model: Model): Word[] {
  const { chance, at } = model;
  const [first, second] = axesOfPlane[model.plane];
  const [u, v] = [chance.between(50, 9000), chance.between(-9000, 9000)];
  const least = Math.hypot(u, v) / 2;
  const radius = Math.ceil(least * chance.pick([1.01, 1.3, 4])) * chance.pick([1, 1, -1]);
  return [goTo(model, first, at[first] + u), goTo(model, second, at[second] + v), length(model, "R", radius)];
}

/**
 * Inverse time: each line and arc has a feed of its own. No full circle: by the last digit of a double the
 * interpreter may take it for no way at all.
 */
export function inverseTime(model: Model): Word[][] {
  const { chance } = model;
  if (!knowsAll(model)) return [settle(model)];
  const said = (words: readonly Word[]): Word[] => [
    ...words.filter(({ letter }) => letter !== "F"),
    { letter: "F", steps: chance.between(1, 400), decimals: 1 },
  ];
  const cuts: Word[][] = Array.from({ length: chance.between(1, 3) }, () =>
    chance.happens(0.5) ? said(arc(model, false)) : said(forcedLine(model)),
  );
  cuts[0] = [code("G", 93), ...cuts[0]];
  model.feed = 0;
  return [...cuts, [code("G", 94), ...forcedLine(model)]];
}

function forcedLine(model: Model): Word[] {
  const words = motionWord(model, 1, true);
  const feed = feedWord(model);
  return [...words, ...feed, goTo(model, 0, model.at[0] + 3000), goTo(model, 1, near(model, 1))];
}

/** A contour under compensation; the radii of the tools are 0. */
export function compensated(model: Model): Word[][] {
  const { chance } = model;
  const blocks: Word[][] = [[...absolute(model), code("G", 17), ...settle(model)]];
  model.plane = 17;
  const on = [code("G", chance.pick([41, 42])), { letter: "D", steps: chance.between(1, 20), decimals: 0 }];
  const cuts = Array.from({ length: chance.between(2, 4) }, () => forcedLine(model));
  const off = chance.happens(0.5)
    ? [[code("G", 40)], forcedLine(model)]
    : [[code("G", 40), ...forcedLine(model)]];
  return chance.happens(0.5)
    ? [...blocks, [...on, ...cuts[0]], ...cuts.slice(1), ...off]
    : [...blocks, on, ...cuts, ...off];
}

/**
 * Other units: from there on all places and the feed are told anew. No length offset goes along: the interpreter would keep its
 * number, in other units, for the moves to machine places.
 */
export function otherUnits(model: Model): Word[][] {
  model.inch = !model.inch;
  model.feed = 0;
  model.at.fill(0);
  model.known.fill(false);
  return [[code("G", model.inch ? 20 : 21), code("G", 49), ...settle(model)]];
}

/** A rotary axis in a block of its own. */
export function rotary(model: Model): Word[] {
  const mode = absolute(model);
  const angle = {
    letter: model.chance.pick(["A", "B", "C"]),
    steps: model.chance.between(-99, 99) * 250,
    decimals: 3,
  };
  return [...motionWord(model, 0), ...mode, angle];
}
