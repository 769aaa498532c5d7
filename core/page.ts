/** The comment lines at the head of a program and behind its last block. */
import { atomsPerUnit, isDiameterKnown } from "#base";
import type { Format, PageLine, PageList } from "#dialect";
import type { Means } from "./inputs.ts";
import type { Undertaking } from "./undertaking.ts";

/** What stands in every header, whatever the dialect makes of the rest. */
const caution = "Prove out above the work, hand on feed hold";

/**
 * Lines at the head of a program: what it is, for which controller, and what it takes for granted. Lines of the dialect's
 * own take the place of its name and the dialect's; what is assumed is left out nowhere.
 */
export function headerOf(work: Undertaking, means: Means): string[] {
  const { header } = means.dialect.format;
  const { assumptions } = work.summary();
  if (header === undefined) return written([...ownLines(work, means), ...assumptions, caution], means);
  const names = header.some(({ each }) => each === "assumptions");
  return written([...pageLines(header, work, means), ...(names ? [] : assumptions), caution], means);
}

/** Lines behind the last block; none where the dialect has no footer. */
export function footerOf(work: Undertaking, means: Means): string[] {
  return written(pageLines(means.dialect.format.footer ?? [], work, means), means);
}

function ownLines({ job, operations, units }: Undertaking, { dialect }: Means): string[] {
  const first = operations[0]?.id ?? "";
  const last = operations.at(-1)?.id ?? "";
  const range = first === last ? first : `${first} to ${last}`;
  return [
    job.program.name ?? job.name,
    `For ${dialect.name}, in ${units === "mm" ? "millimetres" : "inches"}, ${range}`,
  ];
}

/** Lines as comments can hold them, none of which is taken for a message to the operator. */
function written(lines: readonly string[], { dialect, emitter }: Means): string[] {
  const { format } = dialect;
  const mark = messageMark(format);
  return lines
    .flatMap((line) => folded(line, roomOf(format)))
    .map((piece) => {
      const isMessage = mark !== "" && bare(emitter.cleanText(piece)).startsWith(mark);
      return isMessage ? `- ${piece}` : piece;
    });
}

/** By what a comment is known for a message, without blanks: "(MSG, {{text}})" -> "MSG,". */
function messageMark({ idioms }: Format): string {
  const [first] = idioms.message?.blocks[0] ?? [];
  return first !== undefined && "literal" in first ? bare(first.literal).slice(1) : "";
}

function bare(text: string): string {
  return text.replace(/\s/gu, "").toUpperCase();
}

/** Characters of a line in a comment; a blank stands behind a semicolon. */
function roomOf({ comments }: Format): number {
  return comments.style === "semicolon" ? comments.longest - 1 : comments.longest;
}

/** A line in pieces of at most so many characters, cut between words where it can be. */
function folded(line: string, longest: number): string[] {
  const pieces: string[] = [];
  let rest = line;
  while (rest.length > longest && longest > 0) {
    const at = rest.lastIndexOf(" ", longest);
    const cut = at > 0 ? at : longest;
    pieces.push(rest.slice(0, cut).trimEnd());
    rest = rest.slice(cut).trimStart();
  }
  return [...pieces, rest];
}

/** The named values of one line. */
type Values = Readonly<Record<string, string>>;

function pageLines(lines: readonly PageLine[], work: Undertaking, means: Means): string[] {
  return lines.flatMap(({ each, parts }) => {
    const all: readonly Values[] = each === undefined ? [programValues(work, means)] : lists[each](work);
    return all.map((values) =>
      parts.map((part) => ("literal" in part ? part.literal : (values[part.name] ?? ""))).join(""),
    );
  });
}

function programValues({ job, units }: Undertaking, { dialect }: Means): Values {
  return {
    program: job.program.name ?? job.name,
    number: String(job.program.number ?? ""),
    dialect: dialect.name,
    units: units === "mm" ? "millimetres" : "inches",
  };
}

/** The tools and operations of the program, and what it takes for granted. */
const lists = {
  tools: ({ job, operations, units }) => {
    const used = new Set(operations.map(({ tool }) => tool));
    return job.tools
      .filter(({ number }) => used.has(number))
      .map(({ number, kind, description, diameter, lengthOffset }) => ({
        number: String(number),
        description: description === "" ? kind : description,
        diameter: isDiameterKnown(diameter)
          ? String(Math.round((diameter / atomsPerUnit[units]) * 10_000) / 10_000)
          : "?",
        lengthOffset: String(lengthOffset),
      }));
  },
  operations: ({ operations }) => operations.map(({ id, name }) => ({ id, name })),
  assumptions: ({ summary }) => summary().assumptions.map((text) => ({ text })),
} as const satisfies Record<PageList, (work: Undertaking) => Values[]>;
