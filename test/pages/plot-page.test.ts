import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { longJob, plateDialect, plateJob, put, run, temporaryFolder } from "../cli/command.ts";
import { browserTest, each, openPage } from "./browser.ts";
import type { FaintText } from "./contrast.ts";
import { faintTexts } from "./contrast.ts";

const folder = temporaryFolder();
const here = { cwd: folder };
const plate = join(folder, "plate.html");
const refused = join(folder, "refused.html");

/** A rapid through the stock: drawn, and not proved. */
const dive = `{ "job": "1", "name": "Rapid & <b>stock</b>", "units": "mm", "clearance": 15, "stock": { "min": [0, 0, -12], "max": [60, 40, 0] },
"tools": [{ "number": 1, "kind": "end-mill", "diameter": 6, "length": 50 }],
"operations": [{ "id": "op10", "name": "slot", "tool": 1, "spindle": { "rpm": 12000, "direction": "cw" }, "moves": [
{ "rapid": { "x": 10, "y": 10 } }, { "rapid": { "z": 2 } }, { "line": { "z": -2 }, "feed": 300 },
{ "rapid": { "x": 50 } }, { "rapid": { "z": 15 } } ] }] }
`;

beforeAll(() => {
  put(folder, "dive.json", dive);
  expect(run(["plot", plateJob, "-d", plateDialect, "-o", "plate.html"], here).status).toBe(0);
  expect(run(["plot", "dive.json", "-d", plateDialect, "-o", "refused.html"], here).status).toBe(1);
});

/** Opens a plot and waits until all of it is there. */
async function openPlot(file: string, opening: Parameters<typeof openPage>[1] = { width: 1280 }) {
  const opened = await openPage(file, opening);
  await opened.page.waitForSelector("html[data-ready]", { state: "attached" });
  return opened;
}

/** A browser tells of its own slowness when a picture of the page is taken. */
function own(complaints: readonly string[]): string[] {
  return complaints.filter((text) => !text.includes("GL Driver Message"));
}

/** Pixels of the picture as a text, to see whether two are alike. */
async function pixels(page: Page): Promise<string> {
  await page.waitForTimeout(500);
  return (await page.locator("#view").screenshot()).toString("base64");
}

function current(page: Page): Promise<string> {
  return page.locator("#listing [aria-current]").innerText();
}

test("the page stands alone, and texts of files are shown and never taken for tags", () => {
  const text = readFileSync(refused, "utf8");
  expect(text.startsWith("<!doctype html>")).toBe(true);
  expect(text.trimEnd().endsWith("</html>")).toBe(true);
  const withoutScript = text
    .replace(/<script>[^]*<\/script>/, "")
    .replaceAll("http://www.w3.org/2000/svg", "");
  expect(withoutScript).not.toMatch(/https?:|src=|@import|url\((?!#)|<b>/);
  expect(text).toContain("Rapid &amp; &lt;b&gt;stock&lt;/b&gt;");
});

test("a long program is packed to a few bytes a motion", () => {
  put(folder, "long.json", longJob(100_000));
  expect(run(["plot", "long.json", "-d", "rs274ngc", "-o", "long.html"], here).status).toBe(0);
  expect(statSync(join(folder, "long.html")).size).toBeLessThan(1_500_000);
});

browserTest(
  "it opens from the disk without network or complaint, and all its motions are there",
  async () => {
    const { page, asked, complaints } = await openPlot(plate);
    expect(asked).toEqual([`file://${plate}`]);
    expect(own(complaints)).toEqual([]);
    expect(await page.locator("html").getAttribute("data-ready")).toMatch(/graphics card|canvas/);
    expect(await page.locator(".status").innerText()).toMatch(/read back and proved/);
    expect(await page.locator("#legend li").count()).toBe(9);
  },
);

browserTest("it turns and zooms by pointer, by keys and by buttons", async () => {
  const { page } = await openPlot(plate);
  const seen = [await pixels(page)];
  const differs = async (): Promise<void> => {
    seen.push(await pixels(page));
    expect(new Set(seen).size).toBe(seen.length);
  };
  const box = (await page.locator("#view").boundingBox())!;
  await page.mouse.move(box.x + 200, box.y + 200);
  await page.mouse.down();
  await page.mouse.move(box.x + 260, box.y + 230, { steps: 4 });
  await page.mouse.up();
  await differs();
  await page.locator("#view").focus();
  await page.keyboard.press("ArrowLeft");
  await differs();
  await page.keyboard.press("+");
  await differs();
  await page.keyboard.press("Shift+ArrowUp");
  await differs();
  await page.mouse.wheel(0, 300);
  await differs();
  await page.getByRole("button", { name: "Top" }).click();
  const top = await pixels(page);
  await page.getByRole("button", { name: "Front" }).click();
  await differs();
  await page.locator("#view").focus();
  await page.keyboard.press("1");
  expect(await pixels(page)).toBe(top);
});

browserTest("two fingers zoom", async () => {
  const { page } = await openPlot(plate);
  const before = await pixels(page);
  await page.evaluate(`(() => {
    const view = document.getElementById("view");
    view.setPointerCapture = () => undefined;
    const point = (type, pointerId, clientX) =>
      view.dispatchEvent(new PointerEvent(type, { pointerId, clientX, clientY: 300, bubbles: true, buttons: 1 }));
// Away from each other by as much, so that nothing is shifted.
    point("pointerdown", 1, 300); point("pointerdown", 2, 400); point("pointermove", 2, 520); point("pointermove", 1, 180);
    point("pointerup", 2, 520); point("pointerup", 1, 180);
  })()`);
  expect(await pixels(page)).not.toBe(before);
});

browserTest(
  "a line is found by slider, number, keys and click, with its text and the place of the tool",
  async () => {
    const { page } = await openPlot(plate);
    await page.locator("#line-number").fill("600");
    await page.locator("#line-number").press("Enter");
    await expect.poll(() => current(page)).toMatch(/^600\s+N5790 G01 X159\.267$/);
    expect(await page.locator("#place").innerText()).toBe(
      "X 159.267 Y 45.933 Z -1.25 mm, op70 Sensor pocket, roughing, T5, line",
    );
    expect(await page.locator("#said").innerText()).toBe("Line 600: N5790 G01 X159.267");
    await page.getByRole("button", { name: "Step" }).click();
    await expect.poll(() => current(page)).toMatch(/^601\s/);
    await page.locator("#line").focus();
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => current(page)).toMatch(/^600\s/);
    await page.locator("#listing").focus();
    await page.keyboard.press("ArrowUp");
    await expect.poll(() => current(page)).toMatch(/^599\s/);
    await page.locator("#listing li", { hasText: "N5830" }).click();
    await expect.poll(() => current(page)).toMatch(/^604\s+N5830/);
    await page.getByRole("button", { name: "Start" }).click();
    await expect
      .poll(() => page.locator("#place").innerText())
      .toBe("The place of the tool is not known yet.");
  },
);

browserTest("playing goes on by itself, and stops", async () => {
  const { page } = await openPlot(plate);
  await page.getByRole("button", { name: "Start" }).click();
  await page.locator("#speed").selectOption("200");
  await page.getByRole("button", { name: "Play" }).click();
  await expect.poll(async () => Number(await page.locator("#line").inputValue())).toBeGreaterThan(20);
  await page.getByRole("button", { name: "Stop" }).click();
  const stopped = await page.locator("#line").inputValue();
  await page.waitForTimeout(200);
  expect(await page.locator("#line").inputValue()).toBe(stopped);
});

browserTest("a finding leads to its line and its place, and the place to the finding", async () => {
  const { page } = await openPlot(refused);
  expect(await page.locator(".status").innerText()).toMatch(/^NOT PROVED/);
  const finding = page.locator("#findings button", { hasText: "motion/rapid-in-stock" });
  await finding.click();
  await expect.poll(() => current(page)).toMatch(/G00 X50\.000$/);
  expect(await finding.getAttribute("aria-current")).toBe("true");
  await page.getByRole("button", { name: "Start" }).click();
  await expect.poll(() => current(page)).toMatch(/^1\s/);
  // The finding is in the middle of the picture now.
  const box = (await page.locator("#view").boundingBox())!;
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await expect.poll(() => current(page)).toMatch(/G00 X50\.000$/);
});

browserTest(
  "what is switched off in the legend leaves the picture; colours by tool, operation and kind",
  async () => {
    const { page } = await openPlot(plate);
    const before = await pixels(page);
    await page.locator("#legend label", { hasText: "T1 face-mill" }).click();
    const without = await pixels(page);
    expect(without).not.toBe(before);
    await page.locator("#colour-by").selectOption("operation");
    expect(await page.locator("#legend li").count()).toBe(16);
    expect(await pixels(page)).not.toBe(without);
    await page.locator("#colour-by").selectOption("kind");
    expect(await page.locator("#legend li").allInnerTexts()).toEqual([
      "lines",
      "arcs",
      "holes",
      "rapids and ways out of holes",
      "in machine coordinates",
      "stock, fixtures, machine",
    ]);
  },
);

browserTest("no ink is told by hue alone: each has dashes or a lightness of its own", async () => {
  const { page } = await openPlot(plate);
  const looks = await each<string>(
    page,
    "#legend path",
    "one.getAttribute('stroke') + one.getAttribute('stroke-dasharray')",
  );
  expect(new Set(looks).size).toBe(looks.length);
  const solid = await each<number>(
    page,
    "#legend path[stroke-dasharray=none]",
    "one.getAttribute('stroke').match(/[0-9]+/g).map(Number).reduce((sum, part) => sum + part, 0)",
  );
  expect(Math.abs(solid[0] - solid[1])).toBeGreaterThan(60);
});

browserTest("without WebGL it is drawn on a canvas, and turns, too", async () => {
  const { page } = await openPage(plate, { width: 1280 });
  await page.addInitScript(`const original = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (kind, ...more) {
      return kind === "webgl2" ? null : original.call(this, kind, ...more); };`);
  await page.reload();
  await page.waitForSelector("html[data-ready=canvas]", { state: "attached" });
  expect(await page.locator("#loading").innerText()).toBe("Drawn without the graphics card.");
  const before = await pixels(page);
  await page.locator("#view").focus();
  await page.keyboard.press("ArrowRight");
  expect(await pixels(page)).not.toBe(before);
});

browserTest("the keyboard reaches all of it, and what has the focus shows it", async () => {
  const { page } = await openPlot(refused, { width: 390 });
  await page.keyboard.press("Tab");
  expect(await page.evaluate("document.activeElement.className")).toBe("skip");
  const reached = new Set<string>();
  for (let tab = 0; tab < 40; tab++) {
    await page.keyboard.press("Tab");
    reached.add(
      await page.evaluate<string>("document.activeElement.id || document.activeElement.textContent"),
    );
    const outline = await page.evaluate<string>("getComputedStyle(document.activeElement).outlineStyle");
    if ((await page.evaluate("document.activeElement === document.body")) === false)
      expect(outline).not.toBe("none");
  }
  for (const name of ["view", "Top", "Oblique", "colour-by", "line", "play", "line-number", "listing"])
    expect(reached).toContain(name);
  expect([...reached].some((text) => text.includes("motion/rapid-in-stock"))).toBe(true);
});

browserTest("everything that is worked has a name, and ids stand once", async () => {
  const { page } = await openPlot(plate);
  const names = await each<string>(
    page,
    "button, select, input, [role=application], [tabindex='0']",
    "one.getAttribute('aria-label') || one.getAttribute('aria-labelledby') || one.textContent.trim() || (one.labels?.length ? 'labelled' : '')",
  );
  expect(names).not.toContain("");
  const ids = await each<string>(page, "[id]", "one.id");
  expect(new Set(ids).size).toBe(ids.length);
  const labels = await each<string>(
    page,
    "[aria-labelledby], [aria-describedby]",
    "one.getAttribute('aria-labelledby') ?? one.getAttribute('aria-describedby')",
  );
  expect(labels.filter((id) => !ids.includes(id))).toEqual([]);
});

browserTest("every text has the contrast of AA, in light and dark and on paper", async () => {
  for (const scheme of ["light", "dark"] as const) {
    const { page } = await openPlot(refused, { width: 1280, scheme });
    expect(await page.evaluate<FaintText[]>(faintTexts)).toEqual([]);
    await page.emulateMedia({ media: "print" });
    expect(await page.evaluate<FaintText[]>(faintTexts)).toEqual([]);
  }
});

browserTest("nothing hangs over the edge, wide or narrow", async () => {
  for (const width of [1280, 390]) {
    const { page } = await openPlot(plate, { width });
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
  }
});

browserTest("on paper stand the view from above, its legend and the cautions, and no control", async () => {
  const { page } = await openPlot(plate);
  await page.emulateMedia({ media: "print" });
  expect(await page.locator(".paper svg.plot-drawing").isVisible()).toBe(true);
  expect(await page.locator(".paper").innerText()).toContain("T1 face-mill");
  const samples = await each<number>(page, ".paper .sample", "one.getBoundingClientRect().width");
  expect(samples).toHaveLength(6);
  expect(Math.max(...samples)).toBeLessThan(60);
  expect(await page.getByText("A picture proves nothing").isVisible()).toBe(true);
  for (const id of ["view", "play", "listing", "legend"])
    expect(await page.locator(`#${id}`).isVisible()).toBe(false);
  const pdf = await page.pdf({ format: "A4" });
  const pages = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  expect(pages).toBeGreaterThan(0);
  expect(pages).toBeLessThanOrEqual(3);
});
