import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readBibliography } from "../../../src/read/bibliography/read.ts";
import { recordsIn } from "../../../src/read/edit/merge/reading.ts";
import { mergedVersions } from "../../../src/read/edit/merge/versions.ts";

/** What a record says, by its fields; of a bibliography by what its format calls them. */
type Said = Readonly<Record<string, string>>;
type Things = ReadonlyMap<string, Said>;

/** A format of file: its fields, how things are typed in it, and what is read of it. */
interface Form {
  readonly fields: readonly string[];
  readonly typed: (things: Things) => string;
}

const each = (
  things: Things,
  one: (id: string, said: readonly (readonly [string, string])[]) => string,
): string => [...things].map(([id, said]) => one(id, Object.entries(said))).join("");

const tags: Readonly<Record<string, string>> = { title: "TI", publisher: "PB", language: "LA" };
const inRis = (things: Things): string =>
  each(
    things,
    (id, said) =>
      `TY  - BOOK\nID  - ${id}\n${said.map(([name, value]) => `${tags[name]}  - ${value}\n`).join("")}ER  - \n`,
  );
const inBib = (things: Things): string =>
  each(
    things,
    (id, said) => `@book{${id},\n${said.map(([name, value]) => `  ${name} = {${value}},\n`).join("")}}\n`,
  );
const inJson = (things: Things): string =>
  `${JSON.stringify(
    [...things].map(([id, said]) => ({ id, type: "book", ...said })),
    null,
    2,
  )}\n`;
const inYaml = (things: Things): string =>
  `claims:\n${each(things, (id, said) => `  # of ${id}\n  - id: ${id}\n${said.map(([name, value]) => `    ${name}: ${value}\n`).join("")}`)}`;
const inTable = (things: Things): string =>
  `id,name,kind,material\n${[...things].map(([id, said]) => `${[id, ...forms["a.csv"].fields.map((name) => said[name] ?? "")].join()}\n`).join("")}`;

const books = ["title", "publisher", "language"] as const;
const forms = {
  "a.yaml": { fields: ["text", "note", "short"], typed: inYaml },
  "a.csv": { fields: ["name", "kind", "material"], typed: inTable },
  "a.bib": { fields: books, typed: inBib },
  "a.ris": { fields: books, typed: inRis },
  "a.json": { fields: books, typed: inJson },
} as const satisfies Readonly<Record<string, Form>>;
const paths = Object.keys(forms) as readonly (keyof typeof forms)[];

/** What a file says of each thing; null where it cannot be read, or has one twice. */
function read(path: string, text: string): ReadonlyMap<string, string> | null {
  const found = new Map<string, string>();
  const put = (id: string, said: object): boolean => {
    const { id: _, ...rest } = said as Readonly<Record<string, unknown>>;
    const isNew = !found.has(id);
    found.set(id, JSON.stringify(Object.entries(rest).toSorted(([a], [b]) => (a < b ? -1 : 1))));
    return isNew;
  };
  if (/\.(?:yaml|csv)$/u.test(path)) {
    const records = recordsIn(path, text);
    return records && [...records.values()].every(({ id, fields }) => put(id ?? "", fields)) ? found : null;
  }
  const { sources, findings } = readBibliography({ path, text });
  if (findings.some(({ level }) => level === "error")) return null;
  return sources.every(({ key, csl }) => put(key, csl)) ? found : null;
}

/** What two sides come to, thing by thing and field by field; null where they want two things. */
function wanted(base: Things, mine: Things, theirs: Things): Things | null {
  const all = new Map<string, Said>();
  for (const id of new Set([...base.keys(), ...mine.keys(), ...theirs.keys()])) {
    const [was, one, two] = [base.get(id), mine.get(id), theirs.get(id)];
    if (!one || !two) {
      const left = one ?? two;
      if (left && was && JSON.stringify(was) !== JSON.stringify(left)) return null;
      if (left && !was) all.set(id, left);
      continue;
    }
    const said: Record<string, string> = {};
    for (const name of new Set([...Object.keys(one), ...Object.keys(two)])) {
      const [old, own, other] = [was?.[name], one[name], two[name]];
      if (own !== other && old !== own && old !== other) return null;
      const value = own === other || old === other ? own : other;
      if (value !== undefined) said[name] = value;
    }
    all.set(id, said);
  }
  return all;
}

const values = ["oak", "elm", "ash wood", "a row of posts"];
/** What a side does: another value for a field, one out, one in, or one moved to another place. */
const change = fc.record({
  does: fc.constantFrom("say", "say", "take out", "put in", "move"),
  at: fc.nat(4),
  to: fc.nat(4),
  field: fc.nat(2),
  value: fc.constantFrom(...values),
});
type Change = typeof change extends fc.Arbitrary<infer C> ? C : never;

function changed(things: Things, fields: readonly string[], changes: readonly Change[], who: string): Things {
  let now = [...things];
  for (const { does, at, to, field, value } of changes) {
    const [id, said] = now[at] ?? ["", {}];
    if (does === "put in")
      now.splice(at, 0, [[`${who}-${to}`, "new"][to % 2] ?? "", { [fields[0] ?? ""]: `${value} of ${who}` }]);
    else if (id !== "" && does === "say") now[at] = [id, { ...said, [fields[field] ?? ""]: value }];
    else if (id !== "") {
      now.splice(at, 1);
      if (does === "move") now.splice(to, 0, [id, said]);
    }
    now = [...new Map(now)];
  }
  return new Map(now);
}

describe("things that are moved, renamed, taken out or put in twice", () => {
  test("come to what both sides want, or to a clash where they want two things, in every format", () => {
    const changes = fc.array(change, { minLength: 1, maxLength: 3 });
    let texts = 0;
    let clashes = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...paths),
        fc.array(fc.array(fc.constantFrom(...values), { minLength: 1, maxLength: 3 }), {
          minLength: 1,
          maxLength: 4,
        }),
        changes,
        changes,
        (path, rows, ours, others) => {
          const { fields, typed } = forms[path];
          const said = (row: readonly string[]): Said =>
            Object.fromEntries(row.map((value, n) => [fields[n] ?? "", value]));
          const base: Things = new Map(rows.map((row, n) => [`r${n}`, said(row)]));
          const [mine, theirs] = [changed(base, fields, ours, "m"), changed(base, fields, others, "t")];
          const merged = mergedVersions(path, typed(base), typed(mine), typed(theirs));
          const due = wanted(base, mine, theirs);
          if ("text" in merged) {
            texts++;
            expect(due).not.toBeNull();
            expect(read(path, merged.text)).toEqual(due && read(path, typed(due)));
          } else {
            clashes++;
            expect(merged.mine).not.toBe(merged.theirs);
          }
        },
      ),
      { numRuns: 100, seed: 8 },
    );
    expect(texts).toBeGreaterThan(50);
    expect(clashes).toBeGreaterThan(3);
  });

  const two: Things = new Map([
    ["r0", { title: "oak" }],
    ["r1", { title: "elm" }],
  ]);
  const moved: Things = new Map([...two].toReversed());

  test.each(paths)(
    "one that a side moved and the other took out is gone, or a clash where it was changed: %s",
    (path) => {
      const { fields, typed } = forms[path];
      const as = (things: Things): Things =>
        new Map([...things].map(([id, { title = "" }]) => [id, { [fields[0]]: title }]));
      const [base, mine, theirs] = [as(two), as(moved), as(new Map([...two].slice(1)))];
      const merged = mergedVersions(path, typed(base), typed(mine), typed(theirs));
      expect("text" in merged && [...(read(path, merged.text)?.keys() ?? [])]).toEqual(["r1"]);
      const changedToo = as(new Map([...moved, ["r0", { title: "ash" }]]));
      expect(mergedVersions(path, typed(base), typed(changedToo), typed(theirs))).not.toHaveProperty("text");
    },
  );

  test("a change of one that is gone is not given to another that stands in its place", () => {
    const base = "claims:\n  - id: r0\n    text: oak\n    note: elm\n";
    const theirs = "claims:\n  - id: t0\n    text: ash\n    note: yew\n";
    expect(mergedVersions("a.yaml", base, `${base}    short: of r0\n`, theirs)).not.toHaveProperty("text");
  });

  test("a field that one side took out and the other moved and changed clashes", () => {
    const record = (...lines: readonly string[]): string =>
      `claims:\n  - id: r0\n${lines.map((line) => `    ${line}\n`).join("")}`;
    const base = record("text: oak", "note: elm", "short: ash");
    const mine = record("text: oak", "short: ash", "note: yew");
    expect(mergedVersions("a.yaml", base, mine, record("text: oak", "short: ash"))).not.toHaveProperty(
      "text",
    );
  });

  test("a field that both sides put in, in lines apart, clashes", () => {
    const entry = (...lines: readonly string[]): string =>
      `TY  - BOOK\nID  - r0\n${lines.join("\n")}\nER  - \n`;
    const [base, mine, theirs] = [
      entry("TI  - a", "PB  - b"),
      entry("LA  - en", "TI  - a", "PB  - b"),
      entry("TI  - a", "PB  - b", "LA  - de"),
    ];
    expect(mergedVersions("a.ris", base, mine, theirs)).not.toHaveProperty("text");
  });

  test("line ends stay of one kind, and versions that come to the same are one", () => {
    const more = new Map([...two, ["t0", { title: "ash" }]] as const);
    const dos = inJson(new Map([["r0", { title: "oak" }]])).replaceAll("\n", "\r\n");
    const base = inJson(new Map([["r0", { title: "oak" }]]));
    const merged = mergedVersions("a.json", base, dos, inJson(more));
    expect("text" in merged && /[^\r]\n/u.test(merged.text)).toBe(false);
    const kept = "@string{ab = {Abbr}}\n\n";
    const one = `${kept}@book{r0, title = {a}}`;
    expect(mergedVersions("a.bib", `${one}\n\n`, kept, one)).toHaveProperty("text");
  });
});
