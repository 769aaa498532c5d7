import type { Reader } from "./reader.ts";
import { pushStep, rowsSoFar } from "./rows.ts";

/** A comment for the operator. */
export function readMessage(reader: Reader): void {
  const { block, state } = reader;
  if (!block.careful || block.message === undefined) return;
  pushStep(reader, { kind: "message", text: block.message });
  state.messageAt = rowsSoFar(reader);
}
