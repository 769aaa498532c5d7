import type { Style } from "./style.ts";

/** What a dialect file of a style says, key by key; keys that its programs cannot show are left out. */
export function truthOf(style: Style): Record<string, unknown> {
  const incremental = style["distance.programs-in"] === "incremental";
  const own = Object.entries(style).filter(
    ([key]) => !["returns", "blocks.number", "blocks.order", "file.program-number", "cycles.levels", "numbers.trailing-zeros", "modal.arc-centre"].includes(key), // prettier-ignore
  );
  const number = style["blocks.number"];
  const identity = style["file.program-number"];
  return {
    ...Object.fromEntries(own),
    ...(number === "none"
      ? { "blocks.number": "none" }
      : {
          "blocks.number.on": "all",
          "blocks.number.start": { "all-10": 10, "all-5-wide": 5, "all-1": 1 }[number],
          "blocks.number.step": { "all-10": 10, "all-5-wide": 5, "all-1": 1 }[number],
          "blocks.number.width": number === "all-5-wide" ? 5 : 0,
        }),
    ...(identity === "none" ? { "file.program-number": "none" } : { "file.program-number.letter": identity }),
    "numbers.trailing-zeros": style["numbers.trailing-zeros"],
    ...(style["arc.form"] === "radius" ? {} : { "modal.arc-centre": style["modal.arc-centre"] }),
    // Under incremental distances a cycle's levels count from one another in either way.
    ...(incremental ? {} : { "cycles.levels": style["cycles.levels"] }),
    "machine.swap": "controller",
    "machine.lengths": "table",
    "units.programs-in": "job",
    "comments.place": undefined,
  };
}
