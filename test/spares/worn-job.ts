/** Operations that each cut for a minute and some: 18 mm down at 180 mm/min, and 180 mm along at 180 mm/min. */

const slot = (y: number) => [
  { rapid: { x: 10, y } },
  { line: { z: -8 }, feed: 180 },
  { line: { x: 190 } },
  { rapid: { z: 10 } },
];

const drill = [
  { rapid: { x: 100, y: 50 } },
  {
    holes: { kind: "drill", at: [[100, 50]], top: 0, depth: -8, retract: 2 },
    feed: 100,
  },
];

interface SpareTool extends Readonly<Record<string, unknown>> {
  readonly number: number;
  readonly life?: number;
  readonly lengthOffset?: number;
}

export const spareTools: readonly SpareTool[] = [
  { number: 1, kind: "end-mill", diameter: 6, flutes: 2, length: 40, life: 2.5 },
  { number: 2, kind: "drill", diameter: 5, length: 50 },
  {
    number: 7,
    kind: "end-mill",
    diameter: 6,
    flutes: 2,
    length: 42,
    life: 1.5,
    lengthOffset: 17,
    spareFor: 1,
  },
  { number: 5, kind: "end-mill", diameter: 6, flutes: 2, length: 41, life: 3, spareFor: 1 },
];

const cutting = (id: string, tool: number, moves: readonly object[]) => ({
  id,
  name: id,
  tool,
  spindle: { rpm: 8000, direction: "cw" },
  moves,
});

/** Tool 1 serves op10 and op30, tool 7 op40, tool 5 op50 and op60: 1.1 min each. */
export function wornJob(more: object = {}): string {
  return JSON.stringify({
    job: "1",
    name: "worn",
    units: "mm",
    program: { number: 1 },
    clearance: 10,
    stock: { min: [0, 0, -10], max: [200, 120, 0] },
    tools: spareTools,
    operations: [
      cutting("op10", 1, slot(10)),
      cutting("op20", 2, drill),
      cutting("op30", 1, slot(30)),
      cutting("op40", 1, slot(70)),
      cutting("op50", 1, slot(90)),
      cutting("op60", 1, slot(110)),
    ],
    ...more,
  });
}
