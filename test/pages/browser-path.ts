import { existsSync } from "node:fs";

/** Where a browser is looked for: what the environment says, and where Debian puts it. */
const paths = [process.env["CHROMIUM"], "/usr/bin/chromium", "/usr/bin/chromium-browser"];

/** Path of a Chromium; undefined where there is none. */
export const browserPath = paths.find((path) => path !== undefined && path !== "" && existsSync(path));
