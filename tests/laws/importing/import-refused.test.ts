import { expect, test } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { arrivedIn } from "../../../src/read/bibliography/incoming/arrived.ts";
import { readBibliography } from "../../../src/read/bibliography/read.ts";
import { importPlan, shelfFor } from "../../../src/show/desk/import/plan.ts";
import { importTold } from "../../../src/show/desk/import/told.ts";
import type { ImportTold } from "../../../src/show/desk/import/told.ts";

const ours = "@string{press = {Ours}}\n\n@book{row, title = {The row}, year = 1970, publisher = {Thorn}}\n";

/** What an import into a small corpus comes to; `row` and `press` mean something in it already. */
function told(text: string): ImportTold {
  const files = [
    { path: "corpus.yaml", text: "title: Pits\nbibliography: [ours.bib]\n" },
    { path: "ours.bib", text: ours },
  ];
  const { model } = build(files, [], emptyMemo(new Map()), {});
  if (!model) throw new Error("expected a corpus that can be read");
  const { graph } = model;
  const arrived = [arrivedIn({ path: "theirs.bib", text }, "bib")];
  const asked = { choices: new Map(), duplicates: "leave" } as const;
  return importTold(graph, importPlan(graph, shelfFor(graph, files), arrived, asked));
}

const child = "@inbook{child, author = {Vane, I.}, title = {A child}, year = 1990, crossref = {row}}\n";
const bare = "@book{bare, title = {Bare}, year = 1981, publisher = press}\n";
const good = "@book{good, title = {Good}, year = 1980}\n";

test("an entry that would say something else in the corpus is left out and told, and the others come in", () => {
  const { failures, entries, changes, problem } = told(`${child}${good}${bare}`);
  expect(problem).toBe(null);
  expect(failures.map(({ file, line, text }) => [file, line, text])).toEqual([
    ["theirs.bib", 1, child.trim()],
    ["theirs.bib", 3, bare.trim()],
  ]);
  for (const { why } of failures)
    expect(why.map(inEnglish).join()).toContain("expected what it says in its own file");
  expect(entries.map(({ key, does }) => [key, does])).toEqual([["good", "add"]]);
  const text = edited(ours, changes[0]?.edits ?? []);
  const keys = readBibliography({ path: "ours.bib", text }).sources.map(({ key }) => key);
  expect(keys).toEqual(["row", "good"]);
});

test("what needs an entry that was left out does not bring it in by the back door", () => {
  const grandchild =
    "@inbook{grand, author = {Vane, I.}, title = {A grandchild}, year = 1991, crossref = {child}}\n";
  const { failures, entries } = told(`${grandchild}${child}${good}`);
  expect(entries.map(({ key }) => key)).toEqual(["good"]);
  expect(failures.map(({ line }) => line).toSorted()).toEqual([1, 2]);
});

test("where nothing is amiss, nothing is left out", () => {
  const { failures, entries } = told(good);
  expect([failures.length, entries.length]).toEqual([0, 1]);
});
