import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { quarryRouter } from "../support/dialects.ts";
import { resolveText } from "./findings.ts";

interface Case {
  /** Lines behind `dialect: own` and `extends: ...`; findings stand on line 3 unless it says otherwise. */
  readonly text: string;
  readonly extends?: string;
  /** "rule key", or "rule key @ line". */
  readonly finds: readonly string[];
}

const router = quarryRouter.split("/").at(-1)!;
const leafText = readFileSync(quarryRouter, "utf8");

const cases: Readonly<Record<string, Case>> = {
  // Codes.
  "two keys with one code": {
    text: "feed: { inverse-time: G21 }",
    finds: ["dialect/code-twice feed.inverse-time"],
  },
  "a standard code at another key": {
    text: "motion: { line: G0 }",
    finds: ["dialect/standard-code motion.line", "dialect/code-twice motion.line"],
  },
  "spindle words mixed up": {
    text: "spindle: { cw: M4, ccw: M3 }",
    finds: ["dialect/standard-code spindle.cw", "dialect/standard-code spindle.ccw"],
  },
  "an idiom with the code of a key": {
    text: "idioms: { release: G54 }",
    finds: ["dialect/idiom-meaning idioms.release"],
  },
  "an idiom with a standard code": {
    text: "idioms: { hood-up: G17 }",
    finds: ["dialect/idiom-meaning idioms.hood-up", "dialect/idiom-meaning idioms.hood-up"],
  },
  "two idioms with one code": {
    text: "idioms: { release: M21, clamp: M21 }",
    finds: ["dialect/idiom-meaning idioms.clamp"],
  },
  "two idioms told apart by a fixed number": {
    text: 'idioms: { release: "M21 P1", clamp: "M21 P2" }',
    finds: [],
  },
  "a fixed number and a value do not tell apart": {
    text: 'idioms: { release: "M95 P1", output-on: "M95 P{{output}}", output-off: "M96 P{{output}}" }',
    finds: ["dialect/idiom-meaning idioms.release"],
  },
  "a code of the builder that an idiom has": {
    text: "idioms: { hood-up: M27 }\ncodes: { M27: { does: conveyor on, position: unchanged, spindle: unchanged, coolant: unchanged, length-offset: unchanged } }",
    finds: ["dialect/idiom-meaning codes.M27 @ 4"],
  },
  "a code of the builder with an effect left out": {
    text: "codes: { M27: { does: conveyor on, position: unchanged, spindle: unchanged, coolant: unchanged } }",
    finds: ["dialect/undeclared codes.M27.length-offset"],
  },
  // Stops.
  "a stop with its message is longer than a block may be": {
    text: "stops: { comment: with-stop }\nblocks: { longest: 64 }",
    finds: ["dialect/format stops.comment"],
  },
  "the message of a stop hides the sign at the end of its block": {
    text: 'comments: { style: semicolon }\nidioms: { message: ";MSG {{text}}" }\nfile: { end-of-block: asterisk }\nstops: { comment: with-stop }',
    finds: ["dialect/format stops.comment @ 6"],
  },
  "a length offset in the tool word is lost at a stop": {
    text: "stops: { resume: loses-modes }\nlength-offset: none\nmachine: { length-offset: { form: in-tool-word } }",
    finds: ["dialect/format stops.resume"],
  },
  // Coolant.
  "a medium that could not be turned off": {
    text: "coolant: { off: { mist: M97 } }",
    finds: ["dialect/undeclared coolant.off.flood"],
  },
  "two coolant words in a block of one M word": {
    text: "coolant: { blocks: together }\nblocks: { m-words: 1 }",
    finds: ["dialect/format coolant.blocks"],
  },
  // Spindle.
  "a gear range that ends where it begins": {
    text: "spindle: { gears: [{ code: M41, from: 100, to: 100 }] }",
    finds: ["dialect/format spindle.gears.1.to"],
  },
  "a gear range without its end": {
    text: "spindle: { gears: [{ code: M41, from: 100 }] }",
    finds: ["dialect/undeclared spindle.gears.1.to"],
  },
  "a gear that would be shifted while it turns": {
    text: "spindle: { order: start-first, blocks: apart, gears: [{ code: M41, from: 100, to: 4000 }] }",
    finds: ["dialect/format spindle.gears"],
  },
  "a start that does not show whether a speed follows": {
    text: "modal: { speed: changed }\nspindle: { order: start-first, blocks: apart }",
    finds: ["dialect/format modal.speed"],
  },
  "two gear ranges with one code": {
    text: "spindle: { gears: [{ code: M41, from: 1, to: 9 }, { code: M41, from: 9, to: 99 }] }",
    finds: ["dialect/code-twice spindle.gears.2.code"],
  },
  "a percentage of an unknown speed": {
    text: "spindle: { speed-unit: percent }",
    finds: ["dialect/undeclared spindle.full-speed @ 3"],
  },
  "a percentage that is no whole number of thousandths": {
    text: "spindle: { speed-unit: percent, full-speed: 24000.05 }\nnumbers: { speed: 3 }",
    finds: ["dialect/grid spindle.speed-unit"],
  },
  // Addresses.
  "a letter without a place": {
    text: "blocks: { order: [N, G, X, Y, Z, I, J, K, R, P, F, S, T, H, D, M] }",
    finds: ["dialect/order blocks.order"],
  },
  "the letter of an idiom without a place": {
    text: 'idioms: { release: "M21 E1" }',
    finds: ["dialect/order blocks.order @ 1"],
  },
  "a rotary axis without a place": {
    text: "machine: { travel: { a: [-360, 360] } }\nblocks: { order: [N, G, X, Y, Z, I, J, K, R, P, Q, F, S, T, H, D, M] }",
    finds: ["dialect/order blocks.order @ 4"],
  },
  "block numbers not first": {
    text: "blocks: { number: { on: all, start: 10, step: 10, to: 9999, width: 0 }, order: [G, N, X, Y, Z, I, J, K, R, P, Q, F, S, T, H, D, M] }",
    finds: ["dialect/order blocks.order"],
  },
  // Text.
  "a block end that begins comments": {
    text: "file: { end-of-block: semicolon }\ncomments: { style: semicolon }\nidioms: { message: none }",
    finds: ["dialect/format comments.style @ 4"],
  },
  "program numbers the wrong way round": {
    text: "file: { program-number: { letter: O, digits: 4, from: 900, to: 100 } }",
    finds: ["dialect/format file.program-number.to"],
  },
  "program numbers with too many digits": {
    text: "file: { program-number: { letter: O, digits: 4, from: 1, to: 99999 } }",
    finds: ["dialect/format file.program-number.digits"],
  },
  "% twice": {
    text: 'file: { program-number: { letter: "%", digits: 4, from: 1, to: 9999 } }',
    finds: ["dialect/format file.program-number.letter"],
  },
  "a colon for the program number and for sections": {
    text: 'file: { delimiter: none, program-number: { letter: ":", digits: 4, from: 1, to: 9999 } }\nblocks: { sections: { mark: colon } }',
    finds: ["dialect/format blocks.sections.mark @ 4"],
  },
  "an optional stop by a mark that there is not": {
    text: 'blocks: { delete: { mark: none } }\nstops: { optional: "/M00" }',
    finds: ["dialect/format stops.optional @ 4"],
  },
  "an optional stop by a switch that there is not": {
    text: 'stops: { optional: "/2 M00" }',
    finds: ["dialect/format stops.optional"],
  },
  "an optional stop by a mark and a code of its own": {
    text: 'stops: { optional: "/M01" }',
    finds: ["dialect/format stops.optional"],
  },
  "fewer words than an arc has": {
    text: "blocks: { most-words: 3 }",
    finds: ["dialect/format blocks.most-words"],
  },
  "block numbers without room": {
    text: "blocks: { number: { on: all, start: 10, step: 10, to: 15, width: 0 } }",
    finds: ["dialect/format blocks.number.to"],
  },
  "block numbers wider than their digits": {
    text: "blocks: { number: { on: all, start: 1, step: 1, to: 99999, width: 4 } }",
    finds: ["dialect/format blocks.number.width"],
  },
  "a message mark in small letters": {
    text: 'idioms: { message: "(Note, {{text}})" }',
    finds: ["dialect/characters idioms.message"],
  },
  "a message mark that leaves no room": {
    text: "comments: { longest: 10 }",
    finds: ["dialect/format idioms.message @ 1"],
  },
  "a message where there are no comments": {
    text: "comments: { style: none }",
    finds: ["dialect/idiom-meaning idioms.message @ 1"],
  },
  // Arcs and cycles.
  "a full circle by radius": { text: "arc: { form: radius }", finds: ["dialect/arc arc.full-circle @ 1"] },
  "a full circle above the largest sweep": {
    text: "arc: { largest-sweep: 180 }",
    finds: ["dialect/arc arc.full-circle @ 1"],
  },
  "arcs in a plane without a word": { text: "plane: { yz: none }", finds: ["dialect/arc plane.yz"] },
  "a centre mode that cannot be put back": {
    text: "arc: { centre-words: { absolute: G90.1, incremental: none } }",
    finds: ["dialect/arc arc.centre-words.incremental"],
  },
  "cycles without a level between holes": {
    text: "cycles: { return: { initial: none, retract: none, without: none } }",
    finds: ["dialect/undeclared cycles.return.without"],
  },
  // Numbers.
  "more decimals than a millisecond can hold": {
    text: "dwell: { unit: ms }\nnumbers: { dwell: 4 }",
    finds: ["dialect/grid numbers.dwell @ 4"],
  },
  "more decimals than a speed can hold": {
    text: "numbers: { speed: 4 }",
    finds: ["dialect/grid numbers.speed"],
  },
  "a timeout between two numbers": {
    extends: "explicit-words",
    text: "confirm: { at-speed: { timeout: 10.25 s } }",
    finds: ["dialect/grid confirm.at-speed.timeout"],
  },
  "an implied point without its digits": {
    text: "numbers: { point: never, suppressed-zeros: trailing }",
    finds: ["dialect/undeclared numbers.digits"],
  },
  "a message in the block of a stop where comments stand alone": {
    text: "comments: { place: own-block }\nstops: { comment: with-stop }",
    finds: ["dialect/format stops.comment @ 4"],
  },
  "comments that stand alone where messages of stops do not": {
    extends: "hand-zeroed",
    text: "comments: { place: own-block }",
    finds: ["dialect/format stops.comment @ 1"],
  },
  "comments that stand alone, and messages of stops that do": {
    text: "comments: { place: own-block }",
    finds: [],
  },
  "section comments where there are none": {
    text: "comments: { style: none }\nidioms: { message: none }\nblocks: { sections: { comments: yes } }",
    finds: ["dialect/format blocks.sections.comments @ 5"],
  },
  "section comments that look like messages": {
    text: 'idioms: { message: "(SEC {{text}})" }\nblocks: { sections: { comments: yes } }',
    finds: ["dialect/format blocks.sections.comments @ 4"],
  },
  // Words that act where they stand.
  "a feed and modes behind the axes of a control that goes from left to right": {
    text: "blocks: { executes: left-to-right, order: [N, X, Y, Z, A, B, C, G, I, J, K, R, P, Q, L, F, S, T, H, D, M] }\nmachine: { length-offset: { form: own-block } }",
    finds: ["dialect/order blocks.order", "dialect/order blocks.order"],
  },
  "a length offset behind the Z of its block": {
    text: "blocks: { executes: left-to-right, order: [N, G, F, X, Y, Z, A, B, C, I, J, K, R, P, Q, L, S, T, H, D, M] }",
    finds: ["dialect/order machine.length-offset.form @ 1"],
  },
  "a start before its speed, and a change before its tool": {
    text: "blocks: { executes: left-to-right, order: [N, G, F, H, X, Y, Z, A, B, C, I, J, K, R, P, Q, L, S, T, D, M] }\nspindle: { order: start-first }\ntools: { order: change-first }",
    finds: ["dialect/format spindle.order @ 4", "dialect/format tools.order @ 5"],
  },
  "a dwell before the start of its block": {
    text: "blocks: { executes: left-to-right, order: [N, G, F, H, X, Y, Z, A, B, C, I, J, K, R, P, Q, L, S, T, D, M] }\ndwell: { blocks: with-start }",
    finds: ["dialect/format dwell.blocks @ 4"],
  },
  "words that act where they stand, in an order that suits them": {
    text: "blocks: { executes: left-to-right, order: [N, M, G, F, H, X, Y, Z, A, B, C, I, J, K, R, P, Q, L, S, T, D] }\ndwell: { blocks: with-start }",
    finds: [],
  },
  // Waits and confirmations.
  "a wait that goes on": {
    extends: "explicit-words",
    text: "machine: { waits: { on-timeout: continues } }",
    finds: ["dialect/wait-continues confirm.at-speed @ 1", "dialect/wait-continues confirm.stopped @ 1"],
  },
  "a wait on a signal that is no input": {
    extends: "explicit-words",
    text: "confirm: { air: { wait: air, timeout: 5 s } }",
    finds: ["dialect/undeclared machine.signals.air @ 1"],
  },
  "a wait without words": {
    text: "machine: { signals: { at-speed: 4 }, waits: { on-timeout: alarm } }\nconfirm: { at-speed: { wait: at-speed, timeout: 9 s } }",
    finds: ["dialect/undeclared idioms.wait-signal @ 1"],
  },
  "a wait of which nobody knows how it ends": {
    text: 'machine: { signals: { at-speed: 4 } }\nidioms: { wait-signal: "M94 P{{signal}} R{{level}} Q{{timeout}}" }\nconfirm: { at-speed: { wait: at-speed, timeout: 9 s } }',
    finds: ["dialect/undeclared machine.waits.on-timeout @ 3"],
  },
  "a wait without its timeout": {
    extends: "explicit-words",
    text: "machine: { signals: { air: 6 } }\nconfirm: { air: { wait: air } }",
    finds: ["dialect/undeclared confirm.air.timeout @ 4"],
  },
  "a timeout that cannot be said": {
    extends: "explicit-words",
    text: 'idioms: { wait-signal: "M94 P{{signal}} R{{level}}" }',
    finds: ["dialect/confirm confirm.at-speed.timeout @ 1", "dialect/confirm confirm.stopped.timeout @ 1"],
  },
  "a level that cannot be said": {
    extends: "explicit-words",
    text: 'idioms: { wait-signal: "M94 P{{signal}} Q{{timeout}}" }\nmachine: { signals: { stopped: { input: 2, level: off } } }',
    finds: ["dialect/signal machine.signals.stopped @ 4"],
  },
  "two levels that are one number": {
    extends: "explicit-words",
    text: "wait: { off: 1 }",
    finds: ["dialect/signal wait.off"],
  },
  "one input for two signals": {
    extends: "explicit-words",
    text: "machine: { signals: { stopped: 1 } }",
    finds: ["dialect/signal machine.signals.stopped"],
  },
  "one input for two signals at different levels": {
    extends: "explicit-words",
    text: "machine: { signals: { stopped: { input: 1, level: off } } }",
    finds: [],
  },
  "a confirmation in two ways": {
    text: "confirm: { stopped: { wait: stopped, timeout: 5 s, dwell: 5 s } }",
    finds: ["dialect/confirm confirm.stopped"],
  },
  // What one key needs of another.
  "a hood without words": {
    text: "machine: { hood: yes }\nidioms: { hood-up: M23 }",
    finds: ["dialect/undeclared idioms.hood-down @ 4"],
  },
  "inverse time without its numbers": {
    extends: "iso-6983",
    text: "feed: { inverse-time: G93 }",
    finds: ["dialect/undeclared numbers.inverse-time @ 1"],
  },
  "a move in machine coordinates without its word": {
    text: "machine-move: none",
    finds: ["dialect/undeclared machine-move"],
  },
  "measured lengths without a measurement": {
    text: "machine: { lengths: measured }",
    finds: ["dialect/undeclared idioms.measure @ 1", "dialect/undeclared machine.measure-effects"],
  },
  "a controller's swap whose effects nobody states": {
    extends: "iso-6983",
    text: "machine: { swap: controller, retract: { by: machine-move, z: 0 } }\nmachine-move: G53",
    finds: ["dialect/undeclared machine.change-effects"],
  },
  // Tools.
  "a tool word that changes the tool, and selects the next one": {
    extends: "rs274ngc",
    text: "tools: { change: with-tool-word, preselect: yes }",
    finds: ["dialect/format tools.preselect"],
  },
  "a tool word that changes the tool where the operator does": {
    extends: "iso-6983",
    text: "tools: { change: with-tool-word }",
    finds: ["dialect/format tools.change"],
  },
  "a tool that nobody names to the operator": {
    extends: "iso-6983",
    text: "tools: { in-operator-swap: no }\nidioms: { message: none }",
    finds: ["dialect/undeclared idioms.message @ 4"],
  },
  "an offset number 0 of another letter": {
    extends: "rs274ngc",
    text: "length-offset: { off: D0 }",
    finds: ["dialect/format length-offset.off"],
  },
  // Cycles.
  "a cycle defined apart whose holes state it again": {
    text: "cycles: { definition: apart, repeat: all }",
    finds: ["dialect/format cycles.definition"],
  },
  "levels that count from an initial level taken anew at each hole": {
    text: "cycles: { levels: relative, repeat: all, initial-level: current }",
    finds: ["dialect/format cycles.initial-level"],
  },
  "a synchronising code on a machine with a floating holder": {
    text: "cycles: { tap-synchronised: M29 }",
    finds: ["dialect/machine cycles.tap-synchronised"],
  },
  "a tap by its lead without a number for it": {
    text: "cycles: { tap-feed: lead }",
    finds: ["dialect/undeclared numbers.feed-per-revolution @ 1"],
  },
  // The machine.
  "a swap by the controller with a retract by clearance": {
    text: "machine: { retract: { by: clearance } }",
    finds: ["dialect/retract machine.retract.by"],
  },
  "a cancelling that moves with a retract by clearance": {
    extends: "iso-6983",
    text: "machine: { length-offset: { cancel-moves: yes } }",
    finds: ["dialect/retract machine.length-offset.cancel-moves"],
  },
  "a retract that cancels an offset whose cancelling moves": {
    extends: "rs274ngc",
    text: "machine: { retract: { cancel-length-first: yes }, length-offset: { cancel-moves: yes } }",
    finds: ["dialect/retract machine.retract.cancel-length-first"],
  },
  "a swap height outside the travel": {
    text: "machine: { travel: { z: [-95, -1] } }",
    finds: ["dialect/retract machine.retract.z @ 1"],
  },
  "a travel that is none": {
    text: "machine: { travel: { x: [10, 10] } }",
    finds: ["dialect/machine machine.travel.x"],
  },
  "speeds the wrong way round": {
    text: "machine: { spindle: { min-rpm: 9000, max-rpm: 6000 } }",
    finds: ["dialect/machine machine.spindle.min-rpm"],
  },
  "feeds the wrong way round": {
    text: "machine: { feed: { least: 9, most: 6 } }",
    finds: ["dialect/machine machine.feed.least"],
  },
  "a parking place outside the travel": {
    text: "machine: { travel: { x: [0, 100], y: [0, 100] }, park: [50, 200] }",
    finds: ["dialect/machine machine.park"],
  },
  "a keep-out box inside out": {
    text: "machine: { keep-out: [{ name: vise, min: [0, 0, 0], max: [10, 0, 10] }] }",
    finds: ["dialect/machine machine.keep-out.1"],
  },
  "an output twice": {
    text: 'idioms: { output-on: "M95 P{{output}}", output-off: "M96 P{{output}}" }\nmachine: { outputs: { fan: { number: 1, during: program }, vacuum: { number: 1, during: cutting } } }',
    finds: ["dialect/machine machine.outputs.vacuum.number @ 4"],
  },
  "a pocket outside the travel": {
    extends: router,
    text: "machine: { rack: { pockets: { pitch: [250, 0] }, zone: { max: [1300, 60, -5] } } }",
    finds: ["dialect/rack machine.rack.pockets"],
  },
  "pockets outside their zone": {
    extends: router,
    text: "machine: { rack: { pockets: [[40, 20], [40, 70]] } }",
    finds: ["dialect/rack machine.rack.zone @ 1"],
  },
  "a clear height below the pockets": {
    extends: router,
    text: "machine: { rack: { clear-z: -80 } }",
    finds: ["dialect/rack machine.rack.clear-z", "dialect/rack machine.rack.descend-from @ 1"],
  },
  "a clear height above the swap height": {
    extends: router,
    text: "machine: { retract: { z: -10 } }",
    finds: ["dialect/rack machine.rack.clear-z @ 1"],
  },
  "a slide that begins outside the travel": {
    extends: router,
    text: "machine: { rack: { style: slide-in, slide: { direction: +y, distance: 30, feed: 900 } } }",
    finds: Array.from({ length: 6 }, () => "dialect/rack machine.rack.pockets @ 1"),
  },
  "a rack without its pocket height": {
    text: "machine:\n  swap: rack\n  drawbar: { travels: clamped, taper-air: no }\n  rack: { style: drop-in, clear-z: -5, descend-feed: 600, descend-from: 20, pockets: [[1, 2]], at-end: { tool: keep } }\nidioms: { release: M21, clamp: M22 }",
    finds: ["dialect/undeclared machine.rack.pocket-z @ 6"],
  },
};

test.each(Object.entries(cases))("%s", async (_name, { text, extends: parent = "rs274ngc", finds }) => {
  // The router stands beside the file, where a relative `extends` finds it.
  const extending = parent === router ? router : parent;
  const outcome = await resolveText(`dialect: own\nextends: ${extending}\n${text}\n`, { [router]: leafText });
  const wanted = finds.filter((line) => line.includes("@ 1"));
  const here = finds.filter((line) => !line.includes("@ 1"));
  const got = outcome.lines.filter((line) => line.includes("@ own.yaml"));
  expect(got.map((line) => line.replace("@ own.yaml:", "@ "))).toEqual(
    here.map((line) => (line.includes("@") ? line : `${line} @ 3`)),
  );
  // Findings on inherited keys stand where the value stands, in another file.
  const elsewhere = outcome.lines.filter((line) => !line.includes("@ own.yaml"));
  expect(elsewhere.map((line) => line.replace(/ @ .*/, ""))).toEqual(
    wanted.map((line) => line.replace(" @ 1", "")),
  );
  expect(outcome.dialect === undefined).toBe(finds.length > 0);
});

test("each finding says what to do or names the key that is wrong", async () => {
  for (const { text, extends: parent = "rs274ngc" } of Object.values(cases)) {
    const { findings } = await resolveText(`dialect: own\nextends: ${parent}\n${text}\n`, {
      [router]: leafText,
    });
    for (const { message, key, severity } of findings) {
      expect(severity).toBe("error");
      expect(message).toMatch(/^[`A-ZT].{15,}[.?]$/);
      expect(key).toBeDefined();
    }
  }
});

test("every rule of this stage has a case", () => {
  const read = (folder: string, ending: string): string =>
    readdirSync(folder)
      .filter((name) => name.endsWith(ending) && !name.includes("generated"))
      .map((name) => readFileSync(join(folder, name), "utf8"))
      .join("\n");
  const sources = read(resolve(import.meta.dirname, "../../core/2-dialect"), ".ts");
  const tests = read(import.meta.dirname, ".test.ts");
  const rules = new Set([...[...sources.matchAll(/"(dialect\/[a-z-]+)"/g)].map(([, rule]) => rule)]);
  expect(rules.size).toBeGreaterThan(20);
  for (const rule of rules) expect(tests.includes(rule) ? rule : `no case for ${rule}`).toBe(rule);
});
