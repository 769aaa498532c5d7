/** A slot wall cut under cutter compensation. */
export const compensationJob: string = JSON.stringify({
  job: "1",
  name: "Wall of the cup mount",
  units: "mm",
  program: { number: 121 },
  clearance: 15,
  tools: [{ number: 3, kind: "end-mill", diameter: 6, flutes: 2, radiusOffset: 13 }],
  operations: [
    {
      id: "op10",
      tool: 3,
      spindle: { rpm: 9000, direction: "cw" },
      coolant: "off",
      moves: [
        { rapid: { x: -20, y: -20 } },
        { rapid: { z: 1 } },
        { line: { z: -2 }, feed: 200 },
        { comp: "left" },
        { line: { x: -3, y: 0 }, feed: 600 },
        { line: { x: -3, y: 40 } },
        { comp: "off" },
        { line: { x: -20, y: 40 } },
        { rapid: { z: 15 } },
      ],
    },
  ],
});
