import type { UnitSystem } from "#base";
import { lineAt } from "#base";
import type { Dialect } from "#dialect";
import type { Head } from "#job";
import type { Comment } from "./comment.ts";
import type { Comments } from "./comments.ts";
import type { ProgramReading } from "./program-reading.ts";
import type { ProgramState } from "./state.ts";
import { commentOfTool, isToolComment, toolsOfHeader } from "./tool-words.ts";

/** What is known of a program beside its operations. */
export interface Surroundings {
  readonly name: string;
  readonly units: UnitSystem;
  readonly state: ProgramState;
  /** Whether the program's dialect has length offsets that a program states. */
  readonly offsets: boolean;
  readonly head: Head | undefined;
  /** Line of a place in the head file, counted from 1. */
  readonly headLine: (offset: number) => number;
  /** What comments say of a tool; undefined where none does. */
  readonly described: (tool: number) => Comment | undefined;
}

/** Puts together what is known when the program has been walked through. */
export function surroundings(
  { dialect, head: headSource }: ProgramReading,
  head: Head | undefined,
  comments: Comments,
  units: UnitSystem,
  state: ProgramState,
): Surroundings {
  const listed = toolsOfHeader(comments.head);
  const described = (tool: number): Comment | undefined =>
    commentOfTool(comments.tools, tool) ?? listed.get(tool);
  return {
    name: comments.head.find(({ text }) => !isToolComment(text))?.text ?? "",
    units,
    state,
    offsets: selectsLengthOffsets(dialect),
    head,
    headLine: (offset) => (headSource ? lineAt(headSource, offset) : 1),
    described,
  };
}

/** Whether programs of the dialect select length offsets, by words of their own or in tool words. */
function selectsLengthOffsets({ format, machine }: Dialect): boolean {
  const form = format.lengthOffset?.form ?? machine.lengthOffset?.form;
  return form !== undefined && form !== "none";
}
