import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** A comment for the operator. A long text stands in several, which are joined again. */
export function readMessage(reader: Reader): void {
  const { block, state } = reader;
  if (!block.careful || block.message === undefined) return;
  const goesOn = state.messages.rows === reader.rowsBefore + reader.batch.count;
  const text = goesOn ? `${state.messages.text} ${block.message}` : block.message;
  pushStep(reader, { kind: "message", text: block.message });
  state.messages = { text, rows: reader.rowsBefore + reader.batch.count };
}
