import { machineCautions } from "./cautions.ts";
import { clean } from "./clean.ts";
import type { Reportable } from "./outcome.ts";
import type { Layout } from "./text-findings.ts";
import { row } from "./row.ts";
import { bullets } from "./text-result.ts";

/** What is to be known of a generated module, whoever uses it. */
const natureOfModule = [
  "It writes a sequence of steps as text for this one controller, under Node and in a browser, and needs neither tapewright nor the dialect file.",
  "Nothing that it prints has been guarded or proved: it writes whatever sequence it is given. Give its text to `tapewright prove` with this dialect, and --against the job, before it gets near a machine.",
  "It does not follow the dialect: build it anew after each change of a file, and with each new version of tapewright.",
];

/** What a command that made a module says: where it and its types stand, what it is and is not, and the cautions. */
export function moduleText({ summary, output }: Reportable, layout: Layout): string[] {
  const unbroken = { ...layout, width: Infinity };
  const { types, exports, dialect, title } = summary;
  return [
    ...row("module", clean(output ?? "not written"), unbroken),
    ...row("types", typeof types === "string" ? clean(types) : "left out", unbroken),
    ...row("for", clean([dialect, title].join(", ")), layout),
    ...row("exports", Array.isArray(exports) ? exports.join(", ") : "nothing", layout),
    "",
    layout.paint("rule", "What it is"),
    ...bullets(natureOfModule, layout),
    "",
    layout.paint("warning", "Before a program of it runs"),
    ...bullets(machineCautions, layout),
  ];
}
