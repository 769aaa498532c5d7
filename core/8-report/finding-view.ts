/** A finding in the form that pages ask for: texts alone. */
import { clean } from "./clean.ts";
import type { Located } from "./locate.ts";

/** The texts of a finding; what does not apply is empty. */
export function findingView({ rule, severity, message, fix, file, line, origin }: Located) {
  return {
    rule,
    severity,
    message: sentence(message),
    fix: fix === undefined ? "" : sentence(fix),
    place: file === undefined ? "" : clean(line === undefined ? file : `${file}:${line}`),
    key:
      origin === undefined || origin.file === "" ? "" : clean(`${origin.key}, ${origin.file}:${origin.line}`),
  };
}

/** "the job asks" -> "The job asks." */
function sentence(text: string): string {
  const said = clean(text);
  const begun = said.charAt(0).toUpperCase() + said.slice(1);
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
}
