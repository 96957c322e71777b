import * as fc from "fast-check";
import { expect, test } from "vitest";
import { planned } from "../../../src/base/text/edit.ts";
import { hunksIn } from "../../../src/base/text/lines/hunk.ts";
import { changing, lookedUp, someTexts, textsWith } from "../../../src/base/text/texts.ts";
import type { Texts } from "../../../src/base/text/texts.ts";

const path = fc.constantFrom<string>("a.yaml", "b.yaml", "c/d.yaml", "e.csv", "__proto__");
const map = fc
  .uniqueArray(fc.tuple(path, fc.string()), { selector: ([name]) => name })
  .map((pairs) => new Map(pairs));

/** The same texts, looked up one by one. */
const asAsked = (texts: ReadonlyMap<string, string>): Texts =>
  lookedUp(texts.keys(), (name) => {
    const text = texts.get(name);
    if (text === undefined) throw new Error(`nothing was said to be at ${name}`);
    return text;
  });

function expectSame(texts: Texts, whole: ReadonlyMap<string, string>): void {
  expect([...texts]).toEqual([...whole]);
  expect([...texts.entries()]).toEqual([...whole.entries()]);
  expect([...texts.values()]).toEqual([...whole.values()]);
  expect([...texts.keys()]).toEqual([...whole.keys()]);
  expect(texts.size).toBe(whole.size);
  const each: [string, string][] = [];
  texts.forEach((text, name) => each.push([name, text]));
  expect(each).toEqual([...whole]);
  for (const name of [...whole.keys(), "no/such", "toString"])
    expect([texts.get(name), texts.has(name)]).toEqual([whole.get(name), whole.has(name)]);
}

test("texts that are looked up are what a map of them would be", () => {
  fc.assert(fc.property(map, (whole) => expectSame(asAsked(whole), whole)));
});

test("some of them, and others beside them, are what maps would be", () => {
  const alike = fc.property(map, map, fc.constantFrom<string>("yaml", "csv", "c/"), (whole, others, part) => {
    const wanted = (name: string): boolean => name.includes(part);
    expectSame(someTexts(asAsked(whole), wanted), new Map([...whole].filter(([name]) => wanted(name))));
    expectSame(textsWith(asAsked(whole), others), new Map([...whole, ...others]));
  });
  fc.assert(alike);
});

test("texts that are being changed tell what is another than it was, and leave the others", () => {
  const told = fc.property(map, fc.array(fc.tuple(path, fc.string())), (whole, sets) => {
    const before = new Map(whole);
    const texts = changing(asAsked(whole));
    const model = new Map(whole);
    for (const [name, text] of sets) {
      texts.set(name, text);
      model.set(name, text);
    }
    expectSame(texts.now(), model);
    for (const name of ["a.yaml", "b.yaml", "no/such"])
      expect([texts.get(name), texts.has(name)]).toEqual([model.get(name), model.has(name)]);
    const changed = [...model].filter(([name, text]) => before.get(name) !== text);
    expect(new Map(texts.changed())).toEqual(new Map(changed));
    expect(whole).toEqual(before);
  });
  fc.assert(told);
});

test("fixes of a few files, however many, have each text made once", () => {
  const made: string[] = [];
  const texts = lookedUp(["a.yaml", "b.yaml"], (name) => {
    made.push(name);
    return "a line\n".repeat(400);
  });
  const edit = (file: string, n: number) => ({ file, start: n * 7, end: n * 7 + 1, text: "A" });
  const fixes = Array.from({ length: 400 }, (_, n) => ({
    label: "Write A",
    edits: [edit("a.yaml", n), edit("b.yaml", n)],
  }));
  const hunksOf = hunksIn(texts);
  expect(fixes.flatMap(({ edits }) => hunksOf(edits))).toHaveLength(800);
  const inHunks = made.length;
  const plan = planned(
    fixes.map((fix, n) => ({ for: n, fix })),
    texts,
  );
  expect(plan.changes.map(({ edits }) => edits.length)).toEqual([400, 400]);
  // The lines of a text are counted once, too.
  expect([inHunks, made.length - inHunks]).toEqual([4, 2]);
});
