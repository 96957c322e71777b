import { expect, test } from "vitest";
import { readCorpus } from "../../../src/read/read.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { filledIn, nothingFilled, nothingLooked } from "../../../src/show/desk/visit/filled/filled.ts";
import type { Filled } from "../../../src/show/desk/visit/filled/filled.ts";
import { visitTold } from "../../../src/show/desk/visit/filled/told.ts";
import { visitBlocks } from "../../../src/show/desk/visit/blocks/blocks.ts";
import { returnedIn, returnedText } from "../../../src/show/desk/visit/returned.ts";
import { visitPage } from "../../../src/write/visit/page.ts";
import { after, filledWith, lookAsked, modelOf, sheetOf, visitFiles } from "./visit-cases.ts";

const { graph } = modelOf(visitFiles);

/** What comes of a sheet that somebody else may have written. */
const toldOf = (filled: Filled) => visitTold(graph, lookAsked, filled);

const seen = { ...nothingLooked, present: "true", text: "It is there." } as const;

/** A sheet with one row of each kind about a thing, and the outcome of an examination of it. */
function about(thing: string, source: string, examination: string): Filled {
  return filledWith(
    { [JSON.stringify([thing, "length", ""])]: ["11.1"] },
    {
      from: source,
      looked: { [JSON.stringify([[thing], "spiral marks"])]: seen },
      pictures: { [JSON.stringify([thing, "whole"])]: { file: "a.png", scale: "" } },
      found: { [examination]: "u" },
    },
  );
}

test("a row about something withheld is as one about nothing: it is in no answer, and adds nothing", () => {
  const named = { secret: ["peg-9", "see-again:peg-9"], none: ["peg-8", "see-again:peg-8"] } as const;
  const [secret, none] = [named.secret, named.none].map(([thing, look]) => {
    const told = toldOf(about(thing, "", look));
    return JSON.stringify(told).replaceAll(thing, "THING");
  });
  expect(secret).toBe(none);
  const both = filledWith({}, { looked: { [JSON.stringify([["peg-1", "peg-9"], "wear"])]: seen } });
  expect(toldOf(both).action).toBeNull();
});

test("a withheld source cannot be told from one that there is not", () => {
  const [secret, none] = ["sealed-1950", "nobody-1950"].map((key) =>
    JSON.stringify(toldOf(filledWith({}, { from: `${key} p. 4` }))).replaceAll(key, "KEY"),
  );
  expect(secret).toBe(none);
});

test.each([
  "\u0000",
  "\u0007",
  "\u00010\u0001",
  "\u00011\u0001",
  "\u000199\u0001",
  "\u001b]0;title\u0007",
  "\u0085",
  "\ufeff",
  "\ud800",
  "\u202e",
  "a\nb: c",
  "--- #x",
  "- [",
  "'\"`",
  "${x}",
  "*a &b !c",
])("whatever is in its texts, the files can be read after it: %j", (hostile) => {
  const filled = filledWith(
    { [JSON.stringify(["peg-1", `girth${hostile}`, hostile])]: ["101 mm", "102 mm", "103 mm"] },
    {
      instrument: hostile,
      conditions: { "peg-1": hostile },
      looked: { [JSON.stringify([["peg-1"], `wear${hostile}`])]: { ...seen, text: hostile } },
      pictures: { [JSON.stringify(["peg-1", hostile])]: { file: `x${hostile}.png`, scale: hostile } },
    },
  );
  const { action } = toldOf(filled);
  if (action === null) return;
  const files = after(visitFiles, action);
  const reading = readCorpus(
    Object.entries(files).map(([path, text]) => ({ path, text })),
    new Map(),
  );
  const bad = reading.findings.filter(({ rule }) => rule !== "unlisted-author");
  expect(bad.map(({ message }) => inEnglish(message))).toEqual([]);
  const model = modelOf(files);
  expect(model.graph.list("observations").some(({ values }) => values.basis === "autopsy")).toBe(true);
});

test("names that every object has are names like others", () => {
  const text = `{"variorum-visit":1,"asked":{"examination":"look","keeper":null,"also":[]},"filled":{"by":"reed","on":"2026-05-04",
    "__proto__":{"from":"hale-1990"},"constructor":{"prototype":{"x":1}},"conditions":{"__proto__":"x","constructor":"y"},
    "measured":{"__proto__":{"readings":["1 mm"]},"constructor":{"readings":["1 mm"]},"toString":{"readings":["1 mm"]}},
    "found":{"__proto__":"spiral","constructor":"spiral"}}}`;
  const returned = returnedIn(text);
  if ("problem" in returned) throw new Error("not read");
  expect(returned.filled.from).toBe("");
  expect(({} as Record<string, unknown>)["x"]).toBeUndefined();
  const told = toldOf(returned.filled);
  expect(told.action).toBeNull();
  expect(told.bad).toBe(Object.keys(returned.filled.measured).length);
});

test.each([
  "null",
  "[]",
  '{"variorum-visit":2}',
  '{"variorum-visit":1,"asked":{"examination":7},"filled":{}}',
  '{"variorum-visit":1,"asked":{"examination":"look"},"filled":{"measured":[1]}}',
  '{"variorum-visit":1,"asked":{"examination":"look"},"filled":{"measured":{"a":{"readings":[1]}}}}',
  '{"variorum-visit":1,"asked":{"examination":"look","keeper":"x"},"filled":{}}',
  `{"variorum-visit":1,"asked":${"[".repeat(50_000)}`,
])("what is no filled sheet is refused: %.60s", (text) => {
  expect("problem" in returnedIn(text)).toBe(true);
});

test("a sheet that is far too large is refused before it is read", () => {
  const filled = { ...nothingFilled, conditions: { x: "x".repeat(5 * 1024 * 1024) } };
  expect("problem" in returnedIn(returnedText({ asked: lookAsked, filled }))).toBe(true);
  expect(filledIn(nothingFilled)).toEqual(nothingFilled);
});

test("no text of the corpus comes to be markup or script in the page of a sheet", () => {
  const hostile = `</script><script>alert(1)</script><!--<img src=x onerror=alert(2)>"'\`&amp; \u2028\u202e`;
  const quoted = JSON.stringify(hostile);
  const files = Object.fromEntries(
    Object.entries(visitFiles).map(([file, text]) => [
      file,
      text
        .replace("title: The Sallow Row", `title: ${quoted}`)
        .replaceAll("a tape round the middle", quoted)
        .replaceAll("steel rule", quoted)
        .replaceAll("tip to shoulder", quoted)
        .replaceAll("the first peg", quoted)
        .replaceAll("name: Mal Reed", `name: ${quoted}`)
        .replaceAll("spiral marks", quoted)
        .replaceAll("reader's ticket", quoted)
        .replaceAll("county store", quoted)
        .replaceAll("look at the hole under raking light", quoted)
        .replaceAll("The hole was bored.", quoted)
        .replaceAll("The marks turn.", quoted),
    ]),
  );
  const page = visitPage(visitBlocks(sheetOf(files), { withValues: true }), {
    asked: lookAsked,
    corpus: hostile,
  });
  const keeper = { examination: null, keeper: hostile, also: [] };
  const other = visitPage(visitBlocks(sheetOf(files, keeper), { withValues: false }), {
    asked: keeper,
    corpus: hostile,
  });
  for (const text of [page, other]) {
    expect(text.match(/<script/gu)?.length).toBe(2);
    expect(text.match(/<\/script/gu)?.length).toBe(2);
    expect(text).not.toMatch(/<img|<!--/u);
    expect(text).toContain("&lt;/script&gt;&lt;script&gt;alert(1)");
    // Between the quotation marks of an attribute, and outside tags, no quotation mark or bracket of the corpus stands.
    expect(
      text.replace(/<(style|script)[^>]*>[^]*?<\/\1>/gu, "").replace(/<[a-z!/](?:[^<>"]|"[^"<>]*")*>/giu, ""),
    ).not.toMatch(/[<>]/u);
  }
});
