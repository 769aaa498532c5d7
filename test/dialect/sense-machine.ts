import type { SenseCase } from "./sense-case.ts";
import { router } from "./router.ts";

/** What confirmations, tools, cycles and the machine may not say together. */
export const machineCases: Readonly<Record<string, SenseCase>> = {
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
  "a timeout in a form of its own without its decimals": {
    text: "numbers: { timeout: { point: always } }",
    extends: "explicit-words",
    finds: ["dialect/undeclared numbers.timeout.decimals"],
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
  "a cycle defined apart whose holes state its code": {
    text: "cycles: { definition: apart, repeat: positions }\nmodal: { motion: each-block }",
    extends: "staged-tools",
    finds: ["dialect/format cycles.definition"],
  },
  "cycles that no word ends": {
    text: "cancel: { cycles: none }",
    extends: "rs274ngc",
    finds: ["dialect/format cancel.cycles"],
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
  "a rate at which nothing ever arrives": {
    text: "machine: { axis-feed: { z: 0 mm/min }, rapid-rate: { x: 0.0 in/min }, acceleration: { y: 00 mm/s2 } }",
    finds: [
      "dialect/machine machine.axis-feed.z",
      "dialect/machine machine.rapid-rate.x",
      "dialect/machine machine.acceleration.y",
    ],
  },
  "a parking place outside the travel": {
    text: "machine: { travel: { x: [0, 100], y: [0, 100] }, park: [50, 200] }",
    finds: ["dialect/machine machine.park"],
  },
  "an emptied spindle that the change would start again": {
    text: "machine: { change-effects: { spindle: restarts } }\ntools: { empty: 0 }",
    finds: ["dialect/machine tools.empty @ 4"],
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
