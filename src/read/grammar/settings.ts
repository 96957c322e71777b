import type { Fields, ValuesOf } from "./field.ts";

/** The fields of `corpus.yaml`. */
export const settingsFields = {
  format: { type: "whole", doc: "The version of the corpus format; 1." },
  title: { type: "text", required: true, doc: "The corpus's title." },
  language: { type: "text", doc: "The language of its texts (BCP 47); default en." },
  authors: {
    type: "items",
    short: "name",
    doc: "Who made the corpus.",
    fields: {
      name: { type: "text", required: true, doc: "The name." },
      orcid: { type: "text", doc: "The ORCID." },
      role: { type: "text", doc: "What they did." },
    },
  },
  licence: { type: "text", doc: "What may be done with it." },
  version: { type: "text", doc: "Its version." },
  "cite-as": { type: "text", doc: "How to cite it." },
  bibliography: { type: "texts", doc: "Bibliography files: .bib, .ris, .json." },
  "measurement-tables": { type: "texts", doc: "CSV tables of measurements." },
  "artefact-tables": { type: "texts", doc: "CSV tables of artefacts." },
  "citation-style": { type: "text", doc: "A CSL style." },
  "plus-minus": { type: "choice", of: ["standard", "expanded"], doc: "What ± means." },
  testimony: { type: "choice", of: ["ignored", "counts"], doc: "Whether positions are arguments." },
  approximate: { type: "quantity", doc: "What `about` adds at least." },
  reproducibility: { type: "quantity", doc: "How well two honest people repeat a measurement." },
  decimal: { type: "choice", of: ["point", "comma"], doc: "How CSV tables write numbers." },
  "costs-in": { type: "text", doc: "What costs are counted in." },
  units: {
    type: "named",
    doc: "Units of the corpus's own.",
    fields: {
      is: { type: "quantity", required: true, doc: "Its size." },
      also: { type: "texts", doc: "Other names." },
      from: { type: "citations", doc: "Who gave it." },
      "found-in": { type: "refs", to: ["artefacts"], doc: "The things it was found in." },
    },
  },
  dimensions: {
    type: "named",
    doc: "Dimensions with their kind and other names.",
    fields: {
      kind: {
        type: "choice",
        of: ["length", "mass", "angle", "time", "area", "volume", "count", "number"],
        doc: "What it measures.",
      },
      also: { type: "texts", doc: "Other names." },
      taken: { type: "text", doc: "How it is taken." },
      sign: { type: "choice", of: ["any", "positive"], doc: "`any` allows zero and below." },
      equals: {
        type: "text",
        doc: "What it comes to exactly by other dimensions: `π × diameter`, `head + shaft`, `sum of parts`.",
      },
    },
  },
  rules: { type: "textMap", doc: "A level for a rule: off, note or warning." },
  accept: {
    type: "items",
    doc: "Findings the scholar lives with.",
    fields: {
      rule: { type: "text", required: true, doc: "The rule." },
      about: { type: "texts", doc: "The records." },
      why: { type: "text", required: true, doc: "The reason." },
    },
  },
  withhold: { type: "texts", doc: "Ids that appear in no output." },
} as const satisfies Fields;

/** The settings as read, before defaults. */
export type SettingsValues = ValuesOf<typeof settingsFields>;
