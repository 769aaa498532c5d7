import type { MachineFacts, Report } from "#base";
import type { Job } from "#job";
import type { StretchDraft, ToolDraft } from "./drafts.ts";
import * as findings from "./findings.ts";

/** What the first walk through a program gives. */
export interface Gathered {
  readonly stretches: StretchDraft[];
  readonly tools: Map<number, ToolDraft>;
}

/** Gathering at work. */
export interface Gathering extends Gathered {
  readonly machine: MachineFacts;
  readonly stock: Job["stock"];
  readonly report: Report;
  /** What is known of the text before a place: how a stretch is called. */
  readonly nameAt: (from: number, to: number) => string;
  readonly told: Set<string>;
  /** Place of the last motion, byte offset. */
  lastSource: number;
}

export function current({ stretches }: Gathered): StretchDraft {
  return stretches[stretches.length - 1];
}

export function tellOnce(told: Set<string>, what: string, tell: () => void): void {
  if (told.has(what)) return;
  told.add(what);
  tell();
}

const axisNames = ["x", "y", "z"];

export function tellPlace(all: Gathering, known: number, source: number): void {
  const draft = current(all);
  const missing = axisNames.filter((_, axis) => (known & (1 << axis)) === 0);
  tellOnce(draft.told, "place", () => {
    all.report(findings.placeUnknown(source, missing.join(" and ")));
  });
}
