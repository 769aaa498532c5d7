/**
 * The job that samples show: one tool, which does a little of everything that a dialect says in its own way. It asks for
 * nothing that a controller of the family may lack: no coolant, no compensation, no swap but the first.
 */
export const sampleJob = JSON.stringify({
  job: "1",
  name: "Sample",
  program: { number: 1, name: "Sample" },
  units: "mm",
  clearance: 15,
  tools: [
    {
      number: 1,
      kind: "end-mill",
      diameter: 6,
      centreCutting: true,
      maxRpm: 24000,
      description: "End-mill 6",
    },
  ],
  operations: [
    {
      id: "op10",
      name: "Slot and holes",
      tool: 1,
      spindle: { rpm: 12000, direction: "cw" },
      moves: [
        { rapid: { x: 10, y: 5 } },
        { rapid: { z: 2 } },
        { line: { z: -2 }, feed: 300 },
        { line: { x: 30 }, feed: 900 },
        { line: { y: 12.5 } },
        { arc: { x: 40, y: 22.5, cx: 40, cy: 12.5 }, turn: "cw" },
        { line: { x: 50.5 } },
        { dwell: 0.5 },
        { rapid: { z: 2 } },
        { rapid: { x: 60, y: 30, z: 15 } },
        {
          holes: {
            kind: "drill",
            at: [
              [60, 30],
              [70, 30],
            ],
            top: 0,
            depth: -4,
            retract: 2,
          },
          feed: 200,
        },
      ],
    },
  ],
});
