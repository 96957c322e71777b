import lunr from "lunr";
import { searchIndex } from "../../src/app/worker/search/index.ts";
import type { SearchIndex } from "../../src/app/worker/search/index.ts";
import { tokenizer, unicodeTrimmer } from "../../src/app/worker/search/terms.ts";
import { median } from "../../src/base/numeric/sample.ts";
import { randomFrom } from "../../src/base/outcome/random.ts";
import type { Random } from "../../src/base/outcome/random.ts";
import type { SearchDocument } from "../../src/show/search/document.ts";

/** One line of a bench: ours beside a peer's in the same run; no peer where the goal is a figure. */
export interface Row {
  readonly goal: string;
  readonly what: string;
  readonly ours: number;
  readonly peer: number | null;
  readonly ratio: number | null;
  readonly goalRatio: number | null;
  /** The most that ours may be, where there is no peer. */
  readonly goalFigure?: number;
  readonly unit: string;
}

const syllables = "ba ce di fo gu ha lo mi ne or pa que ri sta tro ul ven wy ash eld".split(" ");

/** Words of our own invention, the first of them the most frequent. */
function vocabularyOf(random: Random, size: number): readonly string[] {
  const words = new Set<string>();
  while (words.size < size) {
    const length = 1 + random.below(4);
    words.add(Array.from({ length }, () => syllables[random.below(syllables.length)]).join(""));
  }
  return [...words];
}

const kinds = ["passages", "observations", "claims", "arguments", "positions", "sources"];

/** Records in prose: 30 to 60 words each, whose frequencies follow Zipf's law. */
export function proseDocuments(count: number, seed: number): readonly SearchDocument[] {
  const random = randomFrom(seed);
  const vocabulary = vocabularyOf(random, 30_000);
  const word = (): string =>
    vocabulary[Math.floor(vocabulary.length ** random.uniform()) - 1] ?? vocabulary[0] ?? "";
  return Array.from({ length: count }, (_, place) => {
    const said = Array.from({ length: 30 + random.below(31) }, word).join(" ");
    const at = { line: place * 4 + 1, breaks: [] };
    const id = `${word()}-${place}`;
    return {
      id,
      kind: kinds[random.below(kinds.length)] ?? "claims",
      title: said.split(" ").slice(0, 6).join(" "),
      file: "prose.yaml",
      line: at.line,
      year: null,
      texts: [
        { field: "id", text: id, lang: null, weight: "key", ...at },
        { field: "text", text: said, lang: "en", weight: "says", ...at },
      ],
    };
  });
}

/** Goal 9: search at 20,000 records in prose, against one index of the library's built whole. */
export default async function bench(count = 20_000): Promise<readonly Row[]> {
  const documents = proseDocuments(count, 9);
  const index = searchIndex();
  const cold = timed(() => fill(index, documents));
  const times = queriesFrom(documents, 400).map((text) => processorTime(() => index.find(text, 10)));
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))] ?? 0;
  const whole: number[] = [];
  const edit: number[] = [];
  let now = documents;
  for (let round = 0; round < 3; round++) {
    now = edited(now, round);
    edit.push(timed(() => fill(index, now)));
    whole.push(timed(() => builtWhole(documents)));
  }
  const figure = { goal: "9", peer: null, ratio: null, goalRatio: null, unit: "ms" };
  const peer = median(whole);
  return [
    { ...figure, what: `search, ${count} records, two words: median, of the processor`, ours: at(0.5) },
    {
      ...figure,
      what: `search, ${count} records, two words: 95th in a hundred, of the processor, as a share of 100 ms`,
      ours: at(0.95),
      ratio: at(0.95) / 100,
      goalRatio: 1,
    },
    {
      goal: "9",
      what: `one record of ${count} edited, against the whole rebuilt`,
      ours: median(edit),
      peer,
      ratio: median(edit) / peer,
      goalRatio: 0.2,
      unit: "ms",
    },
    { ...figure, what: `all ${count} records indexed in slices`, ours: cold, peer, ratio: cold / peer },
  ];
}

function fill(index: SearchIndex, documents: readonly SearchDocument[]): void {
  index.take(documents);
  while (index.step());
}

function edited(documents: readonly SearchDocument[], round: number): readonly SearchDocument[] {
  return documents.map((one, place) =>
    place === 100 + round
      ? { ...one, texts: one.texts.map((text) => ({ ...text, text: `${text.text} again ${round}` })) }
      : { ...one },
  );
}

/** The peer: one index of everything, made with the same words. */
function builtWhole(documents: readonly SearchDocument[]): lunr.Index {
  const builder = new lunr.Builder();
  builder.tokenizer = tokenizer as typeof lunr.tokenizer;
  builder.pipeline.add(unicodeTrimmer);
  for (const field of ["name", "says", "tie"]) builder.field(field);
  documents.forEach((one) =>
    builder.add({
      id: one.id,
      name: one.texts.filter((text) => text.weight === "key"),
      says: one.texts.filter((text) => text.weight === "says"),
    }),
  );
  return builder.build();
}

/** Two words of one record each, of five letters or more in part, the last still being typed. */
function queriesFrom(documents: readonly SearchDocument[], count: number): readonly string[] {
  const random = randomFrom(4);
  return Array.from({ length: count }, () => {
    const words = documents[random.below(documents.length)]?.texts.at(-1)?.text.split(" ") ?? [];
    return `${words[random.below(words.length)]} ${words[random.below(words.length)]}`;
  });
}

function timed(work: () => unknown): number {
  const begun = performance.now();
  work();
  return performance.now() - begun;
}

/** Milliseconds of the processor, which other work on the machine lengthens less than those of the clock. */
function processorTime(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}
