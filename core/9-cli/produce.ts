import type { Reportable } from "#report";
import type { Staged } from "./files/staged.ts";
import { abandon, commit, discard, stage } from "./files/staged.ts";
import type { Target } from "./files/target.ts";
import type { Work } from "./work/perform.ts";
import type { PostPlan } from "./work/plan.ts";
import { pendingSignals, tidyOnSignal } from "./work/signals.ts";

/** What is under way for a program, and has to go when a signal ends the process. */
export interface Running {
  staged?: Staged;
  work?: Work;
}

/** How a program is made: where it goes, what is planned, and who does the work. */
export interface Making {
  readonly target: Target;
  readonly planFor: (staged: Staged) => PostPlan;
  readonly perform: (plan: PostPlan) => Work;
}

/**
 * Does the work, and releases the program if it is proved; in every other case, a signal too, nothing of it is left.
 *
 * @throws a carried finding about the file
 */
export async function produce(making: Making): Promise<Reportable> {
  const running: Running = {};
  return tidyOnSignal(
    () => tidy(running),
    () => produceAs(running, making),
  );
}

/** The same for one of several programs, of which one handler of signals tidies up. */
export async function produceAs(running: Running, { target, planFor, perform }: Making): Promise<Reportable> {
  try {
    const staged = (running.staged = stage(target));
    const work = (running.work = perform(planFor(staged)));
    const { result, proof } = await work.computed;
    await pendingSignals();
    if (proof === undefined || result.verdict !== "proved") {
      abandon(staged);
      return result;
    }
    commit(staged, proof);
    return { ...result, output: target.shown };
  } finally {
    if (running.staged) discard(running.staged);
  }
}

/** Ends the work on a program, and leaves nothing of it. */
export async function tidy({ work, staged }: Running): Promise<void> {
  await work?.stop();
  if (staged) discard(staged);
}
