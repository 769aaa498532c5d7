import type { Ballot, Observed } from "../evidence.ts";
import { counted, settle, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import { withM } from "../sample.ts";
import type { Block } from "../walk.ts";

/** What stands where a section begins: a tool change lies in one of its own. */
export function sections(sample: Sample): Observed[] {
  const changes = withM(sample, 60);
  if (changes.length === 0) return [];
  return [...marks(sample, changes), ...blanks(sample), ...remarks(sample, changes), ...modes(sample)];
}

/** Where each block has a number and none a colon, sections have none either. */
function marks({ blocks }: Sample, changes: readonly Block[]): Observed[] {
  const isNumbered = changes.every(({ line }) => line.blockNumber);
  if (!isNumbered || blocks.some(({ line }) => line.aligned)) return [];
  return [settle("blocks.sections.mark", "N", counted(changes, changes.length, "tool changes lie in sections without a colon"))]; // prettier-ignore
}

function blanks({ lines }: Sample): Observed[] {
  const first = lines.findIndex(({ kind }) => kind === "block");
  const last = lines.findLastIndex(({ kind }) => kind === "block");
  if (lines.slice(first, last).some(({ kind }) => kind === "blank")) return [];
  return [settle("file.blank-lines", "skipped", "no blank line stands inside the program", { holds: (inherited) => inherited !== "between-sections", limit: true })]; // prettier-ignore
}

/** Sections have comments only where one stands near each tool change. */
function remarks({ programs }: Sample, changes: readonly Block[]): Observed[] {
  const isBare = changes.every(({ line, program }) => {
    const near = program.lines.slice(Math.max(0, line.number - 12), line.number);
    return programs.includes(program) && near.every(({ kind }) => kind !== "comment");
  });
  return isBare ? [settle("blocks.sections.comments", "no", counted(changes, changes.length, "tool changes have no comment before them"))] : []; // prettier-ignore
}

/** Whether the plane, compensation and cycles are stated again between each change and the first cut behind it. */
function modes({ byProgram }: Sample): Observed[] {
  const ballots = byProgram.flatMap((blocks) => {
    const start = blocks.slice(
      0,
      Math.max(
        0,
        blocks.findIndex(({ motion }) => motion !== undefined && motion.code > 0),
      ),
    );
    const resets = [170, 400, 800].filter((code) => start.some(({ g }) => g.includes(code)));
    if (resets.length < 2) return [];
    return blocks.flatMap(({ m, line }, index): Ballot[] => {
      if (!m.includes(60)) return [];
      const behind = blocks.slice(index + 1);
      const cut = behind.findIndex(({ motion }) => motion !== undefined && motion.code > 0);
      const stated = behind.slice(0, Math.max(0, cut)).flatMap(({ g }) => g);
      return [{ value: resets.every((code) => stated.includes(code)) ? "restated" : "kept", line }];
    });
  });
  return vote("blocks.sections.modes", ballots, "tool changes");
}
