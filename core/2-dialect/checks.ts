import { checkAddresses } from "./check-addresses.ts";
import { checkCodes } from "./check-codes.ts";
import { checkExecution } from "./check-execution.ts";
import { checkFormat } from "./check-format.ts";
import { checkGrids } from "./check-grids.ts";
import { checkMachine } from "./check-machine.ts";
import { checkCycleWords, checkTools } from "./check-tools.ts";
import { checkWaits } from "./check-waits.ts";
import { checkUnanswered } from "./unanswered.ts";
import type { Dialect } from "./dialect.ts";
import { checkRequirements } from "./requirements.ts";
import type { Resolving } from "./resolving.ts";

/** What must hold across keys. Only called when each key by itself is in order. */
export function checkSense(resolving: Resolving, dialect: Dialect): void {
  checkRequirements(resolving);
  checkCodes(resolving, dialect.format.extraCodes);
  checkAddresses(resolving, dialect.format);
  checkFormat(resolving, dialect);
  checkExecution(resolving, dialect);
  checkTools(resolving, dialect);
  checkCycleWords(resolving, dialect);
  checkGrids(resolving);
  checkWaits(resolving, dialect);
  checkMachine(resolving, dialect.machine);
  checkUnanswered(resolving);
}
