import CSL from "citeproc";
import { median } from "../../src/base/numeric/sample.ts";
import { randomFrom } from "../../src/base/outcome/random.ts";
import type { CslItem } from "../../src/read/bibliography/csl.ts";
import { localeIn, localesOf } from "../../src/write/references/locales/locales.ts";
import american from "../../src/write/references/locales/locales-en-US.xml?raw";
import { referencesIn } from "../../src/write/references/references.ts";
import type { Manner, References } from "../../src/write/references/references.ts";
import { htmlOf } from "../../src/write/references/runs.ts";
import apa from "../../src/write/references/styles/apa.csl?raw";
import chicago from "../../src/write/references/styles/chicago-author-date.csl?raw";
import type { Row } from "./search-bench.ts";

const families =
  "Hale Pell Ferrant Brandt Ashworth Vane Costa Pinnock Quell Marsh Grund Sorrel Teague Umber Wick".split(
    " ",
  );
const given = "Josiah Edith Konrad Dennis Isolde Mateus Harriet Ada Bela Cyril".split(" ");
const kinds = ["article-journal", "book", "chapter", "report"];

/** Invented sources: one to three of 15 families, 130 years, so that some must be told apart by a letter. */
function inventedSources(count: number, seed: number): readonly CslItem[] {
  const random = randomFrom(seed);
  const one = (words: readonly string[]): string => words[random.below(words.length)] ?? "";
  return Array.from({ length: count }, (_, place) => ({
    id: `source-${place}`,
    type: one(kinds),
    title: `Of the ${one(families)} posts and what stood on them, part ${place}`,
    author: Array.from({ length: 1 + random.below(3) }, () => ({ family: one(families), given: one(given) })),
    issued: { "date-parts": [[1890 + random.below(130)]] },
    "container-title": `Measure and Ground, series ${random.below(50)}`,
    volume: `${1 + random.below(40)}`,
    page: `${1 + random.below(200)}-${201 + random.below(99)}`,
    publisher: "Lindenhof",
    "publisher-place": "Altwerder",
  }));
}

/** Goal 10: one of the references changed, against the processor of styles from scratch. */
export default async function bench(count = 1_000): Promise<readonly Row[]> {
  return [...rowsOf("chicago-author-date", chicago, count), ...rowsOf("apa", apa, count)];
}

/** So many single sources are cited in turn with a new engine, and as many before without being timed. */
const [previews, warming] = [25, 10] as const;

function rowsOf(name: string, style: string, count: number): readonly Row[] {
  const manner: Manner = { style, locales: localesOf([["en-US", american]]), language: "en" };
  let items = inventedSources(count, 10);
  const kept = referencesIn(manner, items);
  kept.bibliography();
  const [scratch, change, whole, fresh, preview]: readonly [
    number[],
    number[],
    number[],
    number[],
    number[],
  ] = [[], [], [], [], []];
  for (let round = 0; round < 3; round++) {
    items = items.map((item, place) =>
      place === (137 * (round + 1)) % count
        ? { ...item, title: `Another title ${round}`, issued: { "date-parts": [[1950]] } }
        : item,
    );
    scratch.push(timed(() => direct(manner, items)));
    change.push(
      timed(() => {
        kept.update(items);
        kept.bibliography();
      }),
    );
    let anew: References | null = null;
    whole.push(
      timed(() => {
        anew = referencesIn(manner, items);
        anew.bibliography();
      }),
    );
    assertSame(kept, referencesIn(manner, items));
  }
  // Both have run before they are timed: the first of either is compiled meanwhile.
  for (let round = -warming; round < previews; round++) {
    const source = (round + warming) % count;
    const anew = timed(() => direct(manner, items.slice(source, source + 1)));
    const cited = timed(() => kept.cited([{ id: items[source]?.id ?? "", at: "p. 12" }]));
    if (round < 0) continue;
    fresh.push(anew);
    preview.push(cited);
  }
  const row = (what: string, ours: readonly number[], peer: readonly number[], goalRatio: number): Row => ({
    goal: "10",
    what: `references in ${name}: ${what}`,
    ours: median(ours),
    peer: median(peer),
    ratio: median(ours) / median(peer),
    goalRatio,
    unit: "ms",
  });
  return [
    row(`one of ${count} changed`, change, scratch, 0.1),
    row(`${count} from the start`, whole, scratch, 1.1),
    row("one cited, beside a new engine and one item", preview, fresh, 0.05),
  ];
}

/** The processor driven as its manual says: a new engine, all items, the whole bibliography. */
function direct({ style, locales, language }: Manner, items: readonly CslItem[]): void {
  const byId = new Map(items.map((item) => [item.id, item]));
  const sys = {
    retrieveItem: (id: string) => byId.get(id),
    retrieveLocale: (tag: string) => localeIn(locales, tag),
  };
  const engine = new CSL.Engine(sys, style, language);
  engine.setOutputFormat("html");
  engine.updateItems([...byId.keys()]);
  engine.makeBibliography();
}

function assertSame(kept: References, fresh: References): void {
  const html = (of: References): string =>
    of
      .bibliography()
      .map(({ runs }) => htmlOf(runs))
      .join("\n");
  if (html(kept) !== html(fresh))
    throw new Error("The references after a change differ from those from the start");
}

function timed(work: () => unknown): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}
