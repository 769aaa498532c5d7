import type { Writer } from "./cam-program.ts";
import { announce, arc, feedWord, modes, move, put, units, word } from "./cam-program.ts";
import { code, whole } from "./spell.ts";

const clearance = 15;

/** A change of the tool and what comes behind it: spindle, work offset, first place, length offset with Z. */
function begin(writer: Writer, text: string, x: number, y: number): void {
  const { style, chance } = writer;
  announce(writer, text);
  const tool = style.nextTool && writer.next > 0 ? writer.next : chance.between(1, 20);
  put(writer, [whole("T", tool), code("M", 6)]);
  writer.tool = tool;
  put(writer, [whole("S", chance.between(10, 240) * 100), code("M", 3)]);
  if (style.nextTool) {
    writer.next = chance.between(1, 20);
    put(writer, [whole("T", writer.next)]);
  }
  const offset = chance.pick([54, 54, 55, 59.1]);
  [writer.at[0], writer.at[1]] = [units(writer, x), units(writer, y)];
  writer.motion = 0;
  put(writer, [
    code("G", offset),
    code("G", 0),
    word(writer, "X", writer.at[0]),
    word(writer, "Y", writer.at[1]),
  ]);
  writer.at[2] = units(writer, clearance);
  put(writer, [code("G", 43), whole("H", tool), word(writer, "Z", writer.at[2])]);
  if (chance.happens(0.7)) put(writer, [code("M", chance.pick([7, 8]))]);
}

/** The way up and, by the style, to a place of the machine. */
function leave(writer: Writer): void {
  const { style, chance } = writer;
  move(writer, 0, { z: units(writer, clearance) });
  put(writer, [code("M", 9)]);
  if (chance.happens(0.5)) put(writer, [code("M", 5)]);
  if (style.leave === "clearance") return;
  if (style.leave === "G53") {
    put(writer, [code("G", 53), code("G", 0), word(writer, "Z", 0)]);
    writer.motion = 0;
  } else {
    put(writer, [code("G", 91), code("G", 28), word(writer, "Z", 0)]);
    if (chance.happens(0.5)) put(writer, [code("G", 28), word(writer, "X", 0), word(writer, "Y", 0)]);
    put(writer, [code("G", 90)]);
  }
  if (chance.happens(0.3)) put(writer, [code("M", chance.pick([0, 1]))]);
}

function incremental(writer: Writer, on: boolean): void {
  if (!writer.style.incremental || writer.incremental === on) return;
  modes(writer, [on ? 91 : 90], true);
  writer.incremental = on;
}

/** Lines to and fro. */
function facing(writer: Writer): void {
  const { chance } = writer;
  const width = units(writer, chance.between(50, 120));
  const step = units(writer, chance.between(2, 6));
  begin(writer, "face", -5, 0);
  for (let level = 1; level <= 2; level++) {
    move(writer, 0, { z: units(writer, 2) });
    move(writer, 1, { z: -units(writer, level / 2) }, 200);
    incremental(writer, true);
    const [left, right] = [writer.at[0], writer.at[0] + width];
    for (let pass = 0; pass < 12; pass++) {
      move(writer, 1, { x: pass % 2 === 0 ? right : left }, 1200);
      move(writer, 1, { y: writer.at[1] + step }, 1200);
    }
    incremental(writer, false);
    move(writer, 0, { z: units(writer, clearance) });
    move(writer, 0, { x: -units(writer, 5), y: 0 });
  }
  leave(writer);
}

/** A rectangle with round corners, by a ramp or a helix, level by level. */
function pocket(writer: Writer): void {
  const { chance } = writer;
  const [x, y] = [units(writer, chance.between(0, 60)), units(writer, chance.between(0, 40))];
  const [w, h, r] = [
    units(writer, chance.between(20, 40)),
    units(writer, chance.between(20, 30)),
    units(writer, chance.between(2, 5)),
  ];
  begin(writer, "pocket", 10, 10);
  move(writer, 0, { x: x + r, y });
  move(writer, 0, { z: units(writer, 1) });
  for (let level = 1; level <= 6; level++) {
    move(writer, 1, { z: -units(writer, level / 2) }, 150);
    incremental(writer, chance.happens(0.5));
    move(writer, 1, { x: x + w - r }, 900);
    arc(writer, 3, x + w, y + r, x + w - r, y + r);
    move(writer, 1, { y: y + h - r }, 900);
    arc(writer, 3, x + w - r, y + h, x + w - r, y + h - r);
    move(writer, 1, { x: x + r }, 900);
    arc(writer, 3, x, y + h - r, x + r, y + h - r);
    move(writer, 1, { y: y + r }, 900);
    arc(writer, 3, x + r, y, x + r, y + r);
    incremental(writer, false);
  }
  leave(writer);
}

/** Down a helix, then circles in both senses. */
function bore(writer: Writer): void {
  const { chance } = writer;
  begin(writer, "bore", 40, 40);
  const [cx, cy, r] = [units(writer, 40), units(writer, 40), units(writer, chance.between(4, 9))];
  move(writer, 0, { x: cx + r });
  move(writer, 1, { z: 0 }, 300);
  for (let turn = 1; turn <= 10; turn++) arc(writer, 3, cx + r, cy, cx, cy, -units(writer, turn / 2));
  arc(writer, 3, cx - r, cy, cx, cy);
  arc(writer, 3, cx + r, cy, cx, cy);
  arc(writer, 2, cx + r, cy, cx, cy);
  move(writer, 1, { x: cx }, 500);
  leave(writer);
}

/** Many short lines in X, Y and Z, as a surface or a text is written. */
function engraving(writer: Writer): void {
  const { chance, at } = writer;
  begin(writer, "engrave", 5, 5);
  for (let stroke = 0; stroke < 12; stroke++) {
    move(writer, 0, { x: units(writer, chance.between(0, 100)), y: units(writer, chance.between(0, 60)) });
    move(writer, 0, { z: units(writer, 1) });
    move(writer, 1, { z: -units(writer, 0.2) }, 120);
    incremental(writer, chance.happens(0.3));
    for (let line = chance.between(10, 40); line > 0; line--) {
      const step = (): number => chance.between(-1500, 1500);
      const z = chance.happens(0.4) ? { z: -chance.between(100, 600) } : {};
      move(writer, 1, { x: at[0] + step(), y: at[1] + step(), ...z }, chance.happens(0.02) ? 777 : 800);
    }
    incremental(writer, false);
    move(writer, 0, { z: units(writer, 5) });
  }
  leave(writer);
}

/** Patterns of holes by the cycles, with words that stay away while they do not change. */
function holes(writer: Writer): void {
  const { chance, at } = writer;
  const cycle = chance.pick([81, 82, 83, 85, 89]);
  begin(writer, "holes", 10, 10);
  const level = [code("G", chance.pick([98, 99]))];
  const first = [
    ...level,
    code("G", cycle),
    word(writer, "X", at[0]),
    word(writer, "Y", at[1]),
    word(writer, "Z", -units(writer, chance.between(4, 20))),
    word(writer, "R", units(writer, 2)),
    ...(cycle === 83 ? [word(writer, "Q", units(writer, 1.5))] : []),
    ...(cycle === 82 || cycle === 89 ? [{ letter: "P", steps: 5, decimals: 1 }] : []),
    ...feedWord(writer, writer.feed === 110 ? 90 : 110),
  ];
  put(writer, first);
  writer.motion = cycle;
  for (let hole = 0; hole < 40; hole++) {
    const axis = chance.whole(2);
    const letter = "XY"[axis];
    at[axis as 0 | 1] += units(writer, chance.between(-8, 12));
    put(writer, [word(writer, letter, at[axis as 0 | 1])]);
  }
  if (level[0].steps === 990) at[2] = units(writer, 2);
  put(writer, [code("G", 80)]);
  writer.motion = 80;
  leave(writer);
}

/** Half circles upright, pass by pass, in the plane ZX. */
function ridge(writer: Writer): void {
  const { at } = writer;
  begin(writer, "ridge", 0, 0);
  const r = units(writer, 5);
  move(writer, 1, { z: 0 }, 400);
  modes(writer, [18], true);
  for (let pass = 0; pass < 25; pass++) {
    const sense = pass % 2 === 0 ? 2 : 3;
    const end = pass % 2 === 0 ? 2 * r : 0;
    const words = [
      word(writer, "X", end),
      word(writer, "Z", 0),
      word(writer, "I", (end - at[0]) / 2),
      word(writer, "K", 0),
    ];
    put(writer, [code("G", sense), ...words]);
    writer.motion = sense;
    at[0] = end;
    move(writer, 1, { y: at[1] + units(writer, 0.5) }, 400);
  }
  modes(writer, [17], true);
  leave(writer);
}

/** Slow moves of a rotary axis in inverse time. */
function indexing(writer: Writer): void {
  const { chance, at } = writer;
  begin(writer, "indexed", 0, 0);
  move(writer, 1, { z: 0 }, 300);
  put(writer, [code("G", 93)]);
  for (let line = 0; line < 15; line++) {
    at[0] += chance.between(100, 900);
    const angle = { letter: "A", steps: line * 7500, decimals: 3 };
    const rate = { letter: "F", steps: chance.between(20, 400), decimals: 1 };
    put(writer, [code("G", 1), word(writer, "X", at[0]), angle, rate]);
  }
  put(writer, [code("G", 94)]);
  writer.motion = 1;
  writer.feed = 0;
  leave(writer);
}

/** The operations of a long program, in turn. */
export const operations = [
  facing,
  pocket,
  engraving,
  holes,
  bore,
  pocket,
  ridge,
  engraving,
  indexing,
  holes,
] as const;
