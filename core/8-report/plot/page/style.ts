/** The style of a plot's page: ink on paper, dark and light; on paper the drawing from above with its legend. */
export const pageStyle = `
:root { --paper: #fbfaf7; --ink: #1d2327; --soft: #4f585e; --line: #c3c0b6; --sheet: #f4f2ec; --blue: #174e7d; --good: #1c5a3a; --bad: #8c1d2f; --ochre: #7a4300; }
@media (prefers-color-scheme: dark) { :root { --paper: #16191b; --ink: #e6e4dd; --soft: #aab0b3; --line: #474d50; --sheet: #1d2124; --blue: #94c6ef; --good: #93d3ad; --bad: #f3a2ad; --ochre: #eab56c; } }
* { box-sizing: border-box; }
html { color-scheme: light dark; }
body { margin: 0 auto; padding: 0.75rem clamp(0.6rem, 2vw, 1.5rem) 3rem; max-width: 100rem; background: var(--paper); color: var(--ink); font: 1rem/1.45 system-ui, sans-serif; overflow-wrap: break-word; }
h1 { font-size: 1.4rem; line-height: 1.25; margin: 0.25rem 0 0; }
h2 { font-size: 1.05rem; margin: 1.25rem 0 0.4rem; border-top: 2px solid var(--ink); padding-top: 0.4rem; }
p { margin: 0.3rem 0; }
ul, ol { margin: 0; padding: 0; list-style: none; }
.status { font-weight: 600; }
.status.good { color: var(--good); }
.status.bad { color: var(--bad); border: 3px double var(--bad); padding: 0.3rem 0.6rem; }
.small { color: var(--soft); font-size: 0.875rem; }
.skip { position: absolute; left: -100vw; }
.skip:focus { left: 1rem; top: 0.5rem; background: var(--paper); padding: 0.5rem; z-index: 2; }
a { color: var(--blue); }
main { display: grid; grid-template-columns: minmax(0, 1fr) minmax(18rem, 26rem); gap: 0 1.25rem; }
.stage { min-width: 0; }
#view { position: relative; height: min(68vh, 52rem); min-height: 18rem; background: var(--sheet); border: 1px solid var(--line); touch-action: none; cursor: grab; overflow: hidden; }
#view canvas { position: absolute; inset: 0; width: 100%; height: 100%; }
#loading { position: absolute; left: 0.75rem; top: 0.5rem; margin: 0; background: var(--sheet); z-index: 1; }
.bar { display: flex; flex-wrap: wrap; gap: 0.35rem; align-items: center; margin: 0.4rem 0; }
.bar label { font-size: 0.875rem; }
button, select, input[type="number"] { font: inherit; font-size: 0.9rem; color: var(--ink); background: var(--paper); border: 1px solid var(--soft); border-radius: 2px; padding: 0.3rem 0.6rem; min-height: 2.1rem; }
button { cursor: pointer; }
button:hover { background: var(--sheet); }
input[type="number"] { width: 7.5em; }
input[type="range"] { width: 100%; margin: 0.2rem 0; accent-color: var(--blue); }
:focus-visible { outline: 3px solid var(--blue); outline-offset: 2px; }
#place { font-variant-numeric: tabular-nums; min-height: 2.9em; }
#listing { font-size: 0.85rem; background: var(--sheet); border: 1px solid var(--line); min-height: 24rem; overflow-x: auto; }
#listing li { display: flex; gap: 0.6rem; padding: 0.06rem 0.5rem; cursor: pointer; border-left: 4px solid transparent; white-space: nowrap; }
#listing li[aria-current] { border-left-color: var(--ink); font-weight: 700; background: var(--paper); }
#listing .number { min-width: 4.2em; text-align: right; color: var(--soft); font-variant-numeric: tabular-nums; }
code { font-family: ui-monospace, monospace; font-size: 0.8rem; white-space: pre; }
#legend { max-height: 20rem; overflow-y: auto; }
#legend label { display: flex; gap: 0.5rem; align-items: center; padding: 0.1rem 0; font-size: 0.9rem; }
.sample { width: 44px; height: 12px; flex: none; }
#findings li { margin-bottom: 0.4rem; }
#findings button { text-align: left; width: 100%; }
#findings button[aria-current] { border: 3px solid var(--bad); }
.severity { font-weight: 700; }
.error .severity { color: var(--bad); }
.warning .severity { color: var(--ochre); }
.mark { display: inline-block; min-width: 1.7em; text-align: center; border: 2px solid var(--bad); border-radius: 1em; color: var(--bad); font-weight: 700; font-size: 0.85rem; }
table { border-collapse: collapse; font-size: 0.9rem; }
th, td { text-align: right; padding: 0.15rem 0.75rem 0.15rem 0; font-variant-numeric: tabular-nums; }
th { text-align: left; font-weight: 600; }
.dashed { padding-left: 1.1rem; list-style: "– "; font-size: 0.9rem; }
.paper { display: none; }
.paper .plot-drawing { max-width: 100%; height: auto; }
.said { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
@media (max-width: 52rem) {
  main { grid-template-columns: minmax(0, 1fr); }
  #view { height: 56vh; }
  #listing { min-height: 0; }
}
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #333; --line: #999; --sheet: #fff; --blue: #003a6b; --good: #0c4a2a; --bad: #7a0d20; --ochre: #5c3200; }
  html { color-scheme: light; }
  body { padding: 0; font-size: 10pt; max-width: none; }
  main { display: block; }
  .stage, .skip, .on-screen { display: none; }
  .paper { display: block; }
  .paper .plot-drawing { width: 100%; height: auto; max-height: 150mm; }
  #findings button { border: none; padding: 0; background: none; color: inherit; }
  h2 { break-after: avoid; }
  li, tr { break-inside: avoid; }
}
`;
