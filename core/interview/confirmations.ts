import type { Choice, Detail, Question } from "./question.ts";

/** The block that waits for an input; asked where the dialect that is extended has none. */
const waitBlock: Detail = {
  id: "block",
  ask: "Which block waits for an input? {{signal}} stands for its number, {{level}} for 1 or 0, {{timeout}} for the longest time",
  form: "text",
  example: "M94 P{{signal}} R{{level}} Q{{timeout}}",
  unless: "idioms.wait-signal",
};

/** A state of the spindle that must be sure. */
interface State {
  readonly key: "at-speed" | "stopped";
  readonly words: string;
  /** The input of the example. */
  readonly input: string;
  /** The longest that is common; common practice, no source. */
  readonly longest: string;
}

/** The three ways to be sure of a state; the first two are the safe ones. */
function ways(state: State): readonly Choice[] {
  return [waits(state), dwells(state), holds(state)];
}

function waits({ key, words, input, longest }: State): Choice {
  return {
    id: "wait",
    words: "the program waits for an input, and an alarm stops it if that stays off",
    sets: {
      [`confirm.${key}`]: { wait: key, timeout: "<timeout>" },
      [`machine.signals.${key}`]: "<input>",
      "machine.waits.on-timeout": "alarm",
      "idioms.wait-signal": "<block>",
    },
    asks: [
      {
        id: "input",
        ask: `Which input of the controller is on when the spindle is ${words}?`,
        form: "whole-number",
        example: input,
      },
      {
        id: "timeout",
        ask: "After how long without it does the alarm come?",
        form: "time",
        usual: longest,
        example: longest,
      },
      waitBlock,
    ],
  };
}

function dwells({ key, words, longest }: State): Choice {
  return {
    id: "dwell",
    words: "the program waits a fixed time: as long as it takes at most",
    sets: { [`confirm.${key}`]: { dwell: "<time>" } },
    clashes: {
      key: "dwell.unit",
      value: "rev",
      why: "a dwell counts turns of the spindle, and is no time",
    },
    asks: [
      {
        id: "time",
        ask: `How long does it take at most until the spindle is ${words}, from or to the highest speed?`,
        form: "time",
        usual: longest,
        example: longest,
      },
    ],
  };
}

function holds({ key }: State): Choice {
  return {
    id: "controller-holds",
    words: "the controller holds by itself until it is so, and you know why",
    sets: { [`confirm.${key}`]: { intrinsic: "<reason>" } },
    asks: [
      {
        id: "reason",
        ask: "How do you know? Name the manual and page, or what you tried at the machine",
        form: "text",
        example: "manual page 88, tried with a slow ramp",
      },
    ],
  };
}

/** What must be sure before a cut, and before a swap and the end. */
export const confirmations: readonly Question[] = [
  {
    id: "at-speed",
    ask: "The spindle needs seconds to come up to speed. What keeps the tool from cutting before?",
    short: "Spindle at speed",
    moment: "spindle",
    choices: ways({ key: "at-speed", words: "at speed", input: "1", longest: "20 s" }),
    notInherited: "confirm.at-speed.intrinsic",
  },
  {
    id: "stopped",
    ask: "After M5 the spindle runs on. What keeps a tool change, and your hands, away until it stands?",
    short: "Spindle stopped",
    moment: "stop",
    choices: ways({ key: "stopped", words: "standing", input: "2", longest: "60 s" }),
    notInherited: "confirm.stopped.intrinsic",
  },
];
