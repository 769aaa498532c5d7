import fc from "fast-check";

/** A job as JSON, made up; enough of its shape for the generator and the predicate. */
export interface RandomJob {
  readonly job: "1";
  readonly name: string;
  readonly program: { readonly number: number };
  readonly units: "mm" | "inch";
  readonly stock?: { readonly min: readonly number[]; readonly max: readonly number[] };
  readonly clearance: number;
  readonly tools: readonly RandomTool[];
  readonly operations: readonly RandomOperation[];
}

export interface RandomTool {
  readonly number: number;
  readonly kind: string;
  readonly diameter: number;
  readonly radiusOffset?: number;
  readonly lead?: number;
}

export interface RandomOperation {
  readonly id: string;
  readonly tool: number;
  readonly spindle?: { readonly rpm: number; readonly direction: "cw" | "ccw" };
  readonly coolant: string | readonly string[];
  readonly path?: "exact" | "blend";
  readonly tolerance?: number;
  readonly feedMode: "per-minute" | "per-revolution" | "inverse-time";
  readonly workOffset: number;
  readonly moves: readonly Record<string, unknown>[];
}

/** Lengths of a job in millimetres, turned into its units. */
interface Scale {
  readonly inch: boolean;
}

const length = (scale: Scale, millimetres: number): number =>
  Number((scale.inch ? millimetres / 25.4 : millimetres).toFixed(scale.inch ? 6 : 5));

/** A place in millimetres, walked along while moves are made. */
interface Walk {
  x: number;
  y: number;
  z: number;
}

const clearance = 15;
const top = 0;

/** One way of going on, as numbers between 0 and 1, so that fast-check can shrink it. */
interface Choice {
  readonly maker: number;
  readonly kind: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

const unit = fc.integer({ min: 0, max: 1_000_000 }).map((parts) => parts / 1_000_000);
const choice: fc.Arbitrary<Choice> = fc.record({
  maker: unit,
  kind: unit,
  a: unit,
  b: unit,
  c: unit,
  d: unit,
});
const between = (part: number, from: number, to: number): number => from + part * (to - from);
const pick = <Item>(part: number, items: readonly Item[]): Item =>
  items[Math.min(items.length - 1, Math.floor(part * items.length))];

/** The feed words of a move in the operation's mode. */
function feedOf(scale: Scale, mode: RandomOperation["feedMode"], part: number): number {
  if (mode === "inverse-time") return Number(between(part, 0.5, 80).toFixed(2));
  const millimetres = mode === "per-minute" ? between(part, 50, 3000) : between(part, 0.05, 0.4);
  return Number((scale.inch ? millimetres / 25.4 : millimetres).toFixed(5));
}

type Maker = (context: Context, at: Walk, how: Choice) => Record<string, unknown>[];

interface Context {
  readonly scale: Scale;
  readonly tool: RandomTool;
  readonly mode: RandomOperation["feedMode"];
  readonly turning: boolean;
}

/** A line to anywhere, helping itself to one, two or three axes. */
const line: Maker = ({ scale, mode }, at, how) => {
  const target: Record<string, number> = {};
  if (how.d < 0.8) target["x"] = at.x = length(scale, between(how.a, -100, 100)) * (scale.inch ? 25.4 : 1);
  if (how.d > 0.2) target["y"] = at.y = length(scale, between(how.b, -80, 80)) * (scale.inch ? 25.4 : 1);
  if (how.d > 0.5) target["z"] = at.z = length(scale, between(how.c, -9, 12)) * (scale.inch ? 25.4 : 1);
  const written = Object.fromEntries(
    Object.entries(target).map(([axis, value]) => [axis, length(scale, value)]),
  );
  return [{ line: written, feed: feedOf(scale, mode, how.kind) }];
};

/** Up, across, and down to above the stock: rapids that no stock objects to. */
const rapid: Maker = ({ scale }, at, how) => {
  at.x = between(how.a, -100, 100);
  at.y = between(how.b, -80, 80);
  at.z = between(how.c, top + 1, clearance);
  return [
    { rapid: { z: length(scale, clearance) } },
    { rapid: { x: length(scale, at.x), y: length(scale, at.y) } },
    { rapid: { z: length(scale, at.z) } },
  ];
};

/** A rapid that moves all axes at once, well above the stock. */
const slantedRapid: Maker = ({ scale }, at, how) => {
  const moves: Record<string, unknown>[] = [{ rapid: { z: length(scale, between(how.d, 4, clearance)) } }];
  at.x = between(how.a, -100, 100);
  at.y = between(how.b, -80, 80);
  at.z = between(how.c, 4, clearance + 3);
  return [...moves, { rapid: { x: length(scale, at.x), y: length(scale, at.y), z: length(scale, at.z) } }];
};

const planes = {
  xy: ["x", "y", "z"],
  zx: ["z", "x", "y"],
  yz: ["y", "z", "x"],
} as const;

/** An arc in any plane: part of a circle, a full one, several turns, with or without a way along the normal. */
const arc: Maker = ({ scale, mode }, at, how) => {
  const plane = pick(how.kind, ["xy", "xy", "xy", "zx", "yz"] as const);
  const [first, second, normal] = planes[plane];
  const start = [length(scale, at[first]), length(scale, at[second])] as const;
  const radius = between(how.a ** 2, 0.4, 40) / (scale.inch ? 25.4 : 1);
  const from = how.b * 2 * Math.PI;
  const centre = [start[0] + radius * Math.cos(from), start[1] + radius * Math.sin(from)] as const;
  const ccw = how.c > 0.5;
  const full = how.d > 0.85;
  const sweep = full ? 0 : between(how.d, 0.02, 6.2) * (ccw ? 1 : -1);
  const angle = from + Math.PI + sweep;
  const digits = scale.inch ? 7 : 6;
  const end = full
    ? start
    : [
        Number((centre[0] + radius * Math.cos(angle)).toFixed(digits)),
        Number((centre[1] + radius * Math.sin(angle)).toFixed(digits)),
      ];
  const target: Record<string, number> = { [first]: end[0], [second]: end[1] };
  at[first] = end[0] * (scale.inch ? 25.4 : 1);
  at[second] = end[1] * (scale.inch ? 25.4 : 1);
  if (how.a > 0.6) {
    at[normal] += between(how.c, -4, 4);
    target[normal] = length(scale, at[normal]);
  }
  const turns = how.b > 0.8 ? 3 : 1;
  target[`c${first}`] = Number(centre[0].toFixed(digits));
  target[`c${second}`] = Number(centre[1].toFixed(digits));
  return [{ arc: target, turn: ccw ? "ccw" : "cw", plane, turns, feed: feedOf(scale, mode, how.a) }];
};

/** Holes of any kind at one to four places. */
const holes: Maker = ({ scale, tool, mode }, at, how) => {
  const kind =
    tool.kind === "tap"
      ? "tap"
      : pick(how.kind, ["drill", "dwell", "peck", "chip-break", "bore", "ream"] as const);
  const count = 1 + Math.floor(how.d * 3.99);
  const at4 = Array.from({ length: count }, (_, index) => [
    length(scale, between(how.a, -90, 90) + index * 7),
    length(scale, between(how.b, -70, 70) + (index % 2) * 5),
  ]);
  const depth = between(how.c, -14, -1);
  const levels = {
    top: top,
    depth: length(scale, depth),
    retract: length(scale, 2),
    between: how.b > 0.5 ? "initial" : "retract",
  };
  const moves: Record<string, unknown>[] = [{ rapid: { z: length(scale, how.a > 0.5 ? clearance : 5) } }];
  const extra: Record<string, unknown> = {};
  if (kind === "peck" || kind === "chip-break") {
    extra["peck"] = length(scale, between(how.a, 0.8, 6));
    if (how.b > 0.6) extra["backOff"] = length(scale, pick(how.d, [0.25, 0.5, 0.3]));
  }
  if (kind === "dwell") extra["dwell"] = Number(between(how.b, 0.1, 2).toFixed(2));
  if (kind === "bore" && how.a > 0.5) extra["dwell"] = 0.5;
  if ((kind === "bore" || kind === "ream") && how.c > 0.7) extra["feedOut"] = feedOf(scale, mode, how.d);
  if (kind === "tap") extra["lead"] = tool.lead;
  at.x = at4.at(-1)?.[0] ?? 0;
  at.y = at4.at(-1)?.[1] ?? 0;
  if (scale.inch) {
    at.x *= 25.4;
    at.y *= 25.4;
  }
  at.z = levels.between === "initial" ? (how.a > 0.5 ? clearance : 5) : 2;
  const move: Record<string, unknown> = { holes: { kind, at: at4, ...levels, ...extra } };
  if (kind !== "tap") move["feed"] = feedOf(scale, mode, how.c);
  return [...moves, move];
};

/** A path of points: a cut, or a rapid well above the stock. */
const path: Maker = ({ scale, mode }, at, how) => {
  const isRapid = how.kind > 0.8;
  const points = Array.from({ length: 2 + Math.floor(how.d * 12) }, (_, index) => {
    at.x = between(how.a, -90, 90) + Math.sin(index + how.b) * 5;
    at.y = between(how.b, -70, 70) + Math.cos(index * 2 + how.a) * 5;
    at.z = isRapid ? between(how.c, 4, clearance) - Math.sin(index) : between(how.c, -6, 2);
    return [length(scale, at.x), length(scale, at.y), length(scale, at.z)];
  });
  if (!isRapid) return [{ path: { kind: "line", points }, feed: feedOf(scale, mode, how.kind) }];
  return [{ rapid: { z: length(scale, clearance) } }, { path: { kind: "rapid", points } }];
};

const dwell: Maker = (_context, _at, how) => [{ dwell: Number(between(how.a, 0.05, 3).toFixed(2)) }];
const note: Maker = (_context, _at, how) => [
  { note: pick(how.a, ["first pass", "Check (clamps) 100%: now", "Ø 5 h7"]) },
];
const pause: Maker = ({ scale }, at, how) => {
  at.z = clearance;
  return [{ rapid: { z: length(scale, clearance) } }, { pause: "turn the part", optional: how.a > 0.5 }];
};
const speed: Maker = ({ turning }, _at, how) =>
  turning ? [{ spindle: { rpm: Math.round(between(how.a, 6000, 18000)) } }] : [];
const coolant: Maker = (_context, _at, how) => [{ coolant: pick(how.a, ["off", "mist", "flood"]) }];

/** Cutter compensation along a square, on and off by lines longer than the tool's radius. */
const compensation: Maker = ({ scale, tool, mode }, at, how) => {
  if (tool.radiusOffset === undefined) return [];
  const side = how.a > 0.5 ? "left" : "right";
  const [x, y] = [between(how.b, -50, 50), between(how.c, -50, 50)];
  [at.x, at.y, at.z] = [x - 30, y, clearance];
  const feed = feedOf(scale, mode, how.d);
  return [
    { rapid: { z: length(scale, clearance) } },
    { rapid: { x: length(scale, x - 30), y: length(scale, y) } },
    { comp: side },
    { line: { x: length(scale, x), y: length(scale, y) }, feed },
    { line: { x: length(scale, x), y: length(scale, y + 40) }, feed },
    { line: { x: length(scale, x + 40), y: length(scale, y + 40) }, feed },
    { comp: "off" },
    { line: { x: length(scale, x - 30), y: length(scale, y) }, feed },
  ];
};

/** Makers by the share in which they are drawn, in each feed mode. */
const makers: Record<RandomOperation["feedMode"], readonly Maker[]> = {
  "per-minute": [
    line,
    line,
    line,
    arc,
    arc,
    arc,
    rapid,
    rapid,
    slantedRapid,
    holes,
    holes,
    path,
    dwell,
    note,
    pause,
    speed,
    coolant,
    compensation,
  ],
  "per-revolution": [line, line, arc, arc, rapid, slantedRapid, holes, path, dwell, note, coolant],
  "inverse-time": [line, line, arc, arc, rapid, dwell],
};

const toolKinds = [
  "end-mill",
  "end-mill",
  "drill",
  "tap",
  "ball-mill",
  "reamer",
  "engraver",
  "drag-knife",
] as const;

const operationArbitrary = fc.record({
  tool: unit,
  mode: unit,
  offset: unit,
  coolant: unit,
  path: unit,
  tolerance: unit,
  rpm: unit,
  start: choice,
  choices: fc.array(choice, { minLength: 1, maxLength: 12 }),
});
const toolArbitrary = fc.record({ kind: unit, diameter: unit, radius: fc.boolean() });

/** Jobs with all kinds of moves, both units, three planes and all feed modes. */
export const randomJob: fc.Arbitrary<RandomJob> = fc
  .record({
    inch: fc.boolean(),
    modest: fc.boolean(),
    stock: fc.boolean(),
    tools: fc.array(toolArbitrary, { minLength: 1, maxLength: 4 }),
    operations: fc.array(operationArbitrary, { minLength: 1, maxLength: 4 }),
  })
  .map(({ inch, modest, stock, tools, operations }) => {
    const scale = { inch };
    // Half of the jobs ask for little, so that controllers that can say little have something to prove.
    const made = (modest ? tools.slice(0, 1) : tools).map((tool, index): RandomTool => {
      const kind = pick(tool.kind, toolKinds);
      const base = { number: index + 1, kind, diameter: length(scale, between(tool.diameter, 2, 12)) };
      if (kind === "tap") return { ...base, lead: length(scale, inch ? 1.27 : 1.25) };
      return tool.radius && kind === "end-mill" ? { ...base, radiusOffset: index + 11 } : base;
    });
    return {
      job: "1",
      name: "made up",
      program: { number: 1 + Math.floor((operations[0]?.rpm ?? 0) * 7998) },
      units: inch ? "inch" : "mm",
      ...(stock
        ? { stock: { min: [-150, -150, -20].map((value) => length(scale, value)), max: [150, 150, top] } }
        : {}),
      clearance: length(scale, clearance),
      tools: made,
      operations: operations.map((operation, index) =>
        makeOperation({ scale, tools: made, modest }, operation, index),
      ),
    };
  });

type OperationDraw = typeof operationArbitrary extends fc.Arbitrary<infer Draw> ? Draw : never;

interface Workshop {
  readonly scale: Scale;
  readonly tools: readonly RandomTool[];
  readonly modest: boolean;
}

function makeOperation(
  { scale, tools, modest }: Workshop,
  draw: OperationDraw,
  index: number,
): RandomOperation {
  const tool = pick(draw.tool, tools);
  const turning = tool.kind !== "drag-knife";
  const mode = tool.kind === "tap" || !turning || modest ? "per-minute" : pick(draw.mode, modes);
  const rpm = tool.kind === "tap" ? 480 : Math.round(between(draw.rpm, 600, 18000));
  // A tap of which nothing is said is right-handed.
  const direction = modest || tool.kind === "tap" || draw.start.d < 0.9 ? ("cw" as const) : ("ccw" as const);
  const at: Walk = { x: between(draw.start.a, -90, 90), y: between(draw.start.b, -70, 70), z: clearance };
  const context: Context = { scale, tool, mode, turning };
  const first = { rapid: { x: length(scale, at.x), y: length(scale, at.y) } };
  const usable = makers[mode].filter((maker) => mayMake(maker, tool, modest));
  const moves = draw.choices.flatMap((how) => pick(how.maker, usable)(context, at, how));
  return {
    id: `op${String(index * 10 + 10)}`,
    tool: tool.number,
    ...(turning ? { spindle: { rpm, direction } } : {}),
    coolant: modest ? "off" : pick(draw.coolant, coolants),
    feedMode: mode,
    workOffset: modest ? 1 : pick(draw.offset, [1, 1, 1, 1, 1, 2, 2, 3, 6, 6, 9]),
    ...(modest || draw.path < 0.6
      ? {}
      : { path: pick((draw.path - 0.6) * 2.5, ["blend", "blend", "exact"]) }),
    // Now and then, from less than any least increment on.
    ...(modest || draw.tolerance < 0.7
      ? {}
      : { tolerance: length(scale, pick((draw.tolerance - 0.7) * 3.3, [0.0004, 0.0127, 0.02, 0.05])) }),
    moves: [first, ...moves],
  };
}

/** What a tool can do, and what few controllers can say. */
function mayMake(maker: Maker, tool: RandomTool, modest: boolean): boolean {
  if (modest && (maker === coolant || maker === compensation || maker === pause)) return false;
  if (tool.kind === "tap") return maker === holes || maker === note;
  return tool.kind !== "drag-knife" || (maker !== speed && maker !== holes && maker !== compensation);
}

const modes = [
  ...Array<"per-minute">(6).fill("per-minute"),
  "per-revolution",
  "per-revolution",
  "inverse-time",
] as const;

const coolants = [
  ...["off", "off", "off", "off", "off", "mist", "mist", "mist", "flood", "flood"],
  ...["air", ["mist", "flood"], ["through-tool", "air"]],
];
