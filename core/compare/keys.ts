/** The keys about which two dialects differ, and which of them account for a difference. */
import type { KeyBook, KeyDifference } from "#dialect";
import type { DifferenceKey } from "#report";

/** Finds the keys that account for something among those about which two dialects differ. */
export interface Causes {
  /** Differing keys that match one of some paths, in the order of the schema: a path stands for itself and all below it. */
  readonly among: (paths: readonly string[]) => readonly string[];
  /** Differing keys for which one of the two says `none`, or nothing. */
  readonly lacking: (keys: readonly string[]) => readonly string[];
  /** Whether the dialects differ about a path. */
  readonly differ: (path: string) => boolean;
  /** Keys as the report shows them: what belongs together as one. */
  readonly shown: (keys: readonly string[]) => DifferenceKey[];
}

/** Opens the differences of two dialects. */
export function causesOf(differences: readonly KeyDifference[], books: readonly [KeyBook, KeyBook]): Causes {
  const keys = differences.map(({ key }) => key);
  // Few paths are asked about, and each of them for every word of a program.
  const found = new Map<string, readonly string[]>();
  const among = (paths: readonly string[]): readonly string[] => {
    const name = paths.join(" ");
    const known = found.get(name) ?? keys.filter((key) => paths.some((path) => isAt(key, path)));
    found.set(name, known);
    return known;
  };
  const describe = (key: string): DifferenceKey => {
    const [first, second] = books.map((book) => book.describe(key));
    return { key, first: stated(first), second: stated(second) };
  };
  return {
    among,
    lacking: (own) => {
      const says = (book: KeyBook, key: string): string => book.describe(key).value ?? "none";
      return among(own).filter((key) => books.some((book) => says(book, key) === "none"));
    },
    differ: (path) => among([path]).length > 0,
    shown: (own) => [...new Set(own.map((key) => wholeOf(key, books)))].map(describe),
  };
}

function isAt(key: string, path: string): boolean {
  return key === path || key.startsWith(`${path}.`) || path.startsWith(`${key}.`);
}

function stated({ value, file, line }: ReturnType<KeyBook["describe"]>): DifferenceKey["first"] {
  return value === undefined ? undefined : { value, file, line };
}

/** Groups that are stated as a whole: the ways of a confirmation exclude one another, a place or a wait is one thing. */
const wholes = [/^(confirm\.[^.]+)\..+$/, /^(machine\.(?:rack|drawbar|travel|park))\..+$/];

/** The key to name for one: its group, where one dialect says `none` of the group as a whole, or states it as a whole. */
function wholeOf(key: string, books: readonly [KeyBook, KeyBook]): string {
  const whole = wholes.flatMap((pattern) => pattern.exec(key)?.[1] ?? []).at(0);
  if (whole !== undefined) return whole;
  const parent = key.split(".").slice(0, -1).join(".");
  const isNone = books.some((book) => parent !== "" && book.describe(parent).value === "none");
  return isNone ? wholeOf(parent, books) : key;
}
