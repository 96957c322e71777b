import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { roundYears } from "../../../src/show/scholars/line.ts";
import type { Cell } from "../../../src/show/scholars/matrix.ts";
import { scholarPage } from "../../../src/show/scholars/scholar.ts";
import { scholarsPage } from "../../../src/show/scholars/scholars.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
const made = corpusOf({ records: 600, seed: 11, claims: 40, scholars: 15 });
const memo = emptyMemo();

type Looked = Checked<Model> & { readonly model: Model };
const known = new Map<readonly SourceFile[], Map<number | null, Looked>>();

/** The model of a corpus in a year, built once. */
function looked(files: readonly SourceFile[], asOf: number | null): Looked {
  const before = known.get(files)?.get(asOf);
  if (before) return before;
  const checked = build(files, plugins, memo, asOf === null ? {} : { asOf });
  if (!checked.model) throw new Error("the corpus has no model");
  const fresh = { ...checked, model: checked.model };
  known.set(files, (known.get(files) ?? new Map<number | null, Looked>()).set(asOf, fresh));
  return fresh;
}

function pagesOf(files: readonly SourceFile[], asOf: number | null) {
  const { model, findings } = looked(files, asOf);
  const texts = new Map(files.map((file) => [file.path, file.text]));
  const ids = model.graph.list("scholars").map((one) => one.id);
  return {
    model,
    findings,
    all: scholarsPage(model),
    each: ids.map((id) => scholarPage(model, findings, texts, id)),
  };
}

/** What the records say, read off them anew: each scholar's stances on each claim in print by a year, in order of years. */
function recorded(model: Model, asOf: number | null): ReadonlyMap<string, readonly Said[]> {
  const found = new Map<string, Said[]>();
  for (const { id, values } of model.graph.list("positions")) {
    const print = model.graph.provenance(id).year;
    if (asOf !== null && print !== null && print > asOf) continue;
    for (const who of values.who) {
      const key = `${who} ${values.claim}`;
      const year = values.year ?? print;
      found.set(key, [...(found.get(key) ?? []), { stance: values.stance, year, position: id }]);
    }
  }
  for (const list of found.values()) list.sort((a, b) => (a.year ?? -1e9) - (b.year ?? -1e9));
  return found;
}

interface Said {
  readonly stance: string;
  readonly year: number | null;
  readonly position: string;
}

const corpora = [
  ["the demo", demo],
  ["a made corpus", made],
] as const;

describe.each(corpora)("in %s", (_, files) => {
  const years = scholarsPage(looked(files, null).model).years;
  const some = [null, years[0] ?? null, years[Math.floor(years.length / 2)] ?? null, years.at(-2) ?? null];

  test.each(some)("each cell is the latest stance recorded, as of %s", (asOf) => {
    const { model, all } = pagesOf(files, asOf);
    const said = recorded(model, asOf);
    const columns = all.scholars.filter((one) => one.claims > 0).map((one) => one.id);
    const seen = new Map<string, Cell>();
    for (const row of all.matrix.groups.flatMap((group) => group.rows)) {
      expect(row.cells.length).toBe(columns.length);
      row.cells.forEach((cell, place) => {
        const key = `${columns[place] ?? ""} ${row.claim}`;
        const list = said.get(key);
        expect(cell === null, key).toBe(list === undefined);
        if (cell === null || list === undefined) return;
        seen.set(key, cell);
        expect(cell.stance, key).toBe(list.at(-1)?.stance);
        expect(cell.position, key).toBe(list.at(-1)?.position);
        expect(cell.changed, key).toBe(new Set(list.map((one) => one.stance)).size > 1);
        const same = list.length - 1 - list.findLastIndex((one) => one.stance !== cell.stance);
        expect(cell.since, key).toBe(list.at(-same)?.year ?? null);
        expect(cell.before.length, key).toBe(list.length - same);
      });
    }
    // Nothing recorded of a claim that is listed is left out.
    const listed = [...said.keys()].filter((key) => model.judgement.listed(key.split(" ")[1] ?? ""));
    expect([...seen.keys()].sort()).toEqual(listed.sort());
  });

  test.each(some)("the list adds up to the matrix, as of %s", (asOf) => {
    const { model, all } = pagesOf(files, asOf);
    const said = [...recorded(model, asOf).keys()];
    for (const one of all.scholars) {
      const own = said.filter((key) => key.startsWith(`${one.id} `));
      expect(one.claims, one.id).toBe(own.length);
      for (const held of one.holds) expect(own).toContain(`${one.id} ${held.claim}`);
    }
    expect(all.scholars.length + all.later).toBe(model.graph.list("scholars").length);
    const rows = new Set(all.matrix.groups.flatMap((group) => group.rows.map((row) => row.claim)));
    const claims = model.graph.list("claims").filter(({ id }) => model.judgement.listed(id));
    expect(rows.size + all.matrix.without).toBe(claims.length);
  });

  test("nothing said after a year is shown in it, and the years of print keep to it", () => {
    for (const asOf of some) {
      if (asOf === null) continue;
      const { all, each } = pagesOf(files, asOf);
      const shown: (number | null)[] = [];
      for (const row of all.matrix.groups.flatMap((group) => group.rows))
        for (const cell of row.cells)
          if (cell) shown.push(cell.since, cell.left?.year ?? null, ...cell.before.map((one) => one.year));
      for (const one of all.scholars) shown.push(one.years?.last ?? null);
      for (const page of each) {
        for (const track of page?.line.tracks ?? [])
          for (const point of track.points) shown.push(point.year, point.until);
        for (const step of page?.steps ?? []) shown.push(step.year);
        for (const one of page?.unanswered ?? []) shown.push(one.year);
        if (page?.line.span)
          expect(page.line.span.to).toBeLessThanOrEqual(Math.max(asOf, page.line.span.from + 1));
      }
      const dated = shown.flatMap((year) => year ?? []);
      expect(dated.length).toBeGreaterThan(0);
      expect(Math.max(...dated)).toBeLessThanOrEqual(asOf);
    }
  });

  test("columns are in the order of the years in print, and rivals stand side by side", () => {
    const { model, all } = pagesOf(files, null);
    const firsts = all.scholars.map((one) => one.years?.first ?? Infinity);
    expect(firsts).toEqual(firsts.toSorted((a, b) => a - b));
    for (const { question, rows } of all.matrix.groups) {
      rows.forEach((row, place) => {
        const above = rows[place - 1];
        const rivals = above !== undefined && model.graph.rivalsOf(row.claim).includes(above.claim);
        expect(row.rival).toBe(rivals);
      });
      const record = question === null ? undefined : model.graph.records.get(question.id);
      if (record?.list !== "questions") continue;
      const listed = [...new Set(record.values.answers)].filter((claim) => model.judgement.listed(claim));
      expect(rows.slice(0, listed.length).map((row) => row.claim)).toEqual(listed);
    }
  });

  test("a track goes from each position to the next, and tells the words and the place of each", () => {
    const { model, each } = pagesOf(files, null);
    const said = recorded(model, null);
    let quoted = 0;
    for (const page of each) {
      for (const track of page?.line.tracks ?? []) {
        const list = said.get(`${page?.id ?? ""} ${track.claim}`) ?? [];
        expect(track.points.map((point) => point.position)).toEqual(list.map((one) => one.position));
        track.points.forEach((point, place) => {
          const record = model.graph.records.get(point.position);
          if (record?.list !== "positions") throw new Error("a point is no position");
          expect(point.words).toBe(record.values.words ?? null);
          expect(point.certainty).toBe(record.values.certainty ?? null);
          expect(point.from.length).toBe(record.values.from?.length ?? 0);
          if (point.words !== null) quoted++;
          const next = track.points[place + 1];
          if (next) expect(point.until).toBe(next.year);
        });
      }
    }
    expect(quoted).toBeGreaterThan(0);
  });

  test("what is unanswered is against what is held, by somebody else, and no argument of the scholar's is against it", () => {
    const { model, findings, each } = pagesOf(files, null);
    const { graph } = model;
    const told = new Set<string>();
    for (const page of each) {
      const held = new Set(
        scholarsPage(model)
          .scholars.find((one) => one.id === page?.id)
          ?.holds.map((one) => one.claim),
      );
      for (const one of page?.unanswered ?? []) {
        told.add(one.argument.id);
        expect(one.against.length).toBeGreaterThan(0);
        for (const claim of one.against) expect(held).toContain(claim.id);
        const replies = graph
          .list("arguments")
          .filter(({ values }) => (values.against ?? []).includes(one.argument.id));
        const by = replies.flatMap((reply) => graph.provenance(reply.id).scholars);
        expect(by).not.toContain(page?.id);
        expect(graph.provenance(one.argument.id).scholars).not.toContain(page?.id);
      }
    }
    // What the rule finds is here too, unless everybody concerned has left the claim for a rival.
    const ruled = findings.filter((one) => one.rule === "unanswered-argument");
    const holders = new Set(
      scholarsPage(model).scholars.flatMap((one) => one.holds.map((held) => held.claim)),
    );
    for (const one of ruled.filter(({ about }) => about.slice(1).some((claim) => holders.has(claim))))
      expect(told).toContain(one.about[0]);
    expect(told.size).toBeGreaterThan(0);
  });

  test("an argument is told under each of its scholars, down to its things", () => {
    const { model, each } = pagesOf(files, null);
    for (const page of each) {
      const own = model.graph
        .list("arguments")
        .filter(({ id }) => model.graph.provenance(id).scholars.includes(page?.id ?? ""));
      expect(page?.steps.map((step) => step.argument.id).sort()).toEqual(own.map((one) => one.id).sort());
      for (const step of page?.steps ?? []) {
        const below = [...step.premises, ...step.evidence].map((one) => model.graph.records.get(one.id));
        for (const record of below) {
          if (record?.list !== "measurements") continue;
          expect(step.things.map((thing) => thing.id)).toContain(record.values.of);
        }
      }
    }
  });

  test("every observation and measurement of a scholar is told once, by how near they came", () => {
    const { model, each } = pagesOf(files, null);
    for (const page of each) {
      const own = (list: "observations" | "measurements"): readonly string[] =>
        model.graph
          .list(list)
          .flatMap(({ id }) => (model.graph.provenance(id).scholars.includes(page?.id ?? "") ? [id] : []));
      const seen = page?.looked.flatMap((one) => one.seen.map((each) => each.id)) ?? [];
      const measured = page?.looked.flatMap((one) => one.measured.map((size) => size.count)) ?? [];
      expect(seen.toSorted()).toEqual(own("observations").toSorted());
      expect(measured.reduce((sum, count) => sum + count, 0)).toBe(own("measurements").length);
    }
  });
});

test("in the demo, Ferrant held a roof in 1937 and withdrew it in 1951", () => {
  const { each } = pagesOf(demo, null);
  const ferrant = each.find((page) => page?.id === "ferrant");
  const roof = ferrant?.line.tracks.find((track) => track.claim === "ring-a-roofed");
  expect(roof?.points.map(({ stance, year, until }) => [stance, year, until])).toEqual([
    ["holds", 1937, 1951],
    ["rejects", 1951, null],
  ]);
  expect(ferrant?.changes.map((one) => one.rule)).toEqual(["changed-position"]);
  expect(pagesOf(demo, 1940).each.find((page) => page?.id === "ferrant")?.changes).toEqual([]);
});

test("what is read second-hand, or copied, is no first-hand look", () => {
  const { each } = pagesOf(demo, null);
  const costa = each.find((page) => page?.id === "costa");
  const near = (nearness: string) => costa?.looked.find((one) => one.nearness === nearness);
  expect(near("first-hand")?.seen.map((one) => one.id)).toEqual(["packing-seen-1972", "trodden-floor"]);
  expect(near("first-hand")?.measured).toEqual([]);
  expect(near("second-hand")?.measured.length).toBeGreaterThan(0);
});

test("a claim held, then a rival held, is shown as left", () => {
  const files = [
    { path: "corpus.yaml", text: "title: T\nbibliography: [b.bib]\n" },
    {
      path: "b.bib",
      text: "@book{one-1900, author = {One, Ada}, title = {A}, year = {1900}}\n@book{one-1920, author = {One, Ada}, title = {B}, year = {1920}}\n",
    },
    {
      path: "r.yaml",
      text: JSON.stringify({
        scholars: [{ id: "one", name: "Ada One" }],
        questions: [{ id: "q", text: "Which?", answers: ["a", "b"] }],
        claims: [
          { id: "a", text: "It is A." },
          { id: "b", text: "It is B." },
        ],
        positions: [
          { who: "one", claim: "a", stance: "holds", from: "one-1900" },
          { who: "one", claim: "b", stance: "holds", from: "one-1920" },
        ],
      }),
    },
  ];
  const { all, each } = pagesOf(files, null);
  const [a, b] = all.matrix.groups.flatMap((group) => group.rows.map((row) => row.cells[0]));
  expect(a).toMatchObject({ stance: "holds", since: 1900, left: { claim: "b", year: 1920 } });
  expect(b).toMatchObject({ stance: "holds", since: 1920, left: null });
  expect(all.scholars[0]?.holds.map((one) => one.claim)).toEqual(["b"]);
  expect(each[0]?.line.tracks[0]?.points[0]?.until).toBe(1920);
  const before = pagesOf(files, 1910).all.matrix.groups.flatMap((group) => group.rows);
  expect(before.map((row) => [row.claim, row.cells[0]?.left])).toEqual([["a", null]]);
});

test("nothing withheld is on any page", () => {
  const withheld = ["trench-9", "costa", "ring-in-feet", "brandt-1962", "tin-on-rubble", "four-feet"];
  const files = demo.map((file) =>
    file.path === "corpus.yaml"
      ? { ...file, text: file.text.replace("withhold: [trench-9]", `withhold: [${withheld.join(", ")}]`) }
      : file,
  );
  const { model, all, each } = pagesOf(files, null);
  expect(model.graph.settings.withhold).toEqual(withheld);
  const shown = JSON.stringify([all, each]);
  const names = ["Mateus Costa", "foot of about 0.32", "Brandt 1962", "tobacco tin", "People wear paths"];
  const whole = JSON.stringify([pagesOf(demo, null).all, pagesOf(demo, null).each]);
  for (const name of names) expect(whole).toContain(name);
  for (const secret of [...withheld.map((id) => JSON.stringify(id)), ...names, "Thorn survey grid"])
    expect(shown).not.toContain(secret);
  expect(each.filter((page) => page === null).length).toBe(1);
});

test.each([
  [1896, 2021, [1900, 1920, 1940, 1960, 1980, 2000, 2020]],
  [1999, 2004, [1999, 2000, 2001, 2002, 2003, 2004]],
  [-480, -400, [-480, -460, -440, -420, -400]],
])("the years to mark from %i to %i", (from, to, expected) => {
  expect(roundYears(from, to)).toEqual(expected);
});
