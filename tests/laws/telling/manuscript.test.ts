import fc from "fast-check";
import { parseHTML } from "linkedom";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Manuscript } from "../../../src/show/telling/blocks/block.ts";
import type { References } from "../../../src/write/references/references.ts";
import { textPage } from "../../../src/write/telling/html/page.ts";
import { markdownOf } from "../../../src/write/telling/markdown/markdown.ts";
import { citedIn } from "../../../src/write/telling/set/cited.ts";
import { setText } from "../../../src/write/telling/set/set.ts";
import type { SetText } from "../../../src/write/telling/set/set-text.ts";
import { plainWords } from "../../../src/write/telling/set/set-text.ts";
import { manuscripts, referencesFor, runs, square, wordsOf } from "./manuscript-cases.ts";

const styles: readonly References[] = [
  await referencesFor("chicago-author-date"),
  await referencesFor("chicago-fullnote-bibliography"),
];
const drawnFor = (set: SetText) =>
  new Map(set.blocks.flatMap((one) => (one.is === "plate" ? [[one.number, square] as const] : [])));
const markdown = (set: SetText): string => String(markdownOf(set, "text", drawnFor(set))[0]?.content);

/** Only what every format keeps as it is: letters and digits, without what can be in no document. */
const bare = (text: string): string => text.replace(/[^\p{L}\p{N}]/gu, "");

const law = (check: (manuscript: Manuscript, references: References) => void): void =>
  fc.assert(
    fc.property(manuscripts, fc.constantFrom(...styles), (manuscript, references) =>
      check(manuscript, references),
    ),
    { numRuns: 30 },
  );

test("anchors are each one's own, figures, tables and notes counted in their order", () => {
  law((manuscript, references) => {
    const set = setText(manuscript, references);
    const anchors = set.blocks.flatMap((one) =>
      "anchor" in one
        ? [one.anchor]
        : one.is === "computations"
          ? one.entries.map((each) => each.anchor)
          : [],
    );
    expect(new Set(anchors).size).toBe(anchors.length);
    const plates = set.blocks.flatMap((one) => (one.is === "plate" ? [one.number] : []));
    expect(plates).toEqual(plates.map((_, place) => place + 1));
    const [body = ""] = markdown(set)
      .replace(/\\./gu, "")
      .split(/^\[\^1\]: /m);
    const called = [...body.matchAll(/\[\^(\d+)\]/g)].map(([, n]) => Number(n));
    const notes = called.filter((one, place) => called.indexOf(one) === place);
    expect(notes).toEqual([...notes].sort((a, b) => a - b));
    expect(notes.length).toBe(set.notes.length);
  });
});

test("only what is cited is among the references", () => {
  law((manuscript, references) => {
    const cited = citedIn(manuscript);
    for (const block of setText(manuscript, references).blocks)
      if (block.is === "references") expect(new Set(block.entries.map(({ id }) => id))).toEqual(cited);
  });
});

test("every word is in the Markdown", () => {
  law((manuscript, references) => {
    const set = setText(manuscript, references);
    const [body = "", ...notes] = markdown(set)
      .replace(/\\(?=[!-/:-@[-`{-~])/g, "")
      .split(/\n\n(?=\[\^\d+\]: )/);
    const text = bare(notes.join("") + body);
    for (const one of wordsOf(manuscript)) expect(text).toContain(bare(one));
  });
});

test("Markdown has the headings, items and rows of the text and no others", () => {
  law((manuscript, references) => {
    const set = setText(manuscript, references);
    const lines = markdown(set).split("\n");
    const count = (pattern: RegExp): number => lines.filter((one) => pattern.test(one)).length;
    const of = (is: string) => set.blocks.filter((one) => one.is === is);
    expect(count(/^#{1,6} /)).toBe(1 + of("heading").length);
    const items = set.blocks.reduce((sum, one) => {
      if (one.is === "list") return sum + one.items.length;
      if (one.is === "terms") return sum + one.rows.length;
      return "entries" in one && one.is !== "references" ? sum + one.entries.length : sum;
    }, 0);
    expect(count(/^ *(?:[-+*]|\d+[.)])(?: |$)/)).toBe(items);
    expect(count(/^>/)).toBe(of("quotation").length);
    const rows = set.blocks.flatMap((one) => (one.is === "table" ? [one] : []));
    expect(count(/^\|/)).toBe(rows.reduce((sum, one) => sum + 2 + one.rows.length, 0));
    const bars = lines
      .filter((one) => one.startsWith("|"))
      .map((one) => one.replace(/\\./gu, "").split("|").length - 2);
    expect(bars).toEqual(
      rows.flatMap((one) => Array.from({ length: one.rows.length + 2 }, () => one.head.length)),
    );
    expect(count(/^(?:---+|===+|```|~~~|: |% |<(?!span|!--|em|strong|u|sup|https?:))/)).toBe(0);
  });
});

test("a page has every word, one heading for each, links that lead somewhere, and runs nothing", () => {
  law((manuscript, references) => {
    const set = setText(manuscript, references);
    const html = textPage(set, drawnFor(set));
    const { document } = parseHTML(html);
    const text = bare(document.body.textContent ?? "");
    for (const one of wordsOf(manuscript)) expect(text).toContain(bare(one.replace(/[\p{Cs}\0]/gu, "")));
    const headings = set.blocks.filter((one) => one.is === "heading").length;
    expect(document.querySelectorAll("h1, h2, h3, h4").length).toBe(1 + headings);
    const ids = [...document.querySelectorAll("[id]")].map((one) => one.getAttribute("id"));
    expect(new Set(ids).size).toBe(ids.length);
    for (const link of document.querySelectorAll("a")) {
      const to = link.getAttribute("href") ?? "";
      expect(to.startsWith("#") ? ids.includes(to.slice(1)) : to.startsWith("https://doi.org/"), to).toBe(
        true,
      );
    }
    expect(document.querySelectorAll("script, b b, a a, style + style, [style], [onload]").length).toBe(0);
    expect(
      [...document.querySelectorAll("main *")]
        .map((one) => one.localName)
        .filter((one) => /^(?:script|iframe|object|form|input|link|meta)$/.test(one)),
    ).toEqual([]);
  });
});

test("a call of a note stands after the point, with no space before it", async () => {
  const aside = { is: "citing", manner: "aside", cites: [{ id: "vane-b", at: "12" }] } as const;
  const of = ["The ring stood open ", aside, ". It was wide ", aside, ", they say."] as const;
  const set = setText(
    { title: "T", authors: [], language: "en", computations: [], blocks: [{ is: "paragraph", of }] },
    await referencesFor("chicago-fullnote-bibliography"),
  );
  expect(markdown(set)).toContain("The ring stood open.[^1] It was wide,[^2] they say.");
  // The Chicago Manual of Style, 17th edition, 14.30: a source cited before is cited in short.
  expect(set.notes.map((one) => plainWords(one, inEnglish))).toEqual([
    "Isolde Vane, A Pace of the Down (Thorn Press, 1968), 12.",
    "Vane, A Pace of the Down, 12.",
  ]);
});

test("two keys that begin alike have anchors of their own", () => {
  const [references] = styles;
  if (!references) throw new Error("no style");
  const computations = runs.map((run) => ({ run, derivation: "d", title: "T", method: "m 1" }));
  const set = setText(
    { title: "T", authors: [], language: "en", computations, blocks: [{ is: "computations" }] },
    references,
  );
  const [block] = set.blocks;
  expect(block?.is === "computations" && block.entries.map((one) => one.anchor)).toEqual([
    `run-${runs[0].slice(0, 12)}`,
    `run-${runs[1].slice(0, 16)}`,
  ]);
});
