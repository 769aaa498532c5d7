import type { Step } from "#base";
import { axisBit } from "#base";
import type { ExtraCode, IdiomValue } from "#dialect";
import { placeOf } from "./block.ts";
import { applyEffects } from "./effects.ts";
import * as findings from "./findings-meaning.ts";
import { letterNumber } from "./letters.ts";
import { plainValue, readNumber, readWhole, textAt, wordText } from "./read-number.ts";
import type { PlacedExtra, Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";
import { losePlace } from "./state.ts";

/** Values that the words of an extra code carry; those that the code has no word for stay away. */
type Values = Partial<Record<IdiomValue, number>>;

type Meant<Kind extends ExtraCode["meaning"]["kind"]> = Extract<ExtraCode["meaning"], { kind: Kind }>;

/** The step of each kind of extra code; undefined where the code does not say which input or output it means. */
const steps = {
  wait(reader: Reader, _meaning: Meant<"wait">, values: Values): Step | undefined {
    const level = values.level === undefined || values.level === reader.format.waitValues?.on ? "on" : "off";
    if (values.signal === undefined) return undefined;
    return { kind: "wait", input: values.signal, level, timeout: values.timeout ?? 0 };
  },
  output(_reader: Reader, { on }: Meant<"output">, values: Values): Step | undefined {
    return values.output === undefined ? undefined : { kind: "output", number: values.output, on };
  },
  auxiliary(reader: Reader, { action }: Meant<"auxiliary">, _values: Values, code: ExtraCode): Step {
    return { kind: "auxiliary", action, code: action === "opaque" ? codeText(reader, code) : "" };
  },
} as const satisfies Record<ExtraCode["meaning"]["kind"], unknown>;

type MakeStep = (
  reader: Reader,
  meaning: ExtraCode["meaning"],
  values: Values,
  code: ExtraCode,
) => Step | undefined;

/** Waits, outputs and auxiliary codes of the block, in the order of the text. */
export function readExtras(reader: Reader): void {
  for (const extra of reader.extras) readExtra(reader, extra);
}

/** One of them. */
export function readExtra(reader: Reader, extra: PlacedExtra): void {
  const { code, at } = extra;
  const values = readValues(reader, extra);
  if (values === undefined) return;
  const step = (steps[code.meaning.kind] as MakeStep)(reader, code.meaning, values, code);
  if (step === undefined) {
    reader.report(findings.undeclared(reader.block.start + at, textAt(reader, at), code.key));
    return;
  }
  pushStep(reader, step);
  if (step.kind === "auxiliary") workAuxiliary(reader, step);
}

function workAuxiliary(reader: Reader, step: Extract<Step, { kind: "auxiliary" }>): void {
  if (step.action === "opaque") applyEffects(reader, reader.machine.opaqueEffects[step.code]);
  if (step.action === "measure") losePlace(reader.state, axisBit.z);
}

/** An opaque code is named as the dialect's effects name it: M93, or M093 where codes have three digits. */
function codeText(reader: Reader, { letter, value }: ExtraCode): string {
  const whole = String(Math.floor(value / 10));
  const tenth = value % 10 === 0 ? "" : `.${value % 10}`;
  const padded = letter + whole.padStart(reader.format.numbers.width[letter], "0") + tenth;
  const bare = letter + whole + tenth;
  return bare in reader.machine.opaqueEffects ? bare : padded;
}

/** Values of the words of an extra code; undefined where one is missing or no value. */
function readValues(reader: Reader, { code, at }: PlacedExtra): Values | undefined {
  const { block } = reader;
  const values: Values = {};
  let whole = true;
  for (const [name, value] of Object.entries(code.words)) {
    const letter = letterNumber(name);
    const bit = 1 << letter;
    if (block.mask & bit) {
      block.used |= bit;
      if (typeof value === "number") continue;
      const read = readValue[value](reader, letter);
      if (read === undefined) whole = false;
      else values[value] = read;
    } else {
      whole = false;
      if ((block.unknown & bit) === 0)
        reader.report(
          findings.wordMissing(
            block.start + at,
            `${textAt(reader, at)} needs the word ${name}.`,
            `Add ${name} and its ${typeof value === "number" ? "value" : value}.`,
            code.key,
          ),
        );
    }
  }
  return whole ? values : undefined;
}

const readValue = {
  signal: (reader: Reader, letter: number) => readWhole(reader, letter),
  output: (reader: Reader, letter: number) => readWhole(reader, letter),
  level: readLevel,
  timeout: readTimeout,
  text: (_reader: Reader, _letter: number) => undefined,
} as const satisfies Record<IdiomValue, (reader: Reader, letter: number) => number | undefined>;

/** The level of a wait is one of the two numbers that the dialect declares. */
function readLevel(reader: Reader, letter: number): number | undefined {
  const { format, block } = reader;
  const value = plainValue(reader, letter);
  if (format.waitValues !== undefined && (value === format.waitValues.on || value === format.waitValues.off))
    return value;
  const place = placeOf(block, letter);
  if (format.waitValues === undefined)
    reader.report(findings.undeclared(place, wordText(reader, letter), "wait"));
  else reader.report(findings.badNumber(place, wordText(reader, letter), "is no level of a signal"));
  return undefined;
}

function readTimeout(reader: Reader, letter: number): number | undefined {
  const { quantities, block } = reader;
  const place = placeOf(block, letter);
  if (quantities.timeout === undefined) {
    reader.report(findings.undeclared(place, wordText(reader, letter), "numbers.timeout"));
    return undefined;
  }
  const time = readNumber(reader, letter, quantities.timeout);
  if (time >= 0) return time;
  reader.report(findings.badNumber(place, wordText(reader, letter), "is below 0"));
  return undefined;
}
