import type { DialectLoader } from "#dialect";
import { dialectValues } from "#dialect";
import type { Report } from "#base";
import type { Base, Value } from "./evidence.ts";
import { textOf } from "./evidence.ts";

/** A dialect that a file could extend, with all its values. */
export interface Archetype {
  readonly name: string;
  readonly base: Base;
  /** Its codes in tenths with their letter ("G590"), and the keys that they stand at. */
  readonly codes: ReadonlyMap<string, string>;
}

/** Loads dialects as plain values; one that cannot be read is left out, with a finding. */
export async function loadArchetypes(
  names: readonly string[],
  loader: DialectLoader,
  report: Report,
): Promise<Archetype[]> {
  const loaded = await Promise.all(names.map(async (name) => ({ name, data: await dialectValues(name, loader, report) }))); // prettier-ignore
  return loaded.flatMap(({ name, data }) => {
    if (!isMapping(data)) return [];
    return [{ name, base: (key) => valueAt(data, key), codes: codesOf(data) }];
  });
}

type Mapping = Readonly<Record<string, Value>>;

function isMapping(value: unknown): value is Mapping {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A value by its key path; a group that is none gives none for each key in it. */
function valueAt(data: Mapping, key: string): Value | undefined {
  let value: Value | undefined = data;
  for (const step of key.split(".")) {
    if (value === "none") return value;
    if (Array.isArray(value)) value = (value as readonly Value[])[Number(step) - 1];
    else value = isMapping(value) && Object.hasOwn(value, step) ? value[step] : undefined;
  }
  return value;
}

/** Groups of text for people, which may begin with a code: "M05 and M06 end when the drive reports standstill". */
const prose = ["sources", "confirm"];

/** Every code that a dialect has a meaning for. */
function codesOf(data: Mapping): Map<string, string> {
  const codes = new Map<string, string>();
  const visit = (value: Value, path: string): void => {
    if (isMapping(value) || Array.isArray(value)) {
      const entries: (readonly [string, Value])[] = Array.isArray(value)
        ? (value as readonly Value[]).map((one, index) => [String(index + 1), one] as const)
        : Object.entries(value);
      for (const [key, child] of entries) {
        if (path === "codes") codes.set(codeName(key), `codes.${key}`);
        else if (!prose.includes(key)) visit(child, path === "" ? key : `${path}.${key}`);
      }
      return;
    }
    const [, code] = /^(?:\/\d? ?)?([GM]\d{1,3}(?:\.\d)?)(?: |$)/.exec(textOf(value)) ?? [];
    if (code !== undefined && !path.startsWith("title")) codes.set(codeName(code), path);
  };
  visit(data, "");
  return codes;
}

/** "G59.1" -> "G591", "M06" -> "M60": the letter and the tenths. */
export function codeName(code: string): string {
  return `${code[0]}${String(Math.round(Number(code.slice(1)) * 10))}`;
}
