import type { Archetype } from "./archetype.ts";
import type { Divided, StatedKey } from "./stated.ts";

/**
 * Keys that no program shows, but that cannot stay as they are inherited beside what is stated: the mark of messages where
 * comments are set apart in another way, the dwell of cycles where that of G04 counts in another unit, how far an arc goes by
 * its radius. They are asked.
 */
export function consequences({
  archetype: { base },
  stated,
  inherited,
}: Divided & { readonly archetype: Archetype }): StatedKey[] {
  const value = (key: string): unknown => stated.find((one) => one.key === key)?.value;
  const isShown = (key: string): boolean => [...stated, ...inherited].some((one) => one.key === key);
  return [...messages(value("comments.style"), base("idioms.message")), ...cycleDwell(), ...radius()];

  function radius(): StatedKey[] {
    if (value("arc.form") !== "radius" || isShown("arc.largest-sweep") || Number(base("arc.largest-sweep")) <= 180) return []; // prettier-ignore
    return [{ key: "arc.largest-sweep", value: 180, evidence: "no radius below 0 is seen, which larger arcs need: asked" }]; // prettier-ignore
  }

  function cycleDwell(): StatedKey[] {
    const unit = value("dwell.unit");
    if (typeof unit !== "string" || isShown("cycles.words.dwell-unit") || base("cycles") === "none")
      return [];
    const digits = value("numbers.dwell");
    const evidence = "not shown; as the dwell of G04: asked";
    const number = typeof digits === "number" && !isShown("numbers.cycle-dwell") ? [{ key: "numbers.cycle-dwell", value: digits, evidence }] : []; // prettier-ignore
    return [{ key: "cycles.words.dwell-unit", value: unit, evidence }, ...number];
  }
}

/** The inherited mark of a message, between the marks of another style of comment. */
function messages(style: unknown, inherited: unknown): StatedKey[] {
  if (typeof inherited !== "string" || inherited === "none") return [];
  const [, mark = ""] = /^[(;](.*?)\)?$/.exec(inherited) ?? [];
  const evidence = "not shown; the mark that is inherited, in comments of this style: asked";
  if (style === "semicolon" && inherited.startsWith("(")) return [{ key: "idioms.message", value: `;${mark}`, evidence }]; // prettier-ignore
  if (style === "parentheses" && inherited.startsWith(";")) return [{ key: "idioms.message", value: `(${mark})`, evidence }]; // prettier-ignore
  return [];
}
