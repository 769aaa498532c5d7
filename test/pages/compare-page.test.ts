import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { longJob, plateDialect, plateJob, put, run, temporaryFolder } from "../cli/command.ts";
import { browserTest, each, openPage } from "./browser.ts";
import type { FaintText } from "./contrast.ts";
import { faintTexts } from "./contrast.ts";

const folder = temporaryFolder();
const here = { cwd: folder };
const file = join(folder, "plate.html");

beforeAll(() => {
  const words = [
    "compare",
    plateJob,
    "-d",
    plateDialect,
    "-d",
    "staged-tools",
    "-d",
    "longhand",
    "-o",
    "plate.html",
  ];
  expect(run(words, here).status).toBe(1);
});

test("the page is whole, and is written where it is asked for", () => {
  const text = readFileSync(file, "utf8");
  expect(text.startsWith("<!doctype html>")).toBe(true);
  expect(text.trimEnd().endsWith("</html>")).toBe(true);
  expect(text).not.toMatch(/<script|javascript:|https?:|src=|@import|url\(/);
});

test("texts of files are shown and never taken for tags", () => {
  put(
    folder,
    "own.dialect.yaml",
    'dialect: own\ntitle: "<script>alert(1)</script>&"\nextends: rs274ngc\nmodal: { motion: each-block }\n',
  );
  put(folder, "small.json", longJob(20));
  expect(
    run(["compare", "small.json", "-d", "own.dialect.yaml", "-d", "rs274ngc", "-o", "own.html"], here).status,
  ).toBe(0);
  const text = readFileSync(join(folder, "own.html"), "utf8");
  expect(text).toContain("&lt;script&gt;alert(1)&lt;/script&gt;&amp;");
  expect(text).not.toContain("<script");
});

test("a long program gives a page of bounded size that says what it leaves out", () => {
  put(folder, "long.json", longJob(20_000));
  expect(
    run(["compare", "long.json", "-d", "explicit-words", "-d", "rs274ngc", "-o", "long.html"], here).status,
  ).toBe(0);
  const size = statSync(join(folder, "long.html")).size;
  expect(size).toBeLessThan(400_000);
  expect(readFileSync(join(folder, "long.html"), "utf8")).toMatch(/Left out: \d[\d,]* further rows/);
});

test("no page replaces an input, and none is left half written", () => {
  put(folder, "own.html", longJob(5));
  const { status, stderr } = run(
    ["compare", "own.html", "-d", "rs274ngc", "-d", "longhand", "-o", "own.html"],
    here,
  );
  expect(status).toBe(2);
  expect(stderr).toContain("program/overwrites-input");
  run(["compare", "nowhere.json", "-d", "rs274ngc", "-d", "longhand", "-o", "none.html"], here);
  expect(existsSync(join(folder, "none.html"))).toBe(false);
});

browserTest("it opens from the disk without network, script or complaint", async () => {
  const { page, asked, complaints } = await openPage(file, { width: 1280 });
  expect(asked).toEqual([`file://${file}`]);
  expect(complaints).toEqual([]);
  expect(await page.locator("script").count()).toBe(0);
});

browserTest(
  "it has landmarks, headings without a gap, tables with heads, and links that lead somewhere",
  async () => {
    const { page } = await openPage(file, { width: 1280 });
    const roles = await Promise.all(
      (["banner", "navigation", "main", "contentinfo"] as const).map((role) => page.getByRole(role).count()),
    );
    expect(roles).toEqual([1, 1, 1, 1]);
    const levels = await each<number>(page, "h1, h2, h3, h4, h5, h6", "Number(one.tagName[1])");
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels.filter((level, index) => index > 0 && level > levels[index - 1] + 1)).toEqual([]);
    const heads = "one.querySelectorAll('thead th[scope=col]').length";
    const tables = await each<boolean>(
      page,
      "table",
      `${heads} === one.querySelector('tbody tr').children.length`,
    );
    expect(tables.length).toBeGreaterThan(20);
    expect(tables).not.toContain(false);
    const ids = await each<string>(page, "[id]", "one.id");
    expect(new Set(ids).size).toBe(ids.length);
    const links = await each<string>(page, "a", "one.getAttribute('href').slice(1)");
    const labels = await each<string>(page, "[aria-labelledby]", "one.getAttribute('aria-labelledby')");
    expect([...links, ...labels].filter((id) => !ids.includes(id))).toEqual([]);
  },
);

browserTest("the keyboard reaches all of it: the skip link first, then links and what scrolls", async () => {
  const { page } = await openPage(file, { width: 390 });
  await page.keyboard.press("Tab");
  expect(await page.evaluate("document.activeElement.className")).toBe("skip");
  const [left] = await each<number>(page, ".skip", "one.getBoundingClientRect().left");
  expect(left).toBeGreaterThanOrEqual(0);
  const scrolling = await each<string | null>(
    page,
    "*",
    "one.scrollWidth > one.clientWidth && getComputedStyle(one).overflowX === 'auto' ? one.getAttribute('tabindex') : '0'",
  );
  expect(new Set(scrolling)).toEqual(new Set(["0"]));
  const [difference] = await page.locator(".overview a").all();
  await difference.focus();
  await page.keyboard.press("Enter");
  const target = await difference.getAttribute("href");
  expect(await page.evaluate("'#' + document.querySelector(':target')?.id")).toBe(target);
});

browserTest("no difference is told by hue alone: each has its word", async () => {
  const { page } = await openPage(file, { width: 1280 });
  const groups = await each<string>(page, ".group", "one.querySelector('.mark').textContent");
  expect(groups.length).toBeGreaterThan(40);
  expect(new Set(groups)).toEqual(new Set(["meaning", "form"]));
  const rows = await each<string>(
    page,
    ".listing tbody tr:not(.same)",
    "one.querySelector('.links').textContent.trim()",
  );
  expect(rows.length).toBeGreaterThan(100);
  expect(rows.filter((text) => !/^(meaning|form) \d/.test(text))).toEqual([]);
  expect(await page.locator(".good, .bad").allTextContents()).toEqual(["✓ proved", "✓ proved", "✕ refused"]);
});

browserTest("every text has the contrast of AA, in light and dark and on paper", async () => {
  for (const scheme of ["light", "dark"] as const) {
    const { page } = await openPage(file, { width: 1280, scheme });
    expect(await page.evaluate<FaintText[]>(faintTexts)).toEqual([]);
    await page.emulateMedia({ media: "print" });
    expect(await page.evaluate<FaintText[]>(faintTexts)).toEqual([]);
  }
});

browserTest("nothing hangs over the edge, wide or narrow", async () => {
  for (const width of [1280, 390]) {
    const { page } = await openPage(file, { width });
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
  }
});
