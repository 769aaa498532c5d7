/**
 * The backplot: what a program, or a job alone, moves, as plain data that 8-report draws.
 *
 *     job × dialect ──post──▶ verdict, findings ──────┐
 *     job × dialect ──row pairs──▶ rows and their lines ┴─▶ frames ──▶ motions and listing, packed ──▶ drawing or page
 *     job ──▶ its own moves ────────────────────────────────────────▶ the same
 *
 * Motions and listing are packed piece by piece as they come, so that a long program is never in memory as a whole but as it is
 * packed. No file access here.
 */
export type { PlotOutcome } from "./plot.ts";
export { plotJobAlone, plotPosted, plotUnder } from "./plot.ts";
