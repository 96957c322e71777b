import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Model } from "../../../build.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { citableUnder, listedUnder, shownUnder } from "../../../show/withhold.ts";
import { sheetOf } from "./sheet.ts";
import type { Node, Sheet, Words } from "./sheet.ts";

/** How a corpus is to be written as open data. */
export interface Asked {
  /** What the IRIs of its records begin with; it ends in `/` or `#`. */
  readonly base: string;
  /** The program, since standings are its work: its name, with the version where that is known. */
  readonly program: string;
  /** The version of each plug-in by its id. */
  readonly versions: ReadonlyMap<string, string>;
  /** The day it is written, YYYY-MM-DD. */
  readonly today: string;
}

/** What every part of the data is written from: the model, what of it may be shown, and how things are named. */
export interface Ground {
  readonly asked: Asked;
  readonly model: Model;
  readonly graph: Graph;
  readonly sheet: Sheet;
  /** Whether a record counts under the lens and is not withheld. */
  readonly shown: (id: Id) => boolean;
  /** Whether a source or passage may be named. */
  readonly citable: (id: Id) => boolean;
  /** Whether a claim may be listed. */
  readonly listed: (id: Id) => boolean;
  /** The corpus itself. */
  readonly corpus: Node;
  /** Those who made the corpus. */
  readonly compilers: Node;
  /** The node of a record or source. */
  readonly node: (id: Id) => Node;
  /** Something of the corpus that is no record: a place, a material, a feature, by its kind and its name. */
  readonly named: (kind: string, name: string) => Node;
  /** A text in the corpus's language. */
  readonly words: (text: string) => Words;
  /** What a record is called. */
  readonly label: (id: Id) => Words;
}

/** A node below another: the belief of a position, the dimension of a measurement. */
export function part(of: Node, name: string): Node {
  return { iri: `${of.iri}${of.iri.includes("#") ? "." : "#"}${name}` };
}

/** A text of no language that is known. */
export function plain(words: string): Words {
  return { words };
}

/** A text in a language, where its tag is one. */
export function spoken(words: string, lang: string | undefined): Words {
  return lang !== undefined && /^[a-z]{1,8}(?:-[a-z0-9]{1,8})*$/i.test(lang)
    ? { words, lang: lang.toLowerCase() }
    : { words };
}

/** The ground on which a model is written as data. */
export function groundOf(model: Model, asked: Asked): Ground {
  const { graph } = model;
  const corpus = { iri: asked.base };
  const words = (text: string): Words => spoken(text, graph.settings.language);
  return {
    asked,
    model,
    graph,
    sheet: sheetOf(),
    shown: shownUnder(model),
    citable: citableUnder(model),
    listed: listedUnder(model),
    corpus,
    compilers: part(corpus, "compilers"),
    node: (id) => ({ iri: asked.base + id.split("/").map(inIri).join("/") }),
    named: (kind, name) =>
      part(corpus, `${kind}-${inIri(name.normalize("NFC").trim().replace(/\s+/g, "-"))}`),
    words,
    label: (id) => worded(labelText(graph, id), words),
  };
}

/** A label's language: the corpus's where it is the scholar's own words, English where it is ours. */
function worded(text: Text, words: (text: string) => Words): Words {
  return typeof text === "string" ? words(text) : { words: inEnglish(text), lang: "en" };
}

/** A text as it stands in an IRI: everything but letters and digits of ASCII, `-`, `_` and `.` by its bytes. */
function inIri(text: string): string {
  return encodeURIComponent(text.replace(/\p{Cs}/gu, "\ufffd")).replace(
    /[!'()*~]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );
}
