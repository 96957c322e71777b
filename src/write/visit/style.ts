/** How a visit sheet looks: black on white, lines to write on, for A4 and Letter alike. */
export const style = `
:root { --ink: #13181b; --soft: #4d585c; --line: #7c898d; --paper: #fff; color-scheme: light dark; }
@media screen and (prefers-color-scheme: dark) {
  :root { --ink: #eef3f3; --soft: #a9b6b8; --line: #6f8187; --paper: #12181a; }
}
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1.5rem 1rem 5rem; max-width: 46rem; color: var(--ink); background: var(--paper);
  font: 1rem/1.45 "Source Sans 3", system-ui, sans-serif; overflow-wrap: anywhere; }
h1 { margin: 0; font: 400 1.7rem/1.2 "Source Serif 4", Georgia, serif; }
h2 { margin: 2.2rem 0 .4rem; padding-top: .5rem; border-top: 1px solid var(--ink); font-size: 1.0625rem; }
h3 { margin: 1.2rem 0 .2rem; font: 600 1.05rem/1.3 "Source Serif 4", Georgia, serif; }
p, ul { margin: .4rem 0; }
.lead, .says, .after, dt { color: var(--soft); }
dl { display: grid; grid-template-columns: minmax(6rem, max-content) 1fr; gap: .2rem 1rem; margin: .4rem 0; }
dd { margin: 0; }
.row { break-inside: avoid; padding-bottom: .6rem; border-bottom: 1px solid var(--line); }
.fields { display: grid; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); gap: .5rem 1rem; align-items: end; }
label { display: block; font-size: .85rem; color: var(--soft); }
label > span { display: block; }
.ticks { display: none; }
label > span::first-letter { text-transform: uppercase; }
label.wide { grid-column: 1 / -1; }
input, select { display: block; width: 100%; min-height: 2.4rem; padding: .2rem .3rem; font: inherit; font-size: 1rem;
  color: var(--ink); background: var(--paper); border: 0; border-bottom: 1px solid var(--ink); border-radius: 0;
  font-variant-numeric: tabular-nums; }
:focus-visible { outline: 2px solid var(--ink); outline-offset: 2px; }
.room div { height: 2.2rem; border-bottom: 1px solid var(--line); }
.keep { position: fixed; inset: auto 0 0; display: flex; flex-wrap: wrap; gap: .5rem 1rem; align-items: center; justify-content: center;
  padding: .6rem 1rem; background: var(--paper); border-top: 1px solid var(--ink); }
@media screen { .leaf[data-folded] > :not(h2, .unfold) { display: none; } }
button.unfold { color: var(--ink); background: none; }
button { min-height: 2.4rem; padding: .3rem 1rem; font: inherit; color: var(--paper); background: var(--ink); border: 1px solid var(--ink); border-radius: 0; }
.after button { color: var(--ink); background: none; }
@media print {
  @page { margin: 16mm; }
  body { padding: 0; max-width: none; font-size: 10.5pt; }
  .keep, .after, .unfold { display: none; }
  .apart { break-before: page; }
  h2, h3 { break-after: avoid; }
  input::placeholder { color: transparent; }
  select:has(> option[value=""]:checked) { display: none; }
  select:has(> option[value=""]:checked) + .ticks { display: flex; flex-wrap: wrap; gap: .3rem 1.6rem; padding: .4rem 0; color: var(--ink); font-size: 10pt; }
  .ticks > span::before { content: ""; display: inline-block; width: .8em; height: .8em; margin-inline-end: .5em; border: 1px solid var(--ink); }
  label:has(> .ticks) { grid-column: 1 / -1; }
  select { appearance: none; }
  input::-webkit-calendar-picker-indicator { display: none; }
}
`;
