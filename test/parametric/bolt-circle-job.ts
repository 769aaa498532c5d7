const holes = 8;
const corners = 6;
const arcEnd = 210;

/** Places as a drawing has them: worked out, and written with four decimals, one more than the controller has. */
const around = (radius: number, degrees: number): [number, number] => {
  const angle = (degrees * Math.PI) / 180;
  const written = (value: number): number => Number(value.toFixed(6));
  return [written(60 + radius * Math.cos(angle)), written(45 + radius * Math.sin(angle))];
};

const ring = Array.from({ length: holes }, (_, index) => around(22.5, 11 + (360 * index) / holes));
const hexagon = Array.from({ length: corners + 1 }, (_, index) => around(31.7, (360 * index) / corners));
const [startX, startY] = around(12.3, 17);
const [endX, endY] = around(12.3, 17 + arcEnd);

/** The sensor flange of the station: a bolt circle, a hexagon around it, and an arc of 210 degrees inside. */
export const boltCircleJob = JSON.stringify({
  job: "1",
  name: "Sensor flange",
  units: "mm",
  stock: { min: [20, 5, -8], max: [100, 85, 0] },
  clearance: 10,
  tools: [
    { number: 1, kind: "drill", diameter: 4.2, flutes: 2, maxRpm: 12000 },
    { number: 2, kind: "end-mill", diameter: 6, flutes: 2, maxRpm: 24000, centreCutting: true },
  ],
  operations: [
    {
      id: "op10",
      tool: 1,
      spindle: { rpm: 4000, direction: "cw" },
      moves: [
        { rapid: { x: ring[0]?.[0], y: ring[0]?.[1] } },
        { holes: { kind: "drill", at: ring, top: 0, depth: -7, retract: 2 }, feed: 240 },
      ],
    },
    {
      id: "op20",
      tool: 2,
      spindle: { rpm: 12000, direction: "cw" },
      moves: [
        { rapid: { x: hexagon[0]?.[0], y: hexagon[0]?.[1] } },
        { line: { z: -1.5 }, feed: 200 },
        ...hexagon.slice(1).map(([x, y]) => ({ line: { x, y }, feed: 600 })),
        { rapid: { z: 10 } },
        { rapid: { x: startX, y: startY } },
        { line: { z: -1.5 }, feed: 200 },
        { arc: { x: endX, y: endY, cx: 60, cy: 45 }, turn: "ccw", feed: 600 },
        { rapid: { z: 10 } },
      ],
    },
  ],
});
