/** A job of holes, one series after another. */
export function holesJob(
  holes: readonly (Readonly<Record<string, unknown>> & { readonly feed?: number })[],
  spindle: { readonly rpm: number; readonly direction: "cw" | "ccw" } = { rpm: 600, direction: "cw" },
  tool: Readonly<Record<string, unknown>> = { kind: "drill", diameter: 5 },
): string {
  return JSON.stringify({
    job: "1",
    name: "Holes of the mast foot",
    units: "mm",
    program: { number: 122 },
    clearance: 15,
    tools: [{ number: 4, ...tool }],
    operations: [
      {
        id: "op10",
        tool: 4,
        spindle,
        coolant: "off",
        moves: [
          { rapid: { x: 10, y: 10 } },
          ...holes.map(({ feed, ...series }) => ({
            holes: { at: [[10, 10], [30, 10], [30, 40]], top: 0, depth: -6, retract: 2, ...series }, // prettier-ignore
            ...(feed === undefined ? {} : { feed }),
          })),
          { rapid: { z: 15 } },
        ],
      },
    ],
  });
}
