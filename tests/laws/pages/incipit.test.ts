import fc from "fast-check";
import { expect, test } from "vitest";
import { arriving } from "../../../src/app/worker/models/arriving.ts";
import type { SourceFile } from "../../../src/build.ts";
import { groundOf, stand } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { firstOf } from "../../../src/show/pages/incipit/first.ts";
import { incipitOf } from "../../../src/show/pages/incipit/incipit.ts";
import { questionPage } from "../../../src/show/pages/question.ts";
import { plugins } from "../../../plugins/index.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const made = corpusOf({ records: 400, seed: 8 });
const demo = readCorpusFolder("demo-corpus");
const main = (more = ""): SourceFile => ({ path: "corpus.yaml", text: `format: 1\ntitle: Rings\n${more}` });

/** What the pages of the questions say of them, as far as the opening words tell it. */
function asShown(files: readonly SourceFile[]): unknown {
  const memo = emptyMemo();
  const ground = groundOf(files, memo.read, undefined);
  if (!("graph" in ground)) throw new Error("unreadable");
  const stood = stand(ground, plugins, memo.compute, {});
  const model = { ...stood, restsOn: new Map(), lossSets: null, history: null, plan: null, missing: [] };
  return ground.graph.list("questions").flatMap(({ id }) => {
    const page = questionPage(model, id);
    if (!page) return [];
    const answers = page.answers.map(({ claim, text }) => ({ claim, text }));
    return [{ id, text: page.text, exclusive: page.exclusive, answers }];
  });
}

test.each([
  ["a made corpus", made],
  ["the demo", demo],
])("the first files of %s tell the questions and answers that the whole of it tells", (_, files) => {
  const { first, rest } = firstOf(files);
  expect([...first, ...rest].map(({ path }) => path).toSorted()).toEqual(files.map(({ path }) => path));
  expect(first.length).toBeLessThan(files.length);
  const incipit = incipitOf(first);
  expect(incipit?.questions.length).toBeGreaterThan(0);
  expect(incipit?.questions).toEqual(asShown(files));
});

const question = "questions:\n  - id: roofed\n    text: Was it roofed?\n    answers: [yes-it-was, no]\n";
const claims = "claims:\n  - { id: yes-it-was, text: It had a roof }\n  - { id: no, text: It had none }\n";

test.each([
  ["in a row", question],
  ["one to a line", question.replace("[yes-it-was, no]", "\n      - yes-it-was\n      - no")],
  [
    "in the map of the question",
    "questions: [{ id: roofed, text: Was it roofed?, answers: [yes-it-was, no] }]\n",
  ],
])("answers come first from other files as well, however they are named: %s", (_, asked) => {
  const files = [
    main(),
    { path: "a.yaml", text: asked },
    { path: "b.yaml", text: `artefacts:\n  - { id: ring, name: The ring }\n${claims}` },
    { path: "c.yaml", text: "claims:\n  - { id: else, text: Something else }\n" },
  ];
  const { first } = firstOf(files);
  expect(first.map(({ path }) => path)).toEqual(["corpus.yaml", "a.yaml", "b.yaml"]);
  expect(incipitOf(first)?.questions).toEqual([
    {
      id: "roofed",
      text: "Was it roofed?",
      exclusive: true,
      answers: [
        { claim: "yes-it-was", text: "It had a roof" },
        { claim: "no", text: "It had none" },
      ],
    },
  ]);
});

test("nothing withheld is among the opening words, nor what has the name of something in its own", () => {
  const told = (withheld: string, asked = question, claimed = claims): string =>
    JSON.stringify(
      incipitOf([
        main(`withhold: [${withheld}]\n`),
        { path: "a.yaml", text: asked },
        { path: "b.yaml", text: claimed },
      ]),
    );
  expect(told("other")).toContain("It had a roof");
  expect(told("yes-it-was")).not.toMatch(/yes-it-was|It had a roof/);
  expect(told("yes-it-was")).toContain("It had none");
  expect(told("roofed")).not.toMatch(/roofed|Was it/);
  const below = [question, claims].map((text) => text.replace("yes-it-was", "trench-9/roof"));
  expect(told("trench-9", ...below)).not.toMatch(/trench-9\/|It had a roof/);
  // What withholds the photograph may be read later.
  expect(told("trench-9", ...below.map((text) => text.replace("trench-9/", "photo/")))).not.toMatch(/photo/);
});

test("whatever is withheld, the opening words have no question and no answer that the pages do not have", () => {
  const small = corpusOf({ records: 120, seed: 5 });
  const ids = small.flatMap(({ text }) =>
    [...text.matchAll(/\bid: ([a-z0-9/-]+)/g)].map(([, id = ""]) => id),
  );
  const answering = { path: "z.yaml", text: `${question}${claims}` };
  // Parts of a trench that is withheld, and a question about them, whose every answer may be withheld too.
  const below = {
    path: "y.yaml",
    text: `artefacts: [{ id: pit, name: A pit }, { id: rim, name: A rim, part-of: pit }]
images: [{ id: photo, of: rim, file: images/a.png, kind: photograph }]
questions: [{ id: photo/asked, text: What is on it?, answers: [pit/a, rim/b, photo/c, d] }]
claims: [{ id: pit/a, text: A }, { id: rim/b, text: B }, { id: photo/c, text: C }, { id: d, text: D, about: [pit] }]
`,
  };
  const pool = [...ids, "pit", "rim", "photo", "d", "yes-it-was", "no", "roofed", "photo/asked"];
  const some = fc.uniqueArray(fc.constantFrom(...pool), { maxLength: 6 });
  const own = fc.subarray(["pit", "rim", "photo", "d", "yes-it-was", "no", "roofed"]);
  fc.assert(
    fc.property(fc.tuple(some, own), (withheld) => {
      const list = [...new Set(withheld.flat())].join(", ");
      const settings = small.map((one) =>
        one.path === "corpus.yaml" ? { ...one, text: `${one.text.trimEnd()}\nwithhold: [${list}]\n` } : one,
      );
      const files = [...settings, below, answering];
      const told = incipitOf(firstOf(files).first)?.questions ?? [];
      const shown = asShown(files) as typeof told;
      for (const { answers, ...one } of told) {
        const page = shown.find(({ id }) => id === one.id);
        expect(page, `${one.id}, withheld: ${list}`).toMatchObject(one);
        for (const answer of answers) expect(page?.answers, list).toContainEqual(answer);
      }
      if (list === "") expect(told).toEqual(shown);
    }),
    { numRuns: 40, seed: 4 },
  );
});

test("without settings that can be read there are no opening words", () => {
  expect(incipitOf([{ path: "a.yaml", text: question }])).toBe(null);
  expect(incipitOf([{ path: "corpus.yaml", text: "title: [\n" }])).toBe(null);
});

test("a corpus that comes in pieces of any size is the corpus, and each file of it has been read", () => {
  const small = corpusOf({ records: 60, seed: 3 });
  const odd = { path: "searches.yaml", text: "searches:\n  - { id: s, where: Βιβλιοθήκη 𐎀, words: [ﬀ] }\n" };
  const files = [...small.filter(({ path }) => path !== odd.path), odd].toSorted((a, b) =>
    a.path < b.path ? -1 : 1,
  );
  const { first, rest } = firstOf(files);
  const lines = [first, ...rest.map((file) => [file])].map((some) => `${JSON.stringify(some)}\n`);
  const bytes = new TextEncoder().encode(lines.join(""));
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 4000 }), { minLength: 1, maxLength: 20 }), (sizes) => {
      const memo = emptyMemo();
      const seen: unknown[] = [];
      const progress: number[] = [];
      const arrival = arriving({ count: files.length, first: first.length }, memo.read, {
        first: (some) => seen.push(some),
        progress: (done) => progress.push(done),
      });
      for (let at = 0, turn = 0; at < bytes.length; turn++) {
        const size = sizes[turn % sizes.length] ?? 1;
        arrival.take(bytes.slice(at, at + size));
        at += size;
      }
      expect(arrival.files()).toEqual(files);
      expect(seen).toEqual([first]);
      expect(progress.at(-1)).toBe(files.length);
      const known = memo.read.size;
      const ground = groundOf(arrival.files(), memo.read, undefined);
      expect(memo.read.size).toBe(known);
      const plain = groundOf(files, emptyMemo().read, undefined);
      expect("graph" in ground && [...ground.graph.records.keys()]).toEqual(
        "graph" in plain && [...plain.graph.records.keys()],
      );
      expect("graph" in ground && ground.said).toEqual("graph" in plain && plain.said);
    }),
    { numRuns: 12, seed: 1 },
  );
});
