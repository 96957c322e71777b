import fc from "fast-check";
import type { CslItem } from "../../../src/read/bibliography/csl.ts";
import type { ShippedStyle } from "../../../src/read/bibliography/style/shipped.ts";
import type { Block, Inline, Inlines, Manuscript } from "../../../src/show/telling/blocks/block.ts";
import { localesFor } from "../../../src/write/references/locales/locales.ts";
import { referencesIn } from "../../../src/write/references/references.ts";
import type { References } from "../../../src/write/references/references.ts";
import { shippedStyle } from "../../../src/write/references/shipped-styles.ts";
import type { Drawn } from "../../../src/write/telling/drawn.ts";

/** Two sources of one author and one year, and one in another script. */
const items: readonly CslItem[] = [
  {
    id: "vane-a",
    type: "article-journal",
    title: "Rings and posts",
    author: [{ family: "Vane", given: "Isolde" }],
    issued: { "date-parts": [[1968]] },
    "container-title": "Down Studies",
    volume: "3",
    page: "1-20",
    DOI: "10.1234/x_y*z",
  },
  {
    id: "vane-b",
    type: "book",
    title: "A pace of the Down",
    author: [{ family: "Vane", given: "Isolde" }],
    issued: { "date-parts": [[1968]] },
    publisher: "Thorn Press",
  },
  {
    id: "haddad",
    type: "book",
    title: "حلقتان وقياس واحد",
    author: [{ family: "حدّاد", given: "سلمى" }],
    issued: { "date-parts": [[1988]] },
    language: "ar",
  },
] as unknown as readonly CslItem[];

/** The references of the cases in a style that comes with the program. */
export async function referencesFor(name: ShippedStyle): Promise<References> {
  const style = await shippedStyle(name);
  return referencesIn({ style, locales: await localesFor(style, "en"), language: "en" }, items);
}

/** The keys of computations: two that begin alike. */
export const runs = ["3f2a9c0d1b7e".padEnd(64, "4"), "3f2a9c0d1b7e".padEnd(64, "5")] as const;

/** Words that formats could take for signs of their own. */
const nasty = [
  "*",
  "_x_",
  "**b**",
  "<b>",
  "&amp;",
  "# no heading",
  "- no item",
  "1. no item",
  "a. none",
  "(i) none",
  "> none",
  "| a | b |",
  "[x](y)",
  "[^1]",
  "![x](y)",
  "`code`",
  "~~~",
  "~x~",
  "^2^",
  "$5$",
  "@vane-a",
  "{{claim:x}}",
  "\\",
  "\\*",
  "--- none",
  "===",
  ": none",
  "% none",
  "Table: none",
  "…",
  "“q”",
  "]]>",
  "'",
  '"',
  "Ω ± Ἀθῆναι",
  "−0.5",
  "الحلقة مفتوحة",
  "חלק",
  "e\u0301",
  "a\u0000b",
  "\ud800",
  "two\nlines",
  "tab\there",
  "x  y",
];
const word = fc.oneof(
  fc.constantFrom(...nasty),
  fc.string({ minLength: 1, maxLength: 12 }),
  fc.constantFrom("ring", "post-hole", "Merrow"),
);
const text = fc.array(word, { minLength: 1, maxLength: 4 }).map((all) => all.join(" "));
const cite = fc.record({
  id: fc.constantFrom("vane-a", "vane-b", "haddad"),
  at: fc.constantFrom("p. 12", "12, fig. 3", "ص ٧٩"),
});
const citing = fc.record({
  is: fc.constant("citing" as const),
  manner: fc.constantFrom("aside" as const, "sentence" as const, "year" as const),
  cites: fc.array(cite, { minLength: 1, maxLength: 2 }),
});
const simple: fc.Arbitrary<Inline> = fc.oneof(
  { weight: 4, arbitrary: text },
  fc.record({
    is: fc.constant("words" as const),
    text,
    lang: fc.constantFrom(null, "de", "ar"),
    quoted: fc.boolean(),
  }),
  fc.record({ is: fc.constant("printed" as const), text, run: fc.constantFrom(...runs) }),
  fc.record({
    is: fc.constant("standing" as const),
    standing: fc.constantFrom("stands" as const, "open" as const, "falls" as const, "unsupported" as const),
  }),
  citing,
);
const styled = (of: fc.Arbitrary<Inlines>): fc.Arbitrary<Inline> =>
  fc.oneof(
    fc.record({ is: fc.constantFrom("strong" as const, "emphasis" as const, "note" as const), of }),
    fc.record({ is: fc.constant("link" as const), to: fc.constantFrom("first", "nowhere"), of }),
  );
const few = (one: fc.Arbitrary<Inline>): fc.Arbitrary<Inlines> =>
  fc.array(one, { minLength: 1, maxLength: 4 });
const line = few(
  fc.oneof({ weight: 3, arbitrary: simple }, styled(few(fc.oneof(simple, styled(few(simple)))))),
);

const block: fc.Arbitrary<Block> = fc.oneof(
  fc.record({
    is: fc.constant("heading" as const),
    level: fc.constantFrom(1 as const, 2 as const, 3 as const),
    of: few(simple),
    anchor: fc.constantFrom("first", "second", "section-1"),
  }),
  fc.record({
    is: fc.constant("heading" as const),
    level: fc.constantFrom(1 as const, 2 as const),
    of: few(simple),
  }),
  fc.record({
    is: fc.constantFrom("paragraph" as const, "quotation" as const, "caution" as const),
    of: line,
  }),
  fc.record({
    is: fc.constant("list" as const),
    ordered: fc.boolean(),
    items: fc.array(line, { minLength: 1, maxLength: 3 }),
  }),
  fc.integer({ min: 1, max: 4 }).chain((columns) =>
    fc.record({
      is: fc.constant("table" as const),
      caption: line,
      head: fc.array(few(simple), { minLength: columns, maxLength: columns }),
      rows: fc.array(fc.array(few(simple), { minLength: columns, maxLength: columns }), { maxLength: 3 }),
      figures: fc.constantFrom([], [0]),
    }),
  ),
  fc.record({
    is: fc.constant("plate" as const),
    picture: fc.constant({ is: "image" as const, file: "images/x.png", credit: null }),
    caption: line,
    alt: text,
  }),
  fc.record({
    is: fc.constant("terms" as const),
    rows: fc.array(fc.tuple(few(simple), line), { minLength: 1, maxLength: 3 }),
  }),
  fc.constantFrom<Block>(
    { is: "contents" },
    { is: "references" },
    { is: "computations" },
    { is: "room", lines: 2 },
  ),
);

/** Texts of any blocks, with words that no format may misread. */
export const manuscripts: fc.Arbitrary<Manuscript> = fc
  .record({
    title: text,
    authors: fc.array(text, { maxLength: 2 }),
    language: fc.constantFrom("en", "ar", "de"),
    blocks: fc.array(block, { maxLength: 8 }),
  })
  .map((one) => ({
    ...one,
    // One declaration of computations is enough for any text: a second would place the same anchors again.
    blocks: one.blocks.filter(
      (each, place, all) =>
        each.is !== "computations" || all.findIndex(({ is }) => is === "computations") === place,
    ),
    computations: runs.map((run, place) => ({
      run,
      derivation: `d${place}`,
      title: `Computation ${place}`,
      method: "unit-fit 1.0.0",
    })),
  }));

/** A figure as drawn: a square, and one pixel of PNG (made by hand, RFC 2083). */
export const square: Drawn = {
  width: 20,
  height: 20,
  svg: `<svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="20mm" viewBox="0 0 20 20"><path d="M1 1H19V19H1Z"/></svg>`,
  raster: {
    type: "png",
    bytes: Buffer.from(
      "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
      "base64",
    ),
  },
};

/** Every word of a text that is not a citation's, in the order in which they are written; notes and link targets aside. */
export function wordsOf({ title, authors, blocks }: Manuscript): readonly string[] {
  return [title, ...authors, ...blocks.flatMap(lines).flatMap(said)].map((one) =>
    typeof one === "string" ? one : "",
  );
}

function lines(one: Block): readonly Inlines[] {
  switch (one.is) {
    case "heading":
    case "paragraph":
    case "quotation":
    case "caution":
      return [one.of];
    case "list":
      return one.items;
    case "table":
      return [one.caption, ...one.head, ...one.rows.flat()];
    case "plate":
      return [one.caption];
    case "terms":
      return one.rows.flat();
    default:
      return [];
  }
}

function said(of: Inlines): readonly string[] {
  return of.flatMap((one): readonly string[] => {
    if (typeof one === "string") return [one];
    if ("say" in one) return [];
    if (one.is === "words") return [one.text];
    if (one.is === "printed") return typeof one.text === "string" ? [one.text] : [];
    return "of" in one ? said(one.of) : [];
  });
}
