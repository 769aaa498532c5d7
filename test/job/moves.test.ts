import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { errorsOf, everyKey, jobOf, jobWith, readAll } from "./jobs.ts";

const mm = 10_000_000;

describe("moves become rows", () => {
  test("of the axes that they name, and no others", () => {
    const { rows } = readAll(jobOf('{"rapid":{"y":2,"x":1}},{"line":{"z":-3},"feed":4},{"line":{"x":5}}'));
    expect(
      rows[0].map(({ kind, stated, known, place, feed, rotary }) => ({
        kind,
        stated,
        known,
        place,
        feed,
        rotary,
      })),
    ).toEqual([
      { kind: "rapid", stated: 3, known: 3, place: [mm, 2 * mm, 0], feed: 0, rotary: undefined },
      { kind: "line", stated: 4, known: 4, place: [0, 0, -3 * mm], feed: 4 * mm, rotary: undefined },
      { kind: "line", stated: 1, known: 1, place: [5 * mm, 0, 0], feed: 4 * mm, rotary: undefined },
    ]);
  });

  test("of arcs with the centre in the plane's order of axes, and turns with their sense", () => {
    const { rows, findings } = readAll(
      jobWith(
        '{"arc":{"x":10,"y":0,"cx":5,"cy":0},"turn":"cw","feed":9},' +
          '{"turns":3,"plane":"zx","turn":"ccw","arc":{"z":15,"x":20,"y":1,"cz":15,"cx":15}},' +
          '{"arc":{"y":7,"z":15,"cy":4,"cz":15},"plane":"yz","turn":"cw","turns":32767}',
      ),
    );
    expect(findings).toEqual([]);
    expect(
      rows[0].slice(1).map(({ kind, stated, centre, turns }) => ({ kind, stated, centre, turns })),
    ).toEqual([
      { kind: "arcXy", stated: 3, centre: [5 * mm, 0], turns: -1 },
      { kind: "arcZx", stated: 7, centre: [15 * mm, 15 * mm], turns: 3 },
      { kind: "arcYz", stated: 6, centre: [4 * mm, 15 * mm], turns: -32767 },
    ]);
  });

  test("of holes between their head and their end", () => {
    const { rows, findings } = readAll(
      jobWith(
        '{"feed":200,"holes":{"depth":-12,"at":[[1,2],[3,4]],"retract":2,"top":0,"peck":3,"kind":"peck"}}',
      ),
    );
    expect(findings).toEqual([]);
    expect(rows[0][1].aside).toEqual({
      kind: "holes",
      cycle: "peck",
      top: 0,
      depth: -12 * mm,
      retract: 2 * mm,
      peck: 3 * mm,
      backOff: 0,
      dwell: 0,
      lead: 0,
      feedOut: 0,
      between: "retract",
      feed: 200 * mm,
    });
    expect(
      rows[0].slice(2, 4).map(({ kind, stated, place, feed }) => ({ kind, stated, place, feed })),
    ).toEqual([
      { kind: "hole", stated: 3, place: [mm, 2 * mm, 0], feed: 200 * mm },
      { kind: "hole", stated: 3, place: [3 * mm, 4 * mm, 0], feed: 200 * mm },
    ]);
    expect(rows[0][4].aside).toEqual({ kind: "holes-end" });
  });

  test("of paths, with the kind and the feed behind the points as well as before them", () => {
    const behind = readAll(jobWith('{"path":{"points":[[1,2,3],[4,5,6]],"kind":"line"},"feed":9}'));
    const before = readAll(jobWith('{"feed":9,"path":{"kind":"line","points":[[1,2,3],[4,5,6]]}}'));
    const meant = (reading: typeof behind): unknown => reading.rows[0].map(({ source: _, ...row }) => row);
    expect(behind.findings).toEqual([]);
    expect(meant(behind)).toEqual(meant(before));
    expect(behind.rows[0].map(({ kind, feed }) => [kind, feed])).toEqual([
      ["rapid", 0],
      ["line", 9 * mm],
      ["line", 9 * mm],
    ]);
  });

  test("with a source that is the byte of the move, or of the point", () => {
    const text = jobWith('{"note":"é"},{"dwell":1},{"path":{"kind":"rapid","points":[[1,2,20],[4,5,20]]}}');
    const bytes = new TextEncoder().encode(text);
    const at = (offset: number): string => new TextDecoder().decode(bytes.subarray(offset, offset + 8));
    expect(readAll(text).rows[0].map(({ source }) => at(source))).toEqual([
      '{"rapid"',
      '{"note":',
      '{"dwell"',
      "[1,2,20]",
      "[4,5,20]",
    ]);
  });

  test("with what is rare aside, in its place", () => {
    const job = everyKey();
    const { rows, job: head } = readAll(JSON.stringify(job));
    expect(rows[0].map(({ aside }) => aside).filter((aside) => aside !== undefined)).toEqual([
      { kind: "note", text: "outline" },
      { kind: "compensation", side: "left" },
      { kind: "compensation", side: "off" },
      { kind: "dwell", time: 500_000 },
      { kind: "pause", text: "Turn the plate over", optional: true, park: false },
      { kind: "spindle", rpm: 9_000_000 },
      { kind: "coolant", media: [] },
      { kind: "coolant", media: ["flood"] },
    ]);
    expect(head?.operations.map(({ coolant }) => coolant)).toEqual([["mist", "air"], ["mist"], [], []]);
    expect(head?.operations.map(({ workOffset, clearance }) => [workOffset, clearance / mm])).toEqual([
      [2, 20],
      [1, 15],
      [1, 15],
      [1, 15],
    ]);
    expect(head?.operations.map(({ name }) => name)).toEqual(["Outline", "op20", "op30", "op40"]);
    expect(head?.tools.map(({ lengthOffset }) => lengthOffset)).toEqual([11, 2, 3, 4]);
  });

  test("with escapes and every kind of character in texts", () => {
    const written = '"\\u00e9\\n\\"\\\\\\/ é € 😀 \\ud83d\\ude00 \u2028"';
    expect(readAll(jobWith(`{"note":${written}}`)).rows[0][1].aside).toEqual({
      kind: "note",
      text: JSON.parse(written) as string,
    });
  });

  test("with white space anywhere between", () => {
    const spaced = JSON.stringify(everyKey(), null, "\t").replaceAll("\n", " \r\n").replaceAll(":", " : ");
    const meant = (text: string): unknown =>
      readAll(text).rows.map((rows) => rows.map(({ source: _, ...row }) => row));
    expect(meant(spaced)).toEqual(meant(JSON.stringify(everyKey())));
  });
});

describe("what is allowed gives no finding", () => {
  const levels = '"at":[[1,1]],"top":0,"depth":-5,"retract":0';
  test.each([
    ["a feed that holds", jobWith('{"line":{"z":1},"feed":9},{"rapid":{"z":20}},{"line":{"z":1}}')],
    [
      "a first motion after notes and coolant",
      jobOf('{"note":""},{"coolant":"air"},{"dwell":1},{"rapid":{"x":0,"y":0,"z":3}}'),
    ],
    ["a path of rapids first", jobOf('{"path":{"kind":"rapid","points":[[0,0,20]]}}')],
    ["a pause before any motion", jobOf('{"pause":"load"},{"rapid":{"x":0,"y":0}}')],
    [
      "a pause on the initial level after holes",
      jobWith(`{"holes":{"kind":"drill",${levels},"between":"initial"},"feed":9},{"pause":""}`),
    ],
    ["a pause exactly at clearance", jobWith('{"rapid":{"z":1}},{"rapid":{"z":15}},{"pause":""}')],
    [
      "radii that differ by 0.005 mm",
      jobWith('{"rapid":{"x":2}},{"arc":{"x":-2.005,"y":0,"cx":0,"cy":0},"turn":"cw","feed":9}'),
    ],
    [
      "radii that differ by 0.1 %",
      jobWith('{"rapid":{"x":100}},{"arc":{"x":-100.1,"y":0,"cx":0,"cy":0},"turn":"cw","feed":9}'),
    ],
    ["a full circle", jobWith('{"arc":{"x":0,"y":0,"cx":5,"cy":0},"turn":"cw","feed":9}')],
    ["a rotary line alone", jobWith('{"line":{"a":5},"feed":9}')],
    ["a rapid in linear and rotary axes", jobWith('{"rapid":{"x":1,"a":5}}')],
    [
      "linear and rotary axes under inverse-time feed",
      jobWith('{"line":{"x":1,"a":5},"feed":9}', '"feedMode":"inverse-time",'),
    ],
    ["top at retract", jobWith(`{"holes":{"kind":"drill",${levels}},"feed":9}`)],
    [
      "compensation that is off in time",
      jobWith('{"comp":"left"},{"line":{"x":9},"feed":9},{"comp":"off"},{"pause":""}'),
    ],
    [
      "whole numbers with a fraction of 0",
      jobOf('{"rapid":{"x":0,"y":0}}', '"workOffset":2.0,').replace('"tool":1', '"tool":1e0'),
    ],
    ["a spindle that turns cw with a tool of no hand", jobWith('{"spindle":{"rpm":5}}')],
  ])("%s", (_, text) => {
    expect(readAll(text).findings).toEqual([]);
  });

  test("a tap with and without a feed that agrees within 0.1 %", () => {
    const job = (feed: string): string =>
      jobWith(`{"holes":{"kind":"tap",${levels},"lead":1.25}${feed}}`).replace("end-mill", "tap");
    for (const feed of ["", ',"feed":1250', ',"feed":1251.25', ',"feed":1248.75']) {
      const { rows, findings } = readAll(job(feed));
      expect(findings).toEqual([]);
      expect(rows[0][2].feed).toBe(0);
    }
    expect(errorsOf(readAll(job(',"feed":1251.26'))).map(({ rule }) => rule)).toEqual(["job/tap"]);
  });

  test("after a fault nothing is said about what depends on it", () => {
    const { findings } = readAll(
      jobOf('{"rapid":{"x":null,"y":0}},{"arc":{"x":9,"y":9,"cx":1,"cy":1},"turn":"cw"},{"pause":""}'),
    );
    expect(findings.map(({ rule }) => rule)).toEqual(["job/type"]);
  });
});

describe("the jobs of the examples", () => {
  const folder = join(import.meta.dirname, "../../examples");
  const jobs = existsSync(folder)
    ? readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith("job.json"))
    : [];
  test("are read without findings", () => {
    for (const name of jobs) expect(readAll(readFileSync(join(folder, name))).findings, name).toEqual([]);
  });
});
