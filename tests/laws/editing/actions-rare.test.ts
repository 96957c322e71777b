import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { build } from "../../../src/build.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import type { Action, Prepared } from "../../../src/link/edit/action.ts";
import { prepared, writtenRecord } from "../../../src/link/edit/prepare.ts";
import { ownWritten } from "../../../src/read/edit/head.ts";
import type { WrittenMap } from "../../../src/read/edit/written.ts";

const keys = ["vane-1968", "our", "press:x/y", "hale", "kern"];
const entries = keys.map((id) => ({ id, type: "book", title: `The book ${id}` }));

/** A corpus of some files, with a bibliography of five books. */
function corpus(files: Readonly<Record<string, string>>): readonly SourceFile[] {
  const own = Object.entries(files).map(([path, text]) => ({ path, text }));
  const head = { path: "corpus.yaml", text: "format: 1\ntitle: Merrow\nbibliography: [b.json]\n" };
  return [head, { path: "b.json", text: JSON.stringify(entries) }, ...own];
}

function modelOf(files: readonly SourceFile[]): Model {
  const { model } = build(files, plugins, { read: new Map(), compute: new Map() });
  if (!model) throw new Error("The corpus of the test cannot be read");
  return model;
}

function comesTo(files: readonly SourceFile[], action: Action): Prepared {
  const texts = new Map(files.map((file) => [file.path, file.text]));
  return prepared({ graph: modelOf(files).graph, files: texts }, action);
}

/** The texts of the files that an action changes, as they then are. */
function done(files: readonly SourceFile[], action: Action): Readonly<Record<string, string>> {
  const what = comesTo(files, action);
  if (!("changes" in what)) throw new Error(JSON.stringify(what));
  const texts = new Map(files.map((file) => [file.path, file.text]));
  return Object.fromEntries(
    what.changes.map(({ file, edits }) => [file, edited(texts.get(file) ?? "", edits)]),
  );
}

function seenIn(files: readonly SourceFile[], id: string): WrittenMap {
  const record = writtenRecord(modelOf(files).graph, id);
  if (!record) throw new Error(`${id} is not there`);
  return ownWritten(record);
}

describe("a record below the head of a file", () => {
  test("gets a source of its own, which nobody else wrote", () => {
    const files = corpus({ "a.yaml": "source: vane-1968\nclaims:\n  - id: a\n    text: Roofed.\n" });
    const seen = { id: "a", text: "Roofed." };
    const action = { do: "change", id: "a", seen, values: { ...seen, from: "our p. 3" } } as const;
    expect(done(files, action)).toEqual({
      "a.yaml": "source: vane-1968\nclaims:\n  - id: a\n    text: Roofed.\n    from: our p. 3\n",
    });
  });
});

describe("a record without an id of its own", () => {
  const row = (gap: string, more = ""): string =>
    `  - { of: p, dimension: width, value: 5 m, between: ${gap}${more} }\n`;
  const head = "artefacts:\n  - { id: p, name: The post }\nmeasurements:\n";
  const files = corpus({ "a.yaml": head + row("a to b") + row("b to c") });
  const seen = seenIn(files, "p:width#2");
  const change = { do: "change", id: "p:width#2", seen, values: { ...seen, note: "mine" } } as const;

  test("is still the one that was seen where a namesake was put before it", () => {
    const now = corpus({ "a.yaml": head + row("z") + row("a to b") + row("b to c") });
    expect(done(now, change)).toEqual({
      "a.yaml": head + row("z") + row("a to b") + row("b to c", ", note: mine"),
    });
  });

  test("and where one before it was taken out", () => {
    const now = corpus({ "a.yaml": head + row("b to c") });
    expect(done(now, change)).toEqual({ "a.yaml": head + row("b to c", ", note: mine") });
  });

  test("is not taken for another that has its name by now", () => {
    const now = corpus({ "a.yaml": head + row("a to b") + row("c to d") });
    expect(comesTo(now, change)).toEqual({
      clashes: [{ field: "between", seen: "b to c", theirs: "c to d", mine: "b to c" }],
      gone: false,
    });
  });
});

describe("a record that is to go", () => {
  const claim = (text: string): readonly SourceFile[] =>
    corpus({ "a.yaml": `claims:\n  - { id: a, text: Roofed. }\n  - { id: b, text: ${text} }\n` });
  const seen = { id: "b", text: "Open." };

  test("goes where it still says what was seen", () => {
    expect(done(claim("Open."), { do: "take", ids: ["b"], seen })).toEqual({
      "a.yaml": "claims:\n  - { id: a, text: Roofed. }\n",
    });
  });

  test("stays where somebody else changed it meanwhile", () => {
    expect(comesTo(claim("Half open."), { do: "take", ids: ["b"], seen })).toEqual({
      clashes: [{ field: "text", seen: "Open.", theirs: "Half open.", mine: null }],
      gone: false,
    });
  });

  test("is the one that was seen, whatever it is called by now", () => {
    const row = (gap: string): string => `  - { of: p, dimension: width, value: 5 m, between: ${gap} }\n`;
    const head = "artefacts:\n  - { id: p, name: The post }\nmeasurements:\n";
    const files = corpus({ "a.yaml": head + row("a to b") + row("b to c") });
    const now = corpus({ "a.yaml": head + row("z") + row("a to b") + row("b to c") });
    const second = { do: "take", ids: ["p:width#2"], seen: seenIn(files, "p:width#2") } as const;
    expect(done(now, second)).toEqual({ "a.yaml": head + row("z") + row("a to b") });
  });
});

describe("where a new record is put", () => {
  const passage = (from: string): Action => ({
    do: "add",
    list: "passages",
    records: [{ at: "p. 3", from, quote: "It stood." }],
  });
  const habit = {
    "readings/hale.yaml": "source: hale\npassages:\n  - { id: q, at: p. 1, quote: x }\n",
    "readings/kern.yaml": "source: kern\npassages:\n  - { id: r, at: p. 1, quote: x }\n",
  };

  test("a file called after its source that says nothing at its head does not cost it the source", () => {
    const own = "passages:\n  - { id: s, at: p. 1, from: vane-1968, quote: x }\n";
    const files = corpus({ ...habit, "readings/vane-1968.yaml": own });
    expect(done(files, passage("vane-1968"))).toEqual({
      "readings/vane-1968.yaml": `${own}  - { id: vane-1968-p-3, at: p. 3, from: vane-1968, quote: It stood. }\n`,
    });
  });

  test("no file is called after a key with signs that mean something to a disk", () => {
    const [name = ""] = Object.keys(done(corpus(habit), passage("press:x/y")));
    expect(name).toBe("passages.yaml");
  });

  test("a head in quotes is one, too: what has no source is not put below it", () => {
    const files = corpus({ "claims.yaml": '"source": hale\nclaims:\n  - { id: a, text: Roofed. }\n' });
    const add = { do: "add", list: "claims", records: [{ text: "Open." }] } as const;
    expect(Object.keys(done(files, add))).toEqual(["claims-without-source.yaml"]);
  });
});

describe("the id of a new record", () => {
  const files = corpus({ "a.yaml": "claims:\n  - { id: roof }\n  - { id: open, text: Open. }\n" });
  const add = (record: WrittenMap): Action => ({ do: "add", list: "claims", records: [record] });

  test("is unlike that of a record that cannot be read at the moment", () => {
    expect(comesTo(files, add({ text: "Roof" }))).toMatchObject({ made: ["roof-2"] });
  });

  test("an empty one is none", () => {
    expect(comesTo(files, add({ id: "", text: "Roof" }))).toMatchObject({ made: ["roof-2"] });
  });

  test("nor is it written where a record can do without", () => {
    const thing = { id: "", of: "p", dimension: "width", value: "5 m" };
    const texts = done(files, { do: "add", list: "measurements", records: [thing] });
    expect(texts).toEqual({ "a.yaml": expect.not.stringContaining('id: ""') as string });
  });

  test("one that somebody else has given meanwhile is refused", () => {
    const twice = expect.objectContaining({
      say: expect.stringMatching(/^Duplicate id/) as string,
    }) as object;
    expect(comesTo(files, add({ id: "open", text: "Roof" }))).toEqual({ problem: twice });
    const two = {
      do: "add",
      list: "claims",
      records: [
        { id: "x", text: "A" },
        { id: "x", text: "B" },
      ],
    } as const;
    expect(comesTo(files, two)).toEqual({ problem: twice });
  });
});
