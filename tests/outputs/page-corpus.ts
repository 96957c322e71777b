import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { plugins } from "../../plugins/index.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import type { Lens, Reach } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import type { Told } from "../../src/host/telling/kind.ts";
import { page } from "../../src/host/telling/text/page.ts";

/** What somebody may write into a field so that it runs in another's browser; `hostile` counts where it ran. */
export const hostile = `</script></style><script>window.hostile=1</script><img src=x onerror="window.hostile=2">"'`;

const field = JSON.stringify(hostile);
const posts = [1, 2, 3, 4];

/** A small dispute over bowls: three years, a withheld claim, pictures published and not, and markup in every kind of text. */
export const bowls: Readonly<Record<string, string>> = {
  "corpus.yaml": `title: ${JSON.stringify(`Bowls of the Row ${hostile}`)}
licence: CC-BY-4.0
authors: [{ name: ${field} }]
bibliography: [books.json]
withhold: [sealed-claim, sealed-bowl]
dimensions: { rim: { kind: length } }
`,
  "books.json": JSON.stringify(
    [1900, 1950, 1990].map((year) => ({
      id: `book-${year}`,
      type: "book",
      title: `The Row ${year} ${hostile}`,
      author: [{ family: year === 1950 ? "مرو" : "Hale", given: `Ada ${hostile}` }],
      URL: "javascript:window.hostile=3",
      issued: { "date-parts": [[year]] },
    })),
  ),
  "images/open.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 40"><script>window.hostile=4</script><path d="M0 0H40V40Z"/></svg>`,
  "images/closed.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><path d="M0 0H4V4Z"/></svg>`,
  "things.yaml": `scholars:
  - { id: hale, name: ${JSON.stringify(`Ada Hale ${hostile}`)}, note: privatenote }
  - { id: reed, name: Mal Reed }
artefacts:
  - { id: bowl, name: ${JSON.stringify(`The red bowl ${hostile}`)}, material: ${field}, found-at: privateplace, coordinates: "51.7777, -1.2", withhold-location: true, note: privatenote, access: { keeper: The store, note: privatenote } }
  - { id: sealed-bowl, name: privatebowl }
${posts.map((n) => `  - { id: bowl/part-${n}, name: part ${n} }`).join("\n")}
measurements:
  - { id: rim-1900, of: bowl, dimension: rim, value: 18.2 cm, from: book-1900 p. 3 }
  - { id: rim-1990, of: bowl, dimension: rim, value: 21.0 ± 0.1 cm, from: book-1990 p. 3, note: privatenote }
${posts.map((n) => `  - { id: rim-${n}, of: bowl/part-${n}, dimension: rim, value: ${n}.5 ± 0.1 cm, from: book-1990 p. ${n} }`).join("\n")}
observations:
  - { id: worn, of: bowl, text: ${JSON.stringify(`The rim is worn. ${hostile}`)}, feature: wear, from: book-1900 p. 3 }
  - { id: whole, of: bowl, text: The foot is whole., from: book-1990 p. 9 }
claims:
  - { id: one-set, text: ${JSON.stringify(`They are one set. ${hostile}`)} }
  - { id: two-sets, text: Ἦν δύο σκεύη. }
  - { id: sealed-claim, text: privateclaim }
questions:
  - { id: sets, text: ${JSON.stringify(`One set or two? ${hostile}`)}, exclusive: false, answers: [one-set, two-sets, sealed-claim] }
images:
  - { id: open-picture, of: bowl, file: images/open.svg, credit: ${field}, licence: CC0-1.0, publish: true }
  - { id: closed-picture, of: bowl, file: images/closed.svg, credit: privatecredit }
  - { id: sealed-picture, of: [bowl, sealed-bowl], file: images/closed.svg, credit: privatecredit, publish: true }
passages:
  - { id: said, from: book-1950, at: p. 4, quote: ${JSON.stringify(`كانت مجموعةً واحدة ${hostile}`)}, lang: ar }
positions:
  - { id: hale-holds, who: hale, claim: one-set, stance: holds, from: book-1900 p. 11, words: ${field} }
  - { id: reed-holds, who: reed, claim: two-sets, stance: holds, from: book-1990 p. 12 }
arguments:
  - { id: by-wear, because: worn, therefore: one-set, from: book-1900 p. 12, text: ${JSON.stringify(`Alike worn. ${hostile}`)} }
  - { id: by-foot, because: whole, against: one-set, from: book-1990 p. 12 }
  - { id: by-seal, because: worn, therefore: sealed-claim, text: privateargument }
derivations:
  - { id: sizes, plugin: counts, text: ${JSON.stringify(`Rims ${hostile}`)}, inputs: { values: { of: bowl, parts: true, dimension: rim } } }
talks:
  - { id: talk, title: privatetalk, steps: [{ text: privatetalk, notes: privatenote }] }
`,
};

/** Writes the bowls to a new folder. */
export function bowlsFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "bowls-"));
  for (const [path, content] of Object.entries(bowls)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

/** A corpus in a folder as it is told under a lens, looked at as far as is asked. */
export async function toldIn(folder: string, lens: Lens = {}, far: Reach = {}): Promise<Told> {
  const files = readCorpusFolder(folder);
  const memo = emptyMemo();
  const under: Told["under"] = (one, reach = {}) =>
    evaluate(files, plugins, memo, computingHere(plugins), { lens: one, reach });
  const { model, findings } = await under(lens, far);
  if (!model) throw new Error("toldIn: no model");
  return { folder, files, model, findings, plugins, memo, under, today: "2026-11-26" };
}

/** The page of a corpus, as the program writes it. */
export async function pageOf(told: Told): Promise<string> {
  const made = await page.make(told, "html", "dispute", {});
  if ("refused" in made) throw new Error(inEnglish(made.refused));
  const [only] = made;
  if (made.length !== 1 || only?.path !== "dispute.html" || typeof only.content !== "string")
    throw new Error("pageOf: not one file of text");
  return only.content;
}
