import { ownParameters } from "./machine-parameters.ts";

/** Parameters that a call has for itself: #1 to #30 as its arguments. */
export const argumentCount = 30;

/** What a parameter is called: by its number, or by its name in lower case without blanks; a leading `_` is global. */
export type ParameterName = number | string;

/** The names that one run of a subprogram has for itself, and the arguments of whoever called it. */
interface Scope {
  readonly names: Map<string, number>;
  /** #1 to #30 as they were before the call, NaN for one whose value is not known; undefined where they are shared. */
  readonly outer: Float64Array | undefined;
  readonly outerSet: Uint8Array | undefined;
}

/**
 * Parameters of a program that is being read. NaN is a value that cannot be known and that has been told where it arose, so
 * that what follows from it is not told again.
 */
export interface Parameters {
  readonly values: Float64Array;
  /** 1 where the program has set it. */
  readonly isSet: Uint8Array;
  readonly globals: Map<string, number>;
  readonly scopes: Scope[];
  /** Settings of the block at hand: they count from the next one on (NISTIR 6556 3.3.3). */
  readonly pending: { readonly name: ParameterName; readonly value: number }[];
}

export function createParameters(): Parameters {
  return {
    values: new Float64Array(ownParameters + 1),
    isSet: new Uint8Array(ownParameters + 1),
    globals: new Map(),
    scopes: [{ names: new Map(), outer: undefined, outerSet: undefined }],
    pending: [],
  };
}

/** Value of a parameter; undefined for one that the program has not set. */
export function getParameter(parameters: Parameters, name: ParameterName): number | undefined {
  if (typeof name === "number") return parameters.isSet[name] === 1 ? parameters.values[name] : undefined;
  return namesOf(parameters, name).get(name);
}

/** Sets a parameter at once. */
export function setParameter(parameters: Parameters, name: ParameterName, value: number): void {
  if (typeof name === "number") {
    parameters.values[name] = value;
    parameters.isSet[name] = 1;
  } else namesOf(parameters, name).set(name, value);
}

/** The settings of the block at hand come true. */
export function settle(parameters: Parameters): void {
  for (const { name, value } of parameters.pending) setParameter(parameters, name, value);
  parameters.pending.length = 0;
}

/** A subprogram begins: names of its own, and with arguments #1 to #30 of its own, 0 where none is given. */
export function openScope(parameters: Parameters, given: readonly number[] | undefined): void {
  const { values, isSet, scopes } = parameters;
  const own = 1 + argumentCount;
  scopes.push({
    names: new Map(),
    outer: given && values.slice(1, own),
    outerSet: given && isSet.slice(1, own),
  });
  if (given === undefined) return;
  values.fill(0, 1, own);
  values.set(given, 1);
  isSet.fill(1, 1, own);
}

/** A subprogram ends: what it had for itself is gone. */
export function closeScope({ values, isSet, scopes }: Parameters): void {
  const scope = scopes.pop();
  if (scope?.outer) values.set(scope.outer, 1);
  if (scope?.outerSet) isSet.set(scope.outerSet, 1);
}

function namesOf({ globals, scopes }: Parameters, name: string): Map<string, number> {
  return name.startsWith("_") ? globals : scopes[scopes.length - 1].names;
}
