import type { StepKind } from "#base";
import { func } from "./builders.ts";
import type { FunctionDeclaration, Statement } from "./builders.ts";
import { stepFunctions } from "./calls.ts";
import type { Context } from "./context.ts";
import { writeAuxiliary } from "./write-steps/auxiliary.ts";
import { writeChangeTool } from "./write-steps/change-tool.ts";
import { writeCompensation } from "./write-steps/compensation.ts";
import { writeCoolant } from "./write-steps/coolant.ts";
import { writeCycleDefinition } from "./write-steps/cycle-definition.ts";
import { writeDwell } from "./write-steps/dwell.ts";
import { writeLengthOffset } from "./write-steps/length-offset.ts";
import { writeMessage } from "./write-steps/message.ts";
import { writeMode } from "./write-steps/mode.ts";
import { writeProgramEnd, writeSpindleOrient, writeSpindleStop } from "./write-steps/one-code.ts";
import { writeOutput } from "./write-steps/output.ts";
import { writePause } from "./write-steps/pause.ts";
import { writeProgramStart } from "./write-steps/program-start.ts";
import { writeReferenceReturn } from "./write-steps/reference-return.ts";
import { writeSelectTool } from "./write-steps/select-tool.ts";
import { writeSpindleSpeed } from "./write-steps/spindle-speed.ts";
import { writeSpindleStart } from "./write-steps/spindle-start.ts";
import { writeWait } from "./write-steps/wait.ts";
import { writeWorkOffset } from "./write-steps/work-offset.ts";

/** The generated statements of each kind of step, in a function of `state` and `step`. */
const stepWriters = {
  "program-start": writeProgramStart,
  units: writeMode("units"),
  plane: writeMode("plane"),
  distance: writeMode("distance"),
  "arc-centre": writeMode("arc-centre"),
  "feed-mode": writeMode("feed-mode"),
  path: writeMode("path"),
  "look-ahead": writeMode("look-ahead"),
  "corner-feed": writeMode("corner-feed"),
  overrides: writeMode("overrides"),
  cycle: writeMode("cycle"),
  "local-shift": writeMode("local-shift"),
  rotation: writeMode("rotation"),
  scale: writeMode("scale"),
  compensation: writeCompensation,
  "work-offset": writeWorkOffset,
  "length-offset": writeLengthOffset,
  "select-tool": writeSelectTool,
  "change-tool": writeChangeTool,
  "spindle-speed": writeSpindleSpeed,
  "spindle-start": writeSpindleStart,
  "spindle-stop": writeSpindleStop,
  "spindle-orient": writeSpindleOrient,
  coolant: writeCoolant,
  output: writeOutput,
  wait: writeWait,
  dwell: writeDwell,
  pause: writePause,
  message: writeMessage,
  "cycle-definition": writeCycleDefinition,
  auxiliary: writeAuxiliary,
  "reference-return": writeReferenceReturn,
  "program-end": writeProgramEnd,
} as const satisfies Record<StepKind, (context: Context) => Statement[]>;

/** The functions that write the rare steps. */
export function defineSteps(context: Context): FunctionDeclaration[] {
  return Object.entries(stepWriters).map(([kind, write]) =>
    func(stepFunctions[kind as StepKind], ["state", "step"], write(context)),
  );
}
