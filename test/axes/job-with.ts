/** A job of one operation with these moves, where the sample job does not have what an axis needs. */
export function jobWith(
  moves: readonly unknown[],
  operation: Readonly<Record<string, unknown>> = {},
  head: Readonly<Record<string, unknown>> = {},
): string {
  return JSON.stringify({
    job: "1",
    name: "Bracket of the rain gauge",
    units: "mm",
    stock: { min: [0, 0, -12], max: [80, 60, 0] },
    clearance: 15,
    tools: [{ number: 1, kind: "end-mill", diameter: 6, flutes: 2 }],
    ...head,
    operations: [
      { id: "op10", tool: 1, spindle: { rpm: 12000, direction: "cw" }, coolant: "mist", ...operation, moves },
    ],
  });
}
