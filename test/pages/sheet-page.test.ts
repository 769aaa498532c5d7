import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { plateDialect, plateJob, put, run, temporaryFolder } from "../cli/command.ts";
import { browserTest, each, openPage } from "./browser.ts";
import type { FaintText } from "./contrast.ts";
import { faintTexts } from "./contrast.ts";

const folder = temporaryFolder();
const here = { cwd: folder };
const inchJob = join(plateJob, "../../sensor-bracket-inch/sensor-bracket-inch.job.json");
const page = (name: string): string => join(folder, name);
const textOf = (name: string): string => readFileSync(page(name), "utf8");

/** What somebody may write into a job who wants to get into the page. */
const hostile = `<script>alert(1)</script>"'&\\3c \u202e</style><img src=x>`;

/** A job in which every text of its own is hostile. */
function hostileJob(): string {
  const tool = { number: 1, kind: "end-mill", diameter: 6, flutes: 2, length: 60, description: hostile };
  const moves = [
    { rapid: { x: 0, y: 0 } },
    { note: hostile },
    { rapid: { z: 2 } },
    { line: { z: -1 }, feed: 100 },
    { line: { x: 30 }, feed: 400 },
    { rapid: { z: 15 } },
    { pause: hostile },
    { rapid: { x: 0, y: 0 } },
  ];
  return JSON.stringify({
    job: "1",
    name: hostile,
    program: { number: 7, name: hostile },
    units: "mm",
    stock: { min: [-10, -10, -9], max: [50, 20, 0], material: hostile },
    fixtures: [{ name: hostile, min: [-40, -10, -9], max: [-20, 20, -2] }],
    clearance: 15,
    tools: [tool],
    operations: [{ id: "op<10>", name: hostile, tool: 1, spindle: { rpm: 8000, direction: "cw" }, moves }],
  });
}

beforeAll(() => {
  put(folder, "hostile.json", hostileJob());
  put(folder, "own.dialect.yaml", `dialect: own\ntitle: ${JSON.stringify(hostile)}\nextends: rs274ngc\n`);
  const make = (job: string, dialect: string, output: string): number | null =>
    run(["sheet", job, "-d", dialect, "-o", output], here).status;
  expect(make(plateJob, plateDialect, "plate.html")).toBe(0);
  expect(make(inchJob, "rs274ngc", "inch.html")).toBe(0);
  expect(make(inchJob, "staged-tools", "turns.html")).toBe(0);
  expect(make(inchJob, "longhand", "refused.html")).toBe(1);
  expect(make("hostile.json", "own.dialect.yaml", "hostile.html")).toBe(0);
});

const pages = ["plate.html", "inch.html", "refused.html", "hostile.html"];

test.each(pages)("%s is whole, and needs neither script nor network", (name) => {
  // The name space of a drawing is no address that anybody asks.
  const text = textOf(name).replaceAll('xmlns="http://www.w3.org/2000/svg"', "");
  expect(text.startsWith("<!doctype html>")).toBe(true);
  expect(text.trimEnd().endsWith("</html>")).toBe(true);
  expect(text).not.toMatch(/<script|javascript:|https?:|src=x>|<img|@import|url\((?!#)/);
});

test("texts of jobs and dialects are shown and never taken for tags, nor for style", () => {
  const text = textOf("hostile.html");
  const escaped =
    "&lt;script&gt;alert(1)&lt;/script&gt;&quot;&#x27;&amp;\\3c \u00b7&lt;/style&gt;&lt;img src&#x3D;x&gt;";
  // Job, operation, note, fixture twice, tool, material, stop, title of the page, dialect.
  expect(text.split(escaped).length - 1).toBeGreaterThanOrEqual(9);
  // One of the page, one of the picture.
  expect(text.match(/<\/style>/g)).toHaveLength(2);
  expect(text).toContain("op&lt;10&gt;");
  // The head of each paper sheet: nothing of the name stands there but letters, digits and numbers of characters.
  const [, head = ""] = /@top-left \{ content: "((?:[A-Za-z0-9 ]|\\[0-9a-f]+ )*)";/.exec(text) ?? [];
  expect(head).toContain("\\3c script\\3e alert\\28 1\\29 \\3c \\2f script\\3e ");
});

test("each number column of a sheet states its unit, or counts", () => {
  for (const [name, units] of [
    ["plate.html", "mm|mm/min|m/min|mm/tooth|1/min"],
    ["inch.html", "in|in/min|ft/min|in/tooth|1/min"],
  ]) {
    const heads = [...textOf(name).matchAll(/<th scope="col" class="number">([^<]+)<\/th>/g)].map(
      ([, head]) => head,
    );
    expect(heads.length).toBeGreaterThan(20);
    const counts = ["Flutes", "From line", "At line", "Stop", "Time"];
    const without = heads.filter((head) => !counts.includes(head) && !new RegExp(`, (${units})$`).test(head));
    expect(without).toEqual([]);
  }
});

// The values were read off the job file and reckoned by hand; see test/sheet for the reckoning.
const shown = [
  [
    "work zero",
    "X0 is 12 mm to the right of the left edge, Y0 12 mm behind the front edge, Z0 0.6 mm below the top",
  ],
  ["stock", "aluminium plate, 6000 series"],
  ["zero of the offset in machine coordinates", "X300 Y200 Z-140"],
  ["work offset", "G54"],
  ["length offset", "H6"],
  ["tool", "carbide drill 3.8"],
  ["stop", "put M8 screws through the four corner holes into the spoil board"],
  ["what the control shows", "EMPTY THE SPINDLE AND CLAMP IT"],
  ["note of the job", "clamps end 1 mm below the finished face"],
  ["assumption", "Air is on, the drawbar is clamped."],
  ["prove-out", "single block on, rapids at their lowest, a hand on feed hold"],
  ["caution", "Local codes and the machine builder&#x27;s instructions come first."],
  ["licence", "is for people licensed to do it"],
  ["machine", "Six-pocket router at the quarry workshop (quarry-router)"],
] as const;

test.each(shown)("the sheet of the plate shows the %s", (_, text) => {
  expect(textOf("plate.html").replaceAll("\n", " ")).toContain(text);
});

/** The cells of each row of a table, as a person reads them. */
async function rowsOf(name: string, selector: string): Promise<string[][]> {
  const opened = await openPage(page(name), { width: 1280 });
  return each<string[]>(
    opened.page,
    `${selector} tbody tr`,
    "[...one.children].map((cell) => cell.innerText.replaceAll(/\\s+/g, ' ').trim())",
  );
}

browserTest("tables have their values in the columns where they belong", async () => {
  const tools = await rowsOf("plate.html", ".tools");
  expect(tools[4]).toEqual([
    "",
    "5",
    "5",
    "H5",
    "end-mill carbide end-mill 6, for aluminium radius offset 5",
    "6",
    "2",
    "58 by the job",
    "28",
    "16",
    "24,000",
    "16 min 23 s",
  ]);
  const operations = await rowsOf("plate.html", ".operations");
  expect(operations).toHaveLength(13);
  expect(operations[0].slice(2)).toEqual([
    "1",
    "1",
    "6,000 cw",
    "471",
    "cut 960",
    "0.08",
    "0",
    "mist",
    "2 min 34 s",
  ]);
  const inch = await rowsOf("inch.html", ".operations");
  expect(inch[1].slice(2)).toEqual([
    "2",
    "2",
    "3,000 cw",
    "158",
    "plunge 12",
    "0.002",
    "-1.1",
    "mist",
    "1 min 55 s",
  ]);
  expect(inch[2][6]).toBe("lead 0.05 in/rev");
  expect((await rowsOf("turns.html", ".operations"))[1][6]).toBe("plunge 0.004 in/rev");
});

browserTest.each(pages)("%s opens from the disk without network, script or complaint", async (name) => {
  const { page: opened, asked, complaints } = await openPage(page(name), { width: 1280 });
  expect(asked).toEqual([`file://${page(name)}`]);
  expect(complaints).toEqual([]);
  expect(await opened.locator("script, img").count()).toBe(0);
});

browserTest(
  "it has landmarks, headings without a gap, tables with heads, and names for all that is ticked",
  async () => {
    const { page: opened } = await openPage(page("plate.html"), { width: 1280 });
    const roles = await Promise.all(
      (["banner", "main"] as const).map((role) => opened.getByRole(role).count()),
    );
    expect(roles).toEqual([1, 1]);
    const levels = await each<number>(opened, "h1, h2, h3, h4", "Number(one.tagName[1])");
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, index) => index > 0 && level > levels[index - 1] + 1)).toEqual([]);
    const heads = "one.querySelectorAll('thead th[scope=col]').length";
    const whole = await each<boolean>(
      opened,
      "table",
      `${heads} === one.querySelector('tbody tr').children.length`,
    );
    expect(whole.length).toBeGreaterThan(5);
    expect(whole).not.toContain(false);
    const ids = await each<string>(opened, "[id]", "one.id");
    expect(new Set(ids).size).toBe(ids.length);
    const labels = await each<string>(opened, "[aria-labelledby]", "one.getAttribute('aria-labelledby')");
    expect(labels.filter((id) => !ids.includes(id))).toEqual([]);
    const names = await each<string>(
      opened,
      "input",
      "one.getAttribute('aria-label') ?? one.closest('label')?.innerText ?? ''",
    );
    expect(names.length).toBeGreaterThan(30);
    expect(names).not.toContain("");
  },
);

browserTest("a box is ticked by a click and by the keyboard", async () => {
  const { page: opened } = await openPage(page("plate.html"), { width: 1280 });
  const box = opened.getByLabel("The machine is homed.");
  const empty = await box.screenshot();
  await opened.getByText("The machine is homed.").click();
  expect(await box.isChecked()).toBe(true);
  expect((await box.screenshot()).equals(empty)).toBe(false);
  await box.focus();
  await opened.keyboard.press("Space");
  expect(await box.isChecked()).toBe(false);
});

browserTest(
  "the picture has its views and a line for each tool, and none of a job that is refused",
  async () => {
    const { page: opened } = await openPage(page("plate.html"), { width: 1280 });
    expect(await opened.locator(".backplot > svg[role=img] path.cut").count()).toBeGreaterThan(10);
    expect(await opened.locator(".backplot li").allTextContents()).toHaveLength(6);
    expect(textOf("refused.html")).not.toContain('class="backplot"');
  },
);

browserTest("NOT PROVED stands first and large, on each sheet of paper as well", async () => {
  const { page: opened } = await openPage(page("refused.html"), { width: 1280 });
  const [first] = await each<{ text: string; size: number }>(
    opened,
    "h2",
    "({ text: one.innerText, size: parseFloat(getComputedStyle(one).fontSize) })",
  );
  expect(first.text).toBe("NOT PROVED");
  expect(first.size).toBeGreaterThan(45);
  expect(textOf("refused.html")).toContain('@top-right { content: "NOT PROVED"');
  expect(textOf("plate.html")).not.toContain("NOT PROVED");
});

browserTest("every text has the contrast of AA, in light and dark and on paper", async () => {
  for (const name of ["plate.html", "refused.html"])
    for (const scheme of ["light", "dark"] as const) {
      const { page: opened } = await openPage(page(name), { width: 1280, scheme });
      expect(await opened.evaluate<FaintText[]>(faintTexts)).toEqual([]);
      await opened.emulateMedia({ media: "print" });
      expect(await opened.evaluate<FaintText[]>(faintTexts)).toEqual([]);
    }
});

browserTest("nothing hangs over the edge, wide or narrow, and no text is small", async () => {
  for (const name of pages)
    for (const width of [1280, 390]) {
      const { page: opened } = await openPage(page(name), { width });
      expect(await opened.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
      const sizes = await each<number>(
        opened,
        "main *:not(svg *, input)",
        "parseFloat(getComputedStyle(one).fontSize)",
      );
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(14);
    }
});

browserTest("on a narrow screen each row is a card whose values have their names and units", async () => {
  const { page: opened } = await openPage(page("plate.html"), { width: 390 });
  const [row] = await each<string>(opened, ".tools tbody tr", "getComputedStyle(one).display");
  expect(row).toBe("block");
  const heads = await each<string>(opened, ".tools tbody tr:first-child td", "one.dataset.head");
  expect(heads).toContain("Diameter, mm");
  expect(heads).not.toContain("");
});

/** The texts of the pages of a PDF. */
function paperTexts(file: string): string[] {
  return execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" }).split("\f").slice(0, -1);
}

const hasReader = ((): boolean => {
  try {
    execFileSync("pdftotext", ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    console.log("no pdftotext: what stands on paper is not read; install poppler-utils");
    return false;
  }
})();

browserTest.each(["A4", "Letter"])(
  "on %s each sheet has its head and number, and no row is torn",
  async (format) => {
    for (const name of ["plate.html", "refused.html"]) {
      const { page: opened } = await openPage(page(name), { width: 1280 });
      const file = join(folder, `${name}-${format}.pdf`);
      await opened.pdf({ path: file, format });
      if (!hasReader) continue;
      const sheets = paperTexts(file);
      expect(sheets.length).toBeGreaterThan(2);
      expect(sheets.length).toBeLessThan(8);
      sheets.forEach((sheet, index) => {
        expect(sheet).toContain(`page ${index + 1} of ${sheets.length}`);
        expect(sheet).toContain(
          name === "plate.html" ? "Set-up sheet: Weather plate; program" : "NOT PROVED",
        );
      });
      // The head of the table of operations stands wherever some of it does.
      if (name === "plate.html")
        for (const sheet of sheets.filter((text) => /^ *[\d,]+ +op\d+ /m.test(text)))
          expect(sheet).toMatch(/Chip\s+load|mm\/tooth/);
    }
  },
);
