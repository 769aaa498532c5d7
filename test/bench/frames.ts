import { chromium } from "playwright-core";
import { browserPath } from "../pages/browser-path.ts";

/** How a page's picture moves. */
export interface Frames {
  /** Milliseconds until the page has all motions. */
  readonly loading: number;
  readonly perSecond: number;
}

/** Turns a picture by a key for each frame, in the page, and counts what the browser shows. */
const turning = `new Promise((resolve) => {
  const view = document.getElementById("view");
  const [warm, counted] = [10, 120];
  let [frames, began] = [0, 0];
  const next = () => {
    if (frames === warm) began = performance.now();
    if (frames++ === warm + counted) return resolve((1000 * counted) / (performance.now() - began));
    view.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowRight" }));
    requestAnimationFrame(next);
  };
  requestAnimationFrame(next);
})`;

/**
 * Opens the page of a plot and turns its picture. With no graphics card the browser draws by the processor.
 *
 * @returns undefined where there is no browser
 */
export async function framesOf(file: string): Promise<Frames | undefined> {
  if (browserPath === undefined) return undefined;
  const browser = await chromium.launch({ executablePath: browserPath, args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
    const began = performance.now();
    await page.goto(`file://${file}`);
    await page.waitForSelector("#loading", { state: "hidden", timeout: 120_000 });
    const loading = performance.now() - began;
    return { loading, perSecond: await page.evaluate<number>(turning) };
  } finally {
    await browser.close();
  }
}
