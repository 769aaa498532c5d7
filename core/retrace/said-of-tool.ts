import type { Comment } from "./comment.ts";
import type { ToolDraft } from "./drafts.ts";
import type { Surroundings } from "./surroundings.ts";
import type { ToolWords } from "./tool-words.ts";
import { readToolWords } from "./tool-words.ts";

/** What the program says of a tool, and where. */
export interface Said {
  readonly comment: Comment | undefined;
  readonly words: ToolWords;
  /** What a tool made of it is described by. */
  readonly description: string;
}

/** What the program says where it asks for the tool, or in a comment. */
export function saidOf({ number, asked }: ToolDraft, { described, units }: Surroundings): Said {
  const comment = described(number);
  const request = asked && askedTool(asked.text);
  if (asked === undefined || request === undefined) {
    const text = comment?.text ?? "";
    return { comment, words: readToolWords(text, units), description: text };
  }
  return { comment: asked, words: readToolWords(asked.text, "mm"), description: request.description };
}

/** What our own request for a tool says: "END-MILL 4 MM, SINGLE-FLUTE" -> its description. */
function askedTool(asked: string): { readonly description: string } | undefined {
  const [, description = ""] = /^[A-Z-]+(?: [\d.]+ MM)?(?:, (.*))?$/i.exec(asked) ?? [];
  return asked === "" ? undefined : { description };
}
