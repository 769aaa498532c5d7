import type { SenseCase } from "./sense-case.ts";

/** What codes, blocks, numbers and words of a dialect may not say together. */
export const wordCases: Readonly<Record<string, SenseCase>> = {
  // What nobody has answered for.
  "keys that nobody has answered for": {
    text: "unanswered: [confirm.at-speed, machine.travel, codes.M21]",
    finds: [],
  },
  "an unanswered key that is none": {
    text: "unanswered: [confirm.at-speed, confirm.at-sped]",
    finds: ["dialect/unanswered unanswered.2"],
  },
  "an unanswered confirmation that trusts the controller": {
    text: 'unanswered: [confirm.at-speed]\nconfirm: { at-speed: { intrinsic: "somebody said so once" } }',
    finds: ["dialect/unanswered unanswered.1"],
  },
  "an unanswered confirmation that trusts the operator": {
    text: "unanswered: [confirm.stopped]\nconfirm: { stopped: operator }",
    finds: ["dialect/unanswered unanswered.1"],
  },
  "an inherited trust that nobody has answered for": {
    text: "unanswered: [confirm.stopped]",
    extends: "staged-tools",
    finds: ["dialect/unanswered unanswered.1"],
  },
  "a group of confirmations that nobody has answered for, one of them trusted": {
    text: "unanswered: [confirm]\nconfirm: { stopped: operator }",
    finds: ["dialect/unanswered unanswered.1"],
  },
  "an unanswered part of a confirmation that is trusted": {
    text: 'unanswered: [confirm.stopped.intrinsic]\nconfirm: { stopped: { intrinsic: "somebody said so once" } }',
    finds: ["dialect/unanswered unanswered.1"],
  },
  "an unanswered part of a dwell": {
    text: "unanswered: [confirm.stopped.dwell]",
    finds: [],
  },
  // Codes.
  "arcs without a word for one sense": {
    text: "arc: { cw: none }",
    finds: ["dialect/undeclared arc.cw"],
  },
  "a plane that cannot be left": {
    text: "plane: { xy: none }",
    finds: ["dialect/undeclared plane.xy"],
  },
  "increments that cannot be ended": {
    text: "distance: { absolute: none }",
    finds: ["dialect/undeclared distance.absolute"],
  },
  "one level between holes that can be said": {
    text: "cycles: { return: { retract: none } }",
    finds: ["dialect/undeclared cycles.return.retract"],
  },
  "a motion by an M word": {
    text: "motion: { line: M131 }",
    finds: ["dialect/standard-code motion.line"],
  },
  "a cycle by an M word": {
    text: "cycles: { peck: M131 }",
    finds: ["dialect/standard-code cycles.peck"],
  },
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
  // Path.
  "a tolerance with the letter of an axis": {
    text: "path: { tolerance-word: X }",
    finds: ["dialect/order path.tolerance-word"],
  },
  "a tolerance with the letter of the feed": {
    text: "path: { tolerance-word: F }",
    finds: ["dialect/order path.tolerance-word"],
  },
  "a tolerance with the letter that the blend has already": {
    text: 'path: { blend: "G64 P1", tolerance-word: P }',
    finds: ["dialect/order path.tolerance-word"],
  },
  "a tolerance whose letter has no place in a block": {
    text: "path: { tolerance-word: E }",
    finds: ["dialect/order blocks.order @ 1"],
  },
  "a tolerance with a letter of its own": { text: "path: { tolerance-word: Q }", finds: [] },
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
  "units that a stop loses, and that stand in the first block alone": {
    text: "stops: { resume: loses-modes }\nunits: { stated: first-block }",
    finds: ["dialect/format stops.resume"],
  },
  "units that a stop loses, and for which there is no word": {
    extends: "iso-6983",
    text: "stops: { resume: loses-modes }\nunits: { stated: first-block }",
    finds: [],
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
    text: 'comments: { style: none }\nidioms: { message: "(MSG, {{text}})" }',
    finds: ["dialect/idiom-meaning idioms.message @ 4"],
  },
  // Arcs and cycles.
  "a full circle by radius": { text: "arc: { form: radius }", finds: ["dialect/arc arc.full-circle @ 1"] },
  "a full circle above the largest sweep": {
    text: "arc: { largest-sweep: 180 }",
    finds: ["dialect/arc arc.full-circle @ 1"],
  },
  "one quadrant a block, and full circles": {
    text: "arc: { quadrants: one }",
    finds: ["dialect/arc arc.quadrants"],
  },
  "one quadrant a block, by radius": {
    text: "arc: { quadrants: one, form: radius, full-circle: no }",
    finds: ["dialect/arc arc.quadrants"],
  },
  "one quadrant a block, and less than a quadrant": {
    text: "arc: { quadrants: one, full-circle: no, largest-sweep: 60 }",
    finds: ["dialect/arc arc.quadrants"],
  },
  "levels from the initial level, which each hole would take anew": {
    text: "cycles: { levels: from-initial, repeat: all, initial-level: current }",
    finds: ["dialect/format cycles.initial-level"],
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
};
