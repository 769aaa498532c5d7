import { axes } from "#base";
import { allCodeKeys, codeAt } from "./code-keys.ts";
import type { ExtraCode, Format } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { isNone, nodeAt } from "./tree.ts";
import { word } from "./values.ts";

/** Every letter that the dialect writes has its place in `blocks.order`; a word without a place would have no order. */
export function checkAddresses(resolving: Resolving, format: Format): void {
  const used = [
    ...lettersOfKeys(resolving),
    ...lettersOfForms(resolving, format),
    ...lettersOfExtraCodes(format.extraCodes),
  ];
  checkAxisLetters(resolving, format, used);
  checkToleranceLetter(resolving, format);
  for (const { letter, key } of used) {
    if (format.order.includes(letter)) continue;
    const message = `The letter ${letter}, which \`${key}\` writes, has no place in \`blocks.order\`.`;
    resolving.fail("dialect/order", "blocks.order", message, `Put ${letter} where the controller wants it.`);
  }
  const first = format.order[0];
  if (format.blockNumber !== null && first !== "N") {
    resolving.fail(
      "dialect/order",
      "blocks.order",
      "Block numbers stand first in a block.",
      "Begin the order with N.",
    );
  }
}

/**
 * Each axis has a letter of its own, and none that of another axis (ISO 841): I J K, the planes and the sense of an arc go
 * with the axes that the standard names, and two exchanged letters would mirror them. Where letters are not those of ISO 841,
 * no other word may have one of them, nor one that was freed: a reader could not tell the two apart.
 */
function checkAxisLetters({ fail }: Resolving, { motion }: Format, used: readonly UsedLetter[]): void {
  const own = axes.map((axis) => motion.letters[axis]);
  for (const [index, letter] of own.entries()) {
    if (own.indexOf(letter) === index) continue;
    const other = axes[own.indexOf(letter)];
    const message = `The axes ${other.toUpperCase()} and ${axes[index].toUpperCase()} have one letter, ${letter}.`;
    fail("dialect/order", `axes.${axes[index]}`, message, "Give each axis a letter of its own.");
  }
  for (const [index, letter] of own.entries()) {
    const taken = axes.find((axis, other) => other !== index && axis.toUpperCase() === letter);
    if (taken === undefined) continue;
    const message = `The axis ${axes[index].toUpperCase()} has the letter of ${letter}: arc centres, planes and the sense of arcs would stay with the old one.`;
    fail("dialect/order", `axes.${axes[index]}`, message, "Give it U, V or W, or turn the work in the job.");
  }
  const moved = axes.flatMap((axis, index) =>
    own[index] === axis.toUpperCase() ? [] : [own[index], axis.toUpperCase()],
  );
  for (const { letter, key } of used) {
    if (!moved.includes(letter) || key.startsWith("axes.") || key.startsWith("machine.travel.")) continue;
    const message = `\`${key}\` writes ${letter}, which \`axes\` gives to an axis or takes from one.`;
    fail("dialect/order", key, message, "Take another letter.");
  }
}

/** Letters that mean the same in every block: beside a code they would still be a place, a feed, a speed, a tool or a code. */
const letterOfEachBlock = /^[GMNFSTXYZABCUVW]$/;

/** The tolerance of the path is a word that its block has for nothing else: beside a code, X would be a place all the same. */
function checkToleranceLetter({ fail }: Resolving, { toleranceWord, codes }: Format): void {
  const key = "path.tolerance-word";
  if (toleranceWord === undefined || toleranceWord === null) return;
  const isOfBlend = codes.modes.path.blend?.word?.letter === toleranceWord;
  if (!isOfBlend && !letterOfEachBlock.test(toleranceWord)) return;
  const what = isOfBlend
    ? "the code of `path.blend` has beside it already"
    : "means something else in every block";
  const message = `\`${key}\` writes ${toleranceWord}, which ${what}.`;
  fail("dialect/order", key, message, "Take the letter that the controller's manual gives.");
}

interface UsedLetter {
  readonly letter: string;
  readonly key: string;
}

/** Keys whose value is a letter. */
const letterKeys = [
  "dwell.word",
  "compensation.word",
  "length-offset.word",
  "arc.turns-word",
  "path.tolerance-word",
  "cycles.words.retract",
  "cycles.words.peck",
  "cycles.words.dwell",
  "cycles.words.back-off",
] as const;

function lettersOfKeys({ tree }: Resolving): UsedLetter[] {
  // How often a hole is drilled is only written to define a cycle without one.
  const repeats = word(tree, "cycles.definition") === "apart" ? ["cycles.words.repeat"] : [];
  return [...letterKeys, ...repeats].flatMap((key) => {
    const node = nodeAt(tree, key);
    return node?.kind !== "scalar" || isNone(node) ? [] : [{ letter: String(node.value), key }];
  });
}

/** Letters of the words that every program has, of codes, arcs and the axes that the machine has. */
function lettersOfForms({ tree }: Resolving, format: Format): UsedLetter[] {
  const codes = allCodeKeys().flatMap((key) => {
    const code = codeAt(tree, key);
    if (code === undefined || code === null) return [];
    return [code.letter, ...(code.word ? [code.word.letter] : [])].map((letter) => ({ letter, key }));
  });
  const { form, radiusWord } = format.arc;
  const centre = form === "incremental-centre" || form === "absolute-centre";
  const { letters } = format.motion;
  const rotary = (["a", "b", "c"] as const).filter(
    (axis) => nodeAt(tree, `machine.travel.${axis}`) !== undefined,
  );
  return [
    ...codes,
    ...(["x", "y", "z"] as const).map((axis) => ({ letter: letters[axis], key: `axes.${axis}` })),
    { letter: "F", key: "feed" },
    { letter: "S", key: "spindle" },
    ...(form === "radius" ? [{ letter: radiusWord, key: "arc.radius-word" }] : []),
    ...(centre ? [..."IJK"].map((letter) => ({ letter, key: "arc.form" })) : []),
    ...rotary.map((axis) => ({ letter: letters[axis], key: `machine.travel.${axis}` })),
    ...(format.codes.toolChange ? [{ letter: "T", key: "tools" }] : []),
  ];
}

function lettersOfExtraCodes(extraCodes: readonly ExtraCode[]): UsedLetter[] {
  return extraCodes.flatMap(({ letter, words, key }) =>
    [letter, ...Object.keys(words)].map((one) => ({ letter: one, key })),
  );
}
