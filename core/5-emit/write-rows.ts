import { frame, rowKind } from "#base";
import type { RowKindName } from "#base";
import {
  add,
  and,
  atLeast,
  back,
  call,
  cases,
  choose,
  constant,
  each,
  func,
  get,
  hand,
  id,
  increase,
  less,
  loop,
  more,
  pick,
  run,
  same,
  set,
  str,
  variable,
  when,
} from "./builders.ts";
import type { Case, FunctionDeclaration, Statement } from "./builders.ts";
import { stepFunctions } from "./calls.ts";
import type { EmitterFunction } from "./calls.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import { arcWriters } from "./write-arc.ts";
import { column } from "./write-motion.ts";
import { marksSections } from "./write-section.ts";

/** The exported function: rows in, chunks out. */
export function defineEmit(context: Context): FunctionDeclaration {
  const rowsToCome = choose(get("state", "fragment"), add("row", 1), get("batch", "count"));
  return func(
    "emitUnproved",
    ["batches", "options"],
    [
      constant("state", call("createState", "options")),
      each("batch", "batches", [
        variable("row", 0),
        ...(marksSections(context.format) ? [set(get("state", "section"), 0)] : []),
        loop(less("row", get("batch", "count")), [
          when(atLeast(get("state", "at"), "chunkSize"), [hand(call("take", "state"))]),
          when(get("state", "fragment"), [run(call("restate", "state"))]),
          set("row", call("writeRows", "state", "batch", "row", rowsToCome)),
        ]),
      ]),
      run(call("finish", "state")),
      when(more(get("state", "at"), 0), [hand(call("take", "state"))]),
    ],
    { isExported: true, isGenerator: true },
  );
}

/** Writes rows until a chunk is full. */
export function defineRows(context: Context): FunctionDeclaration {
  return func(
    "writeRows",
    ["state", "batch", "row", "end"],
    [
      loop(and(less("row", "end"), less(get("state", "at"), "chunkSize")), [
        ...(marksSections(context.format) ? [atSection()] : []),
        cases(column("kind"), rowBranches(context), [faultOn("motion")]),
        increase("row", 1),
      ]),
      back("row"),
    ],
  );
}

/** Where a section begins, the block of the row is marked as its first. */
function atSection(): Statement {
  const [sections, names] = [get("batch", "sections"), get("batch", "sectionNames")];
  const begins = and(sections, same("row", pick(sections, get("state", "section"))));
  const name = and(names, pick(names, get("state", "section")));
  return when(begins, [run(call("beginSection", "state", name)), increase(get("state", "section"), 1)]);
}

/** Constants that name the row kinds. */
export function defineRowKinds(): Statement[] {
  return (Object.keys(rowKind) as RowKindName[]).map((kind) => constant(`${kind}Row`, rowKind[kind]));
}

function rowBranches(context: Context): Case[] {
  const aside = pick(get("batch", "asides"), column("aside"));
  const arcs = Object.entries(arcWriters(context)) as [RowKindName, EmitterFunction | undefined][];
  const branches: [RowKindName, Statement][] = [
    ["rapid", byFrame("writeRapid", "writeMachineRapid")],
    ["line", byFrame("writeLine", "writeMachineLine")],
    ...arcs.map(([kind, name]): [RowKindName, Statement] => [
      kind,
      name ? writeRow(name) : faultOn("arc.form"),
    ]),
    ["hole", writeRow("writeHole")],
    ["aside", run(call("writeStep", "state", aside))],
  ];
  return branches.map(([kind, statement]) => ({ of: id(`${kind}Row`), statements: [statement] }));
}

function writeRow(name: EmitterFunction): Statement {
  return run(call(name, "state", "batch", "row"));
}

function byFrame(work: EmitterFunction, machine: EmitterFunction): Statement {
  return when(same(column("frame"), frame.work), [writeRow(work)], [writeRow(machine)]);
}

/** Writes a rare step by its kind. */
export function defineStep(): FunctionDeclaration {
  const branches = Object.entries(stepFunctions).map(([kind, name]) => ({
    of: str(kind),
    statements: [run(call(name, "state", "step"))],
  }));
  return func("writeStep", ["state", "step"], [cases(get("step", "kind"), branches, [faultOn("step")])]);
}
