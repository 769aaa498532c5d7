import type { Model } from "./model.ts";
import { absolute, feedWord, goTo, length, near } from "./model.ts";
import { settle } from "./random-motion.ts";
import type { Word } from "./spell.ts";
import { code, whole } from "./spell.ts";

const cycles = [81, 82, 83, 84, 85, 86, 88, 89] as const;

/**
 * A series of holes: words in force stay away or are said again, levels change. In one series R does not rise, and the level
 * between holes stays G98 or G99: there the interpreter departs from NISTIR 6556.
 */
export function series(model: Model): Word[][] {
  const { chance, at } = model;
  const cycle = chance.pick(cycles);
  const top = chance.between(1000, 9000);
  const blocks: Word[][] = [];
  blocks.push([
    ...absolute(model),
    code("G", 17),
    code("G", 0),
    goTo(model, 2, top + chance.pick([0, 500, 4000])),
  ]);
  model.plane = 17;
  blocks[0].push(goTo(model, 0, near(model, 0)), goTo(model, 1, near(model, 1)));
  if (cycle === 84 || cycle === 86 || cycle === 88)
    blocks.push([whole("S", 500), code("M", cycle === 84 ? 3 : chance.pick([3, 4]))]);
  const initial = at[2];
  const between = chance.pick([98, 99]);
  const stated = (depth: number, retract: number): Word[] => [
    length(model, "Z", depth),
    length(model, "R", retract),
    ...(cycle === 83 ? [length(model, "Q", chance.between(300, 4000))] : []),
    ...([82, 86, 88, 89].includes(cycle) ? [{ letter: "P", steps: chance.between(0, 30), decimals: 1 }] : []),
  ];
  model.feed = 0;
  let retract = top;
  const count = chance.between(1, 5);
  for (let hole = 0; hole < count; hole++) {
    const words: Word[] = [];
    if (hole === 0 || chance.happens(0.2)) words.push(code("G", cycle));
    if (hole === 0) words.push(code("G", between));
    words.push(...feedWord(model));
    if (hole === 0 || chance.happens(0.3)) {
      if (hole > 0 && between === 98) retract -= chance.pick([0, 100]);
      words.push(...stated(retract - chance.between(0, 8000), retract));
    }
    words.push(...place(model));
    if (chance.happens(0.1)) words.push(whole("L", chance.between(1, 3)));
    blocks.push(words);
  }
  at[2] = between === 98 ? Math.max(initial, retract) : retract;
  model.motion = cycle;
  if (chance.happens(0.7)) blocks.push(end(model));
  // Where the operator leaves the tool is not printed.
  if (cycle === 88) blocks.push(settle(model));
  return blocks;
}

/** X, Y or both. */
function place(model: Model): Word[] {
  const axes = model.chance.pick([[0], [1], [0, 1]] as const);
  return axes.map((axis) => goTo(model, axis, near(model, axis)));
}

function end(model: Model): Word[] {
  model.motion = 80;
  return [code("G", 80)];
}

/** Holes in a row by incremental words and the repeat word; under G98 the level stays the initial one. */
export function row(model: Model): Word[][] {
  const { chance, at } = model;
  const first = [...absolute(model), code("G", 17), code("G", 0), goTo(model, 2, chance.between(5000, 9000))];
  model.plane = 17;
  first.push(goTo(model, 0, near(model, 0)), goTo(model, 1, near(model, 1)));
  const [dx, dy, count] = [chance.between(-9000, 9000), chance.between(-9000, 9000), chance.between(1, 5)];
  model.feed = 0;
  const holes = [
    code("G", 91),
    code("G", 98),
    code("G", 81),
    length(model, "X", dx),
    length(model, "Y", dy),
    length(model, "R", -chance.between(0, 4000)),
    length(model, "Z", -chance.between(0, 4000)),
    ...feedWord(model),
    ...(count > 1 || chance.happens(0.3) ? [whole("L", count)] : []),
  ];
  at[0] += dx * count;
  at[1] += dy * count;
  return [first, holes, [code("G", 90), ...end(model)]];
}
