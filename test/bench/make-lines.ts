import { closeSync, openSync, writeSync } from "node:fs";

/**
 * Writes a job of many line moves, the same for the same count: a spiral in and out with a little Z, all places distinct.
 * One move a line, about 48 bytes each.
 */
export function makeLines(file: string, count: number): void {
  const handle = openSync(file, "w");
  const head = {
    job: "1",
    name: "bench",
    // Some controllers know programs by their numbers alone.
    program: { number: 1000 },
    units: "mm",
    clearance: 15,
    tools: [{ number: 1, kind: "end-mill", diameter: 6 }],
  };
  const operation = {
    id: "op10",
    name: "lines",
    tool: 1,
    spindle: { rpm: 12_000, direction: "cw" },
    coolant: "off",
  };
  writeSync(
    handle,
    `${JSON.stringify(head).slice(0, -1)},"operations":[${JSON.stringify(operation).slice(0, -1)},"moves":[\n`,
  );
  writeSync(handle, `{"rapid":{"x":0,"y":0}},\n{"line":{"z":-1},"feed":900}`);
  let text = "";
  for (let index = 0; index < count - 1; index++) {
    const angle = index * 0.01;
    const radius = 20 + (index % 5000) * 0.015;
    const x = (radius * Math.cos(angle)).toFixed(3);
    const y = (radius * Math.sin(angle)).toFixed(3);
    const z = (-1 - (index % 700) * 0.003).toFixed(3);
    text += `,\n{"line":{"x":${trim(x)},"y":${trim(y)},"z":${trim(z)}}}`;
    if (text.length > 1_000_000) {
      writeSync(handle, text);
      text = "";
    }
  }
  writeSync(handle, `${text}\n]}]}\n`);
  closeSync(handle);
}

/** JSON has no trailing zeros to keep. */
function trim(number: string): string {
  return String(Number(number));
}
