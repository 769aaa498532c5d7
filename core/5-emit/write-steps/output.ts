import { get, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { settled } from "../words.ts";
import { idiomBlocks } from "../write-idiom.ts";

/** An output of the machine is switched. */
export function writeOutput(context: Context): Statement[] {
  return [
    settled(),
    when(get("step", "on"), idiomBlocks(context, "output-on"), idiomBlocks(context, "output-off")),
  ];
}
