import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

/** Everything that means something to a page, a document, a table or a terminal, and what XML has no place for. */
export const hostile = [
  "<script>alert(1)</script> ]]> --> <img src=x onerror=alert(1)> &amp; \"q\" 'q' \\",
  "a\u0000b\u0001c\u001bd\u202eabc\u2066 \ud800 x \udfff \uffff {{claim:one-set}} [@hale-1990] | * _ ` # ~ ^ $",
  "[l](javascript:alert(4)) ![i](http://example.org/i.png)\n\n# head\n- list",
].join(" ");

/** A corpus whose every text is a stranger's, by its files. */
function filesWith(text: string): Readonly<Record<string, string>> {
  const of = (words: string): string => `${words} ${text} end`;
  const things = {
    scholars: [
      { id: "hale", name: of("Ada Hale"), note: of("note") },
      { id: "reed", name: "Mal Reed" },
    ],
    artefacts: [
      { id: "bowl-1", name: of("The red bowl"), kind: of("bowl"), "held-at": of("store"), note: of("note") },
      { id: "bowl-2", name: "The grey bowl", "held-at": of("store") },
    ],
    passages: [{ id: "pass", from: "hale-1990", at: of("p. 4"), quote: of("a rim of 18 cm"), lang: "de" }],
    measurements: [
      { of: "bowl-1", dimension: "rim", value: "18.2 cm", from: "hale-1990 p. 3", between: of("edges") },
      { of: "bowl-2", dimension: "rim", value: "36.0 cm", from: "hale-1990 p. 3" },
    ],
    observations: [
      { id: "worn", of: "bowl-1", text: of("Worn."), feature: of("wear"), from: "hale-1990 p. 3" },
    ],
    claims: [
      { id: "one-set", text: of("They are one set."), note: of("note") },
      { id: "two-sets", text: of("They are two sets.") },
    ],
    questions: [{ id: "sets", text: of("One set or two?"), answers: ["one-set", "two-sets"] }],
    searches: [{ id: "search", where: of("Library"), words: of("words"), found: 3, kept: 1, by: "reed" }],
    positions: [{ who: "hale", claim: "one-set", stance: "holds", from: "pass", words: of("it is") }],
    arguments: [{ id: "by-wear", text: of("Argued."), because: "worn", therefore: "one-set", from: "pass" }],
    examinations: [
      {
        id: "look",
        of: ["bowl-1"],
        method: of("measure"),
        permit: of("ticket"),
        outcomes: [
          { id: "same", text: of("Alike."), therefore: ["one-set"] },
          { id: "other", text: of("Different."), therefore: ["two-sets"] },
        ],
      },
    ],
    talks: [
      {
        id: "talk",
        title: of("Bowls"),
        steps: [
          { show: { question: "sets" }, text: of("first"), notes: of("notes") },
          { show: ["one-set", "pass"] },
          { show: { around: "one-set", steps: 2 }, text: of("around") },
          { show: { table: "measurements" } },
        ],
      },
    ],
  };
  const settings = {
    title: of("Bowls & rows"),
    licence: "CC-BY-4.0",
    authors: [{ name: of("Ines Marrow") }],
    "cite-as": of("The bowls"),
    bibliography: ["sources.json"],
    dimensions: { rim: { kind: "length", taken: of("at the lip") } },
  };
  const source = { id: "hale-1990", type: "book", title: of("The Row"), URL: "javascript:alert(2)" };
  return {
    "corpus.yaml": JSON.stringify(settings),
    "things.yaml": JSON.stringify(things),
    "sources.json": JSON.stringify([
      { ...source, author: [{ family: of("Hale"), given: "Ada" }], issued: { "date-parts": [[1990]] } },
    ]),
    "review/introduction.md": `<script>alert(1)</script>\n\n[a](javascript:alert(1)) <img src=x> {{claim:one-set}}\n`,
  };
}

/** Writes a corpus with a text in every field to a new folder. */
export function folderWith(text: string): string {
  const folder = mkdtempSync(join(tmpdir(), "hostile-"));
  for (const [path, content] of Object.entries(filesWith(text))) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}
