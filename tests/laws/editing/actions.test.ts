import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { build } from "../../../src/build.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import type { Action } from "../../../src/link/edit/action.ts";
import { newId } from "../../../src/link/edit/new-id.ts";
import { prepared, writtenRecord } from "../../../src/link/edit/prepare.ts";
import type { WrittenMap } from "../../../src/read/edit/written.ts";
import { writtenOf } from "../../../src/read/edit/written.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));

function modelOf(files: readonly SourceFile[]): Model {
  const { model } = build(files, plugins, { read: new Map(), compute: new Map() });
  if (!model) throw new Error("The corpus of the test cannot be read");
  return model;
}

const whole = modelOf(demo);

/** What an action makes of a corpus, and the lines it changed in each file. */
function done(files: readonly SourceFile[], action: Action, model = modelOf(files)) {
  const texts = new Map(files.map((file) => [file.path, file.text]));
  const what = prepared({ graph: model.graph, files: texts }, action);
  if (!("changes" in what)) throw new Error(JSON.stringify(what));
  const after = new Map(texts);
  const changed = what.changes.map(({ file, edits }) => {
    after.set(file, edited(texts.get(file) ?? "", edits));
    return file;
  });
  return { ...what, changed, after: [...after].map(([path, text]) => ({ path, text })) };
}

function seen(model: Model, id: string): WrittenMap {
  const record = writtenRecord(model.graph, id);
  if (!record) throw new Error(`${id} is not there`);
  return writtenOf(record.node) as WrittenMap;
}

function recordIn(files: readonly SourceFile[], id: string) {
  return modelOf(files).graph.records.get(id);
}

describe("where a person would put a new record", () => {
  test.each([
    [
      "measurements",
      { of: "ring-a", dimension: "gap", value: "1.2 m", from: "vane-1968 p. 9" },
      "readings/vane-1968.yaml",
    ],
    [
      "positions",
      { who: "vane", claim: "rings-by-eye", stance: "rejects", from: "vane-standard" },
      "readings/vane-1968.yaml",
    ],
    ["claims", { text: "The inner ring was laid out twice.", about: "coombe-row" }, "questions/paces.yaml"],
    ["artefacts", { name: "A sixth post", "part-of": "ring-b" }, "artefacts/ring-b.yaml"],
    ["scholars", { name: "Ada Thorne" }, "scholars.yaml"],
    ["searches", { where: "the shelf at home", words: "ring" }, "searches.yaml"],
  ] as const)("%s", (list, record, file) => {
    const { changed, after, made } = done(demo, { do: "add", list, records: [record] }, whole);
    expect(changed).toEqual([file]);
    for (const id of made) expect(recordIn(after, id)?.list).toBe(list);
    const count = (model: Model): number => model.graph.list(list).length;
    expect(count(modelOf(after))).toBe(count(whole) + 1);
    expect(modelOf(after).graph.findings).toHaveLength(whole.graph.findings.length);
  });

  test("a source that has no file yet gets one, where each has its own", () => {
    const reading = { at: "p. 3", from: "quaife-2016", quote: "The row was never whole." };
    const source = [...whole.graph.sources.keys()].find(
      (key) => !demo.some((file) => file.path === `readings/${key}.yaml`),
    );
    const record = { ...reading, from: source ?? "" };
    const { changed, after } = done(demo, { do: "add", list: "passages", records: [record] }, whole);
    expect(changed).toEqual([`readings/${source ?? ""}.yaml`]);
    expect(after.at(-1)?.text).toMatch(
      new RegExp(
        `^source: ${source ?? ""}\\n\\npassages:\\n  - id: [a-z0-9-]+\\n    at: p. 3\\n    quote: The row was never whole\\.\\n$`,
      ),
    );
  });

  test("what names no source is never put below one: the words are the corpus's own", () => {
    const headed = [
      { path: "corpus.yaml", text: "format: 1\ntitle: Merrow\nbibliography: [b.json]\n" },
      { path: "b.json", text: '[{ "id": "vane-1968", "type": "book", "title": "Rings" }]' },
      { path: "claims.yaml", text: "source: vane-1968\n\nclaims:\n  - { id: a, text: It was roofed. }\n" },
    ];
    const add = (record: WrittenMap) => done(headed, { do: "add", list: "claims", records: [record] });
    const own = add({ text: "It stood open." });
    expect(own.changed).toEqual(["claims-without-source.yaml"]);
    const { graph } = modelOf(own.after);
    expect(graph.provenance("it-stood-open").sources).toEqual([]);
    expect(graph.provenance("a").sources).toEqual(["vane-1968"]);
    expect(add({ text: "It stood open.", from: "vane-1968" }).changed).toEqual(["claims.yaml"]);
  });

  test("an empty corpus gets a file for each kind of record", () => {
    const empty = [{ path: "corpus.yaml", text: "format: 1\ntitle: Merrow\n" }];
    const { after, changed } = done(empty, {
      do: "add",
      list: "claims",
      records: [{ text: "It stood open." }],
    });
    expect(changed).toEqual(["claims.yaml"]);
    expect(after[1]?.text).toBe("claims:\n  - id: it-stood-open\n    text: It stood open.\n");
  });
});

describe("a change to a record", () => {
  test("changes the line of the value and no other", () => {
    const was = seen(whole, "rings-by-eye");
    const values = { ...was, text: "The rings were laid out by eye." };
    const { after } = done(demo, { do: "change", id: "rings-by-eye", seen: was, values }, whole);
    const lines = (files: readonly SourceFile[]): readonly string[] =>
      files.flatMap((file) => file.text.split("\n").map((line) => `${file.path} ${line}`));
    const old = new Set(lines(demo));
    expect(lines(after).filter((line) => !old.has(line))).toEqual([
      "questions/paces.yaml     text: The rings were laid out by eye.",
    ]);
    expect(lines(after)).toHaveLength(lines(demo).length);
  });

  test("what was changed elsewhere meanwhile is not written over, but told", () => {
    const was = seen(whole, "rings-by-eye");
    const theirs = { ...was, text: "Theirs." };
    const { after } = done(demo, { do: "change", id: "rings-by-eye", seen: was, values: theirs }, whole);
    const model = modelOf(after);
    const texts = new Map(after.map((file) => [file.path, file.text]));
    const mine = { do: "change", id: "rings-by-eye", seen: was } as const;
    expect(
      prepared({ graph: model.graph, files: texts }, { ...mine, values: { ...was, text: "Mine." } }),
    ).toEqual({
      clashes: [{ field: "text", seen: was["text"], theirs: "Theirs.", mine: "Mine." }],
      gone: false,
    });
    // What only one of the two changed stands beside the other's.
    const other = done(after, { ...mine, values: { ...was, note: "Read again." } });
    expect(recordIn(other.after, "rings-by-eye")?.values).toMatchObject({
      text: "Theirs.",
      note: "Read again.",
    });
  });

  test("of a record that is gone, and of one that is to say what it says, nothing is written", () => {
    const was = seen(whole, "rings-by-eye");
    const { after } = done(demo, { do: "take", ids: ["rings-by-eye"] }, whole);
    const model = modelOf(after);
    const texts = new Map(after.map((file) => [file.path, file.text]));
    const again = { do: "change", id: "rings-by-eye", seen: was, values: { ...was, text: "Mine." } } as const;
    expect(prepared({ graph: model.graph, files: texts }, again)).toEqual({ clashes: [], gone: true });
    expect(done(demo, { do: "change", id: "rings-by-eye", seen: was, values: was }, whole).changes).toEqual(
      [],
    );
  });

  test("a setting of the corpus changes its own line", () => {
    const action = { do: "setting", path: ["citation-style"], value: "apa" } as const;
    const { changed, after } = done(demo, action, whole);
    expect(changed).toEqual(["corpus.yaml"]);
    const text = after.find((file) => file.path === "corpus.yaml")?.text ?? "";
    expect(text.match(/^citation-style: apa$/gm)).toHaveLength(1);
  });
});

describe("an id for a new record", () => {
  test.each([
    [
      "claims",
      { text: "The Rings’ Posts were été-cut, in one go and by the same hands." },
      "the-rings-posts-were-ete-cut-in-one-go",
    ],
    ["artefacts", { name: "Post 12", "part-of": "ring-a" }, "ring-a/post-12"],
    ["passages", { at: "p. 9, fig. 2", from: "vane-1968" }, "vane-1968-p-9-fig-2"],
    ["claims", { text: "Το ξύλο" }, "claim"],
    ["scholars", { name: "" }, "scholar"],
  ] as const)("%s %j", (list, record, id) => {
    const free = modelOf([{ path: "corpus.yaml", text: "format: 1\ntitle: Merrow\n" }]);
    expect(newId(free.graph, list, record)).toBe(id);
    expect(newId(free.graph, list, record, new Set([id]))).toBe(`${id}-2`);
  });
});
