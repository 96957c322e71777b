import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import { saysSame } from "../../../src/read/edit/written.ts";
import type { WrittenMap } from "../../../src/read/edit/written.ts";
import type { Field, ListName } from "../../../src/read/grammar/field.ts";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import { decoderFor } from "../../../src/read/decode/decode.ts";
import { readRecord } from "../../../src/read/records.ts";
import { placed } from "../../../src/show/desk/forms/checked/placed.ts";
import { sayingOf } from "../../../src/show/desk/forms/checked/saying.ts";
import { tiedFindings } from "../../../src/show/desk/forms/checked/tied.ts";
import { link } from "../../../src/link/link.ts";
import type { Finding } from "../../../src/base/finding.ts";
import { checkedForm } from "../../../src/show/desk/forms/checked/checked.ts";
import { ownWritten } from "../../../src/read/edit/head.ts";
import {
  enteredOf,
  isEnteredList,
  withEntered,
  writtenFrom,
} from "../../../src/show/desk/forms/filled/entered.ts";
import type { Entered, EnteredMap, Misread } from "../../../src/show/desk/forms/filled/entered.ts";
import { flowText, readFlow } from "../../../src/show/desk/forms/filled/flow.ts";
import { fieldsIn, layoutOf } from "../../../src/show/desk/forms/layout.ts";
import { formPage } from "../../../src/show/desk/forms/page.ts";
import { graphOf, slips, small } from "./forms-cases.ts";

const graph = graphOf(small);
const texts = new Map(small.map((file) => [file.path, file.text]));

/** Texts as people and their enemies type them: several scripts, signs that YAML takes for its own, several lines. */
const text = fc
  .oneof(
    fc.string({ minLength: 1, maxLength: 30, unit: "grapheme" }),
    fc.constantFrom(
      "> 240 cm",
      "- a dash",
      "p. 12, fig. 3",
      "Post #4 of",
      "it said: so",
      "&anchor *alias !tag",
      "'quoted' \"twice\"",
      "قال إنها سقف, p. 3",
      "two\nlines: of it\n  and one more",
      "{ a: b }",
      "[x, y]",
      "true",
      "0018.20",
      "~",
      "<b onclick=1>",
      "%d@`",
      "\u2067شيء\u2069",
    ),
  )
  .map((one) => one.replace(/[\u0000-\u0008\u000b-\u001f\u007f\u0085\u2028\u2029\ufeff]|\p{Cs}/gu, "").trim())
  .filter((one) => one !== "");
const line = text.map((one) => one.replace(/\s+/gu, " "));
const name = fc.stringMatching(/^[a-z][a-z0-9-]{0,8}$/);

/** Good values of a field as they stand in a form. */
function enteredFor(field: Field, key: string): fc.Arbitrary<Entered> {
  switch (field.type) {
    case "id":
      return fc.stringMatching(/^[a-z][a-z0-9]{6,9}$/).map((one) => `new-${one}`);
    case "text":
      return field.most === undefined ? (key === "file" ? line : text) : fc.constant("short");
    case "texts":
      return fc.array(line, { minLength: 1, maxLength: 3 });
    case "flag":
      return fc.constantFrom("true", "false");
    case "number":
      return key === "coverage" ? fc.constantFrom("1", "2") : fc.constantFrom("3", "-0.5", "12 %");
    case "amount":
      return fc.constantFrom("0", "3.5");
    case "whole":
      return fc.nat({ max: 99 }).map(String);
    case "year":
      return fc.constantFrom("1998", "480 BC");
    case "date":
      return fc.constantFrom("1850~", "-0299/-0199", "1894-10");
    case "quantity":
      return fc.constantFrom(key === "of" ? "1 %" : "18.2 ± 0.4 cm", key === "of" ? "2 %" : "42–45 cm");
    case "quantities":
      return fc.array(fc.constantFrom("18.2 cm", "≥ 3 m"), { minLength: 1, maxLength: 3 });
    case "ref":
      return fc.constantFrom(...namesFor(field.to));
    case "refs":
      return fc.uniqueArray(fc.constantFrom(...namesFor(field.to)), { minLength: 1, maxLength: 2 });
    case "citation":
      return fc.constantFrom("vane-1968 p. 12, fig. 3", "vane-legs");
    case "citations":
      return fc.array(fc.constantFrom("vane-1968 p. 12, fig. 3", "vane-1968", "vane-legs"), {
        minLength: 1,
        maxLength: 2,
      });
    case "textMap":
      return fc
        .uniqueArray(name, { minLength: 1, maxLength: 3 })
        .chain((names) => fc.tuple(...names.map((one) => line.map((value) => ({ name: one, value })))));
    case "numberMap":
      return fc.constant([{ name: "roofed", value: "0.3" }]);
    case "probability":
      return fc.constantFrom<Entered>("0.3", [
        { name: "roofed", value: "0.3" },
        { name: "open-ring", value: "0.7" },
      ]);
    case "choice":
      return fc.constantFrom(...field.of);
    case "json":
      return fc.constantFrom(
        "{ values: { of: [ring-a, ring-b], dimension: diameter } }",
        "[ring-a]",
        `{ p: "< 0.01" }`,
      );
    case "group":
    case "named":
      return mapFor(field.fields);
    case "items":
      return fc.array(mapFor(field.fields), { minLength: 1, maxLength: 2 });
  }
}

function namesFor(to: readonly string[]): readonly string[] {
  const fitting = [...graph.records.values()].filter(
    (one) => to.includes(one.list) && !one.id.includes("secret"),
  );
  return fitting.map((one) => one.id).slice(0, 4);
}

function mapFor(fields: Readonly<Record<string, Field>>): fc.Arbitrary<EnteredMap> {
  const keys = Object.keys(fields);
  const must = keys.filter((key) => fields[key]?.required === true);
  const may = keys.filter((key) => !must.includes(key));
  const of = (key: string): fc.Arbitrary<Entered> =>
    enteredFor(fields[key] ?? { type: "text", doc: "" }, key);
  return fc
    .subarray(may, { minLength: must.length > 0 ? 0 : 1 })
    .chain(
      (some) =>
        fc.record(
          Object.fromEntries([...must, ...some].map((key) => [key, of(key)])),
        ) as fc.Arbitrary<EnteredMap>,
    );
}

/** Fields that cannot stand beside one another in a record of a list. */
function sensible(list: ListName, entered: EnteredMap): EnteredMap {
  const without = (...names: readonly string[]): EnteredMap =>
    Object.fromEntries(Object.entries(entered).filter(([key]) => !names.includes(key)));
  if (list === "arguments") return { ...without("against"), therefore: "roofed" };
  if (list === "relations") return { ...without("same-time"), earlier: "ring-a", later: "the fire" };
  if (list === "artefacts") return { ...without("part-of"), name: "A thing" };
  return entered;
}

describe("what a form says", () => {
  for (const list of listNames) {
    test(`is what is read again from the file it is saved to: ${list}`, () => {
      fc.assert(
        fc.property(mapFor(fieldsIn(list)), (random) => {
          const entered = sensible(list, random);
          const { values, troubles } = checkedForm(graph, { list, id: null, seen: null, entered });
          const saved = prepared({ graph, files: texts }, { do: "add", list, records: [values] });
          if (!("changes" in saved)) throw new Error(JSON.stringify(saved));
          const files = filesAfter(saved.changes);
          const { model } = build(files, plugins, emptyMemo());
          const known = new Set(graph.list(list).map((one) => one.id));
          const made = [...(model?.graph.list(list) ?? []), ...(model?.graph.leftOut ?? [])].filter(
            (one) => one.list === list && !known.has(one.id),
          );
          const lost = (model?.graph.spoilt ?? []).flatMap(({ written }) => written ?? []);
          const found = [...made, ...lost].map((one) => withHead(one, files));
          expect({
            values,
            troubles,
            found: found.some((one) => saysSame(one, values)) ? "the same" : found,
          }).toEqual({
            values,
            troubles,
            found: "the same",
          });
        }),
        { numRuns: 12 },
      );
    });
  }

  test("has every field of the grammar once, and the required ones in sight", () => {
    for (const list of listNames) {
      const { first, more } = layoutOf(list);
      expect([...first, ...more].toSorted()).toEqual(Object.keys(fieldsIn(list)).toSorted());
      const required = Object.entries(fieldsIn(list)).flatMap(([key, field]) =>
        field.required ? [key] : [],
      );
      expect(required.filter((key) => !first.includes(key))).toEqual([]);
    }
  });

  test("keeps each value from file to form and back", () => {
    for (const list of listNames) {
      for (const [key, field] of Object.entries(fieldsIn(list))) {
        fc.assert(
          fc.property(enteredFor(field, key), (entered) => {
            const misread: Misread[] = [];
            const written = writtenFrom(field, entered, [key], misread);
            expect(misread).toEqual([]);
            if (written === null) throw new Error("nothing was written");
            const again = enteredOf(field, written);
            if (again === null) throw new Error("it has not the shape of its field");
            const twice = writtenFrom(field, again, [key], misread);
            expect(saysSame(twice, written)).toBe(true);
          }),
          { numRuns: 20 },
        );
      }
    }
  });

  test("says of a record that nobody touched what it says, letter for letter", () => {
    const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
    const whole = graphOf(demo);
    const all = new Map(demo.map((file) => [file.path, file.text]));
    const some = [...whole.records.values()].filter((_, place) => place % 9 === 0);
    expect(some.length).toBeGreaterThan(40);
    for (const record of some) {
      const page = formPage(whole, all, { list: null, record: record.id, presets: [] });
      if (!page) throw new Error(`no form for ${record.id}`);
      expect(page.checked.values).toEqual({ ...ownWritten(record) });
      expect(page.checked.troubles).toEqual([]);
    }
  });
});

function filesAfter(changes: Extract<ReturnType<typeof prepared>, { changes: unknown }>["changes"]) {
  const after = new Map(texts);
  for (const { file, edits } of changes) after.set(file, edited(after.get(file) ?? "", edits));
  return [...after].map(([path, text]) => ({ path, text }));
}

/** A record as it is written, with what it has from the head of its file. */
function withHead(
  record: { readonly file: string; readonly node: Parameters<typeof ownWritten>[0]["node"] },
  files: readonly { readonly path: string; readonly text: string }[],
): WrittenMap {
  const own = ownWritten(record);
  const head = /^source: (\S+)/.exec(files.find((one) => one.path === record.file)?.text ?? "")?.[1];
  return head === undefined || own["from"] !== undefined || !("from" in fieldsIn("claims"))
    ? own
    : { ...own, from: head };
}

describe("messages at a form's fields", () => {
  test.each(slips)("are those of the command line: $typed", ({ list, entered, typed, at }) => {
    const files = [...small, { path: "typed.yaml", text: `${list}:\n  - ${typed}\n` }];
    const { findings } = build(files, plugins, emptyMemo());
    const told = findings.filter((one) => one.level === "error" && one.at?.file === "typed.yaml");
    const { troubles } = checkedForm(graph, { list, id: null, seen: null, entered });
    expect(told.length).toBeGreaterThan(0);
    expect([...new Set(troubles.map((one) => inEnglish(one.message)))].toSorted()).toEqual(
      told.map((one) => inEnglish(one.message)).toSorted(),
    );
    expect(troubles.map((one) => one.path[0])).toContain(at);
    for (const { fix, message } of told) {
      if (!fix) continue;
      const here = troubles.find((one) => inEnglish(one.message) === inEnglish(message));
      expect(fix.edits.map((edit) => edit.text.replace(/^"|"$/g, ""))).toEqual(here?.fixes);
    }
  });

  test("tell each missing field at its own place", () => {
    for (const list of listNames) {
      const { troubles } = checkedForm(graph, { list, id: null, seen: null, entered: {} });
      const missing = troubles
        .filter((one) => inEnglish(one.message).startsWith("Missing "))
        .map((one) => String(one.path[0]));
      const required = Object.entries(fieldsIn(list)).flatMap(([key, field]) =>
        field.required && key !== "id" ? [key] : [],
      );
      expect(missing).toEqual(expect.arrayContaining(required));
      expect(troubles.every((one) => one.fresh)).toBe(true);
    }
  });

  test("offer both readings of a number that has two, and both are read", () => {
    const entered = { of: "ring-a", dimension: "depth", value: "1,200 cm" };
    const asked = { list: "measurements", id: null, seen: null, entered } as const;
    const [trouble] = checkedForm(graph, asked).troubles;
    expect(trouble?.fixes).toEqual(["1200 cm", "1.200 cm"]);
    for (const value of trouble?.fixes ?? [])
      expect(checkedForm(graph, { ...asked, entered: { ...entered, value } }).troubles).toEqual([]);
  });

  test("tell of a record that could not be read what is wrong with it, and it can be mended", () => {
    const broken =
      "claims:\n  - { id: broken, txt: It fell., about: ring-a }\n  - { id: hung, text: So., from: nowhere }\n";
    const files = [...small, { path: "broken.yaml", text: broken }];
    const bad = graphOf(files);
    expect(bad.records.has("broken")).toBe(false);
    const all = new Map(files.map((file) => [file.path, file.text]));
    const page = formPage(bad, all, { list: null, record: "broken", presets: [] });
    if (!page) throw new Error("no form");
    expect(page.list).toBe("claims");
    expect(page.checked.troubles.map((one) => [one.path[0], one.fresh]).toSorted()).toEqual([
      ["text", false],
      ["txt", false],
    ]);
    const entered = { ...page.entered, text: "It fell." };
    const asked = { list: page.list, id: page.id, seen: page.seen, entered };
    expect(checkedForm(bad, asked).troubles.map((one) => one.path)).toEqual([["txt"]]);
    const { seen, values } = sayingOf(bad, asked);
    if (!seen) throw new Error("nothing was seen");
    const saved = prepared({ graph: bad, files: all }, { do: "change", id: "broken", seen, values });
    const change = "changes" in saved ? saved.changes[0] : undefined;
    expect(edited(broken, change?.edits ?? [])).toContain("text: It fell.");
  });

  test("do not hold an old trouble against a change of something else", () => {
    const files = small.map((file) =>
      file.path === "rings.yaml"
        ? { ...file, text: file.text.replace("of: ring-a, text", "of: ring-a, year: soon, text") }
        : file,
    );
    const bad = graphOf(files);
    const page = formPage(bad, new Map(files.map((file) => [file.path, file.text])), {
      list: null,
      record: "deep",
      presets: [],
    });
    if (!page) throw new Error("no form");
    expect(page.checked.troubles.map((one) => one.fresh)).toEqual([false]);
    const entered = { ...page.entered, basis: "by eye" };
    const { troubles } = checkedForm(bad, { list: "observations", id: "deep", seen: page.seen, entered });
    expect(troubles.map((one) => [one.path[0], one.fresh]).toSorted()).toEqual([
      ["basis", true],
      ["year", false],
    ]);
  });
});

test("a record by itself is told what it would be told when the whole corpus is tied together", () => {
  const ids = [
    "ring-a",
    "ring-b",
    "roofed",
    "deep",
    "vane",
    "vane-1968",
    "vane-legs",
    "ring-c",
    "deep-so-roofed",
  ];
  const ring = graphOf([
    ...small,
    {
      path: "parts.yaml",
      text: "artefacts:\n  - { id: ring-c, name: C, part-of: ring-d }\n  - { id: ring-d, name: D }\n",
    },
  ]);
  const any = fc.constantFrom(...ids, "nowhere", "ring-d", "the fire");
  const cases = fc.constantFrom<readonly [ListName, string | null]>(
    ["measurements", null],
    ["measurements", "ring-a:diameter@vane-1968"],
    ["artefacts", null],
    ["artefacts", "ring-d"],
    ["arguments", null],
    ["positions", null],
    ["claims", "roofed"],
    ["derivations", null],
    ["questions", "what-was-it"],
  );
  fc.assert(
    fc.property(
      cases,
      any,
      any,
      any,
      fc.constantFrom("3 kg", "3 m", "-3 m"),
      ([list, id], a, b, c, value) => {
        const fields: Readonly<Partial<Record<ListName, WrittenMap>>> = {
          measurements: { of: a, dimension: "diameter", value, from: b, repeats: c },
          artefacts: { id: id ?? b, name: "A thing", "part-of": a },
          arguments: { id: b, because: [a, c], therefore: c },
          positions: { who: a, claim: c, stance: "holds", from: b },
          claims: { id: id ?? b, text: "It was.", about: [a, c], dates: [{ event: "fire", after: b }] },
          derivations: {
            id: b,
            plugin: "unit-fit",
            inputs: { values: { of: [a, c], dimension: "diameter" } },
          },
          questions: { id: id ?? b, text: "What?", answers: [a, c], prior: { [b]: "0.5" } },
        };
        const whole = placed(fields[list] ?? {});
        const decoder = decoderFor("typed", ring.settings.quantities);
        const record = readRecord(list, whole.node, null, "typed", decoder);
        if (!("list" in record)) return;
        const others = [...ring.records.values(), ...ring.leftOut];
        const records =
          id === null ? [...others, record] : others.map((one) => (one.id === id ? record : one));
        const { settings, sources, spoilt = [], pluginFiles } = ring;
        const reading = {
          settings,
          sources: [...sources.values()],
          records,
          spoilt,
          pluginFiles,
          findings: [],
        };
        const told = (findings: readonly Finding[]) =>
          findings
            .filter((one) => one.at?.file === "typed")
            .map((one) => `${inEnglish(one.message)} ${one.at?.start}`);
        expect(told(tiedFindings(ring, record, id))).toEqual(told(link(reading).findings));
      },
    ),
    { numRuns: 400 },
  );
});

describe("values of any shape", () => {
  test("are read again as they were", () => {
    const { written } = fc.letrec((tie) => ({
      written: fc.oneof({ maxDepth: 3 }, text, tie("list"), tie("map")),
      list: fc.array(tie("written"), { maxLength: 3 }),
      map: fc.dictionary(line, tie("written"), { minKeys: 1, maxKeys: 3, noNullPrototype: true }),
    }));
    fc.assert(
      fc.property(written, (value) => {
        const read = readFlow(flowText(value as WrittenMap));
        expect("value" in read ? JSON.parse(JSON.stringify(read.value)) : read).toEqual(value);
      }),
      { numRuns: 300 },
    );
  });

  test("are told where they cannot be read", () => {
    for (const typed of ["{ a: b", "[x, y", "a: b\nc", "- x\ny: z", "'"])
      expect(readFlow(typed)).toHaveProperty("message");
  });
});

test("a value that is put somewhere in a form stands there, and nothing else is moved", () => {
  const start: EnteredMap = { a: "1", list: ["x", "y"], items: [{ b: "2" }] };
  const path = fc.constantFrom(
    ["a"],
    ["list", 1],
    ["list", 2],
    ["items", 0, "b"],
    ["items", 1, "c"],
    ["new", 0, "d"],
  );
  fc.assert(
    fc.property(path, line, (where, value) => {
      const put = withEntered(start, where, value);
      expect(at(put, where)).toBe(value);
      expect(withEntered(withEntered(put, where, "other"), where, value)).toEqual(put);
      const others = Object.keys(start).filter((key) => key !== where[0]);
      for (const key of others) expect(at(put, [key])).toEqual(start[key]);
    }),
  );
});

function at(entered: Entered, path: readonly (string | number)[]): Entered | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return entered;
  if (typeof entered === "string") return undefined;
  const next = isEnteredList(entered) ? entered[Number(step)] : entered[step];
  return next === undefined ? undefined : at(next, rest);
}
