import type { Chance } from "../reading/written/chance.ts";
import { createChance } from "../reading/written/chance.ts";
import { boundedExpression } from "./random-expression.ts";

/** A part of a program: its blocks, and what its subprograms are, which stand where they may. */
interface Part {
  readonly blocks: readonly string[];
  /** O word subprograms, before all blocks; numbered ones, behind the end. */
  readonly subprograms?: readonly string[];
  readonly numbered?: readonly string[];
}

/** What makes a part; labels begin at a number that no other part has. */
type MakePart = (chance: Chance, label: number) => Part;

const upper = (chance: Chance, text: string): string => (chance.happens(0.5) ? text.toUpperCase() : text);

const expressions: MakePart = (chance) => {
  const names = ["#31", "#32", "#<depth>"];
  const settings = names.map(
    (name, index) => `${name}=${boundedExpression(chance, names.slice(0, index), 40)}`,
  );
  const moves = Array.from({ length: chance.between(3, 8) }, () => {
    const axes = chance.shuffle(["X", "Y", "Z"]).slice(0, chance.between(1, 3));
    return `G1 ${axes.map((axis) => axis + boundedExpression(chance, names, 60)).join(" ")}`;
  });
  return {
    blocks: [
      ...settings,
      ...moves,
      `#31=[${boundedExpression(chance, names, 9)} * 0.1]`,
      "#32=[#31 * 2] #31=#32",
      "G1 X[#31 MOD 50] Y[#32 MOD 50]",
    ],
  };
};

const polygon: MakePart = (chance, label) => {
  const corners = chance.between(3, 12);
  return {
    blocks: [
      `#100=${String(corners)} #101=${String(chance.between(5, 40))} #102=0`,
      `G0 X[50 + #101] Y50`,
      `o${String(label)} while [#102 LT #100]`,
      "  #102=[#102 + 1]",
      "  G1 X[50 + #101 * COS[360 * #102 / #100]] Y[50 + #101 * SIN[360 * #102 / #100]]",
      `o${String(label)} endwhile`,
    ],
  };
};

const boltCircle: MakePart = (chance, label) => {
  const cycle = chance.pick(["G81", "G83", "G82", "G89"]);
  const more = cycle === "G83" ? " Q[#103 / 2]" : cycle === "G81" ? "" : " P[#103 / 50]";
  const level = chance.pick(["G98", "G99"]);
  return {
    blocks: [
      `#103=${String(chance.between(2, 9) / 2)} #104=${String(chance.between(3, 9))} #105=0`,
      "G0 Z10",
      `o${String(label)} repeat [#104]`,
      `  ${level} ${cycle} X[60 + 30 * COS[#105 * 360 / #104]] Y[60 + 30 * SIN[#105 * 360 / #104]] Z[-#103] R[1 + #103 / 4]${more}`,
      "  #105=[#105 + 1]",
      `o${String(label)} endrepeat`,
      "G80",
      "G0 Z10",
    ],
  };
};

const spiral: MakePart = (chance, label) => ({
  blocks: [
    `#<step>=${String(chance.between(3, 9) / 2)} #<size>=${String(chance.between(10, 30))} #<at>=0.5`,
    "G0 X50 Y50",
    `o${String(label)} do`,
    "  G1 X[50 - #<at>] Y[50 - #<at>]",
    "  X[50 + #<at>]",
    "  Y[50 + #<at>]",
    "  X[50 - #<at>]",
    "  Y[50 - #<at>]",
    "  #<at>=[#<at> + #<step>]",
    `  o${String(label + 1)} if [#<at> GT #<size> / 2]`,
    chance.happens(0.5) ? `    o${String(label)} break` : "    #<at>=[#<size> / 2 + 1]",
    `  o${String(label + 1)} endif`,
    `o${String(label)} while [#<at> LT #<size> / 2]`,
  ],
});

const arcs: MakePart = (chance, label) => {
  const code = chance.pick(["G2", "G3"]);
  const helix = chance.happens(0.4) ? " Z[-#110 / 3]" : "";
  return {
    blocks: [
      `#110=${String(chance.between(4, 20))} #111=${String(chance.between(0, 359))} #112=${String(chance.between(20, 300))}`,
      "#113=[#110 * COS[#111]] #114=[#110 * SIN[#111]]",
      "G1 X[70 + #113] Y[70 + #114] Z0",
      `${code} X[70 + #110 * COS[#111 + #112]] Y[70 + #110 * SIN[#111 + #112]] I[-#113] J[-#114]${helix}`,
      `o${String(label)} repeat [3]`,
      "  #115=[#110 * 0.9]",
      "  G1 X[70 + #115] Y70",
      `  ${code} I[-#115]`,
      "  #110=#115",
      `o${String(label)} endrepeat`,
    ],
  };
};

const nestedCalls: MakePart = (chance, label) => {
  const [outer, inner] = [`o${String(label)}`, `o<row${String(label)}>`];
  return {
    subprograms: [
      `${inner} sub`,
      "  #<i>=0",
      `  o${String(label + 2)} while [#<i> LT #3]`,
      "    G1 X[#1 + #<i> * 2.3] Y#2",
      "    #<i>=[#<i> + 1]",
      `  o${String(label + 2)} endwhile`,
      `${inner} endsub [#1 + #3]`,
      `${outer} sub`,
      `  ${upper(chance, `${inner} call [#1] [#2] [3]`)}`,
      "  G1 Z[-#<_value> / 10]",
      `  o${String(label + 1)} if [#4 GT 1]`,
      `    ${outer} call [#1 + 7] [#2 + 1.1] [0] [#4 - 1]`,
      `  o${String(label + 1)} else`,
      `    ${outer} return`,
      `  o${String(label + 1)} endif`,
      "  G1 X#1",
      `${outer} endsub`,
    ],
    blocks: [
      "#1=3 #2=4",
      `${outer} call [${String(chance.between(0, 20))}] [${boundedExpression(chance, ["#1", "#2"], 30)}] [1] [${String(chance.between(1, 4))}]`,
      chance.happens(0.5) ? `#5=${String(label)}\no#5 call [#1] [#2] [0] [1]` : "G1 X[#1 * #2]",
      "G1 X#1 Y#2",
    ],
  };
};

const steps: MakePart = (chance, label) => ({
  blocks: [
    "G0 X10 Y10 Z3",
    "G91",
    `o${String(label)} repeat [${String(chance.between(2, 30))}]`,
    `  G1 X[10 / ${String(chance.between(3, 13))}] Y[SIN[30] / 3]`,
    "  G1 X0.125 Z[-1 / 7]",
    "  G0 Z[1 / 7]",
    `o${String(label)} endrepeat`,
    "G90",
    "G1 X10",
  ],
});

const leaving: MakePart = (chance, label) => ({
  blocks: [
    "#120=0",
    `o${String(label)} while [1]`,
    "  #120=[#120 + 1]",
    `  o${String(label + 1)} if [#120 MOD ${String(chance.between(2, 4))} EQ 0]`,
    `    o${String(label)} continue`,
    `  o${String(label + 1)} elseif [#120 GE ${String(chance.between(5, 15))}]`,
    `    o${String(label)} break`,
    `  o${String(label + 1)} else`,
    "    G1 X[#120 * 1.7] Y[#120 ** 1.5]",
    `  o${String(label + 1)} endif`,
    `o${String(label)} endwhile`,
  ],
});

const byCode: MakePart = (chance, label) => ({
  numbered: [`O${String(label)}`, "#130=[#130 * 1.25]", "G1 X[#130 MOD 90] Y[#130 / 3]", "M99"],
  blocks: [
    `#130=${String(chance.between(1, 20))}`,
    `M98 P${String(label)} L${String(chance.between(1, 5))}`,
    "G0 X#130",
  ],
});

const indirect: MakePart = (chance) => ({
  blocks: [
    `#140=145 #145=${String(chance.between(1, 50))}`,
    "#[140 + 1]=[#140 + 1]",
    "G1 X##140 Y[#[#140] / 3]",
    "#146=7",
    "#<_shared>=[##141 * 2]",
    "G1 X#146 Y#<_shared>",
    `G#147 X[EXISTS[#<nothing>] + 1]`.replace("#147", "[2 - 1]"),
    "G1 Y[EXISTS[#<_shared>] * 5] F[#146 * 100]",
  ],
});

const parts = {
  expressions,
  polygon,
  boltCircle,
  spiral,
  arcs,
  nestedCalls,
  steps,
  leaving,
  byCode,
  indirect,
};

/** Head that states all modes, as programs from elsewhere do not: here it is arithmetic that is looked at. */
const head = ["G17 G21 G40 G49 G54 G61 G80 G90 G94 G98", "G0 X0 Y0 Z20", "F300"];

/** The program of a seed: two to five parts in any order. */
export function randomParametric(seed: number): string {
  const chance = createChance(seed * 7919 + 17);
  const all = Object.values(parts);
  // A BREAK out of a WHILE spoils each DO behind it (see `written.ts`), so that the part with one comes last.
  const chosen = chance.shuffle(all).slice(0, chance.between(2, 5));
  const made = [
    ...chosen.filter((make) => make !== leaving),
    ...chosen.filter((make) => make === leaving),
  ].map((make, index) => make(chance, 1000 + 10 * index));
  const lines = [
    "%",
    ...head,
    ...made.flatMap(({ subprograms }) => subprograms ?? []),
    ...made.flatMap(({ blocks }) => ["G0 Z5", ...blocks]),
    "G0 Z20",
    "M2",
    ...made.flatMap(({ numbered }) => numbered ?? []),
    "%",
  ];
  return `${lines.join("\n")}\n`;
}
