import { cut, down, drill, drilled, mill, operation, tap, tapped } from "./trade.ts";
import type { SmallJob } from "./trade.ts";

/** A job that a rule is about, and one that comes near it. */
export interface TradeCase {
  readonly rule: string;
  readonly what: string;
  readonly bad: SmallJob;
  readonly nearly: SmallJob;
  /** Parts of the message. */
  readonly says: readonly string[];
  /** Text at the place of the finding. */
  readonly at: string;
}

const aluminium = "aluminium plate, 6000 series";
const one = (tool: object, rpm: number, moves: readonly object[], more = {}): SmallJob => ({
  tools: [tool],
  operations: [operation("op10", 1, rpm, moves)],
  ...more,
});

/** Chip load at 16 000 rpm with two teeth: feed / 32 000. */
const milled = (feed: number, material = aluminium): SmallJob => one(mill(), 16000, cut(feed), { material });

/** Two operations of two tools with one feed: the second of 3 mm in aluminium, where 0.01 to 0.025 mm is usual. */
const twoTools = (first: number, second: number): SmallJob => ({
  material: aluminium,
  tools: [mill(), mill({ number: 2, diameter: 3 })],
  operations: [operation("op10", 1, 16000, cut(first)), operation("op20", 2, 16000, cut(second))],
});

const place = [20, 20] as const;

/** Drills at `holes` to `depth`, then taps 12 deep at two places. */
const threads = (holes: readonly (readonly number[])[], depth: number): SmallJob => ({
  tools: [drill(), tap()],
  operations: [
    operation("op10", 2, 3000, [drilled(holes, depth)]),
    operation("op20", 3, 400, [tapped([place, [40, 20]], -12)]),
  ],
});

const twice = (first: object, second: object, tools: readonly object[] = [drill()]): SmallJob => ({
  tools,
  operations: [operation("op10", 2, 3000, [first]), operation("op20", 2, 3000, [second])],
});

const pilot = (diameter: number): SmallJob => ({
  tools: [drill(), drill({ number: 4, diameter })],
  operations: [
    operation("op10", 2, 3000, [drilled([place], -10)]),
    operation("op20", 4, 3000, [drilled([place], -10)]),
  ],
});

const arc = (radius: number): SmallJob =>
  one(mill(), 16000, [
    { rapid: { x: 10, y: 10, z: 2 } },
    { arc: { x: 10 + 2 * radius, y: 10, cx: 10 + radius, cy: 10 }, turn: "cw", feed: 500 },
  ]);

const rapidAt = (z: number, y = 40): SmallJob =>
  one(mill(), 16000, [
    { rapid: { x: -20, y } },
    { rapid: { z } },
    { rapid: { x: 120 } },
    { rapid: { z: 15 } },
  ]);

export const tradeCases: readonly TradeCase[] = [
  {
    // D6 in aluminium, from memory: 0.03 to 0.06 mm; told above 2.3 x 0.06 = 0.138 mm, which is 4416 mm/min.
    rule: "job/chip-load",
    what: "too much",
    bad: milled(4420),
    nearly: milled(4410),
    says: [
      "0.1381 mm a tooth in aluminium",
      "4420 mm/min / (16000 rpm x 2)",
      "0.03 mm to 0.06 mm",
      "from memory",
    ],
    at: `{"line":{"x":30`,
  },
  {
    // Told below 0.03 / 4 = 0.0075 mm, which is 240 mm/min.
    rule: "job/chip-load",
    what: "too little",
    bad: milled(239),
    nearly: milled(241),
    says: ["0.007469 mm a tooth"],
    at: `{"line":{"x":30`,
  },
  {
    // Soft plastic at 1/4 inch: 0.006 to 0.009 in (retailer's chart); 0.009 x 2.3 x 36 000 = 745 in/min.
    rule: "job/chip-load",
    what: "in inches, from the chart",
    bad: one(mill({ diameter: 0.25 }), 18000, cut(746), { material: "HDPE", units: "inch" }),
    nearly: one(mill({ diameter: 0.25 }), 18000, cut(745), { material: "HDPE", units: "inch" }),
    says: ["746 in/min", "0.006 in to 0.009 in", "retailer's published chart"],
    at: `{"line":{"x":30`,
  },
  {
    rule: "job/chip-load",
    what: "per revolution",
    bad: {
      material: aluminium,
      tools: [mill()],
      operations: [operation("op10", 1, 16000, cut(0.28), { feedMode: "per-revolution" })],
    },
    nearly: {
      material: aluminium,
      tools: [mill()],
      operations: [operation("op10", 1, 16000, cut(0.27), { feedMode: "per-revolution" })],
    },
    says: ["0.14 mm a tooth", "0.28 mm/rev / (1 rev x 2)"],
    at: `{"line":{"x":30`,
  },
  {
    rule: "job/feed-left-over",
    what: "of the tool before",
    bad: twoTools(1900, 1900),
    nearly: twoTools(1900, 1800),
    says: ["`op20` has the feed of `op10`, which is for tool 1", "0.05937 mm a tooth"],
    at: `{"line":{"x":30`,
  },
  {
    // Carbide in plastics: 505 m/min at the most (tool maker); 757.5 at D12 is 20 093 rpm.
    rule: "job/cutting-speed",
    what: "too fast",
    bad: one(mill({ diameter: 12 }), 20100, cut(7000), { material: "acrylic" }),
    nearly: one(mill({ diameter: 12 }), 20090, cut(7000), { material: "acrylic" }),
    says: ["at 758 m/min", "pi x 12 mm x 20100 rpm", "505", "tool maker's published"],
    at: `{"id":"op10"`,
  },
  {
    // 200 / 4 = 50 m/min at D6 is 2653 rpm, and the tool may turn at 24 000.
    rule: "job/cutting-speed",
    what: "too slow, where the tool may turn faster",
    bad: one(mill({ maxRpm: 24000 }), 2650, cut(200), { material: aluminium }),
    nearly: one(mill({ maxRpm: 24000 }), 2660, cut(200), { material: aluminium }),
    says: ["at 50 m/min", "200", "from memory"],
    at: `{"id":"op10"`,
  },
  {
    rule: "job/plunge",
    what: "a mill with no edge at its centre",
    bad: one(mill({ centreCutting: false }), 16000, down(100, 800)),
    nearly: one(mill({ centreCutting: false }), 16000, cut(800)),
    says: ["Tool 1 (end-mill)", "does not cut at its centre"],
    at: `{"line":{"z":-3}`,
  },
  {
    rule: "job/plunge",
    what: "a face-mill; beside the stock it may go down",
    bad: one({ number: 1, kind: "face-mill", diameter: 25 }, 6000, [
      { rapid: { x: -12, y: 10 } },
      ...down(100, 800),
    ]),
    nearly: one({ number: 1, kind: "face-mill", diameter: 25 }, 6000, [
      { rapid: { x: -12.5, y: 10 } },
      ...down(100, 800),
    ]),
    says: ["Tool 1 (face-mill)"],
    at: `{"line":{"z":-3}`,
  },
  {
    rule: "job/plunge-feed",
    what: "as fast as sideways",
    bad: one(mill(), 16000, down(800, 800)),
    nearly: one(mill(), 16000, down(799, 800)),
    says: ["straight down into the stock at 800 mm/min, and sideways at 800 mm/min"],
    at: `{"line":{"z":-3}`,
  },
  {
    rule: "job/flute-length",
    what: "of a drill",
    bad: {
      tools: [drill({ fluteLength: 12 })],
      operations: [operation("op10", 2, 3000, [drilled([place], -12.001)])],
    },
    nearly: {
      tools: [drill({ fluteLength: 12 })],
      operations: [operation("op10", 2, 3000, [drilled([place], -12)])],
    },
    says: ["12 mm into a hole", "12 mm long"],
    at: `{"holes"`,
  },
  {
    rule: "job/flute-length",
    what: "of a mill, below the top of the stock",
    bad: one(mill({ fluteLength: 5 }), 16000, cut(800, -5.1)),
    nearly: one(mill({ fluteLength: 5 }), 16000, cut(800, -5)),
    says: ["cuts 5.1 mm below the top of the stock", "5 mm long"],
    at: `{"line":{"x":30`,
  },
  {
    rule: "job/low-rapid",
    what: "close over the stock",
    bad: rapidAt(0.9),
    nearly: rapidAt(1),
    says: ["0.9 mm over the top"],
    at: `{"rapid":{"x":120`,
  },
  {
    rule: "job/low-rapid",
    what: "not beside it",
    bad: rapidAt(0.5, 79),
    nearly: rapidAt(0.5, 80),
    says: ["0.5 mm over the top"],
    at: `{"rapid":{"x":120`,
  },
  {
    rule: "job/tiny-arc",
    what: "smaller than rounding bears",
    bad: arc(0.0099),
    nearly: arc(0.01),
    says: ["0.0099 mm", "NISTIR 6556 3.5.3.2"],
    at: `{"arc"`,
  },
  {
    rule: "job/hole-twice",
    what: "by one drill",
    bad: twice(drilled([place], -10), drilled([place], -9)),
    nearly: twice(drilled([place], -10), drilled([place], -10.1)),
    says: ["Tool 2 (drill)"],
    at: `[20,20]],"top":0,"depth":-9`,
  },
  {
    rule: "job/hole-twice",
    what: "by a narrower drill, and not by a wider one",
    bad: pilot(5),
    nearly: pilot(5.1),
    says: ["Tool 4 (drill)"],
    at: `[20,20]]`,
  },
  {
    rule: "job/tap-hole",
    what: "deeper than its hole",
    bad: threads([place, [40, 20]], -11.5),
    nearly: threads([place, [40, 20]], -12),
    says: ["Tool 3 (tap) goes 0.5 mm deeper"],
    at: `[20,20]`,
  },
  {
    rule: "job/tap-hole",
    what: "without a hole, where others have one",
    bad: threads([place], -15),
    nearly: threads([[60, 20]], -15),
    says: ["makes no hole"],
    at: `[40,20]`,
  },
  {
    rule: "job/unused-tool",
    what: "one of two",
    bad: { tools: [mill(), drill()], operations: [operation("op10", 1, 16000, cut(800))] },
    nearly: one(mill(), 16000, cut(800)),
    says: ["Tool 2 is not used"],
    at: `{"number":2`,
  },
  {
    rule: "job/material",
    what: "of which nothing is known",
    bad: milled(800, "slate"),
    nearly: milled(800, "Aluminum"),
    says: ["slate"],
    at: `"slate"`,
  },
];
