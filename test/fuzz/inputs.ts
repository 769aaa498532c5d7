import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { randomParametric } from "../interpreter/parametric/random-parametric.ts";
import { examples } from "../support/examples.ts";
import type { Random } from "./mutate.ts";
import { binary, bytesOf, mostBytes, mutate, oddNumbers, pick, upTo } from "./mutate.ts";

const root = resolve(import.meta.dirname, "../..");
const textsIn = (folder: string, ending: string): string[] =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => readFileSync(join(root, folder, name), "utf8"));

const dialectTexts = textsIn("dialects", ".dialect.yaml");
const programs = textsIn("test/goldens", ".program.txt").map((text) => text.slice(0, mostBytes));
const prototypeKeys = ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty"];

/** A job of a few operations is changed more often in the places that matter. */
const jobs = examples.flatMap(({ job }) => [job.slice(0, mostBytes), ...shorter(job)]);

/** The same job with each operation alone and few moves. */
function shorter(job: string): string[] {
  const whole = JSON.parse(job) as { operations: { moves: unknown[] }[] };
  return whole.operations.map((operation) =>
    JSON.stringify(
      { ...whole, operations: [{ ...operation, moves: operation.moves.slice(0, 12) }] },
      null,
      1,
    ),
  );
}

const jobWords = [
  ...new Set(jobs.join(" ").match(/"[A-Za-z-]+"/g) ?? []),
  ...prototypeKeys.map((key) => `"${key}": 1,`),
  ...'{}[],:"\\'.split(""),
  "\\u0000",
  "\\ud800",
  "null",
  "true",
  ...oddNumbers,
];

/** A value that looks like JSON most of the time. */
function jsonish(random: Random, depth: number): string {
  const kind = depth > 12 ? 0 : upTo(random, 5);
  const some = Array.from({ length: upTo(random, 4) }, () => depth + 1);
  if (kind === 1) return `[${some.map((deep) => jsonish(random, deep)).join(",")}]`;
  if (kind === 2)
    return `{${some.map((deep) => `${pick(random, jobWords)}: ${jsonish(random, deep)}`).join(",")}}`;
  return pick(random, kind === 3 ? oddNumbers : jobWords);
}

/** An input for the job reader. */
export function jobInput(random: Random): Uint8Array {
  const kind = random();
  if (kind < 0.75) return bytesOf(mutate(pick(random, jobs), random, jobWords));
  if (kind < 0.85) return bytesOf(jsonish(random, 0));
  if (kind < 0.9)
    return bytesOf(pick(random, ["[", '{"a":', '{"operations":[']).repeat(upTo(random, 30_000)));
  if (kind < 0.95)
    return bytesOf(`{"job":"1","name":"${pick(random, jobWords).repeat(upTo(random, 20_000))}"}`);
  return binary(random);
}

const leafHead = "dialect: bad\ntitle: Bad\n";
const dialectLines = dialectTexts.flatMap((text) =>
  text.split("\n").filter((line) => /^[a-z-]+:/.test(line)),
);
const dialectWords = [
  ...new Set(dialectTexts.join(" ").match(/[a-z-]{3,}|[GM]\d+|\{\{\w+\}\}/g) ?? []),
  ...prototypeKeys.map((key) => `\n${key}: { polluted: yes }\n`),
  ..."{}[],:\"'#&*!|>%@`\t\n".split(""),
  "&a ",
  "*a ",
  "<<: *a",
  "!!js/function ",
  "---\n",
  "2 * second",
  ...oddNumbers,
];

/** Aliases of aliases, which would be a billion values if they were copied. */
function bomb(random: Random): string {
  const most = 4 + upTo(random, 20);
  const levels = Array.from({ length: most }, (_, level) => {
    const inner =
      level === 0
        ? "x, x"
        : Array<string>(9)
            .fill(`*a${level - 1}`)
            .join(", ");
    return `a${level}: &a${level} [${inner}]`;
  });
  return `${leafHead}extends: rs274ngc\n${levels.join("\n")}\nblocks: *a${most - 1}\n`;
}

/** An input for the dialect reader. */
export function dialectInput(random: Random): Uint8Array {
  const kind = random();
  if (kind < 0.5) return bytesOf(mutate(pick(random, dialectTexts), random, dialectWords));
  if (kind < 0.8) {
    const lines = Array.from({ length: 1 + upTo(random, 4) }, () => pick(random, dialectLines));
    const parent = pick(random, ["rs274ngc", "iso-6983", "explicit-words", "bad", "../x", "none"]);
    return bytesOf(mutate(`${leafHead}extends: ${parent}\n${lines.join("\n")}\n`, random, dialectWords));
  }
  if (kind < 0.86) return bytesOf(bomb(random));
  if (kind < 0.92) {
    const open = pick(random, ["[", "{a: ", "- ", "? "]);
    return bytesOf(`${leafHead}modal: ${open.repeat(upTo(random, pick(random, [50, 5000])))}`);
  }
  if (kind < 0.96) {
    const expression = pick(random, ["(", "-", "1 + ", "spindle.", "x["]).repeat(upTo(random, 5000));
    return bytesOf(`${leafHead}extends: rs274ngc\nconfirm: { stopped: { dwell: "${expression}1" } }\n`);
  }
  return binary(random);
}

const programWords = [
  ...new Set(programs.join(" ").match(/[A-Z][-+]?\d+(\.\d*)?/g) ?? []),
  ..."%()/;:*#[]=\t\r\n".split(""),
  "G",
  "G5.1",
  "G99999999999999999999",
  "M30\n",
  "N",
  "(MSG, ",
  ...oddNumbers,
  ...oddNumbers.map((number) => `X${number}`),
];

const parametric = Array.from({ length: 40 }, (_, seed) => randomParametric(seed));

/** Words of programs that are worked out and that branch, among them loops without an end and brackets without one. */
const parametricWords = [
  ..."#[]<>=+-*/".split(""),
  ..."SIN[ ATAN[1]/[ SQRT[ LN[ FIX[ EXISTS[#<x>] ** MOD AND XOR EQ LT".split(" ").map((word) => ` ${word} `),
  ..."sub endsub call return if elseif else endif while endwhile do repeat endrepeat break continue"
    .split(" ")
    .flatMap((word) => [`\no1 ${word} [1]\n`, `\no2 ${word}\n`, `\no<a> ${word} [#1]\n`]),
  "\nM98 P1 L99999\n",
  "\nM98 P2\n",
  "\nM99\n",
  "\nO1\n",
  "\nO2\n",
  "\nM2\n",
  "\n#1=[#1+1]\n",
  "\n#1=1 #2=0\n",
  "#5420",
  "##1",
  "[".repeat(40),
  "-".repeat(200),
  ...oddNumbers.map((number) => `[${number}]`),
];

/** A program with parameters, loops and subprograms: one that is sound and was changed, or words at random. */
function parametricInput(random: Random): Uint8Array {
  if (random() < 0.6) return bytesOf(mutate(pick(random, parametric), random, parametricWords));
  const count = upTo(random, pick(random, [20, 400]));
  return bytesOf(Array.from({ length: count }, () => pick(random, parametricWords)).join(""));
}

/** An input for the program reader. */
export function programInput(random: Random): Uint8Array {
  if (random() < 0.3) return parametricInput(random);
  const kind = random();
  if (kind < 0.65) return bytesOf(mutate(pick(random, programs), random, programWords));
  if (kind < 0.9) {
    const count = upTo(random, pick(random, [20, 2000]));
    const gap = pick(random, ["", " ", " ", "\n"]);
    return bytesOf(Array.from({ length: count }, () => pick(random, programWords) + gap).join(""));
  }
  if (kind < 0.95) return bytesOf(pick(random, programWords).repeat(upTo(random, 50_000)));
  return binary(random);
}
