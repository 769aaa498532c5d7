import type { MachineFacts, Step } from "#base";
import { axisBit } from "#base";
import type { ProgramState } from "./state.ts";
import { after, changed } from "./state.ts";

/** A step between two motions in work coordinates, or a motion in machine coordinates. */
export type Held =
  | { readonly kind: "step"; readonly step: Step; readonly source: number }
  | {
      readonly kind: "machine-move";
      /** Axes that it names. */
      readonly axes: number;
      readonly at: readonly [number, number, number];
      /** 0 at rapid. */
      readonly feed: number;
      readonly source: number;
    };

/** What stands between two motions, in the words of a job: each entry is a step, and what it is there for. */
export interface Explained {
  readonly held: Held;
  /** What holds behind it. */
  readonly state: ProgramState;
  /** Whether a job says it by itself: a swap, a stop for one, the question whether the spindle stands. */
  readonly belongs: "job" | "swap" | "question";
  /** Of a pause: what the messages directly before it say. */
  readonly text: string;
}

/** What the steps between two motions come to. */
export interface Between {
  readonly all: readonly Explained[];
  readonly before: ProgramState;
  readonly behind: ProgramState;
  readonly swapped: boolean;
  /** Whether Z went up in machine coordinates. */
  readonly lifted: boolean;
  /** Whether the program stops for the operator, and not for a swap. */
  readonly paused: boolean;
  /** Whether it stops at all. */
  readonly stopped: boolean;
  /** What a stop says that is taken to be for a swap, and does not ask for a tool. */
  readonly unclear: { readonly said: string; readonly source: number } | undefined;
  /** How many kinds of modes were stated. */
  readonly restated: number;
  /** Whether the text begins a section. */
  readonly section: boolean;
}

/** Modes that a program states where an operation begins. */
const opening: ReadonlySet<Step["kind"]> = new Set(["feed-mode", "plane", "work-offset", "path", "distance"]);

/** What a program asks when it has the spindle's standstill seen to by the operator. */
const question = /^CHECK THAT THE SPINDLE STANDS STILL$/i;
const emptySpindle = /^EMPTY THE SPINDLE AND CLAMP IT$/i;
/** How a program asks for a tool. */
export const toolRequest = /^LOAD TOOL (\d{1,9})\b(?: AND SET Z)?,?\s*(.*)$/i;

/** What is known of a program's machine. */
export interface Workshop {
  readonly machine: MachineFacts;
  /** The tool of a pocket of the rack, counted from 1. */
  readonly toolOfPocket: (pocket: number) => number;
  /** What the text says to people at a stop, by the byte offset of its block. */
  readonly commentAt: (offset: number) => string;
}

/** How far a place in the program may be from that of a pocket, which rounding onto the grid explains: 0.01 mm. */
const near = 100_000;

/** The pocket, counted from 1, in which a tool is clamped that hangs at a place of the machine; 0: none is there. */
function pocketAt({ rack }: MachineFacts, [x, y, z]: readonly number[]): number {
  if (rack === undefined || Math.abs(z - rack.pocketZ) > near) return 0;
  return (
    rack.pockets.findIndex((pocket) => Math.abs(pocket.x - x) <= near && Math.abs(pocket.y - y) <= near) + 1
  );
}

function placeBehind(
  from: readonly number[],
  { at, axes }: Extract<Held, { kind: "machine-move" }>,
): number[] {
  return at.map((value, axis) => ((axes & (1 << axis)) === 0 ? from[axis] : value));
}

/** Works out what stands between two motions. */
export function explain(
  held: readonly Held[],
  before: ProgramState,
  { machine, toolOfPocket, commentAt }: Workshop,
  section: boolean,
): Between {
  const all: Explained[] = [];
  const modes = new Set<string>();
  let state = before;
  let texts: number[] = [];
  let swapped = false;
  let lifted = false;
  let [paused, stopped] = [false, false];
  let unclear: Between["unclear"];
  let place: readonly number[] = [0, 0, 0];
  /** Marks the messages before a stop as part of it, and gives what they say. */
  const takeTexts = (belongs: Explained["belongs"]): string => {
    const text = textOf(all, texts);
    for (const index of texts) all[index] = { ...all[index], belongs };
    texts = [];
    return text;
  };
  for (const one of held) {
    let belongs: Explained["belongs"] = "job";
    let text = "";
    if (one.kind === "machine-move") {
      lifted ||= (one.axes & axisBit.z) !== 0;
      place = placeBehind(place, one);
    } else {
      const { step } = one;
      state = behind(state, step, machine);
      if (opening.has(step.kind)) modes.add(step.kind);
      if (step.kind === "reference-return") lifted ||= (step.axes & axisBit.z) !== 0;
      const pocket = step.kind === "auxiliary" && step.action === "clamp" ? pocketAt(machine, place) : -1;
      if (pocket >= 0) state = changed({ ...state, selected: pocket === 0 ? 0 : toolOfPocket(pocket) });
      swapped ||= pocket > 0;
      if (step.kind === "change-tool") {
        swapped = true;
        takeTexts("swap");
      } else if (step.kind === "pause") {
        stopped = true;
        const said = textOf(all, texts);
        const asked = toolRequest.exec(said);
        if (asked) state = { ...state, selected: Number(asked[1]) };
        if (isSwap(state, before, machine, asked !== null, swapped)) {
          if (asked === null && said !== "" && !emptySpindle.test(said))
            unclear = { said, source: one.source };
          state = changed(state);
          swapped = true;
          belongs = "swap";
        } else if (question.test(said) || emptySpindle.test(said)) belongs = "question";
        else paused = true;
        text = takeTexts(belongs === "job" ? "question" : belongs) || (paused ? commentAt(one.source) : "");
      } else if (step.kind === "message") texts.push(all.length);
      else if (step.kind !== "select-tool" && step.kind !== "spindle-stop") texts = [];
    }
    all.push({ held: one, state, belongs, text });
  }
  const restated = modes.size;
  return { all, before, behind: state, swapped, lifted, paused, stopped, unclear, restated, section };
}

/**
 * What holds behind a step. A tool change may stop the spindle and turn coolant off by itself (NISTIR 6556 3.6.3); a program has to
 * say them again.
 */
function behind(before: ProgramState, step: Step, { changeEffects }: MachineFacts): ProgramState {
  const state = after(before, step);
  if (step.kind !== "change-tool") return state;
  return {
    ...state,
    direction: changeEffects?.spindle === "unchanged" ? state.direction : undefined,
    media: changeEffects?.coolant === "off" ? [] : state.media,
  };
}

function textOf(all: readonly Explained[], texts: readonly number[]): string {
  return texts
    .map((index) => {
      const { held } = all[index];
      return held.kind === "step" && held.step.kind === "message" ? held.step.text : "";
    })
    .join(" ");
}

/** Whether a stop is for the tool to be changed: it follows a tool word, or asks for a tool. */
function isSwap(
  state: ProgramState,
  before: ProgramState,
  machine: MachineFacts,
  asked: boolean,
  swapped: boolean,
): boolean {
  if (swapped || machine.swap === "controller") return false;
  return asked || (state.selected !== 0 && state.selected !== before.tool);
}
