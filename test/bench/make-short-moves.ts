import { closeSync, openSync, writeSync } from "node:fs";
import { seeded } from "../support/seeded.ts";

/** What is cut: a tool of a job, and whether it goes up and down as it goes along. */
export interface ShortMoves {
  readonly tool: Readonly<Record<string, unknown>>;
  readonly sloped: boolean;
}

/**
 * Writes a job of many short line moves, 0.1 to 1 mm long, that wander over a stock of 500 x 500 mm; the same for the same
 * count.
 */
export function makeShortMoves(file: string, count: number, { tool, sloped }: ShortMoves): void {
  const handle = openSync(file, "w");
  const head = {
    job: "1",
    name: "short moves",
    program: { number: 1000 },
    units: "mm",
    clearance: 15,
    stock: { min: [0, 0, -20], max: [500, 500, 0] },
    tools: [{ number: 1, ...tool }],
  };
  const operation = { id: "op10", name: "lines", tool: 1, spindle: { rpm: 12_000, direction: "cw" } };
  const begin = `${JSON.stringify(head).slice(0, -1)},"operations":[${JSON.stringify(operation).slice(0, -1)},"moves":[\n`;
  writeSync(handle, `${begin}{"rapid":{"x":250,"y":250}},\n{"line":{"z":-2},"feed":900}`);
  const random = seeded(7);
  let [x, y, heading, way, text] = [250, 250, 0, 0, ""];
  for (let index = 0; index < count - 1; index++) {
    const length = 0.1 + 0.9 * random();
    heading += (random() - 0.5) * 0.4;
    // Back to the middle at the edge.
    if (x < 5 || x > 495 || y < 5 || y > 495) heading = Math.atan2(250 - y, 250 - x);
    x += length * Math.cos(heading);
    y += length * Math.sin(heading);
    way += length;
    const z = sloped ? `,"z":${String(Number((-2 - 1.5 * Math.sin(way * 0.2)).toFixed(3)))}` : "";
    text += `,\n{"line":{"x":${String(Number(x.toFixed(3)))},"y":${String(Number(y.toFixed(3)))}${z}}}`;
    if (text.length > 1_000_000) {
      writeSync(handle, text);
      text = "";
    }
  }
  writeSync(handle, `${text}\n]}]}\n`);
  closeSync(handle);
}
