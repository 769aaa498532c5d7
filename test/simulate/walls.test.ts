import { describe, expect, it } from "vitest";
import { seeded } from "../support/seeded.ts";
import { cut, doneOf, line, plunge, rapid, rulesOf } from "./cutting.ts";
import type { Cutting, Point } from "./cutting.ts";

const stock: readonly [Point, Point] = [
  [0, 0, -10],
  [80, 80, 0],
];

/** Two slots with a wall between them, and a rapid at their depth from the one through the wall to the other. */
function throughWall(wall: number, angle: number, x: number, y: number, resolution?: number): Cutting {
  const radius = 3;
  const [alongX, alongY] = [Math.cos(angle), Math.sin(angle)];
  const apart = radius + wall / 2;
  const at = (along: number, aside: number): [number, number] => [
    x + along * alongX - aside * alongY,
    y + along * alongY + aside * alongX,
  ];
  const slot = (side: number) => [
    rapid(undefined, undefined, 5),
    ...plunge(...at(-15, side * apart), -4),
    line(...at(15, side * apart)),
  ];
  return {
    stock,
    tools: [{ kind: "end-mill", diameter: 6 }],
    items: [...slot(1), ...slot(-1), line(...at(0, -apart)), rapid(...at(0, apart))],
    sizes: resolution === undefined ? {} : { resolution },
  };
}

describe("a rapid through a wall of 0.5 mm", () => {
  it("is found in cells of the usual width, at any angle and place", () => {
    const random = seeded(11);
    const { surestWall } = doneOf(cut(throughWall(0.5, 0, 40, 40)));
    expect(surestWall).toBeLessThanOrEqual(0.5);
    for (let round = 0; round < 72; round++) {
      const angle = (round * Math.PI) / 36;
      const result = cut(throughWall(0.5, angle, 40 + random(), 40 + random()));
      expect(rulesOf(result)).toEqual(["motion/rapid-through-material"]);
      expect(result.findings[0].message).toContain("up to 4 mm deep");
    }
  });

  it("is told at the rapid, with the operation and the tool", () => {
    const { findings } = cut(throughWall(0.5, 0.3, 40, 40));
    expect(findings[0]).toMatchObject({
      rule: "motion/rapid-through-material",
      severity: "warning",
      message:
        "A rapid in operation `op10` with tool 1 goes through material that is left there, up to 4 mm deep.",
      place: { source: "job", offset: 100 + 10 * 11 },
    });
  });
});

it.each([0.1, 0.2, 0.35, 0.5, 1])(
  "a wall as thick as the diagonal of a cell of %s mm is seen at any angle and place",
  (resolution) => {
    const random = seeded(12);
    for (let round = 0; round < 40; round++) {
      const wall = resolution * Math.SQRT2 + 1e-6;
      const result = cut(throughWall(wall, random() * 7, 40 + random(), 40 + random(), resolution));
      expect(rulesOf(result)).toEqual(["motion/rapid-through-material"]);
    }
  },
);

it("a wall thinner than a cell may lie between the centres of cells, so that no less is promised", () => {
  const seen = Array.from({ length: 20 }, (_, round) => {
    const result = cut(throughWall(0.2, 0, 40, 40 + round * 0.05, 1));
    return rulesOf(result).length;
  });
  expect(seen).toContain(0);
  expect(seen).toContain(1);
});

describe("rapids that meet nothing", () => {
  it("go through a slot that was cut, back on its path, and back into a hole", () => {
    const random = seeded(13);
    for (let round = 0; round < 40; round++) {
      const { items, ...cutting } = throughWall(0.5, random() * 7, 40 + random(), 40 + random(), 0.35);
      // Without the rapid through the wall; back along the slot that was cut last, up, and down again.
      const back = items.slice(0, -2);
      const { move: start } = items[4];
      const result = cut({
        ...cutting,
        items: [
          ...back,
          rapid(start?.x, start?.y),
          rapid(undefined, undefined, 5),
          rapid(undefined, undefined, -4),
        ],
      });
      expect(rulesOf(result).filter((rule) => rule !== "motion/rapid-through-material")).toEqual([]);
    }
  });

  it.each(["end-mill", "ball-mill", "v-bit"] as const)("go down to the floor that a %s has left", (kind) => {
    const result = cut({
      stock,
      tools: [{ kind, diameter: 6 }],
      items: [
        ...plunge(20, 40, -2.5),
        line(60, 40),
        rapid(undefined, undefined, 5),
        rapid(40, undefined),
        rapid(undefined, undefined, -2.5),
        rapid(22.2, 40),
      ],
    });
    expect(rulesOf(result).filter((rule) => rule !== "note motion/not-simulated")).toEqual([]);
  });
});

it("a rapid down into what is left is found, and one 0.04 mm into it is within the tolerance", () => {
  const to = (z: number) =>
    rulesOf(
      cut({
        stock,
        tools: [{ kind: "end-mill", diameter: 6 }],
        items: [rapid(40, 40), rapid(undefined, undefined, 5), rapid(undefined, undefined, z)],
      }),
    );
  expect(to(-0.04)).toEqual([]);
  expect(to(-0.1)).toEqual(["motion/rapid-through-material"]);
  expect(to(-3)).toEqual(["motion/rapid-through-material"]);
});

it("rapids that need not be straight are looked at around the corner, too", () => {
  // A pocket in the form of an L, and a rapid straight across its inner corner or along its legs.
  const items = [
    ...plunge(20, 20, -3),
    line(20, 60),
    line(60, 60),
    line(20, 60),
    line(20, 20),
    rapid(20, 60),
    rapid(60, 60),
  ];
  const tools = [{ kind: "end-mill" as const, diameter: 6 }];
  const rapids = (way: "straight" | "dog-leg", more: typeof items) =>
    rulesOf(
      cut({
        stock,
        tools,
        items: [...items, ...more],
        facts: { machine: { rapids: way, swap: undefined, rack: undefined } },
      }),
    );
  expect(rapids("dog-leg", [])).toEqual([]);
  // A slot at 45 degrees besides: straight through it is free, around the corner is not.
  const clear = [line(60, 60), line(20, 60), line(20, 20), line(60, 60), rapid(20, 20)];
  expect(rapids("straight", clear)).toEqual([]);
  expect(rapids("dog-leg", clear)).toEqual(["motion/rapid-through-material"]);
});

it("many rapids of one operation through the same wall are one finding with the count of them", () => {
  const rapids = Array.from({ length: 5 }, (_, index) => [
    rapid(undefined, undefined, 5),
    rapid(20 + 7 * index, 20),
    rapid(undefined, undefined, -1 - index / 10),
  ]).flat();
  const { findings } = cut({
    stock,
    tools: [{ kind: "end-mill", diameter: 6 }],
    items: [rapid(20, 20), ...rapids],
  });
  expect(findings.length).toBe(1);
  expect(findings[0].message).toContain("up to 1.4 mm deep, in 5 motions, the deepest here");
  expect(findings[0].place?.offset).toBe(100 + 10 * 15);
});
