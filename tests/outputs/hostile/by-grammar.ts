import { everywhere, kindOf, listNames } from "../../../src/read/grammar/kinds.ts";
import type { Field, Fields, ListName } from "../../../src/read/grammar/field.ts";
import { settingsFields } from "../../../src/read/grammar/settings.ts";

/** Whatever could run in a page, lead out of it, or end what it stands in; what runs sets `ran`. */
export const attempt = [
  `A <img src=x onerror="window.ran=1"><script>window.ran=2</script><svg/onload=window.ran=3>`,
  `</style></script></textarea></title>"'><b onmouseover=window.ran=4 autofocus onfocus=window.ran=4 tabindex=0>`,
  `[l](javascript:window.ran=5)![i](http://example.org/i.png)<iframe srcdoc="<script>parent.ran=6</script>"></iframe>`,
  `<link rel=stylesheet href=//example.org/x.css><meta http-equiv=refresh content=0;url=//example.org/>`,
  `<base href=//example.org/><form action=//example.org/><button>b</button></form>]]>--><!--\u202e`,
].join(" ");

/** What runs where it stands in the place of an address. */
export const lure = "javascript:window.ran=8";

/** As short as a text may have to be. */
const brief = `<img src=x onerror="window.ran=9">`;

/** What is of the kind that is wanted, where only some values are; by the field's type, or by its name in a record. */
const good: Readonly<Record<string, unknown>> = {
  flag: true,
  number: 2,
  amount: 2,
  whole: 3,
  year: 1990,
  date: "1998",
  quantity: "3.1 ± 0.1 m",
  quantities: ["3.1 m", "3.2 m"],
  numberMap: { "claims-a": 0.5 },
  probability: 0.5,
  citation: `k1 ${attempt}`,
  citations: [`k1 ${attempt}`, "passages-a"],
  "shares-error.of": "1 %",
  "to-nearest": "1 cm",
  "withhold-location": false,
  approximate: "2.5 %",
  reproducibility: "1 %",
  selector: { type: "TextQuoteSelector", exact: attempt },
  inputs: { values: { of: "artefacts-a", dimension: `width ${brief}` } },
  supports: { p: "< 0.01" },
  disputes: { p: "> 0.1" },
  parameters: { low: "0.3 m", high: "1 m", draws: 99 },
  show: ["claims-a", "images-a", "measurements-a"],
  // Of which there are only a few, one that computes something and draws it.
  plugin: "unit-fit",
  // Where it says nothing of a thing it is no use, and where there are two they must differ.
  present: "true",
  dimension: `width ${brief}`,
};

interface Way {
  /** Which of the two records of a kind it is. */
  readonly n: "a" | "b";
  readonly list: ListName | null;
  readonly text: string;
}

function valueOf(field: Field, name: string, path: string, way: Way): unknown {
  const known = good[path] ?? good[name];
  if (known !== undefined && way.n === "a") return known;
  switch (field.type) {
    case "text":
      return field.most === undefined ? way.text : brief;
    case "texts":
      return [way.text, brief];
    case "textMap":
      return { [way.text]: way.text };
    case "json":
      return { [way.text]: [way.text, { [brief]: way.text }] };
    case "choice":
      return field.of[way.n === "a" ? 0 : field.of.length - 1];
    case "ref":
    case "refs":
      return referred(field.to, way);
    case "group":
      return filled(field.fields, path, way);
    case "items":
      return [filled(field.fields, path, way)];
    case "named":
      return { [brief]: filled(field.fields, path, way) };
    case "id":
      return `${way.list ?? "x"}-${way.n}`;
    default:
      return known ?? good[field.type];
  }
}

/** A record that there is; of a kind's own only what comes first, since what leads to itself is something else. */
function referred(to: readonly string[], { n, list }: Way): unknown {
  const [first = ""] = to.filter((target) => target !== list || n === "b");
  return first === "" ? undefined : first === "sources" ? "k1" : `${first}-a`;
}

function filled(fields: Fields, path: string, way: Way): Readonly<Record<string, unknown>> {
  const entries = Object.entries(fields).map(([name, field]) => {
    const at = path === "" ? name : `${path}.${name}`;
    return [name, valueOf(field, name, at, way)] as const;
  });
  return Object.fromEntries(entries.filter(([, value]) => value !== undefined));
}

/** A record of a kind with all its fields, but those of which it may have only one way of saying a thing. */
function record(list: ListName, n: "a" | "b"): Readonly<Record<string, unknown>> {
  const { fields, needs } = kindOf(list);
  const whole = filled({ ...fields, ...everywhere }, "", { n, list, text: n === "a" ? attempt : lure });
  if (needs?.exactly !== true) return whole;
  const kept = needs.oneOf[n === "a" ? 0 : needs.oneOf.length - 1]?.split("+") ?? [];
  const ways = needs.oneOf.flatMap((one) => one.split("+"));
  return Object.fromEntries(
    Object.entries(whole).filter(([name]) => kept.includes(name) || !ways.includes(name)),
  );
}

/** For each field of a kind a record that has the attempt there, in whatever place something else is wanted. */
function wrong(list: ListName): readonly object[] {
  const { fields } = kindOf(list);
  const base = record(list, "a");
  return Object.entries(fields)
    .filter(([, { type }]) => type !== "text" && type !== "texts" && type !== "textMap" && type !== "json")
    .map(([name], at) => ({ ...base, id: `${list}-wrong-${at}`, [name]: attempt }));
}

/** Fields of CSL that hold a text. */
const fieldsOfCsl = [
  "title title-short container-title collection-title publisher publisher-place event-title abstract note annote archive",
  "call-number DOI ISBN ISSN URL PMID edition volume issue page genre medium language keyword version status source",
].flatMap((some) => some.split(" "));

const source = (id: string, text: string): object => ({
  ...Object.fromEntries(fieldsOfCsl.map((name) => [name, text])),
  id,
  type: "book",
  author: [{ family: text, given: brief }, { literal: text }],
  editor: [{ family: text, given: lure }],
  issued: { "date-parts": [[1990]] },
});

const drawing = `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="40" height="20" onload="parent.ran=10">
<script>parent.ran=11;alert(1)</script><script href="http://example.org/s.js"/><style>@import url(http://example.org/x.css);</style>
<image width="4" height="4" href="http://example.org/i.png"/><use href="http://example.org/u.svg#u"/>
<a xlink:href="${lure}"><path d="M0 0H40V20Z" onclick="parent.ran=12"/></a>
<foreignObject width="40" height="20"><body xmlns="http://www.w3.org/1999/xhtml"><img src="x" onerror="parent.ran=13"/><iframe src="${lure}"/></body></foreignObject>
<set attributeName="href" to="${lure}"/><animate attributeName="href" values="${lure}"/></svg>`;

/** Few letters that come to a thousand million of lines, each of which a browser would draw. */
const endless = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><defs><g id="u0"><path d="M0 0H4"/></g>${[
  0, 1, 2, 3, 4, 5, 6, 7, 8,
]
  .map((n) => `<g id="u${n + 1}">${`<use href="#u${n}"/>`.repeat(10)}</g>`)
  .join("")}</defs><use href="#u9"/></svg>`;

/** A name that a file can have, and no page should be made of. */
const named = `"onload=window.ran=14 <b><img src=x onerror=window.ran=15>`;

/** The settings that name files, or must fit the records. */
const settings = {
  format: 1,
  language: "en",
  bibliography: ["sources.json", "other.bib"],
  "measurement-tables": ["table.csv"],
  "artefact-tables": [],
  "citation-style": undefined,
  review: undefined,
  testimony: "counts",
  dimensions: { [`width ${brief}`]: { kind: "length", also: [lure], taken: attempt } },
  units: { [brief]: { is: "0.743 m", also: [lure], from: "k1", "found-in": "artefacts-b" } },
  rules: { [attempt]: attempt, "uncited-source": "note" },
  withhold: undefined,
  use: undefined,
};

/** The key of the source that everything is said in; another's can run by itself. */
const keys = ["k1", `k'onload=window.ran=16`];

/** Things enough for a number to be computed from them. */
const parts = [1, 2, 3, 4, 5, 6, 7].map((n) => `artefacts-a/part-${n}`);

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/**
 * A corpus by its files, made from the table of kinds: two records of each kind in which every field is filled, with an
 * attempt wherever a text may stand, and one more for each field that takes no text. So a field that is new is in it.
 */
export function filesByGrammar(): Readonly<Record<string, unknown>> {
  const way: Way = { n: "a", list: null, text: attempt };
  const records = Object.fromEntries(listNames.map((list) => [list, [record(list, "a"), record(list, "b")]]));
  const bad = Object.fromEntries(listNames.map((list) => [list, wrong(list)]));
  return {
    "corpus.yaml": { ...filled(settingsFields, "", way), ...settings },
    "records.yaml": { ...records, images: imagesOf(records["images"] ?? []), [attempt]: [{ id: attempt }] },
    [`${named}.yaml`]: bad,
    "parts.yaml": { artefacts: parts.map((id) => ({ id, name: attempt })) },
    "broken.yaml": `claims:\n  - id: ${attempt}\n    text: [`,
    "sources.json": keys.map((key) => source(key, attempt)),
    "other.bib": `@book{k2, title = {${attempt.replaceAll(/[{}]/g, "")}}, author = {${brief}}, url = {${lure}}, year = {1990}}\n`,
    "table.csv": [
      "of,dimension,value,from,note",
      ...parts.map((id, at) => [id, `width ${brief}`, `${at + 2}.40 m`, "k1", attempt].map(quoted).join()),
    ].join("\n"),
    "review/introduction.md": `# ${attempt}\n\n${attempt}\n\n[a](${lure}) <${lure}> ![x](http://example.org/x.png)\n\n{{claim:claims-a}} [@k1, ${brief}] {{${attempt}}}\n`,
    "images/drawing.svg": drawing,
    "images/endless.svg": endless,
    [`images/${named}.svg`]: drawing,
  };
}

/** One picture that may be shown to anybody, one whose name is an attempt, and one that would never be done. */
function imagesOf(records: readonly Readonly<Record<string, unknown>>[]): readonly object[] {
  const [one, other] = records;
  return [
    { ...one, file: "images/drawing.svg", publish: true, licence: "CC0-1.0" },
    { ...other, file: `images/${named}.svg`, publish: true, licence: lure },
    { ...other, id: "images-endless", file: "images/endless.svg", publish: false },
  ];
}
