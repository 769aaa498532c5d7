import type { Chance } from "./chance.ts";
import { createChance } from "./chance.ts";
import type { Axis, Model } from "./model.ts";
import { absolute, createModel, forget, goTo, motionWord, near, toolNumber } from "./model.ts";
import { row, series } from "./random-cycle.ts";
import { arc, compensated, inverseTime, otherUnits, rotary, settle, straight } from "./random-motion.ts";
import type { Habits, Word } from "./spell.ts";
import { code, spellBlock, whole } from "./spell.ts";

const workOffsets = [54, 55, 56, 57, 58, 59, 59.1, 59.2, 59.3];
const all: readonly Axis[] = [0, 1, 2];

/** Offsets, machine coordinates, the reference point: behind each, places are told anew before anything counts from them. */
function shift(model: Model): Word[][] {
  const { chance } = model;
  switch (chance.whole(5)) {
    case 0: {
      const [axis] = chance.shuffle(all);
      const words = [
        code("G", 53),
        code("G", 0),
        { letter: "XYZ"[axis], steps: chance.between(-9, 9) * 1000, decimals: 3 },
      ];
      const mode = absolute(model);
      model.motion = 0;
      forget(model, [axis]);
      return [[...mode, ...words], settle(model)];
    }
    case 1: {
      const [axis] = chance.shuffle(all);
      const mode = absolute(model);
      const words = [code("G", 28), goTo(model, axis, near(model, axis))];
      forget(model, [axis]);
      return [[...mode, ...words], settle(model)];
    }
    case 2:
      return [[code("G", chance.pick(workOffsets)), ...settle(model)]];
    case 3: {
      const offset = chance.happens(0.3)
        ? [code("G", 49)]
        : [code("G", 43), whole("H", chance.between(1, 20))];
      return [[...offset, ...settle(model)]];
    }
    default: {
      forget(model, all);
      model.incremental = false;
      return [
        [code("G", 91), code("G", 28), { letter: "Z", steps: 0, decimals: 3 }],
        [code("G", 90), ...settle(model)],
      ];
    }
  }
}

/** What the machine does beside motion: spindle, coolant, tools, stops, dwells, messages. */
function actions(model: Model): Word[][] {
  const { chance } = model;
  switch (chance.whole(6)) {
    case 0:
      return [[whole("S", chance.between(1, 240) * 100), code("M", chance.pick([3, 4]))]];
    case 1:
      return [[code("M", chance.pick([5, 7, 8, 9, 48]))]];
    case 2:
      return [[toolNumber(model), code("M", 6)]];
    case 3:
      return [[toolNumber(model)], straight(model), [code("M", 6)]];
    case 4: {
      forget(model, all);
      return [[code("M", chance.pick([0, 1]))], settle(model)];
    }
    default:
      return [[code("G", 4), { letter: "P", steps: chance.between(0, 50), decimals: 1 }]];
  }
}

/** Words that go with any straight motion, whatever their order: one of a few modal groups. */
function beside(model: Model): Word[] {
  const { chance } = model;
  const some: Word[][] = [
    [whole("S", chance.between(1, 200) * 10)],
    [toolNumber(model)],
    [code("M", chance.pick([3, 4, 5]))],
    [code("M", chance.pick([7, 8, 9]))],
    [code("M", 48)],
    [code("G", chance.pick([61, 61.1, 64]))],
    [code("G", chance.pick([98, 99]))],
    [code("G", 40)],
    [code("G", 4), { letter: "P", steps: chance.between(0, 20), decimals: 1 }],
  ];
  return some.filter(() => chance.happens(0.15)).flat();
}

const parts: readonly ((model: Model) => Word[][])[] = [
  (model) => [[...straight(model), ...beside(model)]],
  (model) => [straight(model), straight(model), straight(model)],
  (model) => [arc(model)],
  (model) => [arc(model), arc(model)],
  series,
  row,
  shift,
  actions,
  inverseTime,
  compensated,
  otherUnits,
  (model) => [rotary(model)],
  (model) => [[...motionWord(model, 1), { letter: "F", steps: 1000, decimals: 1 }], straight(model)],
];

const comments = ["(a)", "( X1 G0 )", "()", "(MSG, look)", "(msg,  twice )", "(100% #1 [2])"];

/** A program of random blocks that the standard allows, three times in four in the oddest spelling. */
export function randomProgram(seed: number): string {
  const chance = createChance(seed);
  const model = createModel(chance);
  const lineEnd = chance.happens(0.3) ? "\r\n" : "\n";
  const habits: Habits = chance.happens(0.25)
    ? { numbers: "usual", codes: 1, blanks: " ", lowerCase: false, order: "usual", lineEnd }
    : {
        numbers: "any",
        codes: "any",
        blanks: chance.pick(["any", "any", "", " "] as const),
        lowerCase: "any",
        order: chance.pick(["any", "any", "any", "given"] as const),
        lineEnd,
      };
  const heads = [17, 21, 40, 49, 54, 61, 80, 90, 94, 98].map((value) => code("G", value));
  const blocks: Word[][] = [heads, settle(model)];
  for (let count = chance.between(6, 25); count > 0; count--) blocks.push(...chance.pick(parts)(model));
  const lines = blocks.flatMap((words) => dress(spellBlock(words, habits, chance), chance));
  lines.push(spellBlock([code("M", 2)], habits, chance));
  const framed = chance.happens(0.7) ? ["%", ...lines, "%"] : lines;
  return framed.join(habits.lineEnd) + (chance.happens(0.8) ? habits.lineEnd : "");
}

/** Block numbers, marks of block delete, comments and blank lines around a block. */
function dress(block: string, chance: Chance): string[] {
  const number = chance.happens(0.2) ? chance.pick(["N", "n "]) + String(chance.whole(100_000)) + " " : "";
  const mark = chance.happens(0.05) ? "/" : "";
  const comment = chance.happens(0.1) ? chance.pick(comments) : "";
  const [before, behind] = chance.happens(0.5) ? [comment, ""] : ["", comment];
  const lines = [mark + number + before + block + behind];
  if (chance.happens(0.05)) lines.push(chance.pick(["", "  ", "\t", "N7", "(alone)", "/"]));
  return lines;
}
