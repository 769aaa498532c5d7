import { beforeAll, describe, expect, test } from "vitest";
import type { Dialect, Format } from "#dialect";
import { dialectLoader, loadDialect, quarryRouter } from "../support/dialects.ts";
import { readText } from "./support.ts";
import type { Read } from "./support.ts";

/** A program of the RS274/NGC language as one writes it by hand, for a plate of our own. */
const plate = `%
(MSG, PLATE FOR THE WEATHER STATION)
g17 g20 g40 g49 g54 g80 g90 g94 g98
g53 g0 z0
t1 m6
s 4500 m3 g4 p10
g0 x0.5y1.25
g43 h1 z0.6
g1 z-.05 f 12
x 2.5 f30 (long edge)
g3 x2.75 y1.5 j.25
g2 x2.5 y1.75 r.25
g1 x.5
g0 z.6 m8
g99 g83 x1 y1 z-.25 r.1 q.1 f5
x1.5
g80 m9
m5
g53 g0 z0
m2
%
`;

const meaning = ({ rules }: Read): string[] => rules.filter((rule) => !rule.startsWith("block/"));

describe("a program by hand under the dialect after NISTIR 6556", () => {
  let read: Read;
  beforeAll(async () => {
    const { format, machine } = await loadDialect("rs274ngc");
    read = readText(plate, { format, machine });
  });

  test("its meaning is clear", () => {
    expect(meaning(read)).toEqual([]);
  });

  test("it gives its steps in the order of execution", () => {
    expect(read.lines.slice(0, 20)).toEqual([
      "program-start number=0",
      "message text=PLATE FOR THE WEATHER STATION",
      "feed-mode value=per-minute",
      "plane value=xy",
      "units value=inch",
      "compensation value=off offset=0",
      "length-offset number=0",
      "work-offset number=1",
      "distance value=absolute",
      "cycle value=off",
      "machine rapid z0",
      "select-tool tool=1",
      "change-tool",
      "spindle-speed rpm=4500000",
      "spindle-start direction=cw",
      "dwell time=10000000",
      "rapid x12.7 y31.75",
      "length-offset number=1",
      "rapid x12.7 y31.75 z15.24",
      "line x12.7 y31.75 z-1.27 f304.8",
    ]);
  });

  test("arcs and cycles", () => {
    expect(read.lines.slice(20)).toEqual([
      "line x63.5 y31.75 z-1.27 f762",
      "arcXy x69.85 y38.1 z-1.27 c63.5,38.1 1 f762",
      "radiusXy x63.5 y44.45 z-1.27 c6.35,0 -1 f762",
      "line x12.7 y44.45 z-1.27 f762",
      "coolant medium=flood on=true",
      "rapid x12.7 y44.45 z15.24",
      "cycle-definition cycle=peck depth=-63500000 retract=25400000 level=25400000 between=retract levelStated=true peck=25400000 dwell=0",
      "hole x25.4 y25.4 z2.54 f127",
      "hole x38.1 y25.4 z2.54 f127",
      "coolant medium=all on=false",
      "cycle value=off",
      "spindle-stop",
      "machine rapid z0",
      "program-end",
    ]);
  });
});

/** The text of the idioms of a dialect, each value as 1; a timeout as the dialect writes it. */
function idiomTexts(format: Format): [string, string][] {
  const point = format.numbers.timeout?.point === "always" && format.numbers.timeout.decimals > 0;
  const valueText = (value: string): string => (value === "timeout" && point ? "1.0" : "1");
  return Object.entries(format.idioms).map(([name, idiom]) => [
    name,
    idiom.blocks
      .map((parts) =>
        parts.map((part) => ("literal" in part ? part.literal : valueText(part.value))).join(""),
      )
      .join("\n"),
  ]);
}

describe.each([...dialectLoader().shipped, quarryRouter])("%s", (name) => {
  let dialect: Dialect;
  beforeAll(async () => {
    dialect = await loadDialect(name);
  });

  test("each idiom reads as one step, without a finding", () => {
    const { format, machine } = dialect;
    for (const [name, text] of idiomTexts(format)) {
      const end = name === "message" ? format.lineEnd : format.blockEnd + format.lineEnd;
      const read = readText(text + end, { format, machine, options: { fragment: true } });
      expect(read.rules).toEqual([]);
      expect(read.lines).toHaveLength(1);
    }
  });

  test("each mode code reads as its mode", () => {
    const { format, machine } = dialect;
    for (const [kind, values] of Object.entries(format.codes.modes))
      for (const [value, code] of Object.entries(values)) {
        if (!code) continue;
        const text = `${code.letter}${code.value / 10}${format.blockEnd}${format.lineEnd}`;
        const read = readText(text, { format, machine, options: { fragment: true } });
        expect([text, read.rules, read.lines]).toEqual([text, [], [`${kind} value=${value}`]]);
      }
  });
});
