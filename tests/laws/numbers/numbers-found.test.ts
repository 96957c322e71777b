import { beforeAll, describe, expect, test } from "vitest";
import { searchIndex } from "../../../src/app/worker/search/index.ts";
import type { SearchIndex } from "../../../src/app/worker/search/index.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { choicesFor } from "../../../src/show/desk/forms/offered/choices.ts";
import { fitting, thingTree } from "../../../src/show/artefacts/tree.ts";
import { searchDocuments } from "../../../src/show/search/documents.ts";

const files = [
  { path: "corpus.yaml", text: "title: Pits\nwithhold: [sealed]\n" },
  {
    path: "records.yaml",
    text: `artefacts:
  - { id: deep, name: The deep pit, numbers: { inventory: K-17, excavation: MD/98 412, publication: "3 b" } }
  - { id: wide, name: The wide pit, numbers: { inventory: K 18 } }
  - { id: sealed, name: Umbrapit, numbers: { inventory: Q-99 } }
`,
  },
];

let model: Model;
let index: SearchIndex;

beforeAll(() => {
  const built = build(files, [], emptyMemo(new Map()), {});
  if (!built.model) throw new Error("expected a corpus that can be read");
  model = built.model;
  index = searchIndex();
  index.take(searchDocuments(model.graph, [], new Map(files.map(({ path, text }) => [path, text]))));
  while (index.step());
});

const searched = (text: string): readonly string[] =>
  index.find(text, 10).groups.flatMap(({ hits }) => hits.map(({ id }) => id));
const filtered = (text: string): readonly string[] => fitting(thingTree(model), text).map(({ id }) => id);
const offered = (text: string): readonly string[] =>
  choicesFor(model.graph, ["artefacts"], text, 10).first.map(({ id }) => id);

describe.each([
  ["the search", (text: string) => searched(text)],
  ["the list of artefacts", (text: string) => filtered(text)],
  ["a field that refers to an artefact", (text: string) => offered(text)],
] as const)("%s", (_, found) => {
  test.each(["K-17", "K 17", "K17", "k17", "MD/98 412", "MD98412", "md 98 412", "3b", "3 b"])(
    "finds an artefact by its number in any register: %s",
    (text) => {
      expect(found(text)).toEqual(["deep"]);
    },
  );

  test("tells numbers that begin alike apart, and finds none that is withheld", () => {
    expect(found("K-18")).toEqual(["wide"]);
    expect(found("K18")).toEqual(["wide"]);
    expect(found("Q-99")).toEqual([]);
    expect(found("Q99")).toEqual([]);
  });
});
