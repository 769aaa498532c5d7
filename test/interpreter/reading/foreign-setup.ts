import { interpreterSetup } from "../machine-state.ts";
import type { InterpreterSetup } from "../run-interpreter.ts";

/** The machine of `machine-state.ts`, with nothing left behind by G92: programs from elsewhere do not cancel it. */
export const foreignSetup: InterpreterSetup = {
  ...interpreterSetup,
  parameters: { ...interpreterSetup.parameters, 5210: 0, 5211: 0, 5212: 0, 5213: 0 },
};
