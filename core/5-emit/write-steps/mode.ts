import type { ModeKind } from "#base";
import { call, cases, differs, get, nothing, run, same, set, str, when } from "../builders.ts";
import type { Case, Statement } from "../builders.ts";
import { hasWord } from "../code-text.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import type { Code } from "#dialect";
import {
  blockOf,
  codeWithSeparator,
  codeWords,
  inOrder,
  keyed,
  keyOf,
  numberWord,
  settled,
} from "../words.ts";
import { forgetFeed, forgetMotion } from "../write-state.ts";
import { oneCode } from "./one-code.ts";

/** What may share a block, in the order in which a block is executed (NISTIR 6556 Table 8; arc centre and the rest behind it). */
const modeOrder = [
  "feed-mode",
  "overrides",
  "plane",
  "units",
  "compensation",
  "length-offset",
  "work-offset",
  "path",
  "look-ahead",
  "corner-feed",
  "distance",
  "arc-centre",
  "local-shift",
  "rotation",
  "scale",
  "cycle",
] as const;

/** Values of each mode and the keys of their codes; a value without a key has no word in any dialect. */
const modeKeys: { readonly [Kind in ModeKind]: Readonly<Record<string, string>> } = {
  units: { mm: "units.mm", inch: "units.inch" },
  plane: { xy: "plane.xy", zx: "plane.zx", yz: "plane.yz" },
  distance: { absolute: "distance.absolute", incremental: "distance.incremental" },
  "arc-centre": { absolute: "arc.centre-words.absolute", incremental: "arc.centre-words.incremental" },
  "feed-mode": {
    "per-minute": "feed.per-minute",
    "per-revolution": "feed.per-revolution",
    "inverse-time": "feed.inverse-time",
  },
  path: { exact: "path.exact", stop: "path.stop", blend: "path.blend" },
  "look-ahead": { on: "path.look-ahead.on", off: "path.look-ahead.off" },
  "corner-feed": { on: "compensation.corner-feed.on", off: "compensation.corner-feed.off" },
  overrides: { on: "cancel.overrides" },
  cycle: { off: "cancel.cycles" },
  "local-shift": { off: "cancel.local-shift" },
  rotation: { off: "cancel.rotation" },
  scale: { off: "cancel.scale" },
};

/** What a mode changes for the words that follow. */
const modeEffects: { readonly [Kind in ModeKind]?: () => Statement[] } = {
  units: () => [set(get("state", "inch"), same(get("step", "value"), str("inch"))), ...forgetFeed()],
  distance: () => [set(get("state", "incremental"), same(get("step", "value"), str("incremental")))],
  "arc-centre": () => [set(get("state", "centreAbsolute"), same(get("step", "value"), str("absolute")))],
  "feed-mode": () => [set(get("state", "feedMode"), get("step", "value")), ...forgetFeed()],
  cycle: () => [...forgetMotion(), set(get("state", "code"), str(""))],
};

/** The statements of a mode step: its word by its value, and what it changes. */
export function writeMode(kind: ModeKind): (context: Context) => Statement[] {
  return (context) => {
    const codes: Readonly<Record<string, Code | null | undefined>> = context.format.codes.modes[kind];
    const branches = Object.entries(modeKeys[kind]).map(([value, key]): Case => ({
      of: str(value),
      statements:
        key === "path.blend"
          ? blendBlock(context, codes[value])
          : modeBlock(context, kind, key, codes[value]),
    }));
    // A feed that was the lead of a thread is none for what follows.
    const forgets = kind === "cycle" && context.format.cycles?.tapLead === true ? forgetFeed() : [];
    const effects = [...(modeEffects[kind]?.() ?? []), ...forgets];
    return [cases(get("step", "value"), branches, [faultOn(kind)]), ...effects];
  };
}

/** The blended path; a tolerance has its word beside the code, in a block of its own: `G64 P0.02`. */
function blendBlock(context: Context, code: Code | null | undefined): Statement[] {
  const plain = modeBlock(context, "path", "path.blend", code);
  if (!hasWord(code)) return plain;
  const key = "path.tolerance-word";
  const tolerance = get("step", "tolerance");
  const letter = context.format.toleranceWord ?? "";
  if (letter === "") return [when(differs(tolerance, nothing()), [faultOn(key)], plain)];
  const word = keyed(context, key, numberWord(letter, "writeLength", tolerance));
  const words = inOrder(context, [...codeWords(context, "path.blend", code), word]);
  return [when(differs(tolerance, nothing()), [settled(), ...blockOf(context, words)], plain)];
}

/** A mode among others; one whose code has a word beside it stands in a block of its own, and so do units that come first. */
export function modeBlock(
  context: Context,
  kind: (typeof modeOrder)[number],
  key: string,
  code: Code | null | undefined,
): Statement[] {
  const alone =
    code?.word !== undefined || (kind === "units" && context.format.unitsStated === "first-block");
  return alone && hasWord(code) ? oneCode(context, key, code) : [modeWord(context, kind, key, code)];
}

/** `writeMode(state, group, "G17 ");` for a word that may share its block with other modes. */
export function modeWord(
  context: Context,
  kind: (typeof modeOrder)[number],
  key: string,
  code: Code | null | undefined,
): Statement {
  if (!hasWord(code)) return faultOn(key);
  const group = modeOrder.indexOf(kind) + 1;
  const text = str(codeWithSeparator(context, code));
  return run(
    context.traced
      ? call("writeMode", "state", group, text, keyOf(context, key))
      : call("writeMode", "state", group, text),
  );
}
