import type { Observed } from "./evidence.ts";
import { arcs } from "./rules/arcs.ts";
import { blockForm } from "./rules/block-form.ts";
import { codeWidth } from "./rules/code-width.ts";
import { comments } from "./rules/comments.ts";
import { cycles } from "./rules/cycles.ts";
import { dwell } from "./rules/dwell.ts";
import { ends } from "./rules/ends.ts";
import { framing } from "./rules/framing.ts";
import { header } from "./rules/header.ts";
import { modality } from "./rules/modality.ts";
import { numbers } from "./rules/numbers.ts";
import { wordOrder } from "./rules/order.ts";
import { sections } from "./rules/sections.ts";
import { spindle } from "./rules/spindle.ts";
import { tools } from "./rules/tools.ts";
import type { Sample } from "./sample.ts";

/** What is looked at, subject by subject. */
const rules: readonly ((sample: Sample) => Observed[])[] = [
  framing,
  comments,
  header,
  blockForm,
  wordOrder,
  codeWidth,
  numbers,
  modality,
  ends,
  arcs,
  dwell,
  cycles,
  spindle,
  sections,
  tools,
];

/** Everything that the programs show, whatever the file will extend. */
export function observe(sample: Sample): Observed[] {
  return rules.flatMap((rule) => rule(sample));
}
