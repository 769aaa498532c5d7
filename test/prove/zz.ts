import { readFileSync, writeFileSync } from "node:fs";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
const job = readFileSync("examples/weather-plate/weather-plate.job.json", "utf8");
const base = readFileSync("examples/weather-plate/quarry-router.dialect.yaml", "utf8");
const rep = (s: string, ...pairs: [string | RegExp, string][]): string =>
  pairs.reduce((t, [a, b]) => {
    const r = t.replace(a, b);
    if (r === t) console.log("no change", String(a));
    return r;
  }, s);
const variants: Record<string, string> = {
  base,
  clamped: rep(base, ["travels: released", "travels: clamped"]),
  slide:
    rep(
      base,
      [
        "style: drop-in",
        "style: slide-in\n    slide: { direction: -y, distance: 30, feed: 1500 }\n    cover: yes",
      ],
      ["orient: no", "orient: yes"],
      ["    air: 6\n", "    air: 6\n    tool-present: 9\n"],
      ["taper-air: no", "taper-air: yes"],
    ) +
    "\nidioms: { release: M21, clamp: M22, hood-up: M23, hood-down: M24, cover-open: M25, cover-close: M26, taper-air-on: M27, taper-air-off: M28 }\nspindle: { orient: M19 }\n",
  keep: rep(base, ["tool: return", "tool: keep"]),
  refret:
    base.replace(
      "  swap: rack",
      "  retract: { by: reference-return, intermediate: incremental-zero }\n  swap: rack",
    ) + "\nreference-return: G28\n",
  operator: rep(base, ["swap: rack", "swap: operator"], ["  tapping", "  feed: { most: 6000 }\n  tapping"]),
  controller: rep(base, ["swap: rack", "swap: controller"]),
  timed: rep(
    base,
    [
      /at-speed: \{ wait: at-speed, timeout: 10 s \}/,
      'at-speed: { dwell: "max(spin_up, spin_down) * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second" }',
    ],
    [
      /stopped: \{ wait: stopped, timeout: 30 s \}/,
      'stopped: { dwell: "coast_down * from_rpm / max_rpm + 0.5 * second" }',
    ],
    [/released: \{ wait[^}]*\}/, "released: { dwell: 1 * second }"],
    [/clamped: \{ wait[^}]*\}/, "clamped: { dwell: 1 * second }"],
  ),
  measured:
    rep(base, [
      "  park",
      "  lengths: measured\n  measure-effects: { position: unknown, spindle: stopped, coolant: unchanged, length-offset: active }\n  park",
    ]) + "\nidioms: { release: M21, clamp: M22, hood-up: M23, hood-down: M24, measure: M29 }\n",
  opstop: rep(base, [/stopped: \{ wait: stopped, timeout: 30 s \}/, "stopped: operator"]),
  cancelfirst: rep(base, [
    "  swap: rack",
    "  retract: { z: 0, acts-on: tool-tip, cancel-length-first: yes }\n  swap: rack",
  ]),
  zone: rep(base, ["    widest", "    zone2"], ["    zone2", "    widest"]),
};
for (const [name, text] of Object.entries(variants)) {
  const path = `examples/weather-plate/zz-${name}.dialect.yaml`;
  {
    const all = [...text.matchAll(/^idioms: .*$/gm)];
    let t = text;
    if (all.length > 1) t = text.replace(all[0][0] + "\n", "");
    writeFileSync(path, t);
  }
  try {
    for (const holds of [undefined, "none", 1] as const) {
      const made = await ready(path);
      const { outcome, program } = postText(
        { job, options: (holds === undefined ? {} : { spindleHolds: holds }) as never },
        made,
      );
      console.log(
        name,
        holds,
        outcome.verdict,
        program?.length,
        [
          ...new Set(
            outcome.findings
              .filter((f) => f.severity === "error")
              .map((f) => `${f.rule} ${f.message} @${f.place?.source}${f.place?.offset}`),
          ),
        ].slice(0, 6),
      );
    }
  } catch (error) {
    console.log(name, "threw", String(error).slice(0, 600));
  }
}
