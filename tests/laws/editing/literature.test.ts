import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { build } from "../../../src/build.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import { literaturePage } from "../../../src/show/desk/literature/page.ts";
import type { LiteraturePage } from "../../../src/show/desk/literature/page.ts";
import { statusAction } from "../../../src/show/desk/literature/reading-list.ts";
import type { Status } from "../../../src/show/desk/literature/reading-list.ts";

const bib = ["hale 1896", "vane 1968", "kern 1971", "orme 2001", "secret 1950"]
  .map((one) => one.split(" "))
  .map(([key, year]) => `@book{${key}, author = {${key}, A.}, title = {On ${key}}, year = ${year}}\n`)
  .join("");
const records = `artefacts:
  - { id: ring, name: The ring }
observations:
  - { id: o1, of: ring, text: A post was seen., from: hale p. 2 }
  - { id: o2, of: ring, text: Another was told of., from: kern p. 3, via: vane-1 }
passages:
  - { id: vane-1, at: p. 1, from: vane, quote: It stood. }
measurements:
  - { of: ring, dimension: width, value: 5 m, from: [vane-1, hale] }
readings:
  # two books at once
  - { from: [kern, orme], status: to-read, when: 2024-01-05 }
  - { from: hale, status: nothing-in-it }
  - { from: vane, status: to-read, when: 2023-01-01 }
  - { from: vane, status: read, when: 2023-05-02, note: twice }
searches:
  - { id: two, where: A card index, words: ring, found: 5 }
  - id: one
    where: The catalogue
    words: ring OR circle
    when: 2023-02-01
    found: 30
    screened: 20
    kept: 4
    left-out: [{ n: 10, why: another ring }, { n: 5, why: a novel }]
`;

const filesWith = (text: string): Map<string, string> =>
  new Map([
    ["corpus.yaml", "title: T\nbibliography: [b.bib]\nwithhold: [secret]\n"],
    ["b.bib", bib],
    ["a.yaml", text],
  ]);

function pageOf(files: ReadonlyMap<string, string>): {
  readonly page: LiteraturePage;
  readonly ground: Parameters<typeof prepared>[0];
} {
  const list = [...files].map(([path, text]) => ({ path, text }));
  const { model, findings } = build(list, plugins, { read: new Map(), compute: new Map() });
  if (!model) throw new Error(JSON.stringify(findings));
  return { page: literaturePage(model.graph), ground: { graph: model.graph, files } };
}

describe("the reading list", () => {
  test("has every source that is not withheld, with what became of it and what was taken from it", () => {
    const { sources } = pageOf(filesWith(records)).page;
    expect(
      sources.map(({ key, status, when, taken, secondHand, odd }) => ({
        key,
        status,
        when,
        taken,
        secondHand,
        odd,
      })),
    ).toEqual([
      {
        key: "hale",
        status: "nothing-in-it",
        when: null,
        taken: [
          ["observations", 1],
          ["measurements", 1],
        ],
        secondHand: 0,
        odd: "taken-from-nothing",
      },
      {
        key: "vane",
        status: "read",
        when: "2023-05-02",
        taken: [
          ["passages", 1],
          ["measurements", 1],
        ],
        secondHand: 0,
        odd: null,
      },
      { key: "kern", status: "to-read", when: "2024-01-05", taken: [], secondHand: 1, odd: null },
      { key: "orme", status: "to-read", when: "2024-01-05", taken: [], secondHand: 0, odd: null },
    ]);
  });

  /** The text of the records after some sources were given a status. */
  function after(keys: readonly string[], status: Status | null): string {
    const files = filesWith(records);
    const { page, ground } = pageOf(files);
    const lines = page.sources.filter((one) => keys.includes(one.key));
    const what = prepared(ground, statusAction(lines, status, "2026-11-26"));
    if (!("changes" in what)) throw new Error(JSON.stringify(what));
    expect(what.changes.map((one) => one.file)).toEqual(["a.yaml"]);
    const text = edited(
      records,
      what.changes.flatMap((one) => one.edits),
    );
    const now = pageOf(new Map([...files, ["a.yaml", text]])).page.sources;
    for (const one of now)
      expect(one.status).toBe(
        keys.includes(one.key) ? status : page.sources.find((other) => other.key === one.key)?.status,
      );
    return text;
  }

  test("one that is said of already is changed where it is said", () => {
    expect(after(["vane"], "nothing-in-it")).toBe(
      records.replace("status: read, when: 2023-05-02", "status: nothing-in-it, when: 2026-11-26"),
    );
  });

  test("one of two that are said of together gets a reading of its own; both are changed together", () => {
    expect(after(["kern"], "read")).toContain(
      "  - { from: vane, status: read, when: 2023-05-02, note: twice }\n  - { from: kern, status: read, when: 2026-11-26 }\n",
    );
    expect(after(["kern", "orme"], "read")).toBe(
      records.replace("status: to-read, when: 2024-01-05", "status: read, when: 2026-11-26"),
    );
  });

  test("what was said can be taken away again, of one of two without the other", () => {
    expect(after(["orme"], null)).toBe(records.replace("[kern, orme]", "[kern]"));
    expect(after(["hale"], null)).toBe(records.replace("  - { from: hale, status: nothing-in-it }\n", ""));
    // Of the source that was read twice, both readings go.
    expect(after(["vane"], null)).not.toContain("from: vane, status");
  });
});

describe("the log of the searches", () => {
  test("runs by day, and says what does not come out", () => {
    const { log } = pageOf(filesWith(records)).page;
    expect(log.searches.map(({ id, unaccounted }) => [id, unaccounted])).toEqual([
      ["one", 1],
      ["two", null],
    ]);
    expect(log.flow).toEqual({
      found: 35,
      screened: 20,
      kept: 4,
      leftOut: 15,
      reasons: [
        { why: "another ring", n: 10 },
        { why: "a novel", n: 5 },
      ],
      uncounted: 1,
    });
    expect(log.places).toEqual(["The catalogue", "A card index"]);
  });
});
