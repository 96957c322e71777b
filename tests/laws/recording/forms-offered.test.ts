import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import type { ListName, Target } from "../../../src/read/grammar/field.ts";
import { checkedForm } from "../../../src/show/desk/forms/checked/checked.ts";
import { sayingOf } from "../../../src/show/desk/forms/checked/saying.ts";
import { troubleWithName } from "../../../src/show/desk/forms/checked/renamed.ts";
import { quantityWords } from "../../../src/show/desk/forms/checked/understood.ts";
import { saidBy } from "../../../src/show/desk/forms/filled/asked.ts";
import { isMasked } from "../../../src/show/desk/forms/filled/masked.ts";
import { alikeIn } from "../../../src/show/desk/forms/offered/alike.ts";
import { choicesFor, textsUsed } from "../../../src/show/desk/forms/offered/choices.ts";
import { referringTo } from "../../../src/show/desk/forms/offered/referring.ts";
import { proposedId } from "../../../src/show/desk/forms/offered/proposed.ts";
import { formPage } from "../../../src/show/desk/forms/page.ts";
import { parseQuantity } from "../../../src/base/quantity/quantity-text.ts";
import { graphOf, small } from "./forms-cases.ts";

const graph = graphOf(small);
const texts = new Map(small.map((file) => [file.path, file.text]));
const page = (record: string) => formPage(graph, texts, { list: null, record, presets: [] });
const secrets = [
  "secret-pit",
  "Umbrapit",
  "secret-seen",
  "Umbratrace",
  "quiet-book",
  "Umbragarden",
  "51.23456",
  "Hollowmarsh",
];
const told = (value: unknown): readonly string[] => {
  const text = JSON.stringify(value);
  return secrets.filter((one) => text.includes(one));
};

describe("what is withheld", () => {
  test("has no form, and no other form shows it", () => {
    for (const id of ["secret-pit", "secret-seen", "quiet-book"]) expect(page(id)).toBeNull();
    for (const record of graph.records.values()) {
      const form = page(record.id);
      if (!form) continue;
      expect(told(form)).toEqual([]);
    }
  });

  test("stays in the file when a form that does not show it is saved", () => {
    for (const [id, field, typed] of [
      ["ring-a", "name", "Ring A"],
      ["ring-b", "name", "Ring B"],
      ["roofed", "text", "It had a roof."],
      ["deep-so-roofed", "text", "Deep posts carry."],
    ] as const) {
      const form = page(id);
      if (!form) throw new Error(`no form for ${id}`);
      const asked = { list: form.list, id, seen: form.seen, entered: { ...form.entered, [field]: typed } };
      const checked = checkedForm(graph, asked);
      expect(checked.troubles).toEqual([]);
      expect(told(checked)).toEqual([]);
      const { values, seen } = sayingOf(graph, asked);
      expect({ ...values, [field]: null }).toEqual({ ...seen, [field]: null });
    }
    const form = page("deep-so-roofed");
    const because = form?.entered["because"];
    expect(because).toHaveLength(2);
    expect(
      Array.isArray(because) && because.filter((one: unknown) => typeof one === "string" && isMasked(one)),
    ).toHaveLength(1);
    if (!form) throw new Error("no form");
    expect(saidBy(graph, form).values["because"]).toEqual(["deep", "secret-seen"]);
  });

  test("has no form where it could not be read, either", () => {
    const more =
      "artefacts:\n  - { id: lost-pit, nme: X, coordinates: 99.77 N, found-at: Umbrahill }\n" +
      "observations:\n  - { id: lost-seen, of: secret-pit }\n";
    const files = [...small, { path: "more.yaml", text: more }];
    const bad = graphOf(files);
    const all = new Map(files.map((file) => [file.path, file.text]));
    const form = (record: string) => formPage(bad, all, { list: null, record, presets: [] });
    expect(form("lost-seen")).toBeNull();
    const pit = form("lost-pit");
    expect(pit?.kept).toEqual(["coordinates", "found-at"]);
    expect(JSON.stringify(pit)).not.toMatch(/99\.77|Umbrahill/);
  });

  test("is offered nowhere, and is named in no message", () => {
    const every: readonly Target[] = [...listNames, "sources"];
    for (const typed of ["", "u", "secret", "umbra", "quiet", "pit"])
      expect(told(choicesFor(graph, every, typed, 99))).toEqual([]);
    expect(told(alikeIn(graph, "artefacts", "Umbrapit", null))).toEqual([]);
    expect(told(alikeIn(graph, "observations", "Umbratrace.", null))).toEqual([]);
    const asked = { list: "measurements", id: null, seen: null } as const;
    for (const of of ["secret-pitt", "secret-pi", "quiet-boo"])
      expect(
        told(checkedForm(graph, { ...asked, entered: { of, dimension: "depth", value: "3 cm" } }).troubles),
      ).toEqual([]);
  });
});

describe("what is chosen by search", () => {
  test("is of the lists asked for, and has every word that was typed", () => {
    fc.assert(
      fc.property(
        fc.subarray([...listNames, "sources"] as readonly Target[] as Target[], { minLength: 1 }),
        fc.constantFrom(
          "",
          "r",
          "ring",
          "the inner",
          "vane",
          "1968 van",
          "ROOF",
          "ايز",
          "MD 98",
          "zzz",
          "  ",
          "!",
        ),
        (to, typed) => {
          const { first, more } = choicesFor(graph, to, typed, 3);
          expect(first.length).toBeLessThanOrEqual(3);
          if (first.length < 3) expect(more).toBe(0);
          for (const { id } of first) {
            const list = graph.sources.has(id) ? "sources" : graph.records.get(id)?.list;
            expect(to).toContain(list);
          }
        },
      ),
    );
    const ids = (typed: string, to: readonly Target[]) =>
      choicesFor(graph, to, typed, 9).first.map((one) => one.id);
    expect(ids("roof", ["claims"])).toEqual(["roofed"]);
    expect(ids("INNER carried", ["claims"])).toEqual(["roofed"]);
    expect(ids("ايزولد", ["scholars"])).toEqual(["vane"]);
    expect(ids("md/98/1", ["artefacts"])).toEqual(["ring-a"]);
    expect(ids("posts of", ["sources", "passages"])).toEqual(["vane-1968"]);
    expect(ids("roof", ["artefacts"])).toEqual([]);
  });

  test("is a text that the corpus has, where texts are helped on", () => {
    expect(textsUsed(graph, { list: "measurements", name: "dimension" }, "dia", 5).first).toEqual([
      { id: "diameter", label: "diameter", kind: null },
    ]);
  });
});

describe("records that say nearly the same", () => {
  const ids = (list: ListName, typed: string, except: string | null = null) =>
    alikeIn(graph, list, typed, except).map((one) => one.id);
  test("are told, whatever the case, the order of names, or a slip", () => {
    expect(ids("claims", "the inner ring carried a roof")).toEqual(["roofed"]);
    expect(ids("claims", "The iner ring caried a roof")).toEqual(["roofed"]);
    expect(ids("claims", "The inner ring carried a roof of thatch")).toEqual(["roofed"]);
    expect(ids("claims", "The inner ring carried a ro")).toContain("roofed");
    expect(ids("scholars", "Vane, Isolde")).toEqual(["vane"]);
    expect(ids("scholars", "ايزولد")).toEqual(["vane"]);
    expect(ids("artefacts", "Inner ring")).toContain("ring-a");
  });
  test("are not told of the record itself, of what is unlike, or of nothing", () => {
    expect(ids("claims", "the inner ring carried a roof", "roofed")).toEqual([]);
    expect(ids("claims", "Cattle were kept in the ditch")).toEqual([]);
    expect(ids("claims", "")).toEqual([]);
    expect(ids("positions", "The inner ring carried a roof.")).toEqual([]);
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (any) => ids("claims", any).length <= 5),
    );
  });
});

test("every id that is proposed is one, and is nobody's", () => {
  const idPattern = /^[a-z0-9][a-z0-9-]*(\/[a-z0-9][a-z0-9-]*)*$/;
  fc.assert(
    fc.property(fc.constantFrom(...listNames), fc.string({ unit: "binary", maxLength: 60 }), (list, any) => {
      const id = proposedId(graph, list, {
        text: any,
        name: any,
        title: any,
        at: any,
        where: any,
        method: any,
      });
      expect(id).toMatch(idPattern);
      expect(graph.records.has(id) || graph.sources.has(id)).toBe(false);
      expect(troubleWithName(graph, "roofed", id)).toBeNull();
    }),
  );
  const proposed = (list: ListName, values: Readonly<Record<string, string | readonly string[]>>) =>
    proposedId(graph, list, values);
  expect(proposed("artefacts", { name: "Post 12", "part-of": "ring-a" })).toBe("ring-a/post-12");
  expect(proposed("arguments", { because: ["deep"], therefore: "open-ring", scheme: "trace" })).toBe(
    "open-ring-from-trace",
  );
  expect(proposed("relations", { earlier: "ring-a", later: "ring-b" })).toBe("ring-a-before-ring-b");
});

test("another name is refused as the command line would refuse it", () => {
  expect(inEnglish(troubleWithName(graph, "roofed", "Roof here") ?? "")).toMatch(
    /^Unexpected id `Roof here`, expected/,
  );
  expect(inEnglish(troubleWithName(graph, "roofed", "open-ring") ?? "")).toMatch(/^Duplicate id `open-ring`/);
  expect(inEnglish(troubleWithName(graph, "roofed", "vane-1968") ?? "")).toMatch(/^Duplicate id/);
  expect(troubleWithName(graph, "roofed", " roofed ")).toBeNull();
});

test("what names a record is counted, and what is withheld is not named among it", () => {
  expect(
    referringTo(graph, "roofed")
      .records.map((one) => one.id)
      .toSorted(),
  ).toEqual(["deep-so-roofed", "what-was-it"]);
  expect(referringTo(graph, "ring-a").records.map((one) => one.kind && inEnglish(one.kind))).toEqual(
    expect.arrayContaining(["claim", "measurement", "observation"]),
  );
});

test("outcomes that say something and have no id are given one each", () => {
  const outcomes = [{ text: "Deep." }, { text: "Deep." }, { id: "own", text: "Shallow." }];
  const entered = { of: ["ring-a"], method: "probing", outcomes };
  const { values, troubles } = checkedForm(graph, { list: "examinations", id: null, seen: null, entered });
  expect(troubles).toEqual([]);
  expect(values["outcomes"]).toMatchObject([{ id: "deep" }, { id: "deep-2" }, { id: "own" }]);
});

test("signs that no file may have are told, and can be taken out", () => {
  const asked = { list: "claims", id: null, seen: null } as const;
  const { troubles } = checkedForm(graph, { ...asked, entered: { text: "a\u0007b\ud800c" } });
  expect(troubles.map((one) => ({ ...one, message: inEnglish(one.message) }))).toEqual([
    {
      path: ["text"],
      message: "Unexpected control character U+0007, expected printable text",
      fixes: ["abc"],
      fresh: true,
    },
  ]);
});

test.each([
  // GUM 4.3.7: read to the last digit, half a unit either way, u = 0.05 / √3.
  ["18.2 cm", /^18\.20 ± 0\.03 cm; length; read to the last digit/],
  ["18.2 ± 0.4 cm", /^18\.2 ± 0\.4 cm; length; ± is one standard uncertainty/],
  ["≥ 240 cm", /^≥ 240 cm; length; a lower bound/],
  // A range is rectangular: u = (45 − 42) / √12 = 0.87.
  ["42–45 cm", /^43\.5 ± 0\.9 cm; length; a range/],
  ["17", /^17; a count; exact$/],
])("a quantity is shown as it is understood: %s", (typed, words) => {
  const read = parseQuantity(typed, graph.settings.quantities);
  if (!("ok" in read)) throw new Error(inEnglish(read.problem.message));
  expect(inEnglish(quantityWords(read.ok))).toMatch(words);
});
