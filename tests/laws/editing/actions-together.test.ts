import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import type { SourceFile } from "../../../src/build.ts";
import { madeBefore } from "../../../src/link/edit/action.ts";
import type { Action } from "../../../src/link/edit/action.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";

const bib =
  "@book{hale, author = {Hale, Ada}, title = {The ring}, year = 1990}\n@book{kern, title = {K}, year = 1991}\n";

function corpus(files: Readonly<Record<string, string>>): readonly SourceFile[] {
  const all = { "corpus.yaml": "title: T\nbibliography: [b.bib]\n", "b.bib": bib, ...files };
  return Object.entries(all).map(([path, text]) => ({ path, text }));
}

function comesTo(files: readonly SourceFile[], action: Action) {
  const { model } = build(files, plugins, { read: new Map(), compute: new Map() });
  if (!model) throw new Error("The corpus of the test cannot be read");
  return prepared({ graph: model.graph, files: new Map(files.map((one) => [one.path, one.text])) }, action);
}

/** The files that an action changed, as they then stand, and what it made. */
function done(files: readonly SourceFile[], action: Action) {
  const what = comesTo(files, action);
  if (!("changes" in what)) throw new Error(JSON.stringify(what));
  const before = new Map(files.map((one) => [one.path, one.text]));
  const after = Object.fromEntries(
    what.changes.map(({ file, edits }) => [file, edited(before.get(file) ?? "", edits)]),
  );
  return { after, made: what.made, step: inEnglish(what.step) };
}

describe("several actions in one step", () => {
  test("refer to what the step makes, and stand where a person would put them", () => {
    const habit = {
      "readings/hale.yaml": "source: hale\npassages:\n  - { id: q, at: p. 1, quote: x }\n",
      "readings/kern.yaml": "source: kern\npassages:\n  - { id: r, at: p. 1, quote: x }\n",
    };
    const action: Action = {
      do: "together",
      actions: [
        { do: "add", list: "passages", records: [{ at: "p. 7", from: "hale", quote: "It was roofed." }] },
        { do: "add", list: "claims", records: [{ text: "It was roofed." }] },
        {
          do: "add",
          list: "positions",
          records: [{ who: "Hale", claim: madeBefore(1), stance: "holds", from: madeBefore(0) }],
        },
      ],
    };
    expect(done(corpus(habit), action)).toEqual({
      after: {
        "readings/hale.yaml":
          "source: hale\npassages:\n  - { id: q, at: p. 1, quote: x }\n  - { id: hale-p-7, at: p. 7, quote: It was roofed. }\n" +
          "positions:\n  - { who: Hale, claim: it-was-roofed, stance: holds, from: hale-p-7 }\n",
        "claims.yaml": "claims:\n  - id: it-was-roofed\n    text: It was roofed.\n",
      },
      made: ["hale-p-7", "it-was-roofed"],
      step: "New passage: It was roofed., and 2 more changes",
    });
  });

  test("change records of one file from its end, whatever the order in which they are given", () => {
    const text = "claims:\n  - { id: a, text: A. }\n  - { id: b, text: B. }\n  - { id: c, text: C. }\n";
    const change = (id: string): Extract<Action, { do: "change" }> => {
      const seen = { id, text: `${id.toUpperCase()}.` };
      return {
        do: "change",
        id,
        seen,
        values: { ...seen, text: `${seen.text} Or is it, since the trench was dug?` },
      };
    };
    const action: Action = {
      do: "together",
      actions: [change("a"), { do: "take", ids: ["b"] }, change("c")],
      called: "Two and one",
    };
    expect(done(corpus({ "a.yaml": text }), action)).toEqual({
      after: {
        "a.yaml":
          'claims:\n  - { id: a, text: "A. Or is it, since the trench was dug?" }\n' +
          '  - { id: c, text: "C. Or is it, since the trench was dug?" }\n',
      },
      made: [],
      step: "Two and one",
    });
  });

  test("give an id to what needs none only where something refers to it", () => {
    const files = corpus({
      "a.yaml": "artefacts:\n  - { id: p, name: The post }\nclaims:\n  - { id: a, text: A. }\n",
    });
    const measured = { of: "p", dimension: "width", value: "5 m" };
    const action: Action = {
      do: "together",
      actions: [
        { do: "add", list: "measurements", records: [measured, { ...measured, dimension: "depth" }] },
        { do: "add", list: "arguments", records: [{ because: madeBefore(1), therefore: "a" }] },
      ],
    };
    const { after, made } = done(files, action);
    expect(made).toEqual(["measurement", "argument"]);
    expect(Object.values(after).join("")).toContain("because: measurement");
  });

  test("do nothing at all where one of them cannot be done", () => {
    const files = corpus({ "a.yaml": "claims:\n  - { id: a, text: A. }\n" });
    const action: Action = {
      do: "together",
      actions: [
        { do: "add", list: "claims", records: [{ text: "B." }] },
        { do: "change", id: "a", seen: { id: "a", text: "Other." }, values: { id: "a", text: "Mine." } },
      ],
    };
    expect(comesTo(files, action)).toEqual({
      clashes: [{ field: "text", seen: "Other.", theirs: "A.", mine: "Mine." }],
      gone: false,
    });
  });

  test("leave a text alone that only looks like a reference", () => {
    const texts = [`B ${madeBefore(0)}`, madeBefore(7), `${madeBefore(0)} p. 3`];
    const action: Action = {
      do: "together",
      actions: [{ do: "add", list: "claims", records: texts.map((text) => ({ text })) }],
    };
    const { after } = done(corpus({}), action);
    const { model } = build(
      [...corpus({}), ...Object.entries(after).map(([path, text]) => ({ path, text }))],
      [],
      { read: new Map(), compute: new Map() },
    );
    expect(model?.graph.list("claims").map(({ values }) => values.text)).toEqual(texts);
  });

  test("may not refer to what comes later", () => {
    const action: Action = {
      do: "together",
      actions: [
        { do: "add", list: "arguments", records: [{ because: madeBefore(1), therefore: "a" }] },
        { do: "add", list: "claims", records: [{ text: "B." }] },
      ],
    };
    expect(() => comesTo(corpus({}), action)).toThrow("before it adds it");
  });
});
