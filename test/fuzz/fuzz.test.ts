import { expect, it } from "vitest";
import { createAttempt, targetNames, trialOf } from "./targets.ts";

/*
 * A few inputs of each target of `npm run fuzz`, which runs for as long as it is told and watches time and memory, too.
 */
const counts = { job: 600, cl: 600, dialect: 150, program: 400 };

it.each(targetNames)(
  "changed and made-up inputs of a %s are taken or refused with findings",
  async (target) => {
    const attempt = await createAttempt();
    const faults: string[] = [];
    for (let index = 0; index < counts[target]; index++) {
      const fault = await attempt(target, trialOf(target, 1, index));
      if (fault !== undefined) faults.push(`input ${index}: ${fault}`);
    }
    expect(faults).toEqual([]);
  },
);
