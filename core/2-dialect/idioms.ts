import type { AuxiliaryAction } from "#base";
import type { ExtraCode, Format, Idiom, IdiomName, IdiomPart, IdiomValue } from "./dialect.ts";
import { messageIdiom } from "./idiom-message.ts";
import { parseTemplate } from "./idiom-template.ts";
import type { IdiomWord } from "./idiom-words.ts";
import { toWords } from "./idiom-words.ts";
import type { Resolving } from "./resolving.ts";
import { isNone, nodeAt } from "./tree.ts";
import { parseCode, word } from "./values.ts";

/** The values that the template of each idiom must and may name. */
export const idiomPurposes = {
  message: { must: ["text"], may: [] },
  "wait-signal": { must: ["signal"], may: ["level", "timeout"] },
  "output-on": { must: ["output"], may: [] },
  "output-off": { must: ["output"], may: [] },
  release: { must: [], may: [] },
  clamp: { must: [], may: [] },
  "taper-air-on": { must: [], may: [] },
  "taper-air-off": { must: [], may: [] },
  "cover-open": { must: [], may: [] },
  "cover-close": { must: [], may: [] },
  "hood-up": { must: [], may: [] },
  "hood-down": { must: [], may: [] },
  measure: { must: [], may: [] },
} as const satisfies Record<IdiomName, { must: readonly IdiomValue[]; may: readonly IdiomValue[] }>;

/** Letters that may stand beside the code of an idiom: they neither move an axis nor set a mode, a tool or an offset. */
const parameterLetters = "PQRLEIJK";

const separators = { none: "", blank: " ", tab: "\t" } as const;

/** All idioms of a dialect, and the codes that they and the key `codes` bring in. */
export function resolveIdioms(resolving: Resolving): Pick<Format, "idioms" | "extraCodes"> {
  const idioms: Partial<Record<IdiomName, Idiom>> = {};
  const extraCodes: ExtraCode[] = [];
  for (const name of Object.keys(idiomPurposes) as IdiomName[]) {
    const path = `idioms.${name}`;
    const node = nodeAt(resolving.tree, path);
    if (node?.kind !== "scalar" || isNone(node)) continue;
    const found =
      name === "message" ? messageIdiom(resolving, String(node.value)) : actingIdiom(resolving, name);
    if (found === undefined) continue;
    idioms[name] = found.idiom;
    if (found.code !== undefined) extraCodes.push(found.code);
  }
  return { idioms, extraCodes: [...extraCodes, ...opaqueCodes(resolving)] };
}

/** An idiom that acts: one code, with fixed numbers or values beside it. */
function actingIdiom(
  resolving: Resolving,
  name: Exclude<IdiomName, "message">,
): { idiom: Idiom; code: ExtraCode } | undefined {
  const path = `idioms.${name}`;
  const { must, may } = idiomPurposes[name];
  const template = parseTemplate(word(resolving.tree, path) ?? "", [...must, ...may]);
  if ("problem" in template)
    return refuse(resolving, "dialect/template", path, template.problem, template.fix);
  const found = toWords(template.parts);
  if ("problem" in found) return refuse(resolving, "dialect/template", path, found.problem);
  const problem = wordsProblem(found.words, must);
  if (problem !== undefined) return refuse(resolving, "dialect/idiom-meaning", path, problem);
  const [head, ...rest] = codeFirst(found.words);
  const code = parseCode(head.letter + ("literal" in head.number ? head.number.literal : ""));
  const words = Object.fromEntries(rest.map(({ letter, number }) => [letter, wordValue(number)]));
  return {
    idiom: {
      blocks: [
        toParts(found.words, separators[word<"blank" | "tab">(resolving.tree, "blocks.separator") ?? "none"]),
      ],
    },
    code: { ...code, meaning: meaningOf(name), words, key: path },
  };
}

function wordValue(number: IdiomWord["number"]): IdiomValue | number {
  return "literal" in number ? Number(number.literal) : number.value;
}

function refuse(resolving: Resolving, rule: string, path: string, problem: string, fix?: string): undefined {
  resolving.fail(rule, path, `In \`${path}\`: ${problem}.`, fix);
  return undefined;
}

function isCode({ letter }: IdiomWord): boolean {
  return letter === "G" || letter === "M";
}

function codeFirst(words: readonly IdiomWord[]): IdiomWord[] {
  return [...words.filter(isCode), ...words.filter((one) => !isCode(one))];
}

/** Why the words are not one action: they must be one code and parameters of it, each letter and each value once. */
function wordsProblem(words: readonly IdiomWord[], must: readonly IdiomValue[]): string | undefined {
  const codes = words.filter(isCode);
  if (codes.length !== 1)
    return `an idiom has one code, this one has ${codes.length}; each further code would be a step of its own`;
  const [{ number }] = codes as [IdiomWord];
  if ("value" in number) return "the number of the code is fixed";
  if (!/^\d{1,3}(\.\d)?$/.test(number.literal))
    return `\`${codes[0].letter}${number.literal}\` is not a code`;
  for (const { letter } of words) {
    if (!"GM".includes(letter) && !parameterLetters.includes(letter)) {
      return `the word ${letter} would move an axis or set something else; beside the code may stand ${[...parameterLetters].join(" ")}`;
    }
    if (words.filter((one) => one.letter === letter).length > 1) return `the word ${letter} stands twice`;
  }
  const values = words.flatMap(({ number: given }) => ("value" in given ? [given.value] : []));
  const missing = must.find((value) => !values.includes(value));
  if (missing !== undefined) return `it does not say {{${missing}}}, which decides what is done`;
  const twice = values.find((value, index) => values.indexOf(value) !== index);
  return twice === undefined ? undefined : `{{${twice}}} stands twice`;
}

/** Words as text parts again, with the separator of the dialect between them and literals run together. */
function toParts(words: readonly IdiomWord[], separator: string): IdiomPart[] {
  const parts: IdiomPart[] = [];
  let literal = "";
  for (const [index, { letter, number }] of words.entries()) {
    literal += (index > 0 ? separator : "") + letter;
    if ("literal" in number) literal += number.literal;
    else {
      parts.push({ literal }, number);
      literal = "";
    }
  }
  return literal === "" ? parts : [...parts, { literal }];
}

function meaningOf(name: Exclude<IdiomName, "message">): ExtraCode["meaning"] {
  if (name === "wait-signal") return { kind: "wait" };
  if (name === "output-on" || name === "output-off") return { kind: "output", on: name === "output-on" };
  return { kind: "auxiliary", action: name satisfies AuxiliaryAction };
}

/** Codes of the builder that have declared effects and no other meaning. */
function opaqueCodes({ tree }: Resolving): ExtraCode[] {
  const node = nodeAt(tree, "codes");
  if (node?.kind !== "mapping") return [];
  return [...node.entries.keys()].map((name) => ({
    ...parseCode(name),
    meaning: { kind: "auxiliary", action: "opaque" },
    words: {},
    key: `codes.${name}`,
  }));
}
