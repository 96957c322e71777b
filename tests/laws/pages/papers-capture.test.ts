import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { build } from "../../../src/build.ts";
import type { SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import { sayingOf } from "../../../src/show/desk/forms/checked/saying.ts";
import type { FormAsked } from "../../../src/show/desk/forms/filled/asked.ts";
import {
  capturing,
  newForm,
  passageForm,
  writtenPassage,
  secondHand,
  takenForm,
  unlistedAuthors,
  valuesToWrite,
  writtenSelector,
} from "../../../src/show/desk/papers/capture/captured.ts";
import type { ToMake } from "../../../src/show/desk/papers/capture/captured.ts";
import { languageOf, languageTag } from "../../../src/show/desk/papers/capture/language.ts";
import { quantitiesIn } from "../../../src/show/desk/papers/capture/quantities.ts";
import { quotation, wordsOf } from "../../../src/show/desk/papers/capture/quotation.ts";
import { foundIn } from "../../../src/show/desk/papers/find.ts";
import { paperPage } from "../../../src/show/desk/papers/page.ts";
import type { PaperData } from "../../../src/show/desk/papers/page.ts";
import { freePaper, papersOf } from "../../../src/show/desk/papers/papers.ts";
import { printedPage } from "../../../src/show/desk/papers/printed.ts";
import { paperLinks } from "../../../src/show/desk/papers/records/links.ts";
import { placeTold } from "../../../src/show/desk/papers/records/told.ts";
import { regionSelector, selectorFor } from "../../../src/show/desk/papers/selector.ts";
import { takenWords } from "../../../src/show/desk/papers/taken.ts";
import { sheetOf } from "../../../src/show/pages/sheet.ts";

const small: readonly SourceFile[] = [
  {
    path: "corpus.yaml",
    text: "title: T\nlanguage: en\nbibliography: [b.bib]\nwithhold: [umbra-pit, quiet-book]\n",
  },
  {
    path: "b.bib",
    text:
      "@book{vane-1968, author = {Vane, Isolde and Mott, Per}, title = {Posts of the Down}, year = 1968, pages = {211--230}, langid = {english}}\n" +
      "@book{hale-1896, author = {Hale, Ada}, title = {The ring}, year = 1896}\n" +
      "@book{quiet-book, author = {Mumm, Ida}, title = {Umbragarden}, year = 1903}\n",
  },
  {
    path: "readings.yaml",
    text: `scholars:
  - { id: vane, name: Isolde Vane }
artefacts:
  - { id: ring-a, name: The inner ring }
  - { id: umbra-pit, name: Umbrapit }
passages:
  - id: late
    at: p. 214
    from: vane-1968
    quote: The ring is 7.60 m wide.
    selector: { type: FragmentSelector, conformsTo: "http://tools.ietf.org/rfc/rfc3778", value: page=4 }
  - { id: early, at: "p. 212", from: vane-1968, quote: ein Ring, lang: de, translation: a ring }
  - { id: old-words, at: p. 213, from: hale-1896, via: vane-1968, quote: a great circle }
  - { id: umbra-words, at: p. 1, from: quiet-book, quote: Umbrawords }
measurements:
  - { of: ring-a, dimension: diameter, value: 7.60 ft, from: late }
observations:
  - { id: seen, of: ring-a, text: The posts stood deep., from: "vane-1968 p. 220" }
  - { id: umbra-seen, of: umbra-pit, text: Umbratrace., from: late }
`,
  },
];

function built(files: readonly SourceFile[]) {
  const { model, findings } = build(files, [], emptyMemo());
  if (!model) throw new Error("The corpus of the test cannot be read");
  return { model, findings, texts: new Map(files.map((one) => [one.path, one.text])) };
}

function pageOf(files: readonly SourceFile[], key: string): PaperData {
  const page = paperPage(built(files), key);
  if (!page) throw new Error(`no page of ${key}`);
  return page;
}

/** What the forms of a sheet have written. */
function written(files: readonly SourceFile[], form: FormAsked) {
  return valuesToWrite(form, sayingOf(built(files).model.graph, form).values);
}

function saved(files: readonly SourceFile[], action: ReturnType<typeof capturing>): readonly SourceFile[] {
  const { model, texts } = built(files);
  const done = prepared({ graph: model.graph, files: texts }, action);
  if (!("changes" in done)) throw new Error(JSON.stringify(done));
  const after = new Map(texts);
  for (const { file, edits } of done.changes) after.set(file, edited(after.get(file) ?? "", edits));
  return [...after].map(([path, text]) => ({ path, text }));
}

describe("a selected text becomes a quotation as a scholar would write it", () => {
  const paper = [
    "The com-\nparative study. A post-hole, and the post and a hole.\nCompared in a line: measurement.",
  ];
  const of = (text: string) => quotation(text, wordsOf(paper));

  it("with ligatures in letters, white space as one space and words in one", () => {
    expect(of("The ﬁrst  efﬂuent\nwas naïve.").text).toBe("The first effluent was naïve.");
    expect(of("a measure-\nment").text).toBe("a measurement");
    expect(of("a measure-\nment").joined).toEqual([]);
    expect(of("soft\u00ADened and soft\u00AD\nened").text).toBe("softened and softened");
    expect(of("円形の\n溝").text).toBe("円形の溝");
    expect(of("ﺍﻟﺨﺸﺐ").text).toBe("الخشب");
  });

  it("whatever the lines are, where the paper has the words undivided as well", () => {
    const word = fc.constantFrom(
      "comparative",
      "measurement",
      "post-hole",
      "of",
      "a",
      "élan",
      "κύκλος",
      "7.60",
      "Merrow",
    );
    const place = fc.record({ word, cut: fc.nat({ max: 6 }), end: fc.boolean() });
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 20 }), (places) => {
        const whole = places.map((one) => one.word).join(" ");
        // A word is divided within its letters, or at a hyphen that it has.
        const lines = places.map(({ word: one, cut, end }) => {
          const hyphen = one.indexOf("-");
          const at = hyphen > 0 ? hyphen + 1 : cut;
          const parted = end && at > 1 && at < one.length - 1 && !/\d/u.test(one);
          return parted ? `${one.slice(0, at)}${hyphen > 0 ? "" : "-"}\n${one.slice(at)}` : one;
        });
        expect(quotation(lines.join(" "), wordsOf([whole, lines.join(" ")])).text).toBe(whole);
      }),
      { numRuns: 100 },
    );
  });

  it("with a hyphen where it is the word's own, and says where the paper does not tell", () => {
    expect(of("a post-\nhole")).toEqual({ text: "a post-hole", joined: [], kept: [] });
    expect(of("a line-\nhole")).toEqual({ text: "a line-hole", joined: [], kept: ["line-hole"] });
    expect(of("a ring-\nditch")).toEqual({ text: "a ringditch", joined: ["ringditch"], kept: [] });
    expect(of("Anglo-\nSaxon, 1968–\n72, 25-\n30 feet").text).toBe("Anglo-Saxon, 1968–72, 25-30 feet");
  });
});

describe("a sheet of capture is filled in", () => {
  const page = pageOf(small, "vane-1968");
  const texts = ["The ring is about 7.60 m wide, and lies", "in a hollow. It was no house."];
  const taken = takenWords(texts, { pageIndex: 0, at: 4 }, { pageIndex: 1, at: 12 });
  if (!taken) throw new Error("nothing taken");

  it("with the printed page, over two where it goes on, and the words with their language", () => {
    const { entered } = passageForm(page, taken, "214");
    expect(entered).toEqual({
      from: ["vane-1968"],
      at: "pp. 214–215",
      quote: "ring is about 7.60 m wide, and lies in a hollow.",
      lang: "en",
    });
    expect(passageForm(page, taken, "xii–xiii").entered["at"]).toBe("pp. xii–xiii");
    expect(passageForm(page, taken, null).entered["at"]).toBe("");
    const written = (at: string) => writtenPassage({ at }).entered["at"];
    expect(["3", " 12-13 ", "fol. 3r", "p. 4"].map(written)).toEqual([
      "p. 3",
      "pp. 12–13",
      "fol. 3r",
      "p. 4",
    ]);
  });

  it("with a language that is guessed from the script and the source's", () => {
    expect(languageOf("ein Ring", "de")).toBe("de");
    expect(languageOf("ein Ring", null)).toBeNull();
    expect(languageOf("حلقة تُفتح على السماء", "en")).toBe("ar");
    expect(languageOf("حلقه باز", "fa")).toBe("fa");
    expect(languageOf("ὁ κύκλος", "de")).toBe("grc");
    expect(languageOf("ο κύκλος", null)).toBe("el");
    expect(languageOf("円形の溝", null)).toBe("ja");
    expect(languageOf("кольцо", null)).toBe("und-Cyrl");
    expect(languageOf("1896", "en")).toBe("en");
    expect(languageTag("English")).toBe("en");
    expect(languageTag("de_AT")).toBe("de-AT");
    expect(languageTag("unknown tongue")).toBeNull();
  });

  it("with the quantities that stand in the words", () => {
    const context = { units: unitTable([]), approximate: 0.025, plusMinus: "standard" } as const;
    const found = (text: string) => quantitiesIn(text, context).map(({ written: one }) => one);
    expect(
      found("The ring (fig. 3) of 1968 is about 7.60 m wide and 42–45 cm deep; 17 posts, 3 kg each."),
    ).toEqual(["about 7.60 m", "42–45 cm", "3 kg"]);
    expect(found("7,60 m breit, 18.2 ± 0.4 cm tief")).toEqual(["7.60 m", "18.2 ± 0.4 cm"]);
    expect(found("some 25 feet, or 5 ft 4 in; between 42 and 45 cm; pp. 12–13")).toEqual([
      "25 feet",
      "5 ft 4 in",
      "between 42 and 45 cm",
    ]);
    // 1,200 has two readings: it is the scholar who has to say.
    expect(found("1,200 m")).toEqual([]);
  });

  it("and becomes one step: the passage, and what is taken from it, from that passage", () => {
    const passage = passageForm(page, taken, "214");
    const forms = {
      claim: newForm("claims", { text: "The inner ring was no house." }),
      seen: { ...takenForm("observations", passage.entered, page) },
      size: newForm("measurements", { of: "ring-a", dimension: "diameter", value: "about 7.60 m" }),
      held: takenForm("positions", passage.entered, page),
    };
    expect(forms.seen.entered["text"]).toBe("ring is about 7.60 m wide, and lies in a hollow.");
    expect(forms.held.entered["who"]).toEqual(["vane"]);
    expect(unlistedAuthors(passage.entered, page)).toEqual(["Per Mott"]);
    const also: readonly ToMake[] = [
      {
        list: "positions",
        values: { ...written(small, forms.held), stance: "holds" },
        scholars: ["Per Mott"],
      },
      { list: "measurements", values: written(small, forms.size) },
      { list: "observations", values: { ...written(small, forms.seen), of: "ring-a" } },
      { list: "claims", values: written(small, forms.claim) },
    ];
    const selector = writtenSelector(taken, "papers/vane-1968.pdf", ["papers/vane-1968.pdf"]);
    const after = saved(small, capturing({ values: written(small, passage), selector }, also));
    const { model } = built(after);
    expect(built(after).findings.filter(({ level }) => level === "error")).toEqual([]);
    const { graph } = model;
    const made = graph.records.get("vane-1968-pp-214-215");
    expect(made?.list === "passages" && made.values.selector).toEqual(selector);
    expect(foundIn(["", ...texts], selector)).toEqual({
      page: 1,
      start: 4,
      end: 39,
      onto: { page: 2, end: 12 },
    });
    const from = graph.list("claims").find(({ id }) => id === "the-inner-ring-was-no-house")?.values.from;
    expect(from).toEqual([{ key: "vane-1968-pp-214-215", locator: null }]);
    const [held] = graph.list("positions");
    expect(held?.values).toMatchObject({
      who: ["vane", "per-mott"],
      claim: "the-inner-ring-was-no-house",
      words: passage.entered["quote"],
    });
    expect(
      pageOf(after, "vane-1968")
        .passages.find(({ id }) => id === made?.id)
        ?.above.map(({ list }) => list)
        .toSorted(),
    ).toEqual(["claims", "measurements", "observations", "positions"]);
  });

  it("of words that are another source's: from that one, by way of the one that was read", () => {
    const passage = newForm(
      "passages",
      secondHand(passageForm(page, taken, "214").entered, "vane-1968", "hale-1896"),
    );
    expect(takenForm("positions", passage.entered, page).entered["who"]).toEqual([]);
    expect(unlistedAuthors(passage.entered, page)).toEqual([]);
    expect(secondHand(passage.entered, "vane-1968", null)).not.toHaveProperty("via");
    const after = saved(small, capturing({ values: written(small, passage), selector: taken.selector }, []));
    const id = [...built(after).model.graph.records.keys()].find(
      (one) => !built(small).model.graph.records.has(one),
    );
    expect(built(after).model.graph.provenance(id ?? "")).toMatchObject({
      sources: ["hale-1896"],
      via: ["vane-1968"],
    });
    expect(pageOf(after, "vane-1968").passages.map((one) => one.id)).toContain(id);
    expect(pageOf(after, "hale-1896").passages).toEqual([]);
  });

  it("in files as if written by hand", () => {
    const one = selectorFor(3, "They lie in a ring of some 25 feet: so we sank a pit.", 12, 34);
    const values = written(
      small,
      newForm("passages", { from: ["hale-1896"], at: "p. 68", quote: "a ring of some 25 feet", lang: "en" }),
    );
    const after = saved(
      [...small.slice(0, 2), { path: "hale.yaml", text: "source: hale-1896\n" }],
      capturing({ values, selector: one }, []),
    );
    expect(after.find(({ path }) => path === "hale.yaml")?.text).toBe(`source: hale-1896

passages:
  - id: hale-1896-p-68
    at: p. 68
    quote: a ring of some 25 feet
    lang: en
    selector:
      type: FragmentSelector
      conformsTo: http://tools.ietf.org/rfc/rfc3778
      value: page=4
      refinedBy:
        type: TextQuoteSelector
        exact: a ring of some 25 feet
        prefix: "They lie in "
        suffix: ": so we sank a pit."
`);
  });
});

describe("the page of a source's papers", () => {
  it("has the passages that were read in it, in their order, with what rests on each and what is amiss", () => {
    const { passages, language, pages, authors } = pageOf(small, "vane-1968");
    expect(passages.map(({ id }) => id)).toEqual(["early", "old-words", "late"]);
    expect([language, pages]).toEqual(["en", "211-230"]);
    expect(authors.map(({ id }) => id)).toEqual(["vane", null]);
    const late = passages[2];
    expect(late?.above.map(({ list }) => list)).toEqual(["measurements"]);
    expect(late?.findings.map(({ rule }) => rule)).toContain("unit-slip");
    expect(passages[1]?.of?.to).toBe("hale-1896");
  });

  it("leaves out what is withheld", () => {
    const read = built(small);
    expect(paperPage(read, "quiet-book")).toBeNull();
    for (const key of ["vane-1968", "hale-1896"])
      expect(JSON.stringify(paperPage(read, key))).not.toMatch(/umbra|quiet/iu);
    expect(paperLinks(read.model.graph, "quiet-book")).toEqual([]);
    expect(paperLinks(read.model.graph, "umbra-words")).toEqual([]);
  });

  it("is led to from the sheets of what is from it: at the passage, or at the printed page", () => {
    const { graph } = built(small).model;
    const links = (id: string) =>
      paperLinks(graph, id).map(({ key, passage, printed }) => [key, passage, printed]);
    expect(links("late")).toEqual([["vane-1968", "late", null]]);
    expect(links("old-words")).toEqual([["vane-1968", "old-words", null]]);
    expect(links("seen")).toEqual([["vane-1968", null, 220]]);
    expect(links("vane-1968")).toEqual([["vane-1968", null, null]]);
    expect(links("ring-a")).toEqual([]);
  });

  it("tells a selector in words, and what rests on a passage, on the passage's sheet", () => {
    const { model, findings, texts } = built(small);
    const sheet = sheetOf(model, findings, texts, "late");
    const place = sheet?.fields.find(({ name }) => name === "selector")?.lines[0]?.pieces[0]?.text;
    expect(place).toBe("page 4 of the file");
    expect(sheet?.above.map(({ how }) => how)).toEqual(["says"]);
    const told = (selector: unknown) => inEnglish(placeTold(selector) ?? "");
    expect(told(regionSelector(4, { x: 1, y: 1, w: 9, h: 9 }, { width: 600, height: 800 }))).toBe(
      "a part of page 5 of the file",
    );
    const over = takenWords(["a b c", "d e f"], { pageIndex: 0, at: 2 }, { pageIndex: 1, at: 1 });
    expect(told(over?.selector)).toBe("pages 1 to 2 of the file");
    const whole = takenWords(["a b c", "d e f"], { pageIndex: 0, at: 2 }, { pageIndex: 1, at: 5 });
    expect(told(whole?.selector)).toBe("pages 1 to 2 of the file");
    expect(told({ type: "TextQuoteSelector", exact: "b" })).toBe("found by its words");
  });
});

describe("papers belong to sources by their names", () => {
  it("to the longest key that a name begins with, and that no letter or figure continues", () => {
    const files = [
      "papers/vane-1968.pdf", "papers/vane-1968-plates.pdf", "papers/vane-1968b.pdf", "papers/DBLP-conf-x-1.pdf",
      "papers/hale/10.png", "papers/hale/2.png", "papers/vane-1968-plates-2.pdf", "images/hale.png", "papers/other.pdf",
    ]; // prettier-ignore
    expect(
      Object.fromEntries(papersOf(["vane-1968", "vane-1968-plates", "DBLP:conf/x", "hale", "vane"], files)),
    ).toEqual({
      "vane-1968": ["papers/vane-1968.pdf"],
      "vane-1968-plates": ["papers/vane-1968-plates-2.pdf", "papers/vane-1968-plates.pdf"],
      vane: ["papers/vane-1968b.pdf"],
      "DBLP:conf/x": ["papers/DBLP-conf-x-1.pdf"],
      hale: ["papers/hale/2.png", "papers/hale/10.png"],
    });
    expect(freePaper("DBLP:conf/x", "pdf", [])).toBe("papers/DBLP-conf-x.pdf");
    expect(freePaper("hale", "pdf", ["papers/HALE.pdf", "papers/hale-2.pdf"])).toBe("papers/hale-3.pdf");
  });

  it("and printed pages are read where a place begins with one", () => {
    expect(
      ["p. 12, fig. 3", "pp. 12–13", "ص ٨٤", "S. 7", "214", "fig. 3", "p. 12a", "xii"].map(printedPage),
    ).toEqual([12, 12, 84, 7, 214, null, null, null]);
  });
});
