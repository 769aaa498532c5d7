/**
 * The style of a comparison's page. Colours are ink on paper with one blue and one ochre, dark and light; what a colour says is
 * said by a word and by the kind of a line, too: double for meaning, dotted for form.
 */
export const pageStyle = `
:root { --paper: #fbfaf7; --ink: #1d2327; --soft: #545d63; --line: #c3c0b6; --sheet: #f1efe8;
  --blue: #174e7d; --ochre: #7a4300; --good: #1c5a3a; --bad: #8c1d2f; }
@media (prefers-color-scheme: dark) { :root { --paper: #16191b; --ink: #e6e4dd; --soft: #aab0b3; --line: #474d50; --sheet: #20262a;
  --blue: #94c6ef; --ochre: #eab56c; --good: #93d3ad; --bad: #f3a2ad; } }
* { box-sizing: border-box; }
html { color-scheme: light dark; scroll-padding-top: 1rem; }
body { margin: 0 auto; padding: 1rem clamp(0.75rem, 3vw, 2rem) 3rem; max-width: 82rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, sans-serif; overflow-wrap: break-word; }
h1 { font-size: 1.6rem; line-height: 1.25; margin: 0.5rem 0 0; }
h2 { font-size: 1.3rem; line-height: 1.3; margin: 2.5rem 0 0.5rem; border-top: 3px solid var(--ink); padding-top: 0.75rem; }
h3 { font-size: 1.1rem; margin: 1.75rem 0 0.5rem; }
h4 { font-size: 1rem; margin: 0 0 0.5rem; }
p { margin: 0.5rem 0; max-width: 50rem; }
a { color: var(--blue); text-underline-offset: 0.15em; }
a:focus-visible, [tabindex]:focus-visible { outline: 3px solid var(--blue); outline-offset: 2px; }
:target { outline: 2px dashed var(--ochre); outline-offset: 4px; }
.skip { position: absolute; left: -100vw; }
.skip:focus { left: 1rem; top: 0.5rem; background: var(--paper); padding: 0.5rem; z-index: 1; }
.job, .small { color: var(--soft); }
.small { font-size: 0.875rem; font-weight: normal; }
nav ul { display: flex; flex-wrap: wrap; gap: 0.25rem 1.25rem; list-style: none; margin: 0.75rem 0 0; padding: 0; }
code, pre { font-family: ui-monospace, monospace; font-size: 0.875rem; }
code { overflow-wrap: anywhere; }
pre { margin: 0; white-space: pre-wrap; overflow-wrap: anywhere; tab-size: 2; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 0.35rem 0.75rem 0.35rem 0; border-bottom: 1px solid var(--line); }
thead th { border-bottom: 2px solid var(--ink); font-size: 0.875rem; }
tbody th { font-weight: 600; }
.overview tbody th, .because tbody th { font-weight: normal; }
.number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
.scroll { overflow-x: auto; }
.scroll > table { min-width: 34rem; }
.letter { display: inline-block; min-width: 1.5em; padding: 0 0.3em; border: 1px solid var(--ink); text-align: center; font-weight: 700; font-size: 0.875rem; }
.good { color: var(--good); font-weight: 600; white-space: nowrap; }
.bad, .error { color: var(--bad); font-weight: 600; }
.warning { color: var(--ochre); }
.found li { margin-bottom: 0.75rem; }
.group { margin: 1.25rem 0; padding: 0.75rem 0 0.25rem 1rem; border-left: 6px double var(--ochre); }
.group.form { border-left: 4px dotted var(--blue); }
.mark { font-size: 0.8rem; font-weight: 600; padding: 0 0.4em; border: 1px solid currentColor; color: var(--ochre); }
.form .mark { color: var(--blue); border-style: dotted; }
.count { font-weight: normal; color: var(--soft); }
.sides { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(20rem, 100%), 1fr)); gap: 0.75rem; }
figure { margin: 0; padding: 0.5rem 0.75rem; background: var(--sheet); min-width: 0; }
figcaption { font-size: 0.875rem; color: var(--soft); margin-bottom: 0.25rem; }
figcaption .letter { color: var(--ink); }
.none { color: var(--soft); font-style: italic; margin: 0; }
.said { margin: 0.35rem 0 0; padding: 0 0 0 1rem; font-size: 0.875rem; }
.because { margin: 0.75rem 0 0.25rem; font-size: 0.875rem; table-layout: fixed; }
.because th, .because td { overflow-wrap: anywhere; }
.because thead th:first-child { width: 28%; }
.listing { font-size: 0.875rem; }
.listing pre { font-size: 0.8rem; }
.listing td { border-bottom-style: dotted; }
.listing tr.meaning td:first-child { border-left: 6px double var(--ochre); }
.listing tr.form td:first-child { border-left: 4px dotted var(--blue); }
.listing tr.same td:first-child { border-left: 4px solid transparent; }
.listing .links { white-space: normal; min-width: 7rem; }
.scroll > .listing { min-width: 44rem; }
.paper { display: none; }
@media print {
  .paper { display: inline; }
  .listing tbody tr:nth-child(n + 61) { display: none; }
  :root { --paper: #fff; --ink: #000; --soft: #333; --line: #999; --sheet: #fff; --blue: #003a6b; --ochre: #5c3200; --good: #0c4a2a; --bad: #7a0d20; }
  html { color-scheme: light; }
  body { font-size: 10pt; padding: 0; max-width: none; }
  nav, .skip { display: none; }
  a { color: inherit; text-decoration: none; }
  .scroll { overflow: visible; }
  .scroll > table, .scroll > .listing { min-width: 0; }
  figure { border: 1px solid var(--line); }
  .group, figure, tr, li { break-inside: avoid; }
  h2, h3, h4 { break-after: avoid; }
  .listing, .listing pre { font-size: 7.5pt; }
}
`;
