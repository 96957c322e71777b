import { coded, say } from "../../base/text/said/said.ts";
import type { Fields, ValuesOf } from "./field.ts";

/** The fields of `corpus.yaml`. */
export const settingsFields = {
  format: { type: "whole", doc: say`The version of the corpus format; 1.` },
  title: { type: "text", required: true, doc: say`The corpus's title.` },
  language: { type: "text", doc: say`The language of its texts (${"BCP 47"}); default ${"en"}.` },
  authors: {
    type: "items",
    short: "name",
    doc: say`Who made the corpus.`,
    fields: {
      name: { type: "text", required: true, doc: say`The name.` },
      orcid: { type: "text", doc: say`The ${"ORCID"}.` },
      role: { type: "text", doc: say`What they did.` },
    },
  },
  licence: { type: "text", doc: say`What may be done with it.` },
  version: { type: "text", doc: say`Its version.` },
  "cite-as": { type: "text", doc: say`How to cite it.` },
  bibliography: { type: "texts", doc: say`Bibliography files: ${".bib"}, ${".ris"}, ${".json"}.` },
  "measurement-tables": { type: "texts", doc: say`${"CSV"} tables of measurements.` },
  "artefact-tables": { type: "texts", doc: say`${"CSV"} tables of artefacts.` },
  "citation-style": {
    type: "text",
    doc: say`A ${"CSL"} style: the name of one that comes with the program, or a ${".csl"} file.`,
  },
  review: {
    type: "texts",
    doc: say`The sections of the review, in their order: names of its own, and of files in ${"review/"}.`,
  },
  "plus-minus": { type: "choice", of: ["standard", "expanded"], doc: say`What ± means.` },
  testimony: { type: "choice", of: ["ignored", "counts"], doc: say`Whether positions are arguments.` },
  approximate: { type: "quantity", doc: say`What ${coded("about")} adds at least.` },
  reproducibility: { type: "quantity", doc: say`How well two honest people repeat a measurement.` },
  decimal: { type: "choice", of: ["point", "comma"], doc: say`How ${"CSV"} tables write numbers.` },
  "costs-in": { type: "text", doc: say`What costs are counted in.` },
  units: {
    type: "named",
    doc: say`Units of the corpus's own.`,
    fields: {
      is: { type: "quantity", required: true, doc: say`Its size.` },
      also: { type: "texts", doc: say`Other names.` },
      from: { type: "citations", doc: say`Who gave it.` },
      "found-in": { type: "refs", to: ["artefacts"], doc: say`The things it was found in.` },
    },
  },
  dimensions: {
    type: "named",
    doc: say`Dimensions with their kind and other names.`,
    fields: {
      kind: {
        type: "choice",
        of: ["length", "mass", "angle", "time", "area", "volume", "count", "number"],
        doc: say`What it measures.`,
      },
      also: { type: "texts", doc: say`Other names.` },
      taken: { type: "text", doc: say`How it is taken.` },
      sign: { type: "choice", of: ["any", "positive"], doc: say`${coded("any")} allows zero and below.` },
      equals: {
        type: "texts",
        doc: say`What it comes to exactly by other dimensions: ${coded("π × diameter")}, ${coded("head + shaft")}, ${coded("sum of parts")}.`,
      },
    },
  },
  rules: { type: "textMap", doc: say`A level for a rule: ${"off"}, ${"note"} or ${"warning"}.` },
  accept: {
    type: "items",
    doc: say`Findings the scholar lives with.`,
    fields: {
      rule: { type: "text", required: true, doc: say`The rule.` },
      about: { type: "texts", doc: say`The records.` },
      why: { type: "text", required: true, doc: say`The reason.` },
    },
  },
  withhold: { type: "texts", doc: say`Ids that appear in no output.` },
  use: {
    type: "items",
    doc: say`Other corpora whose artefacts and bibliographies are used.`,
    fields: {
      as: { type: "text", required: true, doc: say`The name before their ids here, a slash between.` },
      folder: {
        type: "text",
        required: true,
        doc: say`The folder of the corpus: inside this one, or beside it as ${coded("../NAME")}.`,
      },
    },
  },
} as const satisfies Fields;

/** The settings as read, before defaults. */
export type SettingsValues = ValuesOf<typeof settingsFields>;
