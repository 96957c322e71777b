import { describe, expect, test } from "vitest";
import { edited } from "../../../src/base/text/edit.ts";
import type { TextChange } from "../../../src/read/edit/text-change.ts";
import { textEdits } from "../../../src/read/edit/text-edits.ts";
import type { Written, WrittenMap } from "../../../src/read/edit/written.ts";
import type { ListName } from "../../../src/read/grammar/field.ts";
import type { Step } from "../../../src/read/yaml/tree.ts";
import { recordsIn, whyNot } from "./edits-files.ts";

/** A file before and after a change, as a person would have written both. */
interface Example {
  readonly does: string;
  readonly before: string;
  readonly change: (text: string) => TextChange;
  readonly after: string;
}

const set =
  (list: ListName, place: number, path: readonly Step[], value: Written | null) =>
  (text: string): TextChange => ({ is: "field", record: startOf(text, list, place), path, value });
const add =
  (list: ListName, ...records: readonly WrittenMap[]) =>
  (): TextChange => ({ is: "add", list, records });
const take =
  (list: ListName, place: number) =>
  (text: string): TextChange => ({ is: "take", record: startOf(text, list, place) });
const setting = (path: readonly Step[], value: Written | null) => (): TextChange => ({
  is: "setting",
  path,
  value,
});

function startOf(text: string, list: ListName, place: number): number {
  const found = recordsIn(text).find((one) => one.list === list && one.place === place);
  if (!found) throw new Error(`no record ${place} of ${list}`);
  return found.node.start;
}

const examples: readonly Example[] = [
  {
    does: "puts a text with a colon in quotes and leaves the comment behind it",
    before: "claims:\n  - id: roof\n    text: The ring carried a roof. # Ferrant\n",
    change: set("claims", 0, ["text"], "The ring: a roof"),
    after: 'claims:\n  - id: roof\n    text: "The ring: a roof" # Ferrant\n',
  },
  {
    does: "keeps the kind of quotes that stood there",
    before: "artefacts:\n  - { id: post-04, numbers: { ferrant: '2', marrack: \"A4\" } }\n",
    change: set("artefacts", 0, ["numbers", "ferrant"], "3"),
    after: "artefacts:\n  - { id: post-04, numbers: { ferrant: '3', marrack: \"A4\" } }\n",
  },
  {
    does: "puts a text with a comma in quotes inside brackets, and not outside them",
    before: "passages:\n  - id: a\n    at: p. 1\n  - { id: b, at: p. 1 }\n",
    change: set("passages", 1, ["at"], "p. 12, fig. 3"),
    after: 'passages:\n  - id: a\n    at: p. 1\n  - { id: b, at: "p. 12, fig. 3" }\n',
  },
  {
    does: "puts a bound in quotes",
    before: "measurements:\n  - of: ring-a\n    dimension: depth\n    value: 240 cm\n",
    change: set("measurements", 0, ["value"], "> 240 cm"),
    after: 'measurements:\n  - of: ring-a\n    dimension: depth\n    value: "> 240 cm"\n',
  },
  {
    does: "writes a new field where the grammar has it",
    before:
      "observations:\n  - id: pick-marks\n    of: ring-a\n    text: Marks of a pick.\n    from: hale-1896\n",
    change: set("observations", 0, ["year"], "1894"),
    after:
      "observations:\n  - id: pick-marks\n    of: ring-a\n    text: Marks of a pick.\n    year: 1894\n    from: hale-1896\n",
  },
  {
    does: "writes an id first, on the line of the dash",
    before: "measurements:\n  - of: ring-a\n    dimension: gap\n    value: 1.62 m\n",
    change: set("measurements", 0, ["id"], "gap-1"),
    after: "measurements:\n  - id: gap-1\n    of: ring-a\n    dimension: gap\n    value: 1.62 m\n",
  },
  {
    does: "writes a short text where the others have it",
    before:
      "claims:\n  - id: a\n    text: One.\n    short: one\n    from: x\n  - id: b\n    text: Two.\n    short: two\n    from: x\n  - id: c\n    text: Three.\n    from: x\n",
    change: set("claims", 2, ["short"], "three"),
    after:
      "claims:\n  - id: a\n    text: One.\n    short: one\n    from: x\n  - id: b\n    text: Two.\n    short: two\n    from: x\n  - id: c\n    text: Three.\n    short: three\n    from: x\n",
  },
  {
    does: "takes a field out with the comment in its line, and leaves the comment above",
    before:
      "claims:\n  - id: a\n    text: One.\n    # As Hale has it.\n    note: Or two. # or three\n    short: one\n",
    change: set("claims", 0, ["note"], null),
    after: "claims:\n  - id: a\n    text: One.\n    # As Hale has it.\n    short: one\n",
  },
  {
    does: "adds to a list in brackets",
    before: "questions:\n  - id: q\n    text: Which?\n    answers: [roofed, open] # so far\n",
    change: set("questions", 0, ["answers"], ["roofed", "open", "fold"]),
    after: "questions:\n  - id: q\n    text: Which?\n    answers: [roofed, open, fold] # so far\n",
  },
  {
    does: "adds to a list over lines, and keeps what is said of the others",
    before:
      "arguments:\n  - id: x\n    because:\n      - post-depth # a table\n      # The next came later.\n      - pick-marks\n    therefore: roofed\n",
    change: set("arguments", 0, ["because"], ["post-depth", "pick-marks", "foot"]),
    after:
      "arguments:\n  - id: x\n    because:\n      - post-depth # a table\n      # The next came later.\n      - pick-marks\n      - foot\n    therefore: roofed\n",
  },
  {
    does: "makes one value a list in brackets",
    before: "observations:\n  - { id: o, of: ring-a, text: Seen. }\n",
    change: set("observations", 0, ["of"], ["ring-a", "ring-b"]),
    after: "observations:\n  - { id: o, of: [ring-a, ring-b], text: Seen. }\n",
  },
  {
    does: "writes a text of several lines below its key",
    before: "passages:\n  - id: a\n    at: p. 1\n    lang: en\n",
    change: set("passages", 0, ["quote"], "One, two,\n  one.\n\nOne: two.\n"),
    after:
      "passages:\n  - id: a\n    at: p. 1\n    quote: |\n      One, two,\n        one.\n\n      One: two.\n    lang: en\n",
  },
  {
    does: "touches only the line of a folded text in which a word changes",
    before:
      "claims:\n  - id: a\n    text: >-\n      The posts of the inner ring stood\n      deep enough to bear the span\n      of a roof.\n",
    change: set(
      "claims",
      0,
      ["text"],
      "The posts of the inner ring stood deep enough to carry the span of a roof.",
    ),
    after:
      "claims:\n  - id: a\n    text: >-\n      The posts of the inner ring stood\n      deep enough to carry the span\n      of a roof.\n",
  },
  {
    does: "writes a value in the place of an alias and leaves the others",
    before:
      "artefacts:\n  - { id: a, name: &ring Ring }\n  - { id: b, name: *ring }\n  - { id: c, name: *ring }\n",
    change: set("artefacts", 1, ["name"], "Ring B"),
    after:
      "artefacts:\n  - { id: a, name: &ring Ring }\n  - { id: b, name: Ring B }\n  - { id: c, name: *ring }\n",
  },
  {
    does: "keeps an anchor that nothing names",
    before: "artefacts:\n  - { id: a, name: &ring Ring }\n",
    change: set("artefacts", 0, ["name"], "Ring A"),
    after: "artefacts:\n  - { id: a, name: &ring Ring A }\n",
  },
  {
    does: "writes a position in one line where the others are",
    before:
      "positions:\n  - { who: vane, claim: a, stance: holds }\n\nreadings:\n  - { from: x, status: read }\n",
    change: add("positions", {
      claim: "b",
      stance: "rejects",
      who: "vane",
      words: "It is a law: never",
      from: "vane-1968 p. 22",
    }),
    after:
      'positions:\n  - { who: vane, claim: a, stance: holds }\n  - { who: vane, claim: b, stance: rejects, from: vane-1968 p. 22, words: "It is a law: never" }\n\nreadings:\n  - { from: x, status: read }\n',
  },
  {
    does: "writes a claim over lines and parts it from the last where the others are parted",
    before: "claims:\n  - id: a\n    text: One.\n\n  - id: b\n    text: Two.\n# The end.\n",
    change: add("claims", { text: "Three.", about: ["ring-a"], id: "c" }),
    after:
      "claims:\n  - id: a\n    text: One.\n\n  - id: b\n    text: Two.\n\n  - id: c\n    text: Three.\n    about: [ring-a]\n# The end.\n",
  },
  {
    does: "puts a list that is not there yet where the manual's order has it",
    before: "source: x\n\npassages:\n  - id: p\n    at: p. 1\n\nreadings:\n  - { status: read }\n",
    change: add("arguments", { id: "y", because: ["p"], therefore: "a" }),
    after:
      "source: x\n\npassages:\n  - id: p\n    at: p. 1\n\narguments:\n  - id: y\n    because: [p]\n    therefore: a\n\nreadings:\n  - { status: read }\n",
  },
  {
    does: "begins a file that has only comments",
    before: "# Nothing yet.\n",
    change: add("readings", { from: "walks-1983", status: "to-read" }),
    after: "# Nothing yet.\n\nreadings:\n  - { from: walks-1983, status: to-read }\n",
  },
  {
    does: "fills a list that was left empty",
    before: "claims: [] # none\nscholars:\n- id: hale\n  name: Hale\n",
    change: add("claims", { id: "a", text: "One." }),
    after: "claims: # none\n- id: a\n  text: One.\nscholars:\n- id: hale\n  name: Hale\n",
  },
  {
    does: "writes the outcomes of one examination alike",
    before:
      "examinations:\n  - id: a\n    of: [ring-a]\n    method: m\n    outcomes:\n      - { id: x, text: X. }\n",
    change: add("examinations", {
      id: "b",
      of: ["casts"],
      method: "a hand lens",
      outcomes: [
        { id: "y", text: "Y.", sees: [{ feature: "pick marks", present: "true" }], therefore: ["roofed"] },
        { id: "z", text: "Z." },
      ],
    }),
    after:
      "examinations:\n  - id: a\n    of: [ring-a]\n    method: m\n    outcomes:\n      - { id: x, text: X. }\n  - id: b\n    of: [casts]\n    method: a hand lens\n    outcomes:\n      - id: y\n        text: Y.\n        sees: [{ feature: pick marks, present: true }]\n        therefore: [roofed]\n      - id: z\n        text: Z.\n",
  },
  {
    does: "writes one source without a list",
    before: "claims:\n  - id: a\n    text: One.\n",
    change: set("claims", 0, ["from"], ["hale-1896 p. 3"]),
    after: "claims:\n  - id: a\n    text: One.\n    from: hale-1896 p. 3\n",
  },
  {
    does: "takes a record with the comment that speaks of it alone",
    before:
      "arguments:\n  # First foot of the arch.\n  - id: a\n    because: [b]\n  # Second foot.\n  - id: b\n    because: [a]\n",
    change: take("arguments", 0),
    after: "arguments:\n  # Second foot.\n  - id: b\n    because: [a]\n",
  },
  {
    does: "leaves a comment that may speak of the next record too",
    before:
      "arguments:\n  # Two looks, and either would do.\n  - id: a\n    because: [b]\n  - id: b\n    because: [a]\n",
    change: take("arguments", 0),
    after: "arguments:\n  # Two looks, and either would do.\n  - id: b\n    because: [a]\n",
  },
  {
    does: "takes the last record of a list with the list",
    before: "claims:\n  - id: a\n    text: One.\n\nreadings:\n  - { status: read }\n",
    change: take("readings", 0),
    after: "claims:\n  - id: a\n    text: One.\n",
  },
  {
    does: "writes a unit of the corpus's own as the others are written",
    before:
      "title: Merrow\nunits:\n  down-pace:\n    is: 0.743 m\n    from: vane-1968\nwithhold: [trench-9]\n",
    change: setting(["units", "ring-foot"], { from: "costa-1974", is: "0.318 ± 0.004 m" }),
    after:
      "title: Merrow\nunits:\n  down-pace:\n    is: 0.743 m\n    from: vane-1968\n  ring-foot:\n    is: 0.318 ± 0.004 m\n    from: costa-1974\nwithhold: [trench-9]\n",
  },
  {
    does: "writes the first entry of a setting that was not there, and a blank line before it where the file has such",
    before: "title: Merrow\n\nunits:\n  down-pace:\n    is: 0.743 m\n",
    change: setting(["accept"], [{ rule: "unit-slip", about: ["depth-06"], why: "The slip is Costa's." }]),
    after:
      "title: Merrow\n\nunits:\n  down-pace:\n    is: 0.743 m\n\naccept:\n  - { rule: unit-slip, about: [depth-06], why: The slip is Costa's. }\n",
  },
  {
    does: "mends a value that YAML took apart",
    before: "measurements:\n  - { id: d, of: ring-a, dimension: depth, value: 18,2 cm, from: hale-1896 }\n",
    change: set("measurements", 0, ["value"], "18.2 cm"),
    after: "measurements:\n  - { id: d, of: ring-a, dimension: depth, value: 18.2 cm, from: hale-1896 }\n",
  },
];

const ends = [
  ["LF", (text: string) => text],
  ["CRLF", (text: string) => text.replaceAll("\n", "\r\n")],
  ["a byte-order mark", (text: string) => `\ufeff${text}`],
] as const;

describe.each(ends)("with %s, a change", (_, kept) => {
  test.each(examples)("$does", ({ before, change, after }) => {
    const text = kept(before);
    const edits = textEdits({ path: "a.yaml", text }, change(text));
    expect("problem" in edits ? edits.problem : edited(text, edits)).toBe(kept(after));
  });
});

test("a value that other places name is not changed under them, and the message names its anchor", () => {
  const text = "artefacts:\n  - { id: a, name: &ring Ring }\n  - { id: b, name: *ring }\n";
  const change = set("artefacts", 0, ["name"], "Ring A")(text);
  expect(whyNot(textEdits({ path: "a.yaml", text }, change))).toBe(
    "Unexpected anchor `&ring` on a value that stands in 1 other place as `*ring`, expected it written out there first",
  );
});

test("a file that cannot be read is not changed", () => {
  const text = "claims:\n  - id: a\n   text: One.\n";
  expect(whyNot(textEdits({ path: "a.yaml", text }, add("claims", { id: "b", text: "Two." })()))).toBe(
    "Unexpected file `a.yaml` that cannot be read, expected it mended first",
  );
});
