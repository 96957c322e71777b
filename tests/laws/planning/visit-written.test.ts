import { expect, test } from "vitest";
import { utf8ToBytes } from "@noble/hashes/utils.js";
import { createHash } from "node:crypto";
import { visitBlocks } from "../../../src/show/desk/visit/blocks/blocks.ts";
import { visitsIn } from "../../../src/show/desk/visit/sheet/visits.ts";
import { base64 } from "../../../src/write/visit/base64.ts";
import { visitMarkdown } from "../../../src/write/visit/markdown.ts";
import { visitPage } from "../../../src/write/visit/page.ts";
import { lookAsked, modelOf, sheetOf, visitFiles } from "./visit-cases.ts";

const keeper = { examination: null, keeper: "county store", also: ["peg-2", "peg-9"] };

function filesOf(
  asked: typeof lookAsked,
  withValues: boolean,
): { readonly html: string; readonly markdown: string } {
  const sheet = sheetOf(visitFiles, asked);
  const blocks = visitBlocks(sheet, { withValues });
  return { html: visitPage(blocks, { asked, corpus: sheet.corpus }), markdown: visitMarkdown(blocks) };
}

/** The text of a page with all that it keeps in base 64 told. */
const opened = (html: string): string =>
  html.replace(/data-old="([^"]*)"/g, (_, old: string) => Buffer.from(old, "base64").toString("utf8"));

test("earlier values are in no text of a sheet, unless they are asked for", () => {
  const without = filesOf(lookAsked, false);
  for (const old of ["42.7", "61.3", "Hale"]) {
    expect(without.html.replace(/<datalist[\s\S]*?<\/datalist>/g, ""), old).not.toContain(old);
    expect(without.markdown, old).not.toContain(old);
    expect(opened(without.html), old).toContain(old);
  }
  const withValues = filesOf(lookAsked, true);
  for (const old of ["42.7 cm", "61.3 cm"]) {
    expect(withValues.html).toContain(old);
    expect(withValues.markdown).toContain(old);
  }
});

test("nothing withheld and no find-spot is on a sheet, in what is hidden neither", () => {
  const { graph } = modelOf(visitFiles);
  const texts = [lookAsked, keeper].flatMap((asked) => {
    const { html, markdown } = filesOf(asked, true);
    return [opened(html), markdown, JSON.stringify(sheetOf(visitFiles, asked))];
  });
  for (const text of [...texts, JSON.stringify(visitsIn(graph))]) {
    for (const secret of [/quenby/i, /11\.[12] cm/, /seal/i, /fennimore/i, /51\.0/])
      expect(text).not.toMatch(secret);
  }
  // A page says for what it is, and so names what it was asked for; a look at nothing but what is withheld is none.
  const files = {
    ...visitFiles,
    "corpus.yaml": `${visitFiles["corpus.yaml"] ?? ""}`.replace("[peg-9", "[peg-1, peg-9"),
  };
  expect(() => sheetOf(files)).toThrow("no sheet");
});

test("what each outcome decides comes after all that is measured, on a leaf of its own", () => {
  const { html, markdown } = filesOf(lookAsked, false);
  for (const text of [html, markdown]) {
    expect(text.indexOf("The hole is charred")).toBeGreaterThan(text.indexOf("Whatever else is seen"));
    expect(text).toMatch(/burnt.*now unsupported, then \w+/i);
  }
  expect(html).toContain('class="apart">After the visit');
  expect(html).toContain("reader's ticket");
  expect(markdown).toContain("two weeks");
});

test("a page runs nothing but its own script, by its hash, and brings nothing from outside", () => {
  const files = {
    ...visitFiles,
    "things.yaml": (visitFiles["things.yaml"] ?? "").replace(
      "the first peg",
      "'<script>alert(1)</script>\"&'",
    ),
  };
  const sheet = sheetOf(files);
  const html = visitPage(visitBlocks(sheet, { withValues: true }), {
    asked: lookAsked,
    corpus: "</script><b>",
  });
  expect(html).not.toContain("alert(1)<");
  expect(html).not.toContain("<b>");
  const script = /<script>([\s\S]*?)<\/script>/.exec(html)?.[1] ?? "";
  const style = /<style>([\s\S]*?)<\/style>/.exec(html)?.[1] ?? "";
  for (const text of [script, style])
    expect(html).toContain(`sha256-${createHash("sha256").update(text).digest("base64")}`);
  expect(html).toContain("default-src 'none'");
  expect(html.match(/<script>/g)).toHaveLength(1);
  expect(html).not.toMatch(/https?:|src=|href="|url\(|@import/);
});

test("base 64 is that of Node", () => {
  for (const text of ["", "a", "ab", "abc", "‘Umfang’ حفر"])
    expect(base64(utf8ToBytes(text))).toBe(Buffer.from(text, "utf8").toString("base64"));
});
