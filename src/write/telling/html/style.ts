/** How a text looks as a page: black on white, for the screen, and for A4 and Letter alike. */
export const style = `
:root { --ink: #13181b; --soft: #4d585c; --hair: #c9d3d4; --line: #7c898d; --paper: #fff; --blue: #0a5c8f; --red: #b3470a;
  --serif: "Source Serif 4", "Noto Serif", "Noto Naskh Arabic", Georgia, "Times New Roman", serif;
  --sans: "Source Sans 3", "Noto Naskh Arabic", system-ui, sans-serif; color-scheme: light dark; }
@media screen and (prefers-color-scheme: dark) {
  :root { --ink: #eef3f3; --soft: #a9b6b8; --hair: #37454a; --line: #6f8187; --paper: #12181a; --blue: #6fb7e6; --red: #f0935a; }
}
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); font: 400 1.0625rem/1.5 var(--serif); }
body { margin: 0; }
main { margin-inline: auto; max-width: 42rem; padding: 3rem 1.25rem 6rem; overflow-wrap: break-word; hyphens: auto; }
h1, h2, h3, h4 { margin: 0; font-weight: 400; line-height: 1.2; text-wrap: balance; hyphens: manual; }
h1 { font-size: 2.1rem; }
h2 { margin-block: 3rem .6rem; padding-block-start: .6rem; border-block-start: 1px solid var(--ink); font-size: 1.5rem; }
h3 { margin-block: 2rem .4rem; font-size: 1.2rem; }
h4 { margin-block: 1.4rem .3rem; font: 600 1.0625rem/1.3 var(--serif); }
p { margin-block: .7rem; }
.authors { margin-block: .6rem 2rem; color: var(--soft); }
a { color: inherit; text-decoration: underline; text-decoration-color: var(--line); text-decoration-thickness: 1px; text-underline-offset: .15em; }
a:hover { text-decoration-color: currentColor; }
a.number { text-decoration-style: dotted; text-decoration-color: var(--hair); }
.number { font-variant-numeric: tabular-nums; }
:focus-visible { outline: 2px solid var(--ink); outline-offset: 2px; }
:target { background: var(--hair); }
blockquote { margin: 1rem 0; padding-inline: 1.5rem; }
ul, ol { margin-block: .7rem; padding-inline-start: 1.5rem; }
li { margin-block: .25rem; }
.caution { padding-inline-start: 1rem; border-inline-start: 1px solid var(--ink); font: .95rem/1.45 var(--sans); }
dl { margin-block: .9rem; font: .95rem/1.45 var(--sans); }
dl > div { display: grid; grid-template-columns: minmax(6rem, 11rem) 1fr; gap: .2rem 1rem; padding-block: .25rem; border-block-end: 1px solid var(--hair); }
dt { color: var(--soft); }
dd { margin: 0; }
nav { margin-block: 1.5rem 2rem; font-family: var(--sans); }
.contents, .references, .computations { padding: 0; list-style: none; }
.contents li { margin: 0; }
.contents a { display: block; padding-block: .2rem; text-decoration: none; }
.contents a:hover { text-decoration: underline; }
.contents .level-2 { padding-inline-start: 1.25rem; font-size: .95rem; }
.contents .level-3 { padding-inline-start: 2.5rem; font-size: .95rem; color: var(--soft); }
.references li { margin-block: .5rem; padding-inline-start: 1.5rem; text-indent: -1.5rem; overflow-wrap: anywhere; hyphens: manual; }
.references li > * { text-indent: 0; }
.computations { font: .9rem/1.4 var(--sans); }
.computations li { margin-block: .6rem; }
code { font: .75rem/1.4 ui-monospace, "Cascadia Mono", Menlo, monospace; color: var(--soft); overflow-wrap: anywhere; }
.table { margin-block: 1.6rem; overflow-x: auto; font: .9rem/1.35 var(--sans); hyphens: manual; }
table { border-collapse: collapse; width: 100%; border-block: 1px solid var(--ink); }
caption, figcaption { margin-block-end: .5rem; text-align: start; font: .95rem/1.4 var(--sans); }
caption b, figcaption b { font-weight: 600; }
th, td { padding: .35rem .9rem .35rem 0; text-align: start; vertical-align: top; font-weight: 400; }
[dir="rtl"] th, [dir="rtl"] td { padding: .35rem 0 .35rem .9rem; }
thead th { font-weight: 600; vertical-align: bottom; border-block-end: 1px solid var(--line); }
tbody tr + tr > * { border-block-start: 1px solid var(--hair); }
.figure { text-align: end; font-variant-numeric: tabular-nums; white-space: nowrap; }
figure { margin: 2rem 0; }
figure img { display: block; max-width: 100%; height: auto; background: #fff; }
figcaption { margin-block-start: .6rem; }
.unseen { color: var(--soft); font: .95rem/1.4 var(--sans); }
.standing { white-space: nowrap; font-family: var(--sans); font-size: .95em; }
.stands { color: var(--blue); }
.falls { color: var(--red); }
.unsupported { color: var(--soft); }
.small-caps { font-variant-caps: small-caps; }
sup, sub { line-height: 0; font-size: .72em; }
.notes { margin-block-start: 3rem; border-block-start: 1px solid var(--ink); font-size: .9rem; overflow-wrap: anywhere; }
.notes a[role] { text-decoration: none; padding-inline: .3rem; }
[role="doc-noteref"] { text-decoration: none; padding-inline: .1em; }
.room div { height: 2.2rem; border-block-end: 1px solid var(--line); }
@media screen and (min-width: 60rem) {
  .table { margin-inline: -7rem; }
}
@media (max-width: 30rem) {
  html { font-size: 1rem; }
  h1 { font-size: 1.7rem; }
  main { padding-block-start: 1.5rem; }
  dl > div { grid-template-columns: 1fr; gap: 0; }
  blockquote { padding-inline: 1rem 0; }
}
@media print {
  @page { size: auto; margin: 22mm 24mm 24mm; }
  html { font-size: 10.5pt; }
  main { max-width: none; padding: 0; }
  h1 { font-size: 20pt; }
  h2 { font-size: 15pt; }
  h3 { font-size: 12.5pt; }
  h2, h3, h4, caption { break-after: avoid; }
  p, li { orphans: 2; widows: 2; }
  .apart { break-before: page; }
  figure, tr, blockquote { break-inside: avoid; }
  .table { overflow: visible; font-size: 9pt; }
  a { text-decoration: none; }
  [role="doc-backlink"] { display: none; }
  :target { background: none; }
}
`;
