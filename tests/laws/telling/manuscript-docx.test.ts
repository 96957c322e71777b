import fc from "fast-check";
import { expect, test } from "vitest";
import { unzipped, zipOf } from "../../../src/host/telling/files/zip.ts";
import { xmlIn } from "../../../src/read/bibliography/style/xml.ts";
import type { Manuscript } from "../../../src/show/telling/blocks/block.ts";
import { documentOf } from "../../../src/write/office/docx/document.ts";
import { bookmarkOf } from "../../../src/write/office/docx/language.ts";
import { settledParts } from "../../../src/write/office/docx/settled.ts";
import { setText } from "../../../src/write/telling/set/set.ts";
import type { References } from "../../../src/write/references/references.ts";
import { manuscripts, referencesFor, square, wordsOf } from "./manuscript-cases.ts";

const styles = [
  await referencesFor("antiquity"),
  await referencesFor("modern-humanities-research-association"),
];

async function written(manuscript: Manuscript, references: References): Promise<Uint8Array> {
  const set = setText(manuscript, references);
  const drawn = new Map(
    set.blocks.flatMap((one) => (one.is === "plate" ? [[one.number, square] as const] : [])),
  );
  return zipOf(settledParts(unzipped(await documentOf(set, drawn)), "2026-11-26"));
}

const partsOf = (zip: Uint8Array): ReadonlyMap<string, string> =>
  new Map(unzipped(zip).map(({ path, content }) => [path, Buffer.from(content).toString("utf8")]));

const all = (text: string, pattern: RegExp): readonly string[] =>
  [...text.matchAll(pattern)].map(([, one = ""]) => one);
const decoded = (xml: string): string =>
  xml
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&amp;/g, "&");
const bare = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, "");

test("a document is well formed, holds every word, and every link in it leads somewhere", async () => {
  await fc.assert(
    fc.asyncProperty(manuscripts, fc.constantFrom(...styles), async (manuscript, references) => {
      const parts = partsOf(await written(manuscript, references));
      for (const [path, xml] of parts)
        if (/\.(?:xml|rels)$/.test(path))
          expect("trouble" in xmlIn(xml.replace(/^<\?xml[^>]*\?>/, "")), path).toBe(false);
      const [body = "", notes = ""] = [parts.get("word/document.xml"), parts.get("word/footnotes.xml")];
      const said = bare(
        decoded(
          [
            ...all(notes, /<w:t(?: [^>]*)?>([^<]*)<\/w:t>/g),
            ...all(body, /<w:t(?: [^>]*)?>([^<]*)<\/w:t>/g),
          ].join(""),
        ),
      );
      for (const one of wordsOf(manuscript)) expect(said).toContain(bare(one.replace(/[\p{Cs}\0]/gu, "")));
      for (const attribute of ["w:name", "w:id"]) {
        const names = all(body, new RegExp(`<w:bookmarkStart[^>]* ${attribute}="([^"]*)"`, "g"));
        expect(new Set(names).size).toBe(names.length);
      }
      const places = new Set(all(body, /<w:bookmarkStart[^>]* w:name="([^"]*)"/g));
      for (const to of all(body + notes, /<w:hyperlink[^>]* w:anchor="([^"]*)"/g))
        expect(places.has(to), to).toBe(true);
      for (const [path, xml] of [
        ["document", body],
        ["footnotes", notes],
      ] as const) {
        const known = new Set(all(parts.get(`word/_rels/${path}.xml.rels`) ?? "", / Id="([^"]*)"/g));
        for (const id of all(xml, / r:(?:id|embed)="([^"]*)"/g))
          expect(known.has(id), `${path} ${id}`).toBe(true);
      }
      const kept = new Set(all(notes, /<w:footnote w:id="(\d+)"/g));
      const called = all(body, /<w:footnoteReference w:id="(\d+)"/g);
      expect(called).toEqual(called.map((_, place) => String(place + 1)));
      expect(new Set(called)).toEqual(kept);
    }),
    { numRuns: 20 },
  );
});

test("every look is a named style, and headings, lists, captions and tables are the word processor's own", async () => {
  const line = [
    { is: "strong", of: ["s", { is: "emphasis", of: ["e"] }] },
    { is: "standing", standing: "open" },
    { is: "words", text: "Ring", lang: "de", quoted: true },
    { is: "words", text: "حلقة", lang: "ar", quoted: false },
  ] as const;
  const [references] = styles;
  if (!references) throw new Error("no style");
  const parts = partsOf(
    await written(
      {
        title: "Rings",
        authors: ["Vane"],
        language: "en",
        computations: [],
        blocks: [
          { is: "contents" },
          { is: "heading", level: 1, of: ["One"] },
          { is: "paragraph", of: line },
          { is: "quotation", of: line },
          { is: "list", ordered: true, items: [line, line] },
          { is: "table", caption: ["c"], head: [["a"], ["b"]], rows: [[["1"], ["2"]]], figures: [1] },
          {
            is: "plate",
            picture: { is: "image", file: "images/x.png", credit: null },
            caption: ["c"],
            alt: "Two rings & a gully",
          },
        ],
      },
      references,
    ),
  );
  const [body = "", looks = ""] = [parts.get("word/document.xml"), parts.get("word/styles.xml")];
  expect(body).not.toMatch(/<w:(?:b|i|sz|color|rFonts|u|jc|shd|smallCaps)[ />]/);
  const declared = new Set(all(looks, /w:styleId="([^"]*)"/g));
  for (const used of all(body, /<w:(?:pStyle|rStyle|tblStyle) w:val="([^"]*)"/g))
    expect(declared.has(used), used).toBe(true);
  expect(all(body, /<w:pStyle w:val="([^"]*)"/g)).toEqual(
    expect.arrayContaining(["Title", "Heading1", "Quote", "ListNumber", "TableCaption", "Caption", "TOC1"]),
  );
  expect(all(body, /<w:instrText[^>]*>([^<]*)</g).join()).toContain("TOC");
  expect(all(body, /<w:fldSimple w:instr="([^"]*)"/g)).toEqual([
    "SEQ Table \\* ARABIC",
    "SEQ Figure \\* ARABIC",
  ]);
  expect(body).toMatch(/<w:tblHeader/);
  expect(body).toContain('descr="Two rings &amp; a gully"');
  expect(body).toContain('<w:lang w:val="de-DE"/>');
  expect(body).toMatch(/<w:rtl\/>.{0,80}<w:lang w:bidi="ar-SA"\/>|<w:lang w:bidi="ar-SA"\/>.{0,80}<w:rtl\/>/);
  expect([...parts.keys()].filter((path) => path.startsWith("word/media/")).sort()).toEqual([
    "word/media/image1.png",
    "word/media/image1.svg",
  ]);
});

test("the same text gives the same bytes, whatever was written before", async () => {
  const [sample] = fc.sample(
    manuscripts.filter(({ blocks }) => blocks.length > 5),
    { numRuns: 1, seed: 7 },
  );
  const [references] = styles;
  if (!sample || !references) throw new Error("no sample");
  const first = await written(sample, references);
  await written({ ...sample, blocks: sample.blocks.slice(2) }, references);
  expect(Buffer.compare(first, await written(sample, references))).toBe(0);
});

test("places whose names are long or differ in a sign are told apart", () => {
  const anchors = [
    "claim-a/b",
    "claim-a-b",
    "claim-a_b",
    `claim-${"x".repeat(60)}`,
    `claim-${"x".repeat(61)}`,
    "claim-\u00e9",
    "claim-\u00e8",
  ];
  const names = anchors.map(bookmarkOf);
  expect(new Set(names).size).toBe(anchors.length);
  for (const name of names) expect(name).toMatch(/^\w{1,40}$/);
});
