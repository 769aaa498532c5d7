import type { Reader } from "./reader.ts";
import { pushStep, rowsSoFar } from "./rows.ts";

/** A comment for the operator. A long text stands in several, which are joined again. */
export function readMessage(reader: Reader): void {
  const { block, state } = reader;
  if (!block.careful || block.message === undefined) return;
  const goesOn = state.messages.rows === rowsSoFar(reader);
  const text = goesOn ? `${state.messages.text} ${block.message}` : block.message;
  pushStep(reader, { kind: "message", text: block.message });
  state.messageAt = rowsSoFar(reader);
  state.messages = { text, rows: state.messageAt };
}
