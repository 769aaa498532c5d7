import type { JobStep } from "#job";
import { lowerDwell } from "./dwell.ts";
import { compensationNotSaid, feedCodes, feedModeNotSaid } from "./findings.ts";
import { forgetFeed } from "./feed.ts";
import type { HolesPlan } from "./holes-plan.ts";
import { endHoles, startHoles } from "./holes.ts";
import { writeAside } from "./output.ts";
import { selectPlane } from "./plane.ts";
import { writtenSpeed } from "./speed.ts";
import type { Lowering } from "./state.ts";
import { need } from "./state.ts";

type AsideOf<Kind extends JobStep["kind"]> = Extract<JobStep, { kind: Kind }>;

/** How each rare move of a job is lowered; gives the `holes` move that is open behind it. */
const lowerers: {
  readonly [Kind in JobStep["kind"]]: (
    state: Lowering,
    step: AsideOf<Kind>,
    source: number,
    plan: HolesPlan | undefined,
  ) => HolesPlan | undefined;
} = {
  holes: (state, step, source) => startHoles(state, step, source),
  "holes-end": (state, _step, source, plan) => {
    if (plan) endHoles(state, plan, source);
    return undefined;
  },
  dwell: (state, step, source) => {
    lowerDwell(state, step.time, source);
    return undefined;
  },
  pause: (state, step, source) => {
    const { text, optional, park } = step;
    writeAside(state.output, { kind: "pause-request", text, optional, park }, source);
    forgetFeed(state);
    return undefined;
  },
  note: (state, step, source) => {
    writeAside(state.output, { kind: "note", text: step.text }, source);
    return undefined;
  },
  spindle: (state, step, source) => {
    state.rpm = writtenSpeed(state, step.rpm, source);
    forgetFeed(state);
    writeAside(state.output, { kind: "speed-request", rpm: state.rpm }, source);
    return undefined;
  },
  coolant: (state, step, source) => {
    writeAside(state.output, { kind: "coolant-request", media: step.media }, source);
    return undefined;
  },
  compensation: (state, step, source) => {
    lowerCompensation(state, step, source);
    return undefined;
  },
};

/** Lowers a rare move. */
export function lowerAside(
  state: Lowering,
  step: JobStep,
  plan: HolesPlan | undefined,
  source: number,
): HolesPlan | undefined {
  const lowerOne = lowerers[step.kind] as (
    state: Lowering,
    step: JobStep,
    source: number,
    plan: HolesPlan | undefined,
  ) => HolesPlan | undefined;
  return lowerOne(state, step, source, plan);
}

/** Cutter compensation is passed through as words, or refused. */
function lowerCompensation(state: Lowering, step: AsideOf<"compensation">, source: number): void {
  if (step.side === "off") {
    // Who can begin compensation can end it (checked when the dialect loads); elsewhere none is in force.
    const isSaid = state.capabilities.words["compensation.off"] === true;
    if (isSaid) writeAside(state.output, { kind: "compensation", value: "off", offset: 0 }, source);
    return;
  }
  const path = `compensation.${step.side}`;
  const code = step.side === "left" ? "G41" : "G42";
  const key = {
    path,
    why: "since it uses cutter compensation",
    example: `compensation: { ${step.side}: ${code} }`,
    offset: source,
  };
  const fix = `give the path of the tool's centre instead of the contour, or declare the words if the controller has them: \`compensation: { off: G40, ${step.side}: ${code}, word: D }\``;
  if (!need<boolean>(state, state.capabilities.words[path], key, true)) {
    state.report(compensationNotSaid(path, "the dialect has no cutter compensation", fix, source));
  }
  const tool = state.job.tools.find((one) => one.number === state.operation.tool);
  if (tool?.radiusOffset === undefined) {
    state.report(
      compensationNotSaid(
        path,
        "the tool has no `radiusOffset`, which cutter compensation takes the radius from",
        "state the tool's `radiusOffset`",
        source,
      ),
    );
  }
  selectPlane(state, "xy", source);
  writeAside(
    state.output,
    { kind: "compensation", value: step.side, offset: tool?.radiusOffset ?? 0 },
    source,
  );
}

/** Checks once an operation that its feed mode can be said. A controller without any word for it feeds per minute. */
export function checkFeedMode(state: Lowering, source: number): void {
  const { words } = state.capabilities;
  const only = !words["feed.per-revolution"] && !words["feed.inverse-time"];
  if (state.feedMode === "per-minute" && words["feed.per-minute"] === false && only) return;
  const path = `feed.${state.feedMode}`;
  const key = {
    path,
    why: `since it states feeds ${state.feedMode}`,
    example: `feed: { ${state.feedMode}: ${feedCodes[state.feedMode]} }`,
    offset: source,
  };
  if (!need<boolean>(state, state.capabilities.words[path], key, true))
    state.report(feedModeNotSaid(state.feedMode, source));
}
