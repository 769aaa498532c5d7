import type { Step, StepKind } from "#base";
import { axisBit } from "#base";
import type { Row } from "./writing.ts";
import { mm, rapid } from "./writing.ts";

export type Parts = readonly (Row | Step)[];
type Texts = { readonly [Name in "plain" | "explicit" | "least"]: readonly string[] | string };

/**
 * One case a kind of step: the text under each format, or the key that the fault names. Codes are those of ISO 6983-1 as
 * its national editions have them, and of NISTIR 6556 Tables 5 to 7; M2x and M9x stand for codes of the builder.
 */
export const cases: { readonly [Kind in StepKind]: { readonly parts: Parts } & Texts } = {
  "program-start": { parts: [{ kind: "program-start", number: 0 }], plain: [], explicit: [], least: [] },
  units: {
    parts: [{ kind: "units", value: "mm" }],
    plain: ["G21"],
    explicit: ["N10 G21"],
    least: ["N001G71*"],
  },
  plane: {
    parts: [{ kind: "plane", value: "zx" }],
    plain: ["G18"],
    explicit: ["N10 G18"],
    least: ["N001G18*"],
  },
  distance: {
    parts: [{ kind: "distance", value: "incremental" }],
    plain: ["G91"],
    explicit: ["N10 G91"],
    least: "distance.incremental",
  },
  "arc-centre": {
    parts: [{ kind: "arc-centre", value: "absolute" }],
    plain: "arc.centre-words.absolute",
    explicit: "arc.centre-words.absolute",
    least: "arc.centre-words.absolute",
  },
  "feed-mode": {
    parts: [{ kind: "feed-mode", value: "inverse-time" }],
    plain: ["G93"],
    explicit: "feed.inverse-time",
    least: "feed.inverse-time",
  },
  path: {
    parts: [{ kind: "path", value: "blend" }],
    plain: ["G64"],
    explicit: ["N10 G64"],
    least: "path.blend",
  },
  "look-ahead": {
    parts: [{ kind: "look-ahead", value: "on" }],
    plain: ["Q1 M97"],
    explicit: ["N10 Q1 M97"],
    least: "path.look-ahead.on",
  },
  "corner-feed": {
    parts: [{ kind: "corner-feed", value: "off" }],
    plain: ["G37"],
    explicit: ["N10 G37"],
    least: "compensation.corner-feed.off",
  },
  overrides: {
    parts: [{ kind: "overrides", value: "on" }],
    plain: ["M48"],
    explicit: ["N10 M48"],
    least: "cancel.overrides",
  },
  cycle: {
    parts: [{ kind: "cycle", value: "off" }],
    plain: ["G80"],
    explicit: ["N10 G80"],
    least: ["N001G80*"],
  },
  "local-shift": {
    parts: [{ kind: "local-shift", value: "off" }],
    plain: ["G92.2"],
    explicit: "cancel.local-shift",
    least: "cancel.local-shift",
  },
  rotation: {
    parts: [{ kind: "rotation", value: "off" }],
    plain: "cancel.rotation",
    explicit: "cancel.rotation",
    least: "cancel.rotation",
  },
  scale: {
    parts: [{ kind: "scale", value: "off" }],
    plain: "cancel.scale",
    explicit: "cancel.scale",
    least: "cancel.scale",
  },
  compensation: {
    parts: [
      { kind: "compensation", value: "left", offset: 3 },
      { kind: "compensation", value: "right", offset: 0 },
      { kind: "compensation", value: "off", offset: 0 },
    ],
    plain: ["G41 D3", "G42", "G40"],
    explicit: ["N10 G41 D03", "N20 G42", "N30 G40"],
    least: ["N001G41D03*", "N002G42*", "N003G40*"],
  },
  "work-offset": {
    parts: [{ kind: "work-offset", number: 9 }],
    plain: ["G59.3"],
    explicit: ["N10 G59.3"],
    least: ["N001G59.3*"],
  },
  "length-offset": {
    parts: [
      { kind: "length-offset", number: 0 },
      { kind: "length-offset", number: 7 },
      rapid({ z: 1 }),
      { kind: "length-offset", number: 7 },
      rapid({ x: 1 }),
    ],
    plain: ["G49", "G43 G0 Z1 H7", "G43 H7", "X1"],
    explicit: ["N10 G49", "N20 G43 G00 Z1.000 H07", "N30 G43 H07", "N40 G00 X1.000"],
    least: "length-offset.off",
  },
  "select-tool": {
    parts: [{ kind: "select-tool", tool: 12 }],
    plain: ["T12"],
    explicit: ["N10 T12"],
    least: ["N001T12*"],
  },
  "change-tool": {
    parts: [
      { kind: "select-tool", tool: 3 },
      { kind: "change-tool" },
      { kind: "select-tool", tool: 4 },
      { kind: "spindle-stop" },
      { kind: "change-tool" },
    ],
    plain: ["T3 M6", "T4", "M5", "M6"],
    explicit: ["N10 T03 M06", "N20 T04", "N30 M05", "N40 M06"],
    least: ["N001T03*", "N002M06*", "N003T04*", "N004M05*", "N005M06*"],
  },
  "spindle-speed": {
    parts: [
      { kind: "spindle-speed", rpm: 9_000_000 },
      { kind: "spindle-speed", rpm: 12_345_000 },
    ],
    plain: ["S9000", "S12345"],
    explicit: ["N10 S9000", "N20 S12345"],
    // Zeros at the end are left out of five digits: 09000 and 12345.
    least: ["N001S09*", "N002S12345*"],
  },
  "spindle-start": {
    parts: [
      { kind: "spindle-speed", rpm: 12_000_000 },
      { kind: "spindle-start", direction: "cw" },
      { kind: "spindle-start", direction: "ccw" },
    ],
    plain: ["S12000 M3", "M4"],
    explicit: ["N10 M03 S12000", "N20 M04"],
    least: ["N001S12*", "N002M03*", "N003M04*"],
  },
  "spindle-stop": {
    parts: [{ kind: "spindle-stop" }],
    plain: ["M5"],
    explicit: ["N10 M05"],
    least: ["N001M05*"],
  },
  "spindle-orient": {
    parts: [{ kind: "spindle-orient" }],
    plain: "spindle.orient",
    explicit: ["N10 M19"],
    least: "spindle.orient",
  },
  coolant: {
    parts: [
      { kind: "coolant", medium: "mist", on: true },
      { kind: "coolant", medium: "flood", on: true },
      { kind: "coolant", medium: "all", on: false },
    ],
    plain: ["M7", "M8", "M9"],
    explicit: ["N10 M07", "N20 M08", "N30 M09"],
    least: ["N001M07*", "N002M08*", "N003M09*"],
  },
  output: {
    parts: [
      { kind: "output", number: 3, on: true },
      { kind: "output", number: 12, on: false },
    ],
    plain: "idioms.output-on",
    explicit: ["N10 M64 P3", "N20 M65 P12"],
    least: "idioms.output-on",
  },
  wait: {
    parts: [
      { kind: "wait", input: 4, level: "on", timeout: 10_000_000 },
      { kind: "wait", input: 11, level: "off", timeout: 500_000 },
    ],
    plain: "idioms.wait-signal",
    explicit: ["N10 M94 P4 R1 Q10", "N20 M94 P11 R0 Q0.5"],
    least: "idioms.wait-signal",
  },
  dwell: {
    parts: [{ kind: "dwell", time: 1_250_000 }],
    plain: ["G4 P1.25"],
    explicit: ["N10 G04 P1250"],
    least: ["N001G04X1250*"],
  },
  pause: {
    parts: [
      { kind: "pause", optional: false },
      { kind: "pause", optional: true },
    ],
    plain: ["M0", "M1"],
    explicit: ["N10 M00", "N20 M01"],
    least: ["N001M00*", "N002M01*"],
  },
  message: {
    parts: [{ kind: "message", text: "Load tool 3 (ø6): wait\nthere; 100%" }],
    plain: ["(MSG, LOAD TOOL 3 [6] WAIT THERE, 100)"],
    explicit: ["(MSG, LOAD TOOL 3 [6] WAIT THERE, 100)"],
    least: "idioms.message",
  },
  "cycle-definition": {
    parts: [
      {
        kind: "cycle-definition",
        cycle: "chip-break",
        depth: 0,
        retract: mm(1),
        level: mm(1),
        between: "retract",
        levelStated: true,
        peck: mm(1),
        dwell: 0,
      },
    ],
    plain: "cycles.chip-break",
    explicit: [],
    least: "cycles.levels",
  },
  auxiliary: {
    parts: [
      { kind: "auxiliary", action: "release", code: "" },
      { kind: "auxiliary", action: "hood-up", code: "" },
      { kind: "auxiliary", action: "opaque", code: "M93" },
      { kind: "auxiliary", action: "opaque", code: "M091" },
    ],
    plain: "idioms.release",
    explicit: ["N10 M21", "N20 M23", "(HOOD UP)", "N30 M93 P2", "N40 M91"],
    least: "idioms.release",
  },
  "reference-return": {
    parts: [
      { kind: "reference-return", axes: axisBit.z },
      { kind: "reference-return", axes: axisBit.x | axisBit.y },
    ],
    plain: ["G28 Z0", "G28 X0 Y0"],
    explicit: ["N10 G28 Z0.000", "N20 G28 X0.000 Y0.000"],
    least: ["N001G74Z+0*", "N002G74X+0Y+0*"],
  },
  "program-end": {
    parts: [{ kind: "program-end" }],
    plain: ["M2"],
    explicit: ["N10 M30"],
    least: ["N001M02*"],
  },
};
