import { call, differs, get, not, run, set, str, variable, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { tracing, writing } from "../words.ts";
import { headerLines } from "../write-frame.ts";
import { forgetFeed, forgetMotion } from "../write-state.ts";

/** Delimiter, program number, header. Where `%` itself carries the number, the first delimiter is that line. */
export function writeProgramStart(context: Context): Statement[] {
  const { delimiter, programNumber } = context.format;
  const [isStated, none] = [differs(get("step", "number"), 0), "file.program-number"];
  const first = delimiter === "none" ? [] : [run(call("writeDelimiter", "state"))];
  const line = programNumber === null ? [faultOn(none)] : numberLine(context, programNumber);
  const head =
    programNumber?.letter === "%" && first.length > 0
      ? [when(isStated, line, first)]
      : [...first, when(isStated, line)];
  return [
    ...forgetMotion(),
    ...forgetFeed(),
    when(not(get("state", "fragment")), [...leader(context), ...head, ...headerLines(context)]),
  ];
}

/** The mark of UTF-8, byte by byte, and blank lines. */
function leader({ format }: Context): Statement[] {
  const mark = format.byteOrderMark ? "\u00ef\u00bb\u00bf" : "";
  const text = mark + format.lineEnd.repeat(format.leader);
  return text === "" ? [] : [set(get("state", "at"), call("write", "state", get("state", "at"), str(text)))];
}

function numberLine(context: Context, number: NonNullable<Context["format"]["programNumber"]>): Statement[] {
  const { format } = context;
  return [
    variable("at", get("state", "at")),
    ...tracing(context, "file.program-number"),
    writing(number.letter),
    set("at", call("writePadded", get("state", "bytes"), "at", get("step", "number"), number.digits)),
    set(
      get("state", "at"),
      call("write", "state", "at", str((number.letter === "%" ? "" : format.blockEnd) + format.lineEnd)),
    ),
  ];
}
