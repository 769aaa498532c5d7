import type { Tool } from "#job";

/** An operation that is done with another tool than the job names. */
export interface Replacement {
  /** The tool that the job names, and the one that does the operation. */
  readonly tool: number;
  readonly by: number;
  /** The swap from which on it does: index of its operation, the tool that was in use until then, microseconds. */
  readonly since: {
    readonly operation: number;
    readonly from: number;
    /** For how long that tool had cut, and the operation cuts. */
    readonly spent: number;
    readonly takes: number;
    /** Life of that tool. */
    readonly life: number;
  };
}

/** What of an operation the choice goes by. */
export interface Use {
  readonly tool: number;
  /** Cutting time, microseconds. */
  readonly time: number;
}

/** A tool with its spares, and which of them is in use. */
interface Family {
  readonly members: readonly Tool[];
  index: number;
  /** Microseconds that the one in use has cut. */
  spent: number;
  since: Replacement["since"] | undefined;
}

/**
 * Gives each operation a tool: the one that the job names until an operation would take it beyond its life, then its spares in the order
 * in which they are listed. A tool that was changed does not come back. Where no spare can bear the operation a worn tool still gives
 * way to the next spare, and a fresh one does it beyond its life; the last one goes on.
 *
 * @returns for each operation its replacement; undefined where the tool of the job does it
 */
export function chooseTools(uses: readonly Use[], tools: readonly Tool[]): (Replacement | undefined)[] {
  const families = new Map<number, Family>();
  return uses.map(({ tool, time }, operation) => {
    const family = families.get(tool) ?? familyOf(tool, tools);
    families.set(tool, family);
    const next = nextOf(family, time);
    if (next !== family.index) change(family, next, operation, time);
    family.spent += time;
    const { since, members, index } = family;
    return since && { tool, by: members[index].number, since };
  });
}

/** Whether a tool is changed for a spare when it is worn. */
export function hasSpares(tool: number, tools: readonly Tool[]): boolean {
  const { members } = familyOf(tool, tools);
  return members.length > 1 && members[0].life !== undefined;
}

function familyOf(number: number, tools: readonly Tool[]): Family {
  const own = tools.filter((tool) => tool.number === number);
  const spares = tools.filter(({ spareFor }) => spareFor === number);
  return { members: [...own, ...spares], index: 0, spent: 0, since: undefined };
}

/** Index of the tool that does an operation of this time. */
function nextOf({ members, index, spent }: Family, time: number): number {
  const bears = ({ life = Infinity }: Tool, before: number): boolean => before + time <= life;
  if (members.length === 0 || bears(members[index], spent)) return index;
  const fresh = members.findIndex((tool, at) => at > index && bears(tool, 0));
  if (fresh >= 0) return fresh;
  return spent > 0 ? Math.min(index + 1, members.length - 1) : index;
}

function change(family: Family, next: number, operation: number, takes: number): void {
  const { number: from, life = Infinity } = family.members[family.index];
  family.since = { operation, from, spent: family.spent, takes, life };
  family.index = next;
  family.spent = 0;
}
