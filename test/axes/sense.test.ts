import { expect, test } from "vitest";
import { resolveText } from "../dialect/findings.ts";

/** Keys that contradict one another, and the finding that says so. */
test.each([
  ["motion: { rapid: G0, rapid-feed: 6000 }", "dialect/format motion.rapid-feed"],
  ["axes: { x: Y }", "dialect/order axes.y"],
  ["axes: { z: W }", "dialect/order blocks.order"],
  ["axes: { x: Y, y: X }", "dialect/order axes.x"],
  ["axes: { x: Z, z: X }", "dialect/order axes.z"],
  ["axes: { x: U }\ndwell: { word: X }", "dialect/order dwell.word"],
  ["path: { look-ahead: { on: M97 Q1 } }", "dialect/undeclared path.look-ahead.off"],
  [
    "compensation: { corner-feed: { on: G36, off: none } }",
    "dialect/undeclared compensation.corner-feed.off",
  ],
  ["motion: { machine-move-lasts: until-work-offset }\nwork-offset: none", "dialect/undeclared work-offset"],
])("%s", async (text, line) => {
  const { lines } = await resolveText(`dialect: own\ntitle: Own\nextends: rs274ngc\n${text}`);
  expect(lines.map((one) => one.split(" @ ")[0])).toContain(line);
});
