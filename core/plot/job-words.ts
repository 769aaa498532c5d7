/** The moves of a job in words, for the listing beside its picture. */
import type { Batch, FeedMode, UnitSystem } from "#base";
import { microsecondsPerSecond, milliPerRpm, rowKind } from "#base";
import type { JobStep } from "#job";
import { recordRow, rowText } from "#prove";
import { atomsPerMicrometre, placeText } from "#report";

/** How values are put into words. */
export interface JobWords {
  readonly units: UnitSystem;
  readonly feedMode: FeedMode;
}

/** A row of a job: "rapid to X 10 Y 5", "arc in XY to X 20 Y 5 about X 15 Y 5, cw at 800 mm/min", "pause: turn it over" */
export function moveText(batch: Batch<JobStep>, row: number, words: JobWords): string {
  if (batch.kind[row] === rowKind.aside) return stepText(batch.asides[batch.aside[row]], words);
  // A motion has no step, so that a batch of a job is one of a program as far as its words go.
  const text = rowText(recordRow(batch as unknown as Batch, row), words);
  const turns = batch.turns[row];
  if (turns === 0) return text;
  const sense = `${turns < 0 ? "cw" : "ccw"}${Math.abs(turns) > 1 ? `, ${Math.abs(turns)} turns` : ""}`;
  const [c1, c2] = [batch.c1[row], batch.c2[row]].map((atoms) => lengthText(atoms, words));
  const [first, second] = centreLetters[batch.kind[row] - rowKind.arcXy];
  return text.replace(/ at (?=[^ ]+ [^ ]+$)/, ` about ${first} ${c1} ${second} ${c2}, ${sense}, at `);
}

const centreLetters = ["XY", "ZX", "YZ"];

function lengthText(atoms: number, { units }: JobWords): string {
  return placeText(atoms / atomsPerMicrometre, units);
}

function stepText(step: JobStep, words: JobWords): string {
  switch (step.kind) {
    case "holes":
      return `holes, ${step.cycle}: from ${lengthText(step.retract, words)} to ${lengthText(step.depth, words)}${
        step.peck > 0 ? `, pecks of ${lengthText(step.peck, words)}` : ""
      }`;
    case "holes-end":
      return "end of the holes";
    case "dwell":
      return `dwell ${step.time / microsecondsPerSecond} s`;
    case "pause":
      return `${step.optional ? "optional pause" : "pause"}: ${step.text}`;
    case "note":
      return `note: ${step.text}`;
    case "spindle":
      return `spindle ${step.rpm / milliPerRpm} rpm`;
    case "coolant":
      return `coolant ${step.media.length === 0 ? "off" : step.media.join(", ")}`;
    case "compensation":
      return `compensation ${step.side}`;
  }
}
