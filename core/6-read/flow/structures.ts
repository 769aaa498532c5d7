import type { Report } from "#base";
import * as findings from "./findings-flow.ts";
import type { FlowLine, Keyword } from "./flow-line.ts";

/** A line that decides which is next, and its place in the text. */
export interface PlacedLine extends FlowLine {
  /** Byte offset of the line and of the one behind it. */
  readonly offset: number;
  readonly next: number;
  /** What it opens, ends or belongs to: `return` its subprogram, `break` its loop. */
  structure: Structure | undefined;
}

/** A subprogram, a condition or a loop. */
export interface Structure {
  readonly keyword: "SUB" | "O" | "IF" | "WHILE" | "DO" | "REPEAT";
  readonly start: PlacedLine;
  readonly parent: Structure | undefined;
  /** Lines of ELSEIF and ELSE, in their order. */
  readonly branches: PlacedLine[];
  /** The line that ends it; the start until it is found. */
  end: PlacedLine;
}

/** What a program is made of beside its blocks. */
export interface Structures {
  readonly lines: ReadonlyMap<number, PlacedLine>;
  readonly subprograms: ReadonlyMap<string, Structure>;
}

const endOf: Readonly<Partial<Record<Keyword, Structure["keyword"]>>> = {
  ENDSUB: "SUB",
  ENDIF: "IF",
  ENDWHILE: "WHILE",
  ENDREPEAT: "REPEAT",
};

interface Building {
  readonly report: Report;
  readonly subprograms: Map<string, Structure>;
  /** Labels in use: those in a subprogram are its own. */
  readonly labels: Set<string>;
  top: Structure | undefined;
  failed: boolean;
}

/**
 * Finds what belongs together among the lines that decide which is next. Labels pair them, and they must be nested.
 *
 * @returns undefined where they do not make structures, which is reported
 */
export function findStructures(lines: readonly PlacedLine[], report: Report): Structures | undefined {
  const building: Building = {
    report,
    subprograms: new Map(),
    labels: new Set(),
    top: undefined,
    failed: false,
  };
  for (const line of lines) placeLine(building, line);
  for (let open = building.top; open; open = open.parent)
    fail(building, open.start, `${textOf(open.start)} is not ended`, `Add ${endName(open)}.`);
  if (building.failed) return undefined;
  return { lines: new Map(lines.map((line) => [line.offset, line])), subprograms: building.subprograms };
}

function fail(building: Building, line: PlacedLine, message: string, fix: string): void {
  building.failed = true;
  building.report(findings.badStructure(line.offset, `${message}.`, fix));
}

/** A line as messages name it: O100 ENDSUB. */
function textOf({ keyword, label }: PlacedLine): string {
  if (keyword === "M98" || keyword === "M99") return keyword;
  return `O${label}${keyword === "O" ? "" : ` ${keyword}`}`;
}

function endName({ keyword, start }: Structure): string {
  if (keyword === "O") return "M99";
  return `O${start.label} ${keyword === "DO" ? "WHILE" : `END${keyword}`}`;
}

function placeLine(building: Building, line: PlacedLine): void {
  const { top } = building;
  switch (line.keyword) {
    case "SUB":
    case "O":
      openSubprogram(building, line, line.keyword);
      break;
    case "IF":
    case "DO":
    case "REPEAT":
      open(building, line, line.keyword);
      break;
    case "WHILE":
      if (top?.keyword === "DO" && top.start.label === line.label) close(building, line, top);
      else open(building, line, "WHILE");
      break;
    case "ELSEIF":
    case "ELSE":
      branch(building, line);
      break;
    case "ENDSUB":
    case "ENDIF":
    case "ENDWHILE":
    case "ENDREPEAT":
      if (top && top.keyword === endOf[line.keyword] && top.start.label === line.label)
        close(building, line, top);
      else fail(building, line, `${textOf(line)} ends nothing that is open here`, "Mend the labels.");
      break;
    case "BREAK":
    case "CONTINUE":
      leaveLoop(building, line);
      break;
    case "RETURN":
      leaveSubprogram(building, line);
      break;
    case "M99":
      if (top?.keyword === "O") close(building, line, top);
      else leaveSubprogram(building, line);
      break;
    case "unknown":
      fail(building, line, `The O word has a keyword that is none`, "Write call, if, while, or the like.");
      break;
    case "CALL":
    case "M98":
      break;
  }
}

function openSubprogram(building: Building, line: PlacedLine, keyword: "SUB" | "O"): void {
  const { top, subprograms } = building;
  if (top) {
    const fix = `End ${textOf(top.start)} before it.`;
    fail(building, line, `${textOf(line)} begins a subprogram inside of something else`, fix);
    return;
  }
  if (subprograms.has(line.label))
    fail(building, line, `The label ${line.label} is taken by another subprogram`, "Take another label.");
  open(building, line, keyword);
  if (building.top) subprograms.set(line.label, building.top);
}

function open(building: Building, line: PlacedLine, keyword: Structure["keyword"]): void {
  if (line.label === "") {
    fail(building, line, "The O word has no number and no name", "Give it one.");
    return;
  }
  const structure: Structure = { keyword, start: line, parent: building.top, branches: [], end: line };
  line.structure = structure;
  const scope = subprogramOf(structure)?.start.label ?? "";
  const label = keyword === "SUB" || keyword === "O" ? line.label : `${scope}#${line.label}`;
  if (building.labels.has(label) && keyword !== "SUB" && keyword !== "O")
    fail(building, line, `The label ${line.label} stands twice`, "Take another label for each.");
  building.labels.add(label);
  building.top = structure;
}

function close(building: Building, line: PlacedLine, structure: Structure): void {
  line.structure = structure;
  structure.end = line;
  building.top = structure.parent;
}

function branch(building: Building, line: PlacedLine): void {
  const { top } = building;
  const isOpen = top?.keyword === "IF" && top.start.label === line.label;
  if (!isOpen || top.branches.at(-1)?.keyword === "ELSE") {
    fail(building, line, `${textOf(line)} belongs to no IF that is open here`, "Mend the labels.");
    return;
  }
  line.structure = top;
  top.branches.push(line);
}

/** BREAK and CONTINUE name the loop: WHILE or DO, as an interpreter has it that we tried. */
function leaveLoop(building: Building, line: PlacedLine): void {
  let loop = building.top;
  while (loop && !(isLoop(loop) && loop.start.label === line.label)) loop = loop.parent;
  if (loop) line.structure = loop;
  else fail(building, line, `${textOf(line)} stands in no WHILE or DO of its label`, "Mend the label.");
}

function isLoop({ keyword }: Structure): boolean {
  return keyword === "WHILE" || keyword === "DO";
}

function leaveSubprogram(building: Building, line: PlacedLine): void {
  const found = building.top && subprogramOf(building.top);
  const isOwn = line.keyword === "M99" ? found?.keyword === "O" : found?.start.label === line.label;
  if (found && isOwn) line.structure = found;
  else fail(building, line, `${textOf(line)} stands in no subprogram that it could leave`, "Take it out.");
}

/** The subprogram in which a structure stands, or which it is. */
function subprogramOf(structure: Structure): Structure | undefined {
  let found: Structure | undefined = structure;
  while (found && found.keyword !== "SUB" && found.keyword !== "O") found = found.parent;
  return found;
}
