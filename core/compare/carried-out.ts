/** Differences that no text shows: a step that both programs say alike, and that the two machines carry out otherwise. */
import { frame, rowKind } from "#base";
import type { RowRecord } from "#prove";
import { startPlace } from "./blocks.ts";
import type { RowMatch } from "./cells.ts";
import type { Item } from "./item.ts";
import type { Causes } from "./keys.ts";

interface CarriedOut extends Pick<Item, "topic" | "aspect"> {
  /** The key that says how the machine does it. */
  readonly key: string;
  /** Whether a step is one that it is about. */
  readonly when: (record: RowRecord) => boolean;
}

const carriedOut: readonly CarriedOut[] = [
  {
    key: "motion.rapids",
    topic: "rapids",
    aspect: "the same words, and another path of the tool",
    when: ({ kind, stated }) => kind === rowKind.rapid && (stated & (stated - 1)) !== 0,
  },
  {
    key: "machine.retract.acts-on",
    topic: "retract",
    aspect: "the same words, and another height of the tool",
    when: ({ step, frame: of }) => step === undefined && of === frame.machine,
  },
];

/** Takes note of steps that are said alike; `items` gives each difference once, with the values that its key has. */
export function watchCarriedOut(causes: Causes): {
  take: (match: RowMatch) => void;
  items: () => Item[];
} {
  const open = carriedOut.filter(({ key }) => causes.differ(key));
  const met = new Set<CarriedOut>();
  return {
    take: ({ first, second }) => {
      if (first === undefined || second === undefined) return;
      for (const one of open) if (one.when(first.row.record) && one.when(second.row.record)) met.add(one);
    },
    items: () =>
      [...met].map(({ key, topic, aspect }) => {
        const [{ first, second } = { first: undefined, second: undefined }] = causes.shown([key]);
        const example = { first: first?.value ?? "", second: second?.value ?? "" };
        const keys = causes.among([key]);
        return { level: "meaning", topic, aspect, keys, place: startPlace, example, first: [], second: [] };
      }),
  };
}
