/** A small job that says most of what a program can say: two tools, lines, arcs in both senses. */
export const sampleJob: string = JSON.stringify(
  {
    job: "1",
    name: "Bracket of the rain gauge",
    units: "mm",
    program: { number: 120, name: "RAIN GAUGE" },
    stock: { min: [0, 0, -12], max: [80, 60, 0] },
    clearance: 15,
    tools: [
      { number: 1, kind: "end-mill", diameter: 6, flutes: 2 },
      { number: 2, kind: "drill", diameter: 4, flutes: 2, tipAngle: 118 },
    ],
    operations: [
      {
        id: "op10",
        name: "Edge",
        tool: 1,
        spindle: { rpm: 12000, direction: "cw" },
        coolant: "mist",
        moves: [
          { rapid: { x: -10, y: 5 } },
          { rapid: { z: 1 } },
          { line: { z: -2.5 }, feed: 300 },
          { line: { x: 10 }, feed: 900 },
          { arc: { x: 20, y: 15, cx: 10, cy: 15 }, turn: "ccw" },
          { arc: { x: 30, y: 25, cx: 30, cy: 15 }, turn: "cw" },
          { line: { x: 40.125, y: 30.5 } },
          { dwell: 0.5 },
          { rapid: { z: 15 } },
        ],
      },
      {
        id: "op20",
        name: "Holes",
        tool: 2,
        spindle: { rpm: 9000, direction: "cw" },
        coolant: "flood",
        moves: [
          { rapid: { x: 10, y: 10 } },
          {
            holes: { kind: "drill", at: [[10, 10], [30, 10], [30, 40]], top: 0, depth: -6, retract: 2 }, // prettier-ignore
            feed: 200,
          },
          {
            holes: { kind: "peck", at: [[50, 10], [50, 40]], top: 0, depth: -12, retract: 2, peck: 3, between: "initial" }, // prettier-ignore
            feed: 150,
          },
        ],
      },
    ],
  },
  undefined,
  2,
);

/** The same with stops for the operator: one that always stops, and one that a switch decides about. */
export const pausingJob: string = withMoves(sampleJob, [
  { pause: "Look at the clamps" },
  { pause: "Measure the edge", optional: true },
]);

/** The same with an arc that moves one axis alone, and a cut behind a rapid at the feed of the cut before it. */
export const modalJob: string = withMoves(sampleJob, [
  { rapid: { x: 30, y: 30 } },
  { line: { z: -2.5 }, feed: 300 },
  { arc: { x: 40, y: 30, cx: 35, cy: 30 }, turn: "cw" },
  { rapid: { z: 15 } },
  { line: { z: 1 }, feed: 300 },
  { rapid: { z: 15 } },
]);

/** The same with a further operation of its last tool. */
export const twiceJob: string = again(sampleJob);

function again(text: string): string {
  const job = JSON.parse(text) as { operations: { id: string; name: string }[] };
  job.operations.push({ ...job.operations[1], id: "op30", name: "Holes again" });
  return JSON.stringify(job, undefined, 2);
}

/** A job with moves put in behind all others of its first operation. */
function withMoves(text: string, moves: readonly object[]): string {
  const job = JSON.parse(text) as { operations: [{ moves: object[] }] };
  job.operations[0].moves.push(...moves);
  return JSON.stringify(job, undefined, 2);
}
