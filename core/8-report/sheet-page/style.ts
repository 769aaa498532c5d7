/**
 * The style of a set-up sheet: ink on paper, with black rules and large numbers, to be read at arm's length at a machine. Nothing is said by a
 * colour alone. On paper it is black on white; on a narrow screen each row of a table becomes a card.
 */
const screen = `
:root { --paper: #fff; --ink: #111; --soft: #4a4a4a; --line: #8c8c8c; --tint: #efefec; --alarm: #9c1420; }
@media (prefers-color-scheme: dark) { :root { --paper: #15171a; --ink: #eceae4; --soft: #b4b4b0; --line: #63676b; --tint: #24282c; --alarm: #ff9a9f; } }
* { box-sizing: border-box; }
html { color-scheme: light dark; }
body { margin: 0 auto; padding: 1rem clamp(0.75rem, 3vw, 2rem) 3rem; max-width: 64rem; background: var(--paper); color: var(--ink);
  font: 1.0625rem/1.45 system-ui, sans-serif; overflow-wrap: break-word; }
header { border: 3px solid var(--ink); padding: 0.75rem 1rem; }
.kind { margin: 0; font-weight: 700; letter-spacing: 0.08em; text-transform: uppercase; font-size: 0.9rem; }
h1 { font-size: 2rem; line-height: 1.15; margin: 0.1rem 0; }
.for { margin: 0; }
h2 { font-size: 1.35rem; line-height: 1.25; margin: 2.25rem 0 0.6rem; border-bottom: 3px solid var(--ink); padding-bottom: 0.2rem; }
h3 { font-size: 1.1rem; margin: 1.5rem 0 0.4rem; }
p { margin: 0.6rem 0; max-width: 52rem; }
.small { font-size: 0.9rem; color: var(--soft); font-weight: normal; }
.skip { position: absolute; left: -100vw; }
.skip:focus { left: 1rem; top: 0.5rem; background: var(--paper); color: var(--ink); padding: 0.5rem; z-index: 1; }
a:focus-visible, [tabindex]:focus-visible, input:focus-visible { outline: 3px solid var(--ink); outline-offset: 3px; }
.refused { border: 8px double var(--alarm); padding: 0.5rem 1rem; margin: 1.25rem 0; }
.refused h2 { margin: 0; border: 0; font-size: 3.25rem; line-height: 1.1; letter-spacing: 0.04em; text-transform: uppercase; color: var(--alarm); }
.refused p { font-size: 1.2rem; font-weight: 600; }
table { border-collapse: collapse; width: 100%; margin: 0.6rem 0; }
th, td { text-align: left; vertical-align: top; padding: 0.4rem 0.5rem; border: 1px solid var(--line); }
thead th { background: var(--tint); font-size: 0.9rem; line-height: 1.25; vertical-align: bottom; }
tbody th { font-weight: normal; }
.number { text-align: right; font-variant-numeric: tabular-nums; }
td.number { white-space: nowrap; }
td.loose { white-space: normal; }
.operations tbody th, .tools td.words { min-width: 10.5rem; }
.key { display: inline-block; min-width: 1.7em; padding: 0 0.3em; border: 2px solid var(--ink); text-align: center; font-weight: 700; font-size: 1.25rem; line-height: 1.35; }
.use { font-size: 0.9rem; color: var(--soft); }
code { font-family: ui-monospace, monospace; font-size: 0.95rem; overflow-wrap: anywhere; }
.hash span { display: inline-block; margin-right: 0.5em; }
.program .hash { display: inline-block; max-width: 37ch; font-weight: 700; }
.wide { overflow-x: auto; }
.picture svg { display: block; width: 100%; min-width: 32rem; max-width: 44rem; height: auto; }
.drawing text { fill: var(--ink); font: 16px system-ui, sans-serif; paint-order: stroke; stroke: var(--paper); stroke-width: 4px; }
.drawing .stock { fill: var(--tint); stroke: var(--ink); stroke-width: 2.5; }
.drawing .fixture { fill: url(#hatch); stroke: var(--ink); stroke-width: 1.5; }
.drawing .outline { fill: none; stroke: var(--ink); stroke-width: 1.5; stroke-dasharray: 6 3; }
.drawing .plate, .drawing .zero { fill: var(--paper); stroke: var(--ink); stroke-width: 1.5; }
.drawing .hatch { stroke: var(--line); stroke-width: 2; }
.drawing .thin { stroke: var(--ink); stroke-width: 1; fill: none; }
.drawing .dashed { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 10 5; }
.drawing .solid { fill: var(--ink); stroke: none; }
dl { display: grid; grid-template-columns: repeat(auto-fit, minmax(14rem, 1fr)); gap: 0.4rem 1rem; margin: 0.5rem 0; }
dt { font-size: 0.9rem; color: var(--soft); }
dd { margin: 0; font-variant-numeric: tabular-nums; }
.rack { display: flex; flex-wrap: wrap; gap: 0.5rem; list-style: none; margin: 0.5rem 0; padding: 0; }
.rack li { border: 2px solid var(--ink); padding: 0.2rem 0.6rem; text-align: center; font-size: 0.9rem; }
.rack strong { display: block; font-size: 1.25rem; }
.backplot { --paper: #fff; --ink: #111; --soft: #454d52; margin: 0.75rem 0; padding: 0.75rem; background: #fff; color: #111; border: 1px solid var(--line); }
.backplot > svg { display: block; width: 100%; height: auto; }
.backplot ul { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 0.25rem 1.5rem; }
.found { padding-left: 1.2rem; }
.found li { margin-bottom: 0.75rem; }
.severity { text-transform: uppercase; }
.error { color: var(--alarm); }
.ticks { list-style: none; padding: 0; counter-reset: step; }
.ticks > li { position: relative; margin-bottom: 0.7rem; padding-left: 2.4rem; counter-increment: step; }
.ticks > li::before { content: counter(step) "."; position: absolute; left: 0; font-weight: 700; }
.ticks ul { list-style: none; padding: 0; margin: 0.4rem 0 0; display: flex; flex-wrap: wrap; gap: 0.4rem 1.5rem; }
.ticks p { margin: 0; }
label { display: flex; gap: 0.6rem; align-items: flex-start; }
input[type="checkbox"] { flex: none; appearance: none; width: 1.5rem; height: 1.5rem; margin: 0; border: 2px solid var(--ink); background: var(--paper); }
input[type="checkbox"]:checked { background: linear-gradient(45deg, transparent 44%, var(--ink) 44% 56%, transparent 56%), linear-gradient(-45deg, transparent 44%, var(--ink) 44% 56%, transparent 56%), var(--paper); }
.fill { display: inline-block; min-width: 4rem; border-bottom: 1px solid var(--ink); margin-left: 0.4rem; height: 1.4em; text-align: left; }
.signed p { display: flex; gap: 0.75rem; align-items: flex-end; margin: 1.75rem 0 0; max-width: none; }
.blank { flex: 1; border-bottom: 1px solid var(--ink); }
.short { flex: 0 1 9rem; }
@media screen and (max-width: 44rem) {
  h1 { font-size: 1.6rem; }
  .refused h2 { font-size: 2.4rem; }
  .wide table, .wide thead, .wide tbody, .wide tr, .wide th, .wide td { display: block; }
  .wide thead { position: absolute; left: -200vw; }
  .wide tr { border: 2px solid var(--ink); margin-bottom: 0.75rem; padding: 0.25rem 0.5rem; }
  .wide th, .wide td { border: 0; padding: 0.2rem 0; text-align: left; white-space: normal; }
  .wide td[data-head]::before { content: attr(data-head) ": "; color: var(--soft); font-size: 0.9rem; }
  td:empty { display: none; }
}
`;

const paper = `
@page { margin: 16mm 13mm 15mm; }
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #222; --line: #555; --tint: #fff; --alarm: #000; }
  html { color-scheme: light; }
  body { font-size: 11.5pt; line-height: 1.35; padding: 0; max-width: none; }
  .skip { display: none; }
  header { border-width: 2pt; padding: 2mm 3mm; }
  h1 { font-size: 20pt; }
  h2 { font-size: 15pt; margin: 6mm 0 2mm; border-width: 2pt; }
  h3 { font-size: 12.5pt; margin: 4mm 0 1mm; }
  .refused h2 { font-size: 44pt; }
  .small, .use, thead th, dt { font-size: 9.5pt; }
  code { font-size: 10pt; }
  th, td { padding: 1mm 1.3mm; }
  table { font-size: 10.5pt; }
  .key { font-size: 13pt; }
  .files tr:not(.program) .hash { font-size: 8pt; white-space: nowrap; }
  .files tr:not(.program) .hash span { margin-right: 1mm; }
  thead { display: table-header-group; }
  tr, .together, .ticks > li, .found li, dl div, .rack li, .picture, .backplot, .signed { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
  .wide { overflow: visible; }
  .backplot { border: 0; padding: 0; }
  .backplot > svg { max-height: 200mm; }
  .picture svg { min-width: 0; max-width: 172mm; max-height: 126mm; margin: 0 auto; }
  input[type="checkbox"] { width: 5.5mm; height: 5.5mm; border-width: 1.2pt; }
}
`;

/** The style, with what stands at the head of each sheet of paper: texts of a job, which go in as characters of a string alone. */
export function sheetStyle(left: string, right: string): string {
  const small = "font: 9pt system-ui, sans-serif; color: #000; vertical-align: bottom; padding-bottom: 2mm;";
  return `${screen}${paper}@page {
  @top-left { content: ${cssString(left)}; ${small} white-space: pre-line; }
  @top-right { content: ${cssString(right)}; ${small} font-weight: 700; }
  @bottom-right { content: "page " counter(page) " of " counter(pages); font: 9pt system-ui, sans-serif; color: #000; }
}
`;
}

/** A text as a string of CSS: letters, digits and blanks stand as they are, all else by its number. */
export function cssString(text: string): string {
  const characters = [...text].map((character) =>
    /[A-Za-z0-9 ]/.test(character) ? character : `\\${character.codePointAt(0)?.toString(16) ?? ""} `,
  );
  return `"${characters.join("")}"`;
}
