import { expect, test } from "vitest";
import type { Finding } from "#base";
import { answeredKeys, openAnswers, readAnswers } from "#interview";
import { archetypeOf } from "./drafting.ts";

const rs274ngc = await archetypeOf("rs274ngc");
const staged = await archetypeOf("staged-tools");

interface Taken {
  /** "dialect/answers 2:9 message | fix", lines and columns from 1. */
  readonly said: readonly string[];
  readonly keys: Readonly<Record<string, unknown>>;
}

async function take(text: string, archetype = rs274ngc): Promise<Taken> {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const opened = await openAnswers({ file: "a.yaml", bytes: new TextEncoder().encode(text) }, report);
  const answers = opened && readAnswers(opened, archetype, report);
  const said = findings.map(({ rule, place, message, fix = "" }) => {
    const before = text.slice(0, place?.offset ?? 0).split("\n");
    return `${rule} ${before.length}:${(before.at(-1) ?? "").length + 1} ${message} | ${fix}`;
  });
  const keys = answers === undefined ? [] : answeredKeys(answers, archetype);
  return { said, keys: Object.fromEntries(keys.map(({ key, value }) => [key, value])) };
}

test("answers become the keys that differ from the dialect they start from", async () => {
  const text = `from: rs274ngc
motion: each-block
spindle: start-first
units: g20-g21
holes: keep
at-speed: { answer: wait, input: 4, timeout: 10 s, block: "M94 P{{signal}} R{{level}} Q{{timeout}}" }
stopped: { answer: wait, input: 5, timeout: 1.5 min }
`;
  expect(await take(text)).toEqual({
    said: [],
    keys: {
      "modal.motion": "each-block",
      "spindle.order": "start-first",
      "confirm.at-speed": { wait: "at-speed", timeout: "10 s" },
      "machine.signals.at-speed": 4,
      "machine.waits.on-timeout": "alarm",
      "idioms.wait-signal": "M94 P{{signal}} R{{level}} Q{{timeout}}",
      "confirm.stopped": { wait: "stopped", timeout: "1.5 min" },
      "machine.signals.stopped": 5,
    },
  });
});

const block = 'block: "M94 P{{signal}} R{{level}} Q{{timeout}}"';

const mistakes: readonly (readonly [text: string, place: string, says: string, offers?: string])[] = [
  [
    "title: A\nspindel: start-first",
    "2:1",
    "There is no question `spindel`. Did you mean `spindle`?",
    "frame, units",
  ],
  [
    "spindle: start-frist",
    "1:1",
    "`start-frist` is no answer to `spindle`: What does your controller want",
    "speed-first-apart, start-first, start-first-apart or keep",
  ],
  ["spindle: start-frist", "1:1", "Did you mean `start-first`?"],
  ["spindle: [start-first]", "1:1", "`spindle` is answered with a word"],
  [
    "spindle: { answr: start-first }",
    "1:1",
    "`spindle` is answered with a word, or with `{ answer: WORD, ... }`",
  ],
  ["spindle: { answer: start-first, seconds: 3 }", "1:33", "`spindle` has nothing called `seconds` here."],
  [
    "stopped: dwell",
    "1:1",
    "`stopped` must say `time`: How long does it take",
    "{ answer: dwell, time: 60 s }",
  ],
  ["stopped: { answer: dwell, tme: 3 s }", "1:27", "nothing called `tme` here. Did you mean `time`?"],
  ["stopped: { answer: dwell, time: 3 }", "1:27", "`stopped.time` is `3`; it can be a time with its unit"],
  ["stopped: { answer: dwell, time: [3 s] }", "1:27", "it can be a time with its unit"],
  [
    `stopped: { answer: wait, input: four, timeout: 3 s, ${block} }`,
    "1:26",
    "`stopped.input` is `four`; it can be a whole number",
  ],
  [
    "stopped: { answer: wait, input: 4, timeout: 3 s }",
    "1:1",
    "`stopped` must say `block`: Which block waits",
  ],
  ["at-speed: controller-holds", "1:1", "`at-speed` must say `reason`: How do you know?"],
  ["- spindle", "1:1", "Answers are a mapping"],
  ["from: [a]", "1:1", "`from` is a text."],
  [
    `at-speed: { answer: wait, input: 4, timeout: 3 s, ${block} }\nstopped: { answer: wait, input: 5, timeout: 3 s, block: "M95 P{{signal}} R{{level}} Q{{timeout}}" }`,
    "2:1",
    '`stopped` makes `idioms.wait-signal` "M95',
  ],
];

test.each(mistakes)("%s", async (...mistake) => {
  const [text = "", place = "", says = "", offers = ""] = mistake;
  const { said, keys } = await take(text);
  expect(keys).toEqual({});
  const found = said.find((one) => one.includes(says));
  expect(found, said.join("\n")).toBeDefined();
  expect(found).toMatch(new RegExp(`^dialect/answers ${place} `));
  expect(found).toContain(offers);
});

test("YAML itself is told with its place, and a key that stands twice", async () => {
  expect((await take("spindle: start-first\nspindle: keep\n")).said[0]).toMatch(/^dialect\/yaml 2:1 .*twice/);
  expect((await take("spindle: [\n")).said[0]).toMatch(/^dialect\/yaml /);
});

test("trust in the controller is not taken over unread", async () => {
  for (const text of ["motion: modal", "at-speed: keep\nstopped: keep"]) {
    const { said } = await take(text, staged);
    expect(said.map((one) => /`([a-z-]+)` must be answered/.exec(one)?.[1])).toEqual(["at-speed", "stopped"]);
    expect(said[0]).toContain("staged-tools trusts the controller");
    expect(said[0]).toContain("It can be wait, dwell or controller-holds.");
  }
});

test("what clashes says why", async () => {
  const { said } = await take(
    "at-speed: { answer: dwell, time: 8 s }\nstopped: { answer: dwell, time: 8 s }",
    staged,
  );
  expect(said[0]).toMatch(
    /^dialect\/answers 1:13 `dwell` cannot be the answer to `at-speed` here: a dwell counts turns/,
  );
});
