import ts from "typescript";
import { add, back, call, create, fail, func, str } from "./builders.ts";
import type { FunctionDeclaration, Statement } from "./builders.ts";

/**
 * `throw fault("key");` where the dialect has no word for what a step asks. Lowering and sequencing refuse such a job
 * before, so that it is a fault of ours, and nothing may be left out of the text in silence.
 */
export function faultOn(key: string): Statement {
  return fail(call("fault", str(key)));
}

/** Whether a statement throws, so that nothing can stand behind it. */
export function isFault(statement: Statement | undefined): boolean {
  return statement !== undefined && ts.isThrowStatement(statement);
}

/** The function that makes the error. */
export function defineFault(): FunctionDeclaration {
  const before = str("The dialect has no word for this step (");
  const after = str("); it should have been refused before it was written. This is a fault of the compiler.");
  return func("fault", ["key"], [back(create("Error", add(add(before, "key"), after)))]);
}
