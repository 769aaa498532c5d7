import type { JobRule } from "../../../core/1-job/findings.ts";
import { jobOf } from "../jobs.ts";

/** A spoilt job: `¦` stands before the byte that the finding must point at, and is taken out before reading. */
export interface FindingCase {
  readonly rule: JobRule;
  readonly what: string;
  readonly job: string;
  /** A part of the message, where that matters. */
  readonly says?: string;
  /** A part of the fix, where that matters. */
  readonly fix?: string;
}

export const tool = (rest: string): string =>
  `{"job":"1","units":"mm","clearance":15,"tools":[{"number":1,"diameter":6,${rest}}],` +
  `"operations":[{"id":"op10","tool":1,"spindle":{"rpm":1000,"direction":"cw"},"moves":[{"rapid":{"x":0,"y":0}}]}]}`;

/** A drill that wears, and tool 2, which is like it. */
export const spares = (rest: string): string =>
  tool(
    `"kind":"drill","tipAngle":118,"life":10},{"number":2,"kind":"drill","diameter":6,"tipAngle":118,${rest}`,
  );

export const operation = (kind: string, rest: string): string =>
  `{"job":"1","units":"mm","clearance":15,"tools":[{"number":1,"kind":"${kind}","diameter":6}],` +
  `"operations":[¦{"id":"op10","tool":1,${rest}"moves":[{"rapid":{"x":0,"y":0}}]}]}`;

export const head = (rest: string): string => jobOf(`{"rapid":{"x":0,"y":0}}`, "", rest);
export const holes = (rest: string): string => `{"holes":{"kind":"drill","at":[[1,1]],${rest}}`;
export const levels = `"top":0,"depth":-5,"retract":2`;
export const arc = (rest: string): string => `{"arc":${rest},"turn":"cw","feed":100}`;
export const tapJob = (toolRest: string, kind: string, spindle: string, move: string, mode = ""): string =>
  `{"job":"1","units":"mm","clearance":15,"tools":[{"number":1,"kind":"${kind}","diameter":6${toolRest}}],` +
  `"operations":[{"id":"op10","tool":1,${spindle}${mode}"moves":[{"rapid":{"x":0,"y":0}},${move}]}]}`;
export const cw = `"spindle":{"rpm":500,"direction":"cw"},`;
export const tap = `{"holes":{"kind":"tap","at":[[1,1]],${levels},"lead":1}`;
