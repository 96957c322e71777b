import { describe, expect, test } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import type { Id } from "../../../src/base/finding.ts";
import { groundOf } from "../../../src/build.ts";
import type { SourceFile } from "../../../src/build.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import type { Action } from "../../../src/link/edit/action.ts";
import { companionFor } from "../../../src/link/origin/companions.ts";
import { artefactPage } from "../../../src/show/artefacts/artefact.ts";
import { choicesFor } from "../../../src/show/desk/forms/offered/choices.ts";
import { proposedId } from "../../../src/show/desk/forms/offered/proposed.ts";
import { formPage } from "../../../src/show/desk/forms/page.ts";
import { entryDraft, entryPage } from "../../../src/show/desk/import/entry.ts";
import { sheetOf } from "../../../src/show/pages/sheet.ts";
import { placeWithheld, shownTexts, withheldIn } from "../../../src/show/withhold.ts";
import { both, built, dispute, errorsOf, files, line, modelOf, register } from "./use-cases.ts";

describe("what is taken goes by names of its own", () => {
  const { graph, files: texts } = modelOf(both());

  test("artefacts and bibliography are taken, of files and tables, and nothing else", () => {
    const taken = [...graph.records.values()].filter(({ id }) => companionFor(graph, id));
    expect(taken.map(({ id }) => id).toSorted()).toEqual([
      "down/down",
      "down/ring-a",
      "down/ring-a/post-1",
      "down/ring-b",
      "down/ring-b/post-1",
      "down/trench-9",
      "down/trench-9/sherd",
    ]);
    expect([...graph.sources.keys()]).toEqual(["vane-1968", "down/vane-1968", "down/hale-1896"]);
    expect(graph.prose).toEqual([]);
    expect(graph.companions).toMatchObject([
      { as: "down", folder: "../merrow-register", title: "The Merrow register" },
    ]);
  });

  test("the same id and the same key here stay what they are", () => {
    expect(graph.records.get("ring-a")?.values).toMatchObject({ name: "A ring of our own" });
    expect(graph.records.get("down/ring-a")?.values).toMatchObject({ name: "Ring A" });
    expect(graph.sources.get("vane-1968")?.csl.title).toBe("Another work");
    expect(graph.sources.get("down/vane-1968")?.csl).toMatchObject({
      id: "down/vane-1968",
      title: "The rings",
    });
    expect(graph.records.get("roofed")?.values).toMatchObject({ text: "Ring A was roofed." });
    const diameters = graph.list("measurements").map(({ id, values }) => [id, values.value.text]);
    expect(diameters).toEqual([
      ["down/ring-a:diameter@down/vane-1968", "18.2 m"],
      ["ring-a:diameter@vane-1968", "12.4 m"],
    ]);
  });

  test("what its records name is called as it is here, and what is not taken is left out without a word", () => {
    const from = (locator: string): object => [{ key: "down/vane-1968", locator }];
    expect(graph.records.get("down/ring-a")?.values).toMatchObject({
      date: [{ is: "-2400/-2200", from: from("p. 40") }],
      history: [{ when: "1967", from: from("p. 3") }],
    });
    expect(JSON.stringify(graph.records.get("down/ring-a")?.values)).not.toContain('"by"');
    expect(graph.records.get("down/ring-b")?.values).toMatchObject({ "part-of": "down/down" });
    expect(errorsOf(both())).toEqual([]);
  });

  test("a part is a part by its id, and by its field", () => {
    expect(graph.withParts("down/ring-a")).toEqual(["down/ring-a", "down/ring-a/post-1"]);
    expect(graph.withParts("down/down")).toEqual(["down/down", "down/ring-b", "down/ring-b/post-1"]);
    expect(graph.withParts("ring-a")).toEqual(["ring-a"]);
  });

  test("claims here rest on things and works there", () => {
    expect(modelOf(both()).restsOn.get("roofed")).toEqual(["down/ring-a/post-1", "down/vane-1968", "vane"]);
  });

  test("a sheet says where a thing or a work comes from; one of this corpus says nothing", () => {
    const of = (id: Id) => sheetOf(modelOf(both()), [], texts, id)?.takenFrom;
    expect(of("down/ring-a")).toMatchObject({ folder: "../merrow-register", title: "The Merrow register" });
    expect(of("down/vane-1968")).toMatchObject({ title: "The Merrow register" });
    expect([of("ring-a"), of("vane-1968"), of("down/ring-a:diameter@down/vane-1968")]).toEqual([
      null,
      null,
      null,
    ]);
  });

  test("the corpus may lie inside this one as well as beside it, with the same result", () => {
    const inside = files(
      {
        ...dispute,
        "corpus.yaml": dispute["corpus.yaml"]?.replace("../merrow-register", "shared/register") ?? "",
      },
      { "shared/register": register },
    );
    const said = (of: ReturnType<typeof modelOf>): object =>
      [...of.graph.records].map(([id, { list, values }]) => [id, list, values]);
    expect(said(modelOf(inside))).toEqual(said(modelOf(both())));
    expect(errorsOf(inside)).toEqual([]);
  });

  test("files of a corpus that is not used, or lies outside, are none of this one", () => {
    const own = {
      ...dispute,
      "corpus.yaml": "title: Alone\n",
      "dispute.yaml": "claims: [{ id: a, text: A. }]\n",
    };
    const { graph: alone } = modelOf(files(own, { "../merrow-register": register, inner: register }));
    expect([...alone.records.keys()]).toEqual(["a"]);
    expect(alone.sources.size).toBe(0);
  });
});

describe("what is wrong is told where it stands", () => {
  const using = (use: string): readonly string[] =>
    errorsOf(both({ "corpus.yaml": `title: T\nuse: ${use}\n` }));

  test.each([
    "..",
    ".",
    "../..",
    "/etc",
    "../x/../../y",
    "../x/y",
    "a/../b",
    "a//b",
    "a/",
    "..\\\\x",
    "C:/x",
    ".hidden",
    "a/.git",
    "../.hidden",
    "node_modules",
    "~/x:y",
  ])("no path leads farther than to the neighbour: %s", (folder) => {
    const [first] = using(`[{ as: down, folder: ${JSON.stringify(folder)} }]`);
    expect(first).toMatch(/^error bad-value corpus\.yaml: Unexpected folder/);
  });

  test("a name is one part of an id, and each stands for one folder", () => {
    expect(using("[{ as: Down, folder: ../merrow-register }]")[0]).toContain("Unexpected name `Down`");
    expect(using("[{ as: a/b, folder: ../merrow-register }]")[0]).toContain("Unexpected name `a/b`");
    expect(using("[{ as: down, folder: ../merrow-register }, { as: down, folder: ../x }]")[0]).toContain(
      "Duplicate name `down`",
    );
    expect(
      using("[{ as: down, folder: ../merrow-register }, { as: up, folder: ../merrow-register }]")[0],
    ).toContain("Duplicate folder `../merrow-register`");
  });

  test("a missing corpus is one error, at its folder; the rest is read, and what names it is not blamed", () => {
    const { model, findings } = built(files(dispute, {}));
    const errors = findings.filter(({ level }) => level === "error");
    expect(errors.map(line)).toEqual([
      "error unreadable-file corpus.yaml: Missing corpus in `../merrow-register`, expected a folder with a `corpus.yaml`",
    ]);
    const at = errors[0]?.at;
    expect(dispute["corpus.yaml"]?.slice(at?.start, at?.end)).toBe("../merrow-register");
    expect(model?.graph.records.has("ring-a:diameter@vane-1968")).toBe(true);
    expect(model?.graph.records.has("burnt")).toBe(false);
    const naming = {
      ...dispute,
      "corpus.yaml": `${dispute["corpus.yaml"]}withhold: [down/ring-b]\n`,
      "review/preface.md": "As [@down/vane-1968, p. 4] says, and {{claim:ring-z}}.\n",
    };
    expect(errorsOf(files(naming, {})).map((one) => one.split(",")[0])).toEqual([
      expect.stringContaining("Missing corpus"),
      "error unknown-reference review/preface.md: Unknown id `ring-z`",
    ]);
    const there = { ...naming, "corpus.yaml": dispute["corpus.yaml"] ?? "" };
    expect(errorsOf(files(there, { "../merrow-register": register }))).toHaveLength(1);
  });

  test("an unknown id of a corpus that is there is an error like any", () => {
    const own = dispute["dispute.yaml"]?.replace("of: down/ring-a,", "of: down/ring-z,") ?? "";
    expect(errorsOf(both({ "dispute.yaml": own }))).toEqual([
      expect.stringMatching(
        /^error unknown-reference dispute\.yaml: Unknown id `down\/ring-z`, expected .*`down\/ring-[ab]`/,
      ),
    ]);
  });

  test("nothing of this corpus is called as if it were of the other", () => {
    const errors = errorsOf(
      both({
        "more.yaml": "artefacts:\n  - { id: down/ring-a, name: Ours }\n  - { id: down, name: Ours }\n",
        "own.bib": `${dispute["own.bib"]}@book{down/new, title = {New}, date = {1900}}\n`,
      }),
    );
    expect(errors.map((one) => one.split(", expected")[0])).toEqual([
      "error duplicate-id more.yaml: Unexpected id `down/ring-a`",
      "error duplicate-id more.yaml: Unexpected id `down`",
      "error duplicate-id own.bib: Unexpected id `down/new`",
    ]);
  });

  test("errors there are told when they cost something that is taken, with their place, and mended there alone", () => {
    const theirs = {
      "things.yaml": `${register["things.yaml"]}  - { of: nowhere, dimension: x, value: nonsense }\nclaims-of-old: []\n`,
      "lost.yaml":
        "artefacts:\n  - { id: nameless }\n  - { id: odd, name: Odd, withhold-location: maybe }\narguments:\n  - { id: x }\n",
      "torn.yaml": "artefacts: [\n",
    };
    const { findings } = built(both({}, theirs));
    const errors = findings.filter(({ level }) => level === "error");
    expect(errors.map(({ rule, at, about }) => [rule, at?.file, about])).toEqual([
      ["bad-value", "../merrow-register/lost.yaml", ["down/nameless"]],
      ["bad-value", "../merrow-register/lost.yaml", ["down/odd"]],
      ["unreadable-file", "../merrow-register/torn.yaml", []],
    ]);
    expect(
      findings.flatMap(({ fix }) => fix?.edits ?? []).filter(({ file }) => file.startsWith("..")),
    ).toEqual([]);
  });

  test("what is no error there is that corpus's own affair", () => {
    const notes = built(both()).findings.filter(({ level }) => level !== "error");
    expect(notes.filter(({ at }) => at?.file.startsWith("..")).map(line)).toEqual([]);
    expect(notes.map(({ rule }) => rule)).not.toContain("near-name");
    // The same work is noted as never cited in the register itself.
    const alone = built(files(register, {})).findings;
    expect(alone.map(({ rule, about }) => [rule, ...about])).toContainEqual(["uncited-source", "hale-1896"]);
  });

  test("what the other corpus uses is not followed, which is noted only where its records name it", () => {
    const more = { "corpus.yaml": `${register["corpus.yaml"]}use: [{ as: up, folder: ../post-rings }]\n` };
    expect(built(both({}, more)).findings.map(line)).toEqual(built(both()).findings.map(line));
    const naming = {
      ...more,
      "more.yaml": "artefacts:\n  - { id: ring-c, name: Ring C, part-of: up/ring-a }\n",
    };
    const { model, findings } = built(both({}, naming));
    expect(model?.graph.wholeOf.has("down/ring-c")).toBe(false);
    expect(findings.map(line)).toContainEqual(
      "note unknown-reference corpus.yaml: Records in `../merrow-register` name what that corpus uses from another, which is not followed from here",
    );
  });
});

describe("what is withheld there is withheld here", () => {
  const { graph, files: texts } = modelOf(
    both({
      "seen.yaml": "observations:\n  - { id: rim, of: down/trench-9/sherd, text: A rim., from: vane-1968 }\n",
    }),
  );

  test("the thing, its parts, and what is said here of nothing else", () => {
    const withheld = withheldIn(graph);
    const ids = [...graph.records.keys()].filter(withheld);
    expect(ids.toSorted()).toEqual(["down/trench-9", "down/trench-9/sherd", "rim"]);
    expect(errorsOf(both())).toEqual([]);
  });

  test.each(["", "[]", "[ring-a, [x]]"])(
    "no id that is withheld there is looked for here, beside a list of this corpus that says %j",
    (list) => {
      const main = `${dispute["corpus.yaml"] ?? ""}withhold: ${list}\n`;
      const theirs = (register["corpus.yaml"] ?? "").replace("[trench-9]", "[roofed]");
      const errors = errorsOf(both({ "corpus.yaml": main }, { "corpus.yaml": theirs }));
      expect(errors).toEqual(list.includes("[x]") ? [expect.stringContaining("Unexpected list")] : []);
    },
  );

  test("exact places and a place that is withheld are in no excerpt", () => {
    expect(placeWithheld(graph, "down/ring-b/post-1")).toBe(true);
    const shown = [...shownTexts(graph, texts).values()].join("\n");
    for (const word of ["51.23", "The secret field", "The ninth trench", "A sherd of the trench"])
      expect(shown, word).not.toContain(word);
    expect(shown).toContain("The north slope");
  });
});

describe("nothing is changed there from here", () => {
  const model = modelOf(both());
  const ground = { graph: model.graph, files: model.files };
  const refused: readonly (readonly [string, Action])[] = [
    [
      "a change",
      { do: "change", id: "down/ring-a", seen: { id: "ring-a" }, values: { id: "ring-a", name: "X" } },
    ],
    ["taking out", { do: "take", ids: ["ring-a", "down/ring-b"] }],
    ["another id", { do: "rename", id: "down/ring-a", to: "ring-x" }],
    ["another key", { do: "rename", id: "down/hale-1896", to: "hale" }],
    ["among others", { do: "together", actions: [{ do: "take", ids: ["down/ring-a/post-1"] }] }],
  ];

  test.each(refused)("%s is refused, and the folder to open is named", (_, action) => {
    const done = prepared(ground, action);
    expect("problem" in done && JSON.stringify(done.problem)).toContain("../merrow-register");
  });

  test("no name of a corpus that is used can be given", () => {
    const record = { id: "down/new", name: "New" };
    expect(prepared(ground, { do: "add", list: "artefacts", records: [record] })).toHaveProperty("problem");
    expect(prepared(ground, { do: "rename", id: "ring-a", to: "down/mine" })).toHaveProperty("problem");
  });

  test("a new part of a thing there is written here, under a name of this corpus", () => {
    const record = { name: "Post 7", "part-of": "down/ring-a" };
    const done = prepared(ground, { do: "add", list: "artefacts", records: [record] });
    if (!("changes" in done)) throw new Error("refused");
    expect(done.made).toEqual(["post-7"]);
    expect(done.changes.map(({ file }) => file)).toEqual(["dispute.yaml"]);
    const [change] = done.changes;
    const text = edited(dispute["dispute.yaml"] ?? "", change?.edits ?? []);
    const after = modelOf(both({ "dispute.yaml": text }));
    expect(after.graph.withParts("down/ring-a")).toContain("post-7");
    expect(errorsOf(both({ "dispute.yaml": text }))).toEqual([]);
  });

  test("a record of this corpus is renamed without a touch on what is called alike there", () => {
    const done = prepared(ground, { do: "rename", id: "ring-a", to: "ring-own" });
    if (!("changes" in done)) throw new Error("refused");
    expect(done.changes.map(({ file }) => file)).toEqual(["dispute.yaml"]);
    const text = edited(dispute["dispute.yaml"] ?? "", done.changes[0]?.edits ?? []);
    expect(text).toContain("of: ring-own,");
    expect(text).toContain("of: down/ring-a,");
  });

  test("names made of a thing there and a work here follow the work's new key", () => {
    const more =
      "measurements:\n  - { of: down/ring-b, dimension: diameter, value: 9 m, from: vane-1968 p. 7 }\n";
    const { graph, files: texts } = modelOf(both({ "more.yaml": more }));
    const done = prepared({ graph, files: texts }, { do: "rename", id: "vane-1968", to: "vane-1969" });
    expect("changes" in done && done.changes.map(({ file }) => file)).toEqual([
      "dispute.yaml",
      "more.yaml",
      "own.bib",
    ]);
  });

  test("what is from a work there is not put into a file of that corpus", () => {
    const theirs = { "readings/vane-1968.yaml": "source: vane-1968\nartefacts: []\n" };
    const { graph, files: texts } = modelOf(both({}, theirs));
    const record = { id: "seen", of: "down/ring-a", text: "A ditch.", from: "vane-1968" };
    const done = prepared({ graph, files: texts }, { do: "add", list: "observations", records: [record] });
    expect("changes" in done && done.changes.map(({ file }) => file)).toEqual(["dispute.yaml"]);
  });
});

describe("forms offer what is taken, and change none of it", () => {
  const { graph, files: texts } = modelOf(both());

  test("a thing and a work there are found by their words, to be referred to", () => {
    const offered = (to: readonly ("artefacts" | "sources")[], text: string): readonly Id[] =>
      choicesFor(graph, to, text, 20).first.map(({ id }) => id);
    expect(offered(["artefacts"], "Ring A")).toEqual(expect.arrayContaining(["down/ring-a"]));
    expect(offered(["sources"], "Hale")).toEqual(["down/hale-1896"]);
    expect(proposedId(graph, "artefacts", { name: "Post 7", "part-of": "down/ring-a" })).toBe("post-7");
  });

  test("the form of one says where it is changed, and a changed entry is refused", () => {
    const form = (record: Id) => formPage(graph, texts, { list: null, record, presets: [] })?.takenFrom;
    expect([form("ring-a"), form("down/ring-a")]).toMatchObject([null, { folder: "../merrow-register" }]);
    expect(artefactPage(modelOf(both()), "down/ring-a")?.takenFrom).toMatchObject({ as: "down" });
    const page = entryPage(graph, texts, "down/hale-1896");
    expect(page?.takenFrom).toMatchObject({ folder: "../merrow-register" });
    const asked = { key: "down/hale-1896", seen: page?.rows ?? [], rows: [], whole: true };
    const draft = entryDraft(graph, texts, asked);
    expect(draft?.changes).toEqual([]);
    expect(JSON.stringify(draft?.problem)).toContain("../merrow-register");
  });
});

test("an edit here leaves what is taken as the same objects, and a change there is seen", () => {
  const memo = new Map();
  const known = new Map<string, SourceFile>();
  /** The same object for the same text, as the files of a corpus are kept. */
  const remember = (file: SourceFile): SourceFile => {
    const key = `${file.path}\n${file.text}`;
    known.set(key, known.get(key) ?? file);
    return known.get(key) ?? file;
  };
  const at = (own = {}, theirs = {}, before?: Parameters<typeof groundOf>[3]) => {
    const ground = groundOf(both(own, theirs).map(remember), memo, undefined, before);
    if (!("graph" in ground)) throw new Error("unreadable");
    return ground;
  };
  const first = at();
  const own = { "dispute.yaml": dispute["dispute.yaml"]?.replace("burnt.", "quite burnt.") ?? "" };
  const second = at(own, {}, first);
  expect(second.graph.records.get("down/ring-a")).toBe(first.graph.records.get("down/ring-a"));
  const bare = {
    "corpus.yaml": "title: T\nuse: [{ as: up, folder: ../x }]\n",
    "dispute.yaml": "",
    "own.bib": "",
  };
  const naming = { ...bare, "dispute.yaml": "claims: [{ id: a, text: A., about: [up/b] }]\n" };
  const without = at(naming);
  const there = [...both(naming), { path: "../x/corpus.yaml", text: "title: X\n" }].map(remember);
  const now = groundOf(there, memo, undefined, without);
  const errors = (ground: typeof now): readonly string[] =>
    ("graph" in ground ? ground.graph.findings : []).map(({ rule }) => rule);
  expect([errors(without), errors(now)]).toEqual([[], ["unknown-reference"]]);
  const theirs = {
    "things.yaml": register["things.yaml"]?.replace("name: Ring A", "name: Ring Alpha") ?? "",
  };
  expect(at(own, theirs, second).graph.records.get("down/ring-a")?.values).toMatchObject({
    name: "Ring Alpha",
  });
});
