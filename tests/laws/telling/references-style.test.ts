import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { styleTrouble } from "../../../src/read/bibliography/style/csl-style.ts";
import { shippedStyles } from "../../../src/read/bibliography/style/shipped.ts";
import { localesFor } from "../../../src/write/references/locales/locales.ts";
import { referencesIn, StyleFails } from "../../../src/write/references/references.ts";
import { plainOf } from "../../../src/write/references/runs.ts";
import { shippedStyle } from "../../../src/write/references/shipped-styles.ts";
import { locales, references, styleNames, styleText } from "./references-items.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const model = build(demo, [], { read: new Map(), compute: new Map() }).model;
const items = [...(model?.graph.sources.values() ?? [])].map((source) => source.csl);

test("the list of shipped styles is the folder of styles", async () => {
  expect([...shippedStyles].toSorted()).toEqual(styleNames.toSorted());
  expect(shippedStyles.length).toBeGreaterThanOrEqual(8);
  for (const name of shippedStyles) expect(await shippedStyle(name)).toBe(styleText(name));
});

describe.each(styleNames)("%s", (name) => {
  test("stands by itself, and says its licence", () => {
    expect(styleTrouble(styleText(name))).toBeNull();
    expect(styleText(name)).toMatch(
      /<rights license="http:\/\/creativecommons.org\/licenses\/by-sa\/3.0\/">/,
    );
    const notices = readFileSync(new URL("../../../NOTICES", import.meta.url), "utf8");
    expect(notices).toContain("CitationStyles.org");
  });

  test("writes every source of the demo, alone and together", () => {
    expect(items.length).toBeGreaterThan(10);
    const all = references(name, items);
    const entries = all.bibliography();
    expect(entries).toHaveLength(items.length);
    for (const { id } of items) {
      const alone = plainOf(all.reference(id));
      expect(alone).toMatch(/\p{L}{3}/u);
      for (const text of [alone, plainOf(all.cited([{ id, at: "p. 3" }])), plainOf(all.narrative({ id }))])
        expect(text).not.toMatch(/NO_PRINTED_FORM|undefined|<|^$/);
    }
  });
});

test("British styles have British quotation marks, German ones German terms", async () => {
  const article = {
    id: "a",
    type: "chapter",
    title: "Of posts",
    "container-title": "Rings",
    author: [{ family: "Hale" }],
    editor: [{ family: "Pell" }],
    issued: { "date-parts": [[1896]] },
    page: "1-9",
  };
  expect(plainOf(references("harvard-cite-them-right", [article]).reference("a"))).toContain("‘Of posts’,");
  expect(plainOf(references("chicago-author-date", [article]).reference("a"))).toContain("“Of Posts.”");
  const style = styleText("apa");
  const german = referencesIn({ style, locales: await localesFor(style, "de"), language: "de" }, [article]);
  expect(plainOf(german.reference("a"))).toContain("S. 1–9");
  const unknown = referencesIn({ style, locales: await localesFor(style, "grc"), language: "grc" }, [
    article,
  ]);
  expect(plainOf(unknown.reference("a"))).toContain("pp. 1–9");
});

const csl = (inside: string, head = ""): string =>
  `<?xml version="1.0" encoding="utf-8"?>\n<style xmlns="http://purl.org/net/xbiblio/csl" class="in-text" version="1.0"><info><title>Own</title>${head}</info>${inside}</style>`;
const cite = (inside: string): string => `<citation><layout>${inside}</layout></citation>`;
const doubling = Array.from(
  { length: 30 },
  (_, n) => `<macro name="m${n}"><text macro="m${n + 1}"/><text macro="m${n + 1}"/></macro>`,
).join("");

function told(named: string, text?: string): readonly string[] {
  const corpus = `format: 1\ntitle: Cited\ncitation-style: ${named}\n`;
  const files = [
    { path: "corpus.yaml", text: corpus },
    ...(text === undefined ? [] : [{ path: "own.csl", text }]),
  ];
  const { model: built, findings } = build(files, [], { read: new Map(), compute: new Map() });
  for (const one of findings) {
    expect(one.level).toBe("error");
    expect(corpus.slice(one.at?.start, one.at?.end)).toBe(named);
    expect(built?.graph.citationStyle).toEqual({ shipped: "chicago-author-date" });
  }
  return findings.map((one) => `${one.rule} ${inEnglish(one.message)}`);
}

test.each([
  ["apa7", undefined, /^bad-value Unknown citation style `apa7`, expected `apa`, or the path/],
  ["Chicago Author Date", undefined, /expected `chicago-author-date`, or/],
  ["own.csl", undefined, /^unreadable-file Missing file `own.csl`/],
  [
    "own.csl",
    csl("", '<link href="https://styles.example/apa" rel="independent-parent"/>'),
    /^bad-value Unexpected dependent style.*`apa`, which comes with the program/,
  ],
  ["own.csl", "Not a style at all", /^bad-value Unexpected text outside the elements in line 1 in `own.csl`/],
  ["own.csl", csl(cite("<text value='x'>")), /closes nothing in line 2/],
  ["own.csl", '<!DOCTYPE style [<!ENTITY a "a">]>', /Unexpected a document type/],
  ["own.csl", "<html/>", /Unexpected element `html`/],
  ["own.csl", csl(""), /without `citation`/],
  ["own.csl", csl(cite('<text macro="names"/>')), /call of the macro `names`/],
  ["own.csl", csl(`<macro name="m"><text macro="m"/></macro>${cite('<text macro="m"/>')}`), /calls itself/],
  [
    "own.csl",
    csl(`${doubling}<macro name="m30"><text value="x"/></macro>${cite('<text macro="m0"/>')}`),
    /endless/,
  ],
  ["own.csl", csl(cite("<script>alert(1)</script>")), /element `script` in `layout`/],
])("a citation style that cannot be used, %s, is told at its place", (named, text, message) => {
  const all = told(named, text);
  expect(all).toHaveLength(1);
  expect(all[0]).toMatch(message);
});

test("a slip in the name of a style is offered to be mended, a guess is not", () => {
  const fixOf = (named: string) =>
    build([{ path: "corpus.yaml", text: `title: Cited\ncitation-style: ${named}\n` }], [], {
      read: new Map(),
      compute: new Map(),
    }).findings[0]?.fix?.edits;
  expect(fixOf("chicago-autor-date")).toEqual([
    { file: "corpus.yaml", start: 29, end: 47, text: "chicago-author-date" },
  ]);
  expect(fixOf("nature")).toBeUndefined();
});

test("a style of the corpus's own is taken", () => {
  const text = csl(cite('<names variable="author"/><text value=" &lt;own&gt;"/>'));
  expect(told("own.csl", text)).toEqual([]);
  const item = { id: "a", type: "book", title: "Rings", author: [{ family: "Vane" }] };
  const own = referencesIn({ style: text, locales, language: "en" }, [item]);
  expect(plainOf(own.cited([{ id: "a" }]))).toBe("Vane <own>");
  expect(plainOf(own.reference("a"))).toBe("Vane <own>");
  expect(own.bibliography().map((entry) => plainOf(entry.runs))).toEqual(["Vane <own>"]);
});

test("what only the processor finds amiss in a style is the style's fault", () => {
  const item = { id: "a", type: "book", title: "Rings" };
  const nested = '<group display="block"><group display="block"><text variable="title"/></group></group>';
  const text = csl(
    `${cite('<text variable="title"/>')}<bibliography second-field-align="flush"><layout>${nested}</layout></bibliography>`,
  );
  expect(styleTrouble(text)).toBeNull();
  const own = referencesIn({ style: text, locales, language: "en" }, [item]);
  expect(plainOf(own.cited([{ id: "a" }]))).toBe("Rings");
  expect(() => own.reference("a")).toThrow(StyleFails);
  expect(() => referencesIn({ style: "<style", locales, language: "en" }, [])).toThrow(StyleFails);
});

test("a style that prints nothing of a source gives nothing, and no words of the processor's", () => {
  const text = csl(cite('<text variable="publisher"/>'));
  const own = referencesIn({ style: text, locales, language: "en" }, [
    { id: "a", type: "book", title: "Rings" },
  ]);
  expect(own.reference("a")).toEqual([]);
  expect(own.cited([{ id: "a" }])).toEqual([]);
});
