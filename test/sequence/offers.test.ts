import { expect, test } from "vitest";
import { orDeclare, undeclared } from "../../core/4-sequence/findings.ts";

// Codes and letters of ISO 6983-1 and NISTIR 6556 Tables 3, 5 and 7; all else that a finding offers is a question mark.
const published =
  /^(G(4|20|21|28|40|43|49|53|54|55|56|61|64|90|91)|M(0|1|3|4|5|6|7|8|9|30)|[HP]|"\(MSG, \{\{text\}\}\)")$/;

test.each([
  ...["coolant.air", "coolant.through-tool", "coolant.mist", "path.tolerance-word", "path.exact"],
  ...["idioms.wait-signal", "idioms.message", "machine.length-offset.form", "machine.retract.by"],
  ...["spindle.order", "spindle.blocks", "tools.preselect", "distance.programs-in", "arc.form"],
  ...["dwell.code", "numbers.dwell", "numbers.speed", "length-offset.on", "work-offset", "tools.change"],
])("what is offered for %s is published, or a question mark", (key) => {
  for (const text of [undeclared(key, "it is tried", 0).fix ?? "", orDeclare("do without", key)]) {
    const [, offer = ""] = /`([^`]+)`/.exec(text) ?? [];
    const [yaml = ""] = offer.split(" # ");
    const values = [...yaml.matchAll(/: ("[^"]*"|[^\s{},[\]]+)|[[,] ?(G\d+)/g)].map(
      ([, value, listed]) => value ?? listed,
    );
    expect(values.length).toBeGreaterThan(0);
    for (const value of values.filter((one) => one !== "?")) expect(value).toMatch(published);
    expect(text.includes("in place of the question mark")).toBe(values.includes("?"));
  }
});
