import type { Browser, Page } from "playwright-core";
import { chromium } from "playwright-core";
import { afterAll, beforeAll, test } from "vitest";
import { browserPath } from "./browser-path.ts";

if (browserPath === undefined)
  console.log("no browser: pages are not looked at; install chromium, or name one by CHROMIUM=/path/to/it");

/** How a page is opened. */
export interface Opening {
  readonly width: number;
  readonly scheme?: "light" | "dark";
}

const state: { browser?: Browser } = {};

beforeAll(async () => {
  if (browserPath === undefined) return;
  // The sandbox needs rights that a container of continuous integration does not give.
  state.browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
});
afterAll(async () => state.browser?.close());

/**
 * A test that opens pages in a browser. Where there is none it is left out, and that is said; in continuous integration there
 * has to be one.
 */
export const browserTest = browserPath === undefined && process.env["CI"] === undefined ? test.skip : test;

/** Opens a file without network; what it asks for beside itself, and what it complains about, is gathered. */
export async function openPage(
  file: string,
  { width, scheme = "light" }: Opening,
): Promise<{ page: Page; asked: string[]; complaints: string[] }> {
  if (state.browser === undefined) throw new Error("there is no browser: install chromium");
  const context = await state.browser.newContext({
    viewport: { width, height: 900 },
    colorScheme: scheme,
    offline: true,
  });
  const page = await context.newPage();
  const asked: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(`file://${file}`);
  return { page, asked, complaints };
}

/** Works out an expression in `one` for each element of a page; a text, since tests are checked without the types of a browser. */
export function each<T>(page: Page, selector: string, expression: string): Promise<T[]> {
  return page.evaluate<T[]>(
    `[...document.querySelectorAll(${JSON.stringify(selector)})].map((one) => ${expression})`,
  );
}
