import type { Format } from "#dialect";
import { call, each, func, get, not, run, set, sub, variable, when } from "./builders.ts";
import type { FunctionDeclaration, Statement } from "./builders.ts";
import type { Context } from "./context.ts";
import { tracing, writing } from "./words.ts";

/** The first and last line, and what is left to do at the end. */
export function defineFrame(context: Context): FunctionDeclaration[] {
  return [...defineDelimiter(context), defineFinish(context.format)];
}

/** A `%` line, which has neither number nor end-of-block mark (ISO 6983-1, from teaching material). */
function defineDelimiter(context: Context): FunctionDeclaration[] {
  const { format } = context;
  if (format.delimiter === "none") return [];
  return [
    func(
      "writeDelimiter",
      ["state"],
      [
        variable("at", get("state", "at")),
        ...tracing(context, "file.delimiter"),
        writing(`%${format.lineEnd}`),
        set(get("state", "at"), "at"),
      ],
    ),
  ];
}

/** Header comments of a program. */
export function headerLines({ format }: Context): Statement[] {
  if (format.comments.style === "none") return [];
  return [each("line", get("state", "header"), [run(call("writeComment", "state", "line"))])];
}

/** Whether there are comments behind the last block. */
export function hasFooter({ footer, comments }: Format): boolean {
  return comments.style !== "none" && footer !== undefined && footer.length > 0;
}

/** Comments behind the last block of a program. */
function footerLines(format: Format): Statement[] {
  if (!hasFooter(format)) return [];
  const lines = each("line", get("state", "footer"), [run(call("writeComment", "state", "line"))]);
  return [when(not(get("state", "fragment")), [lines])];
}

/** Ends the text. The last line has not been handed on yet, so that its line end can still be taken back. */
function defineFinish(format: Format): FunctionDeclaration {
  const delimiter =
    format.delimiter === "none"
      ? []
      : [when(not(get("state", "fragment")), [run(call("writeDelimiter", "state"))])];
  const dropEnd = format.lastLineEnd
    ? []
    : [when(get("state", "at"), [set(get("state", "at"), sub(get("state", "at"), format.lineEnd.length))])];
  return func(
    "finish",
    ["state"],
    [
      when(get("state", "waiting"), [run(call("settle", "state"))]),
      ...footerLines(format),
      ...delimiter,
      ...dropEnd,
    ],
  );
}
