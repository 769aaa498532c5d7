import type { CoolantMedium } from "#base";
import { orDeclare } from "./findings.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { optional, refuse } from "./words.ts";

/** Switches all coolant off, also where it should be off already. A machine without any has no word for that. */
export function coolantOff(run: Run): void {
  if (run.machine.offWords.length > 0) switchOff(run, []);
  else if (optional(run, "coolant.off", "all coolant is off at the start and before a swap")) {
    put(run, { kind: "coolant", medium: "all", on: false });
  }
  run.state.coolant = [];
}

/** Brings the coolant to what an operation asks for: off where the media change, then each medium on. */
export function setCoolant(run: Run, media: readonly CoolantMedium[]): void {
  const { state } = run;
  const same =
    state.coolant?.length === media.length && media.every((medium) => state.coolant?.includes(medium));
  if (run.machine.offWords.length > 0) switchOff(run, media);
  else if (!same && state.coolant?.length !== 0) coolantOff(run);
  for (const medium of media) coolantOn(run, medium);
  state.coolant = media;
}

/** Where each medium has a word of its own: turns off what is on, or may be, and is not wanted. */
function switchOff(run: Run, wanted: readonly CoolantMedium[]): void {
  const { state, machine } = run;
  for (const medium of machine.offWords) {
    if (wanted.includes(medium) || state.coolant?.includes(medium) === false) continue;
    put(run, { kind: "coolant", medium, on: false });
  }
}

function coolantOn(run: Run, medium: CoolantMedium): void {
  const key = `coolant.${medium}`;
  const off = run.request.capabilities.words["coolant.off"];
  const one = run.machine.offWords.length === 0 || run.machine.offWords.includes(medium);
  if ((off === false || !one) && run.request.capabilities.words[key] !== false) {
    refuse(
      run,
      "lower/coolant",
      `\`${medium}\` could be switched on but never off`,
      wayOut("coolant.off"),
      "coolant.off",
    );
  }
  if (run.request.capabilities.words[key] === false) {
    refuse(
      run,
      "lower/coolant",
      `the job asks for \`${medium}\`, and the dialect has no word for it`,
      wayOut(key),
      key,
    );
  } else if (optional(run, key, `the job asks for \`${medium}\``))
    put(run, { kind: "coolant", medium, on: true });
}

const wayOut = (key: string): string => orDeclare("change the operation's `coolant`", key);
