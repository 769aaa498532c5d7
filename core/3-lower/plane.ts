import type { Plane } from "#base";
import { writeAside } from "./output.ts";
import type { Lowering } from "./state.ts";

/** Sees to it that a plane is in force: arcs need their own, cycles and cutter compensation the XY plane. */
export function selectPlane(state: Lowering, plane: Plane, source: number): void {
  if (state.plane === plane) return;
  state.plane = plane;
  writeAside(state.output, { kind: "plane", value: plane }, source);
}
