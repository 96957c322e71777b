/** How the page looks: drawing film by day and in a dark room, on paper black on white. */
export const style = `
:root { --sheet: #f5f8f8; --paper: #fff; --ink: #13181b; --soft: #4d585c; --hair: #c9d3d4; --line: #7c898d;
  --grid: #e2ecec; --grid-strong: #c6dadb; --blue: #0a5c8f; --red: #b3470a; color-scheme: light dark;
  --serif: "Source Serif 4", "Noto Serif", "Noto Naskh Arabic", Georgia, "Times New Roman", serif;
  --sans: "Source Sans 3", "Noto Naskh Arabic", system-ui, sans-serif; }
@media screen and (prefers-color-scheme: dark) {
  :root { --sheet: #12181a; --paper: #1a2225; --ink: #eef3f3; --soft: #a9b6b8; --hair: #37454a; --line: #6f8187;
    --grid: #1b2629; --grid-strong: #263539; --blue: #6fb7e6; --red: #f0935a; }
}
* { box-sizing: border-box; }
[hidden] { display: none !important; }
html { background: var(--sheet); color: var(--ink); font: 400 1rem/1.45 var(--sans); overflow-wrap: break-word; }
body, h1, h2, h3, p, ul, ol, dl, dd, figure { margin: 0; padding: 0; }
body { display: grid; grid-template-columns: 17rem minmax(0, 1fr); min-height: 100vh; }
.lines { position: absolute; }
ul, ol { list-style: none; }
.serif { font-family: var(--serif); }
.sans { font-family: var(--sans); }
a { color: inherit; text-decoration: underline; text-decoration-color: var(--line); text-decoration-thickness: 1px; text-underline-offset: .2em; }
a:hover { text-decoration-color: currentColor; }
svg a { text-decoration: none; }
svg a:hover text { text-decoration: underline; }
:focus-visible { outline: 2px solid var(--ink); outline-offset: 3px; }
main:focus { outline: none; }
.skip { position: absolute; inset-inline-start: 0; inset-block-start: -4rem; padding: .5rem 1rem; background: var(--paper); z-index: 1; }
.skip:focus { inset-block-start: 0; }
.side { border-inline-end: 1px solid var(--hair); padding: 1.4rem 1.2rem 2rem 1.4rem; }
[dir="rtl"] .side { padding: 1.4rem 1.4rem 2rem 1.2rem; }
.title { font: 400 1.125rem/1.3 var(--serif); margin-block-end: 1.2rem; }
.title a, nav a { text-decoration: none; }
.title a:hover, nav a:hover { text-decoration: underline; }
.side label { display: block; margin-block: .8rem .2rem; color: var(--soft); font-size: .875rem; }
input, select, button { min-height: 2rem; padding: .2rem .5rem; border: 1px solid var(--line); border-radius: 0; background: var(--paper); color: var(--ink); font: 1rem/1.3 var(--sans); }
input { width: 100%; }
button { border-color: transparent; background: none; text-decoration: underline; text-underline-offset: .2em; cursor: pointer; padding-inline: .3rem; }
button:disabled { color: var(--soft); text-decoration: none; cursor: default; }
.years { display: flex; gap: .2rem; margin-inline-start: -.3rem; }
select { flex: 1; min-width: 0; font-variant-numeric: tabular-nums; }
nav { margin-block-start: 1.6rem; }
nav ul + ul { margin-block-start: 1.2rem; padding-block-start: 1rem; border-block-start: 1px solid var(--hair); }
nav a { display: inline-block; padding-block: .2rem; color: var(--soft); }
nav .asked a { padding-block: .35rem; line-height: 1.3; }
nav a:hover, nav a[aria-current] { color: var(--ink); }
nav a[aria-current] { font-weight: 600; }
.count, .quiet { color: var(--soft); font-size: .875rem; }
.count { font-variant-numeric: tabular-nums; }
main { padding: 1.6rem 2.1rem 4rem; max-width: 72rem; min-width: 0; }
#notice { margin-block-end: 1.2rem; padding-inline-start: .8rem; border-inline-start: 1px solid var(--ink); color: var(--soft); }
html:not(.paged) .page + .page { margin-block-start: 4rem; padding-block-start: 1.6rem; border-block-start: 1px solid var(--ink); }
.paged .page { display: none; }
.paged .page.open { display: block; margin: 0; padding: 0; border: 0; }
h1, h2 { font: 400 2rem/1.2 var(--serif); max-width: 50rem; text-wrap: balance; }
h2 { font-size: 1.6rem; }
h1:focus, h2:focus { outline: none; }
h3 { margin-block: 2rem .5rem; font: 600 .9375rem/1.4 var(--sans); }
.kind { color: var(--soft); font: 600 .8125rem/1.4 var(--sans); margin-block-end: .2rem; }
.kind::first-letter { text-transform: uppercase; }
.authors { margin-block: .5rem 1.2rem; color: var(--soft); }
.reference { margin-block-start: .8rem; max-width: 46rem; font: 1.0625rem/1.42 var(--serif); }
.small-caps { font-variant-caps: small-caps; }
p { max-width: 46rem; margin-block: .5rem; }
.m { margin-inline-start: .15rem; white-space: nowrap; color: var(--ink); font: 400 .9375rem/1.4 var(--sans); }
.m svg { width: 26px; height: 10px; vertical-align: baseline; margin-inline-end: .15rem; }
.m b { font-weight: 400; }
.m.stands { color: var(--blue); }
.m.falls { color: var(--red); }
.m.unsupported { color: var(--soft); }
.m.none { display: none; }
.why { margin-block: .7rem; font-size: 1rem; }
.why .m { margin-inline: 0 .4rem; }
.ties li, .index li, .reasons li, .parts li, .plain li, .findings li, .cautions li, .events li, .holders li { max-width: 52rem; padding-block: .28rem; }
.ties a, .index a, .reasons a, .questions a, .answers a, .outline a { font-family: var(--serif); font-size: 1.0625rem; line-height: 1.42; }
.ties > li, .index > li, .findings > li, .positions > li { border-block-end: 1px solid var(--hair); }
.how { color: var(--soft); font-size: .875rem; }
.holders { margin-block-start: .3rem; }
.holders li { display: inline-block; margin-inline-end: 1.2rem; padding-block: .15rem; }
.questions > li, .answers > li { margin-block: 1.6rem; }
.answer, .answer a { font: 400 1.1875rem/1.35 var(--serif); }
.questions .ties { margin-block-start: .4rem; }
.in-1 { padding-inline-start: 1.5rem; } .in-2 { padding-inline-start: 3rem; } .in-3, .in-4 { padding-inline-start: 4.5rem; }
.outline ul { padding-inline-start: 1.1rem; border-inline-start: 1px solid var(--hair); }
.outline li { padding-block: .2rem; max-width: 56rem; }
.outline > li { margin-block: 1rem; }
.positions > li { padding-block: .5rem; max-width: 52rem; }
.positions ul { padding-inline-start: 1.1rem; }
q { font-family: var(--serif); }
.about { display: block; font-size: .9375rem; }
.sources li { padding-block: .15rem; color: var(--soft); font-size: .9375rem; }
dl { max-width: 56rem; }
dl > div { display: grid; grid-template-columns: minmax(6rem, 11rem) 1fr; gap: 0 1.2rem; padding-block: .35rem; border-block-end: 1px solid var(--hair); }
dt { color: var(--soft); }
dd { grid-column: 2; font-family: var(--serif); font-size: 1.0625rem; }
dd .how { font-family: var(--sans); }
.key dt { color: var(--ink); }
.key .m { margin: 0; }
.key dd { font: inherit; }
.table { overflow-x: auto; }
table { border-collapse: collapse; font-variant-numeric: tabular-nums; font-size: .9375rem; min-width: 30rem; }
th, td { padding-block: .35rem; padding-inline: 0 1.4rem; text-align: start; vertical-align: top; font-weight: 400; border-block-end: 1px solid var(--hair); }
td:nth-child(2), td:nth-child(3) { white-space: nowrap; }
th[scope="row"] { min-width: 8rem; }
td:last-child { min-width: 11rem; }
thead th { font: 600 .8125rem/1.4 var(--sans); color: var(--soft); }
.not-yet { display: none; color: var(--soft); }
.answers:not(:has(> li:not([hidden]))) + .not-yet { display: block; }
section:has(> ul, > .table):not(:has(> ul > li:not([hidden]), > .table tbody > tr:not([hidden]), > p)) { display: none; }
.map { overflow: auto; border-block: 1px solid var(--hair); background: var(--sheet); }
.map svg { display: block; }
.drawing { overflow-x: auto; }
.drawing svg { display: block; max-width: 44rem; min-width: 34rem; width: 100%; height: auto; }
figure { margin-block: 1rem; }
figure img { display: block; max-width: 100%; height: auto; background: #fff; }
figcaption { margin-block-start: .5rem; font-size: .9375rem; color: var(--soft); }
@media screen and (max-width: 700px) {
  body { display: block; }
  .side, [dir="rtl"] .side { border-inline-end: 0; border-block-end: 1px solid var(--hair); padding: 1rem 1.1rem; }
  .title { margin-block-end: .4rem; }
  nav { margin-block-start: 1rem; }
  nav .asked { display: none; }
  nav ul + ul { border: 0; padding: 0; margin: 0; display: flex; flex-wrap: wrap; column-gap: 1.1rem; }
  main { padding: 1.3rem 1.1rem 3rem; }
  h1 { font-size: 1.6rem; }
  h2 { font-size: 1.35rem; }
  dl > div { grid-template-columns: 1fr; }
  dd { grid-column: 1; }
}
@media print {
  :root { --sheet: #fff; --ink: #000; }
  @page { size: auto; margin: 20mm; }
  html { font-size: 10pt; }
  body { display: block; }
  .side, .skip, #notice:empty { display: none; }
  main { padding: 0; max-width: none; }
    .map, .table, .drawing { overflow: visible; }
  .drawing svg { min-width: 0; }
  .map svg { width: 100%; height: auto; max-height: 230mm; }
  h2, h3 { break-after: avoid; }
  li, tr, figure { break-inside: avoid; }
  .outline li { break-inside: auto; }
  a { text-decoration: none; }
}
`;
