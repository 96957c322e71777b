import { createHash } from "node:crypto";
import { rmSync } from "node:fs";
import { runInNewContext } from "node:vm";
import fc from "fast-check";
import { parseHTML } from "linkedom";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { folded, tokensOf } from "../../src/show/search/fold.ts";
import { openIndex } from "../../src/show/telling/page/open.ts";
import { foldScript } from "../../src/write/page/fold.ts";
import { merged, rangesOf } from "../../src/write/page/merged.ts";
import { anchorOf } from "../../src/write/page/paper.ts";
import type { Told } from "../../src/host/telling/kind.ts";
import { bowlsFolder, hostile, pageOf, toldIn } from "./page-corpus.ts";

const secret = /private|51\.7777|sealed|closed\.svg/i;

let folder = "";
let told: Told;
let html = "";
let document: Document;

beforeAll(async () => {
  folder = bowlsFolder();
  told = await toldIn(folder);
  html = await pageOf(told);
  ({ document } = parseHTML(html));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const all = (selector: string): readonly Element[] => [...document.querySelectorAll(selector)];

interface CourseData {
  readonly years: readonly (readonly [number, string] | null)[];
  readonly course: readonly string[];
  readonly said: Readonly<Record<string, readonly (readonly [number, number])[]>>;
  readonly sentences: readonly string[];
}
const courseData = (): CourseData =>
  JSON.parse(document.getElementById("course")?.textContent ?? "") as CourseData;
const placeOf = (id: string): number =>
  Number(document.getElementById(anchorOf(id))?.getAttribute("data-r") ?? Number.NaN);

describe("a page of a dispute", () => {
  test("has a section for every record that may be shown, and every way leads to something that is there", () => {
    const ids = openIndex(told.model).flatMap(({ entries }) => entries.map(({ id }) => id));
    expect(ids).toEqual(
      expect.arrayContaining(["one-set", "by-wear", "rim-1900", "bowl", "book-1950", "sizes", "said"]),
    );
    for (const id of ids)
      expect(document.getElementById(anchorOf(id))?.querySelector("h2, h1"), id).toBeTruthy();
    const anchors = all("[id]").map((one) => one.id);
    expect(new Set(anchors).size).toBe(anchors.length);
    const ways = all("[href]").map((one) => one.getAttribute("href") ?? "");
    expect(ways.length).toBeGreaterThan(60);
    for (const way of ways) {
      expect(way.startsWith("#"), way).toBe(true);
      expect(anchors, way).toContain(decodeURIComponent(way.slice(1)));
    }
  });

  test("tells nothing that is withheld, private or not to be published, and says that something is withheld", () => {
    expect(told.model.judgement.standings.has("sealed-claim")).toBe(true);
    const at = html.search(secret);
    expect(at < 0 ? "" : html.slice(at - 80, at + 40)).toBe("");
    const main = document.getElementById("dispute")?.textContent ?? "";
    expect(main).toContain("Some records are withheld");
    expect(main).toContain("Exact places of finds are withheld");
    expect(main).toContain("Pictures that may not be published are left out");
    const pictures = all("img").map((one) => one.getAttribute("src") ?? "");
    expect(pictures).toHaveLength(1);
    const drawn = Buffer.from(pictures[0]?.split(",")[1] ?? "", "base64").toString("utf8");
    expect(drawn).toContain("<path");
    expect(drawn).not.toContain("script");
  });

  test("runs its own script and no other, by a policy that allows no more", () => {
    const scripts = all("script");
    expect(scripts.map((one) => one.getAttribute("type"))).toEqual(["application/json", null]);
    const policy = document.querySelector("meta[http-equiv]")?.getAttribute("content") ?? "";
    const hash = (text: string): string => `'sha256-${createHash("sha256").update(text).digest("base64")}'`;
    const [, script = ""] = /<script>([\s\S]*?)<\/script>/.exec(html) ?? [];
    const [, style = ""] = /<style>([\s\S]*?)<\/style>/.exec(html) ?? [];
    expect(policy.split("; ")).toEqual([
      "default-src 'none'",
      `script-src ${hash(script)}`,
      `style-src ${hash(style)}`,
      "img-src data:",
      "font-src data:",
      "base-uri 'none'",
      "form-action 'none'",
    ]);
    const risky = all("*").flatMap((one) =>
      [...one.attributes].filter(({ name }) => /^on|^style$|^srcdoc$/i.test(name)).map(({ name }) => name),
    );
    expect(risky).toEqual([]);
    expect(
      all("style, iframe, object, embed, base, link, foreignObject").map((one) => one.localName),
    ).toEqual(["style"]);
  });

  test("shows what strangers wrote as they wrote it", () => {
    for (const id of ["one-set", "bowl", "worn", "sets", "hale", "book-1900", "said", "by-wear", "sizes"])
      expect(document.getElementById(anchorOf(id))?.textContent, id).toContain(hostile);
    expect(document.querySelector(`[lang="ar"]`)?.textContent).toContain("مجموعة");
  });

  test("is the same every time, and small", async () => {
    expect((await pageOf(await toldIn(folder))) === html).toBe(true);
    expect(html.length).toBeLessThan(500_000);
  });
});

describe("the years of the page", () => {
  test("are those of print and the whole, with the standing of everything in each", () => {
    const { years, course } = courseData();
    expect(years).toEqual([[1900, "1900"], [1950, "1950"], [1990, "1990"], null]);
    expect(course[placeOf("one-set")]).toBe("ssoo");
    expect(course[placeOf("two-sets")]).toBe("--uu");
    expect(course[placeOf("by-foot")]).toMatch(/^--[so]{2}$/);
    expect(course[placeOf("rim-1900")]).toMatch(/^s/);
    expect(course[placeOf("book-1950")]).toBe("-nnn");
    expect(course[placeOf("said")]).toBe("-nnn");
  });

  test("say of each year why it was so", async () => {
    const { said, sentences } = courseData();
    const turns = said[String(placeOf("one-set"))] ?? [];
    expect(turns.map(([from]) => from)).toEqual([0, 2]);
    const then = turns.map(([, number]) => sentences[number] ?? "");
    expect(then[0]).not.toBe(then[1]);
    expect(document.getElementById(anchorOf("one-set"))?.querySelector("[data-w]")?.textContent).toBe(
      then[1],
    );
  });

  test("draw the map of each year out of one drawing", () => {
    const map = document.querySelector(".map svg");
    const shown = (at: number): number =>
      [...(map?.querySelectorAll("[data-y]") ?? [])].filter((one) =>
        (one.getAttribute("data-y") ?? "").split(" ").some((range) => {
          const [from = 0, to = from] = range.split("-").map(Number);
          return from <= at && at <= to;
        }),
      ).length;
    expect(shown(0)).toBeGreaterThan(0);
    const hidden = [...(map?.querySelectorAll(`[display="none"]`) ?? [])];
    expect(hidden.length).toBeGreaterThan(0);
    expect(map?.querySelectorAll("[data-y]").length).toBe(hidden.length + shown(3));
    expect(map?.querySelector(`a[href="#r-one-set"]`)).toBeTruthy();
  });

  test("end at the year that the corpus is looked at from, and nothing of later is in it", async () => {
    const early = await pageOf(await toldIn(folder, { asOf: 1950 }));
    expect(early.includes("As of 1950")).toBe(true);
    const at = early.search(/book-1990|by-foot|21\.0|δύο σκεύη/);
    expect(at < 0 ? "" : early.slice(at - 120, at + 60)).toBe("");
  });
});

test("drawings as one keep the order of each, and each can be had from it again", () => {
  const drawing = fc.array(fc.constantFrom("a", "b", "c", "d"), { maxLength: 12 });
  fc.assert(
    fc.property(fc.array(drawing, { minLength: 1, maxLength: 5 }), (drawings) => {
      const all = merged(drawings);
      for (const [n, one] of drawings.entries())
        expect(all.filter(({ of }) => of.includes(n)).map(({ text }) => text)).toEqual(one);
      for (const { of } of all) {
        const back = rangesOf(of)
          .split(" ")
          .flatMap((range) => {
            const [from = 0, to = from] = range.split("-").map(Number);
            return Array.from({ length: to - from + 1 }, (_, at) => from + at);
          });
        expect(back).toEqual(of);
      }
    }),
    { numRuns: 100 },
  );
});

test("the page's search compares words as the program's does", () => {
  const fold = runInNewContext(`${foldScript}; fold`) as (text: string) => string;
  for (const word of [
    "Straße",
    "Œuvre",
    "ΣΟΦΟΣ",
    "Ἀθήνη",
    "مَجْمُوعة",
    "أثر",
    "٣٤۵",
    "Łódź",
    "İzmir",
    "naïve",
    "Þór",
  ])
    expect(fold(word), word).toBe(folded(word));
  const line = "Hale’s “post-hole”, 2.03 m; the rings' depths";
  expect(fold(line).split(" ")).toEqual(tokensOf(line).map((one) => one.folded));
});
