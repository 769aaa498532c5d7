import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** A comment for the operator. */
export function readMessage(reader: Reader): void {
  const { block } = reader;
  if (block.careful && block.message !== undefined)
    pushStep(reader, { kind: "message", text: block.message });
}
