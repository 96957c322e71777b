import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Model } from "../../../build.ts";
import type { AnyLinked, Linked } from "../../../link/graph.ts";
import type { Plugin } from "../../../plugin.ts";
import type { Given } from "../../../show/telling/given/given.ts";
import { withholdingSaid } from "../../../show/telling/withholding.ts";
import type { Made } from "../../telling/made.ts";
import { prefixes } from "../terms/prefixes.ts";
import { addressIn, at, atAll, said } from "./entity.ts";
import type { Entity } from "./entity.ts";
import { descriptionOf, mediaTypeOf } from "./media.ts";
import { authorsIn, licenceOf } from "./people.ts";
import { runsIn } from "./runs.ts";

/** What a crate is made of. */
export interface CrateOf {
  readonly model: Model;
  readonly plugins: readonly Plugin[];
  readonly given: Given;
  /** Every file of the crate but its own description. */
  readonly files: readonly Made[];
  /** Sentences for the description: what the folder is, and what is not in it. */
  readonly about: readonly string[];
  /** The day it is given out, YYYY-MM-DD. */
  readonly today: string;
}

/**
 * `ro-crate-metadata.json` of RO-Crate 1.2: flattened JSON-LD about the folder, each file in it with its size and SHA-256, who made
 * it, what may be done with it, every run of a plug-in, and that something is withheld (Darwin Core).
 */
export function crateOf(of: CrateOf): string {
  const { model, plugins, given, files } = of;
  const { settings } = model.graph;
  const authors = authorsIn(settings);
  const licence = licenceOf(settings.licence, "corpus");
  const images = imagesIn(given);
  const parts = files.map((file) => fileOf(file, images.get(file.path), model));
  const paths = files.map(({ path }) => path);
  const runs = runsIn({
    model,
    plugins,
    derivations: [...given.records.values()].filter((one) => one.list === "derivations"),
    authors,
    filesOf: (list) => paths.filter((path) => new RegExp(`^corpus/${list}(?:-\\d+)?\\.yaml$`).test(path)),
  });
  const root = said({
    ...rootOf(of, authors, licence),
    hasPart: atAll(parts.map(([file]) => file)),
    mentions: atAll(runs.filter((one) => one["@type"] === "CreateAction")),
  });
  const graph = [descriptor, root, ...authors, licence, program, ...runs, ...parts.flat()];
  const once = new Map(graph.map((entity) => [entity["@id"], entity]));
  return `${JSON.stringify({ "@context": context, "@graph": [...once.values()] }, null, 2)}\n`;
}

/** The context of RO-Crate 1.2, and what is beside it: a term of Darwin Core, and one of schema.org that not every version has. */
const context = [
  "https://w3id.org/ro/crate/1.2/context",
  { informationWithheld: `${prefixes.dwc}informationWithheld`, sha256: "http://schema.org/sha256" },
] as const;

const descriptor: Entity = {
  "@id": "ro-crate-metadata.json",
  "@type": "CreativeWork",
  about: at("./"),
  conformsTo: at("https://w3id.org/ro/crate/1.2"),
};

const program: Entity = {
  "@id": "#variorum",
  "@type": "SoftwareApplication",
  name: "Variorum",
  description: "The program that computed the numbers and worked out the standings.",
};

function rootOf({ model, about, today }: CrateOf, authors: readonly Entity[], licence: Entity): Entity {
  const { title, language, version, citeAs } = model.graph.settings;
  const withheld = withholdingSaid(model.graph).map(inEnglish);
  return {
    "@id": "./",
    "@type": "Dataset",
    name: title,
    description: about.join(" "),
    datePublished: today,
    license: at(licence),
    author: atAll(authors),
    inLanguage: language,
    version: version ?? undefined,
    creditText: citeAs ?? undefined,
    informationWithheld: withheld.length > 0 ? withheld : undefined,
  };
}

type Image = Linked<"images">;

function imagesIn({ records }: Given): ReadonlyMap<string, Image> {
  const images = [...records.values()].filter((one: AnyLinked): one is Image => one.list === "images");
  return new Map(images.map((one) => [`corpus/${one.values.file}`, one]));
}

/** A file, and for a picture what it shows and what may be done with it. */
function fileOf(
  { path, content }: Made,
  image: Image | undefined,
  { graph }: Model,
): readonly [Entity, ...Entity[]] {
  const bytes = typeof content === "string" ? utf8ToBytes(content) : content;
  const file = {
    "@id": addressIn(path),
    "@type": "File",
    name: path,
    description: descriptionOf(path),
    encodingFormat: mediaTypeOf(path),
    contentSize: String(bytes.length),
    sha256: bytesToHex(sha256(bytes)),
  };
  if (image === undefined) return [said(file)];
  const { values } = image;
  const licence = values.licence === undefined ? null : licenceOf(values.licence, image.id);
  const things = values.of.map((id) => {
    const record = graph.records.get(id);
    return record?.list === "artefacts" ? (record.values.name ?? id) : id;
  });
  const made = values["made-by"] === undefined ? "" : ` Made by ${values["made-by"]}.`;
  const shown = {
    ...file,
    "@type": ["File", "ImageObject"],
    description: `A picture of ${things.join(", ")}.${made}`,
    creditText: values.credit,
    license: licence === null ? undefined : at(licence),
  };
  return licence === null ? [said(shown)] : [said(shown), licence];
}
