import type { Finding, Severity } from "#base";
import { error, finding, note } from "./finding.ts";

/* Tools, spindle, end. */

export const noTool = (offset: number): Finding =>
  error("job/cl-tool", offset, "The tool moves before any is loaded.", "Put LOADTL/n before it.");

export const toolGuessed = (severity: Severity, offset: number, tool: number, said: string): Finding =>
  finding(
    severity,
    "job/cl-tool",
    offset,
    `Tool ${tool}: ${said}.`,
    "State the tool in a head file (`--head FILE`), as a job's `tools` have it.",
  );

export const toolContradicted = (offset: number, tool: number, what: string): Finding =>
  error(
    "job/cl-tool",
    offset,
    `The ${what} of tool ${tool} is not the one stated before.`,
    "Give each tool one number, and one set of data.",
  );

export const spindleUnclear = (offset: number): Finding =>
  error("job/cl-spindle", offset, "SPINDL does not say which way it turns.", "Add CLW or CCLW.");

export const spindleNothing = (offset: number): Finding =>
  error("job/cl-spindle", offset, "SPINDL/ON resumes a speed, but none was stated.", "State the speed.");

export const spindleOff = (offset: number): Finding =>
  error("job/cl-spindle", offset, "The tool cuts behind SPINDL/OFF.", "Put SPINDL before it.");

export const spindleLate = (offset: number): Finding =>
  error("job/cl-spindle", offset, "The tool has cut before this SPINDL.", "Put SPINDL before the first cut.");

export const spindleKept = (offset: number): Finding =>
  note(
    "job/cl-spindle",
    offset,
    "The spindle goes on turning through these rapids: a job stops it between tools and at pauses.",
    "Put STOP there if it has to stand still.",
  );

export const dwellStandstill = (offset: number): Finding =>
  error("job/cl-spindle", offset, "A dwell in revolutions needs a speed.", "State it in seconds.");

export const pointNote = (offset: number): Finding =>
  note(
    "job/cl-tip",
    offset,
    "GOTO is taken to lead the tip of this rounded tool.",
    "If it leads the centre of the rounding: `--cl point=centre`.",
  );

export const pointUnknown = (offset: number): Finding =>
  error(
    "job/cl-tip",
    offset,
    "`--cl point=centre` needs the rounding of each tool, and no CUTTER states this one's.",
    "State CUTTER/d, r with the tool.",
  );

export const cutShort = (offset: number): Finding =>
  error(
    "job/cl-end",
    offset,
    "The source ends without END or FINI: it may be cut short.",
    "Write the source again; it ends with FINI.",
  );

export const behindEnd = (offset: number, word: string, end: string): Finding =>
  error("job/cl-end", offset, `${word} stands behind ${end}.`, `Leave it out, or put ${end} behind it.`);

export const noMotion = (): Finding =>
  error("job/cl-end", 0, "The source moves no tool.", "Give a source with GOTO statements.");

export { more as moreErrors } from "../../findings.ts";

export const headKey = (offset: number): Finding =>
  error(
    "job/unknown-key",
    offset,
    "A head file has no `operations`: they come from the source.",
    "Leave `operations` out.",
  );
