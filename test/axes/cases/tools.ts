import type { AxisCase } from "../axis-case.ts";
import { sampleJob } from "../sample-job.ts";
import { compensationJob } from "../compensation-job.ts";

/** Group H: tools, length offsets and cutter compensation. */
export const cases: readonly AxisCase[] = [
  {
    axis: 91,
    title: "the tool word with one digit, or with two",
    base: "rs274ngc",
    one: "numbers: { code-width: { T: 1 } }",
    other: "numbers: { code-width: { T: 2 } }",
  },
  {
    axis: 91,
    title: "the length offset in the tool word, or in a word of its own",
    base: "rs274ngc",
    both: "numbers: { code-width: { T: 2 } }",
    one: "machine: { length-offset: { form: in-tool-word } }",
    other: "machine: { length-offset: { form: with-first-z } }",
  },
  {
    axis: 91,
    title: "a length offset of another number: digits in the tool word, or none",
    base: "rs274ngc",
    both: "machine: { length-offset: { form: in-tool-word } }",
    job: sampleJob.replace('"number": 2,', '"number": 2, "lengthOffset": 5,'),
    one: "numbers: { code-width: { T: 2 } }",
    other: "numbers: { code-width: { T: 1 } }",
    otherRefuses: "offset/active",
  },
  {
    axis: 92,
    title: "tool and change code in one block, or one block each",
    base: "rs274ngc",
    one: "tools: { blocks: together }",
    other: "tools: { blocks: apart }",
  },
  {
    axis: 92,
    title: "the tool word before the change code, or behind it",
    base: "rs274ngc",
    one: "tools: { order: select-first }",
    other: "tools: { order: change-first }",
  },
  {
    axis: 92,
    title: "a change by the controller, or by the operator at a stop",
    base: "rs274ngc",
    one: "machine: { swap: controller }",
    other: "machine: { swap: operator }\ntools: { change: none }",
  },
  {
    axis: 93,
    title: "the next tool selected behind each change, or none",
    base: "rs274ngc",
    one: "tools: { preselect: yes }",
    other: "tools: { preselect: no }",
  },
  {
    axis: 94,
    title: "a change that leaves the axes where they were, or anywhere",
    base: "rs274ngc",
    one: "machine: { change-effects: { position: unchanged } }",
    other: "machine: { change-effects: { position: unknown } }",
    onePermits: "a place that is known may be stated anew",
  },
  {
    axis: 97,
    title: "the length offset with the first Z, or in a block of its own",
    base: "rs274ngc",
    one: "machine: { length-offset: { form: with-first-z } }",
    other: "machine: { length-offset: { form: own-block } }",
  },
  {
    axis: 97,
    title: "a length offset by its words, or none: then tools of two lengths cannot be told apart",
    base: "rs274ngc",
    one: "machine: { length-offset: { form: with-first-z } }",
    other: "length-offset: none\nmachine: { length-offset: { form: none } }",
    otherRefuses: "offset/active",
  },
  {
    axis: 99,
    title: "cutter compensation by words, or none",
    base: "rs274ngc",
    job: compensationJob,
    one: "compensation: { off: G40, left: G41, right: G42, word: D }",
    other: "compensation: none",
    otherRefuses: "lower/compensation",
  },
];
