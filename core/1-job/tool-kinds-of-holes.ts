import type { ToolKind } from "#base";
import type { HoleKind } from "./job.ts";

/** Kinds of tools by the holes that they make, where they are all that they make. */
export const toolKindsOfHoles: Readonly<Record<HoleKind, ToolKind>> = {
  drill: "drill",
  dwell: "drill",
  peck: "drill",
  "chip-break": "drill",
  tap: "tap",
  bore: "boring-bar",
  ream: "reamer",
};
