import type { CoolantMedium, CycleDefinition, FeedMode, SpindleDirection, Step, UnitSystem } from "#base";

/** How a path goes round its corners, as the program says it. */
export type PathStep = Extract<Step, { kind: "path" }>;

/**
 * What holds at a place of the program. Inner objects are replaced and never changed, so that a shallow copy is a copy.
 */
export interface ProgramState {
  /** Tool in the spindle, and that of the last tool word; 0: none said. */
  readonly tool: number;
  readonly selected: number;
  /** Length offsets that the tool words of these two state; undefined where they state none. */
  readonly toolOffset: number | undefined;
  readonly selectedOffset: number | undefined;
  /** Milli-rpm; 0: none said. */
  readonly rpm: number;
  /** Undefined: it stands, or nobody has said anything. */
  readonly direction: SpindleDirection | undefined;
  readonly media: readonly CoolantMedium[];
  /** Undefined: none said. */
  readonly workOffset: number | undefined;
  readonly lengthOffset: number | undefined;
  /** Whether that was selected for a tool that was in the spindle before. */
  readonly lengthInherited: boolean;
  readonly feedMode: FeedMode;
  readonly path: PathStep | undefined;
  readonly compensated: "off" | "left" | "right";
  readonly radiusOffset: number;
  readonly hood: "up" | "down" | undefined;
  /** What a hole row means; undefined outside a series. */
  readonly cycle: CycleDefinition | undefined;
  readonly units: UnitSystem | undefined;
  readonly programNumber: number;
  /** Whether a tool was measured since it came into the spindle. */
  readonly measured: boolean;
}

export const atStart: ProgramState = {
  tool: 0,
  selected: 0,
  toolOffset: undefined,
  selectedOffset: undefined,
  rpm: 0,
  direction: undefined,
  media: [],
  workOffset: undefined,
  lengthOffset: undefined,
  lengthInherited: false,
  feedMode: "per-minute",
  path: undefined,
  compensated: "off",
  radiusOffset: 0,
  hood: undefined,
  cycle: undefined,
  units: undefined,
  programNumber: 0,
  measured: false,
};

/** What holds behind a step; what changes nothing that a job knows gives the state as it is. */
export function after(state: ProgramState, step: Step): ProgramState {
  switch (step.kind) {
    case "program-start":
      return { ...state, programNumber: step.number };
    case "units":
      return { ...state, units: state.units ?? step.value };
    case "feed-mode":
      return { ...state, feedMode: step.value };
    case "path":
      return { ...state, path: step };
    case "compensation":
      return { ...state, compensated: step.value, radiusOffset: step.offset };
    case "work-offset":
      return { ...state, workOffset: step.number };
    case "length-offset":
      return { ...state, lengthOffset: step.number, lengthInherited: false };
    case "select-tool":
      return { ...state, selected: step.tool, selectedOffset: step.offset };
    case "change-tool":
      return changed(state);
    case "spindle-speed":
      return { ...state, rpm: step.rpm };
    case "spindle-start":
      return { ...state, direction: step.direction };
    case "spindle-stop":
      return { ...state, direction: undefined };
    case "coolant":
      return { ...state, media: mediaBehind(state.media, step) };
    case "cycle-definition":
      return { ...state, cycle: step };
    case "cycle":
      return { ...state, cycle: undefined };
    case "auxiliary":
      if (step.action === "hood-up") return { ...state, hood: "up" };
      if (step.action === "hood-down") return { ...state, hood: "down" };
      return step.action === "measure" ? { ...state, measured: true } : state;
    default:
      return state;
  }
}

/** The tool that was selected comes into the spindle. */
export function changed(state: ProgramState): ProgramState {
  const isOther = state.tool !== 0 && state.tool !== state.selected;
  return {
    ...state,
    tool: state.selected,
    toolOffset: state.selectedOffset,
    lengthInherited: isOther || state.lengthInherited,
    measured: false,
  };
}

/** The length offset that was selected for the tool in the spindle; 0: none was. */
export function ownLengthOffset({ lengthOffset = 0, lengthInherited }: ProgramState): number {
  return lengthInherited ? 0 : lengthOffset;
}

function mediaBehind(
  media: readonly CoolantMedium[],
  { medium, on }: Extract<Step, { kind: "coolant" }>,
): readonly CoolantMedium[] {
  if (medium === "all") return [];
  const others = media.filter((one) => one !== medium);
  return on ? [...others, medium] : others;
}
