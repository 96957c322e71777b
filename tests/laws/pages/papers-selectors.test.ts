import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { flowText } from "../../../src/show/desk/forms/filled/flow.ts";
import { readFlow } from "../../../src/show/desk/forms/filled/flow.ts";
import { foundIn, inPercent } from "../../../src/show/desk/papers/find.ts";
import {
  imageSelector,
  inPaper,
  pdfFragments,
  regionSelector,
  selectorFor,
} from "../../../src/show/desk/papers/selector.ts";
import { soughtBy } from "../../../src/show/desk/papers/sought.ts";
import { takenWords } from "../../../src/show/desk/papers/taken.ts";

const vocabulary = [
  "the", "ring", "post-hole", "of", "Merrow", "was", "filled", "with", "flint", "25", "feet", "officer", "naïve", "élan",
  "κύκλος", "ὁδός", "حلقة", "الخشب", "圈", "(A)", "“wide”", "effluent", "coöperate", "0.743", "m,", "and", "not", "found.",
]; // prettier-ignore
const word = fc.constantFrom(...vocabulary);
const words = fc.array(word, { minLength: 4, maxLength: 40 });
const paper = fc.array(words, { minLength: 1, maxLength: 5 });

/** A text as another reader of the same page would give it. */
const asElsewhere = fc.record({
  space: fc.constantFrom(" ", "\n", "  ", "\u00a0"),
  form: fc.constantFrom("NFC", "NFD"),
  ligatures: fc.boolean(),
  divided: fc.boolean(),
});

type Elsewhere = typeof asElsewhere extends fc.Arbitrary<infer E> ? E : never;

function elsewhere(all: readonly string[], { space, form, ligatures, divided }: Elsewhere): string {
  return all
    .map((one) => (divided && /^[a-z]{6,}$/u.test(one) ? `${one.slice(0, 3)}-\n${one.slice(3)}` : one))
    .map((one) => (ligatures ? one.replace(/ffi/gu, "ﬃ").replace(/fl/gu, "ﬂ").replace(/fi/gu, "ﬁ") : one))
    .join(space)
    .normalize(form);
}

const bare = (text: string): string =>
  text.normalize("NFKD").replace(/[\p{M}\s-]/gu, "").toLowerCase(); // prettier-ignore

describe("a selector", () => {
  it("is one of the Web Annotation Data Model: a page of RFC 3778 refined by its words and what stands about them", () => {
    const page = "They lie in a ring of some 25 feet, and we sank\na pit in the middle of it.";
    const start = page.indexOf("a ring");
    expect(selectorFor(2, page, start, start + "a ring of some 25 feet".length)).toEqual({
      type: "FragmentSelector",
      conformsTo: "http://tools.ietf.org/rfc/rfc3778",
      value: "page=3",
      refinedBy: {
        type: "TextQuoteSelector",
        exact: "a ring of some 25 feet",
        prefix: "They lie in ",
        suffix: ", and we sank a pit in the",
      },
    });
  });

  it("finds its place again in the same paper", () => {
    fc.assert(
      fc.property(paper, fc.nat(), fc.nat(), fc.nat(), (all, p, s, l) => {
        const pages = all.map((one) => one.join(" "));
        const page = p % pages.length;
        const of = all[page] ?? [];
        const first = s % of.length;
        const last = first + (l % (of.length - first));
        const start = of.slice(0, first).join(" ").length + (first > 0 ? 1 : 0);
        const end = start + of.slice(first, last + 1).join(" ").length;
        const found = foundIn(pages, selectorFor(page, pages[page] ?? "", start, end));
        // Where the words stand twice with the same about them, either place is theirs.
        expect(found).not.toBeNull();
        if (found === null || !("start" in found)) throw new Error("no words found");
        expect(found.page).toBe(page);
        expect(bare((pages[page] ?? "").slice(found.start, found.end))).toBe(
          bare((pages[page] ?? "").slice(start, end)),
        );
      }),
      { numRuns: 100 },
    );
  });

  it("finds its words in another text layer, and behind a cover that has been put before them", () => {
    fc.assert(
      fc.property(
        words,
        words,
        asElsewhere,
        fc.nat({ max: 2 }),
        fc.nat(),
        (before, after, other, covers, l) => {
          const own = ["thermoluminescence", "dates", "the", "ring", "at", "Wexcombe-on-the-Hill"].slice(
            0,
            2 + (l % 5),
          );
          const page = [...before, ...own, ...after];
          const text = page.join(" ");
          const start = before.join(" ").length + 1;
          const selector = selectorFor(0, text, start, start + own.join(" ").length);
          const pages = [
            ...Array.from({ length: covers }, () => "Downloaded from an archive"),
            elsewhere(page, other),
          ];
          const found = foundIn(pages, selector);
          if (found === null || !("start" in found)) throw new Error("not found");
          expect(found.page).toBe(covers);
          expect(bare((pages[covers] ?? "").slice(found.start, found.end))).toBe(bare(own.join(" ")));
        },
      ),
      { numRuns: 100 },
    );
  });

  it("takes of two places the one that what stands about them fits", () => {
    const page = "The ring is wide. Of the north the ring is wide and low. The ring is wide.";
    const start = page.indexOf("the ring is wide and");
    const selector = selectorFor(0, page, start, start + "the ring is wide".length);
    expect(foundIn([page], selector)).toEqual({ page: 0, start, end: start + 16 });
    expect(foundIn(["The ring is wide.", page], selector)).toEqual({ page: 1, start, end: start + 16 });
  });

  it("says that its words are gone", () => {
    const selector = selectorFor(0, "We found neither ash nor stone", 9, 20);
    expect(foundIn(["We found ash", ""], selector)).toBeNull();
    expect(foundIn([], selector)).toBeNull();
    expect(foundIn(["x"], { type: "SvgSelector", value: "<svg/>" })).toBeNull();
    expect(foundIn(["x"], null)).toBeNull();
  });

  it("goes on over pages from where its words begin to where what follows them begins", () => {
    fc.assert(
      fc.property(
        fc.array(words, { minLength: 2, maxLength: 4 }),
        fc.nat(),
        fc.nat(),
        fc.nat({ max: 2 }),
        (all, s, e, covers) => {
          // Each word is another: what stands twice with the same about it could be either.
          const pages = all.map((one, n) => `Page ${n}: ${one.map((word, at) => `${word}.${at}`).join(" ")}`);
          const [head = "", tail = ""] = [pages[0], pages.at(-1)];
          const start = s % (head.length - 1);
          const end = 1 + (e % tail.length);
          const taken = takenWords(
            pages,
            { pageIndex: pages.length - 1, at: end },
            { pageIndex: 0, at: start },
          );
          if (taken === null || taken.lastIndex === taken.pageIndex) return;
          const found = foundIn([...Array.from({ length: covers }, () => "Cover"), ...pages], taken.selector);
          if (found === null || !("onto" in found) || found.onto === undefined)
            throw new Error("not found over pages");
          expect(found.page).toBe(covers);
          expect(found.onto.page).toBe(covers + pages.length - 1);
          expect(bare(head.slice(start, found.start))).toBe("");
          expect(bare(tail.slice(Math.min(end, found.onto.end), Math.max(end, found.onto.end)))).toBe("");
        },
      ),
      { numRuns: 100 },
    );
  });

  it("reads back what it says of a region, in points of a page and in percent of an image", () => {
    const side = fc.integer({ min: 0, max: 900 }).map((n) => n / 10);
    fc.assert(
      fc.property(
        side,
        side,
        fc.integer({ min: 10, max: 99 }),
        fc.integer({ min: 200, max: 2000 }),
        (x, y, w, width) => {
          const region = { x, y, w, h: w };
          const size = { width, height: width * 1.4 };
          const selector = regionSelector(4, region, size);
          expect(selector.conformsTo).toBe(pdfFragments);
          expect(selector.value).toMatch(/^page=5&viewrect=[\d.]+,[\d.]+,[\d.]+,[\d.]+$/u);
          const found = foundIn(["", "", "", "", ""], selector);
          if (found === null || !("region" in found) || !found.region) throw new Error("no region");
          const back = inPercent(found.region, size);
          for (const name of ["x", "y", "w", "h"] as const) expect(back[name]).toBeCloseTo(region[name], 0);
          expect(soughtBy(imageSelector(region))?.region).toEqual({ ...region, in: "percent" });
        },
      ),
      { numRuns: 50 },
    );
  });

  it("tells its file where the source has several, and is written and read back as it is", () => {
    const selector = selectorFor(0, "it was: a ring # of posts – “wide”", 3, 30);
    expect(inPaper(selector, "papers/a.pdf", ["papers/a.pdf"])).toBe(selector);
    const whole = inPaper(selector, "papers/a-plates.pdf", ["papers/a.pdf", "papers/a-plates.pdf"]);
    expect(soughtBy(whole)?.file).toBe("papers/a-plates.pdf");
    const back = readFlow(flowText(whole));
    expect("value" in back ? back.value : back).toEqual(whole);
  });

  it("reads what others write: words without their context, values with a sign before them, several ways to one place", () => {
    expect(foundIn(["a b c"], { type: "TextQuoteSelector", exact: "b" })).toEqual({
      page: 0,
      start: 2,
      end: 3,
    });
    expect(soughtBy({ type: "FragmentSelector", value: "#page=7" })?.page).toBe(6);
    expect(
      soughtBy([
        { type: "CssSelector", value: "p" },
        { type: "TextQuoteSelector", exact: "b" },
      ])?.words?.exact,
    ).toBe("b");
    for (const value of ["page=0", "page=-1", "page=1e3", "page=", "viewrect=1,2,3", "xywh=percent:1,2,0,4"])
      expect(soughtBy({ type: "FragmentSelector", value })).toBeNull();
  });
});
