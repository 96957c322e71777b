import type { Random } from "../../../src/base/outcome/random.ts";
import { bytesChanged } from "./mutate/bytes.ts";
import { changes } from "./mutate/lines.ts";
import { signsOf } from "./mutate/signs.ts";
import { bytesOf, few, formats, oneOf } from "./input.ts";
import type { Format, Input } from "./input.ts";
import type { Corpus, Seeds } from "./seeds.ts";
import { besides, pathFor } from "./standing.ts";

/** Longest text that is taken whole. */
const whole = 4000;

/** An input that somebody's file was changed into, by a few changes at random. */
export function changedInput(random: Random, seeds: Seeds): Input {
  const format = oneOf(random, weighted);
  const { path, text, beside } =
    random.below(2) === 0 ? inCorpus(random, seeds, format) : alone(random, seeds, format);
  const how: string[] = [];
  let now = text;
  const names = Object.keys(changes);
  for (let left = few(random, 5); left > 0 || how.length === 0; left--) {
    const name = oneOf(random, names);
    how.push(name);
    now = (changes[name] ?? String)(
      now,
      random,
      excerptOf(oneOf(random, seeds.texts[format]), random),
      signsOf[format],
    );
  }
  const bytes = format === "paper" ? Uint8Array.from(Buffer.from(now, "latin1")) : bytesOf(now);
  if (random.below(format === "paper" ? 2 : 25) > 0)
    return { format, how: how.join(", "), path, bytes, beside };
  return { format, how: [...how, "bytes"].join(", "), path, bytes: bytesChanged(bytes, random), beside };
}

/** Files of records come in more often than others, since most is said in them. */
const weighted: readonly Format[] = [
  ...formats,
  ..."records records records settings table table bibtex".split(" "),
].filter((one): one is Format => (formats as readonly string[]).includes(one));

interface Begun {
  readonly path: string;
  readonly text: string;
  readonly beside: Corpus;
}

/** A file of a small corpus, and its others; where none has one of the format, one that stands alone. */
function inCorpus(random: Random, seeds: Seeds, format: Format): Begun {
  const corpus = oneOf(random, seeds.corpora);
  const files = corpus.filter(({ path }) => formatOf(path) === format);
  if (files.length === 0) return alone(random, seeds, format);
  const file = oneOf(random, files);
  return { path: file.path, text: file.text, beside: corpus.filter((one) => one !== file) };
}

/** The format of a file of a corpus by its path; null where there is none. */
function formatOf(path: string): Format | null {
  if (path === "corpus.yaml") return "settings";
  const ends: readonly (readonly [RegExp, Format])[] = [
    [/\.ya?ml$/u, "records"],
    [/\.bib$/u, "bibtex"],
    [/\.ris$/u, "ris"],
    [/\.json$/u, "csl-json"],
    [/\.csv$/u, "table"],
    [/\.md$/u, "prose"],
  ];
  return ends.find(([end]) => end.test(path))?.[1] ?? null;
}

function alone(random: Random, seeds: Seeds, format: Format): Begun {
  const text = oneOf(random, seeds.texts[format]);
  const isWhole = format === "paper" || format === "style" || format === "csl-json";
  return {
    path: pathFor[format],
    text: isWhole ? text : excerptOf(text, random),
    beside: besides(format, random.below(2) === 0),
  };
}

/** Some lines of a text, under its first. */
export function excerptOf(text: string, random: Random): string {
  if (text.length <= whole && random.below(3) > 0) return text;
  const lines = text.split(/(?<=\n)/u);
  const most = 4 + random.below(50);
  if (lines.length <= most) return text.slice(0, 5 * whole);
  const from = random.below(lines.length - most);
  return [...lines.slice(0, random.below(3)), ...lines.slice(from, from + most)].join("").slice(0, 5 * whole);
}
