import type { Step } from "#base";
import type { Item, Move } from "./layout.ts";
import type { Sequence } from "./sequences.ts";

/** Index of the nth item of a name, counted from 0; below 0 counts from the end. */
export function find(sequence: Sequence, name: string, nth = 0): number {
  const all = sequence.items.flatMap((item, index) => (item.name === name ? [index] : []));
  const index = nth < 0 ? all[all.length + nth] : all[nth];
  if (index === undefined) throw new Error(`no item ${nth} named "${name}"`);
  return index;
}

const edited = (sequence: Sequence, edit: (items: Item[]) => void): Sequence => {
  const items = sequence.items.slice();
  edit(items);
  return { ...sequence, items };
};

/** Leaves an item out. */
export function drop(sequence: Sequence, name: string, nth = 0): Sequence {
  const index = find(sequence, name, nth);
  return edited(sequence, (items) => items.splice(index, 1));
}

/** Puts items before another. */
export function before(sequence: Sequence, name: string, added: Item[], nth = 0): Sequence {
  const index = find(sequence, name, nth);
  return edited(sequence, (items) => items.splice(index, 0, ...added));
}

/** Puts items behind another. */
export function after(sequence: Sequence, name: string, added: Item[], nth = 0): Sequence {
  const index = find(sequence, name, nth);
  return edited(sequence, (items) => items.splice(index + 1, 0, ...added));
}

/** Moves an item before another. */
export function shift(sequence: Sequence, name: string, to: string, nth = 0, toNth = 0): Sequence {
  const item = sequence.items[find(sequence, name, nth)];
  return before(drop(sequence, name, nth), to, [item], toNth);
}

/** Changes fields of a step. */
export function setStep(sequence: Sequence, name: string, fields: Partial<Step>, nth = 0): Sequence {
  const index = find(sequence, name, nth);
  const { step } = sequence.items[index];
  return edited(sequence, (items) => (items[index] = { name, step: { ...step, ...fields } as Step }));
}

/** Changes fields of a motion. */
export function setMove(sequence: Sequence, name: string, fields: Partial<Move>, nth = 0): Sequence {
  const index = find(sequence, name, nth);
  const { move } = sequence.items[index];
  return edited(sequence, (items) => (items[index] = { name, move: { ...move!, ...fields } }));
}
