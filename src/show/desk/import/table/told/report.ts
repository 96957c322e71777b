import * as z from "zod";
import { inEnglish } from "../../../../../base/text/said/english.ts";
import type { FieldDiffers } from "../things/merging.ts";
import type { TableTold } from "./told.ts";

const line = z.int().describe("From 1.");
const id = z.string();
const differing = z
  .array(z.strictObject({ field: z.string(), here: z.string(), theirs: z.string() }))
  .describe("Fields that say something else in the corpus; they were left as they are there.");
const why = z.enum(["id", "number", "name"]).describe("By what it is taken for the artefact of the corpus.");

/** What an import of a table did, for a script. */
export const tableImportSchema = z.strictObject({
  format: z.literal(1),
  list: z.enum(["artefacts", "measurements"]),
  columns: z.array(
    z.strictObject({
      head: z.string(),
      is: z.string().describe("As the option --columns writes it."),
      why: z.string(),
      unsure: z.boolean(),
    }),
  ),
  added: z.array(
    z.strictObject({
      line,
      id: id.describe("The artefact that was added, or of a measurement the one that was measured."),
      dimension: z.string().nullable(),
      value: z.string().nullable(),
    }),
  ),
  merged: z.array(z.strictObject({ line, into: id, why, fields: z.array(z.string()), differing })),
  leftAlone: z
    .array(
      z.strictObject({
        line,
        id: id.nullable().describe("What is there already; null where the corpus withholds it."),
        why: why.nullable(),
        missing: z.array(z.string()).describe("Fields that the corpus's artefact lacks."),
        differing,
      }),
    )
    .describe("What is there already."),
  failed: z.array(
    z.strictObject({ line, head: z.string().nullable(), why: z.array(z.string()), text: z.string() }),
  ),
  withoutFigure: z.int().describe("Cells that hold no figure."),
  files: z.array(z.strictObject({ file: z.string(), isNew: z.boolean(), records: z.int() })),
});

/** A report of the import of a table by its schema. */
export type TableImportReport = z.infer<typeof tableImportSchema>;

/** What an import of a table did as one JSON document. */
export function tableImportReport(told: TableTold): TableImportReport {
  const merged = told.twins.filter((one) => one.does === "merge" && one.missing.length > 0);
  const left = told.twins.filter((one) => one.does !== "add" && !merged.includes(one));
  return {
    format: 1,
    list: told.list,
    columns: told.columns.map(({ head, text, why: reason, unsure }) => ({
      head,
      is: text,
      why: inEnglish(reason),
      unsure,
    })),
    added: told.fresh.map(({ line: at, id: one, dimension, value }) => ({
      line: at,
      id: one,
      dimension,
      value,
    })),
    merged: merged.map((one) => ({
      line: one.line,
      into: one.id,
      why: one.why,
      fields: one.missing.map(({ name }) => name),
      differing: differingOf(one.differing),
    })),
    leftAlone: [
      ...told.there.map((one) => ({ line: one.line, id: one.id, why: null, missing: [], differing: [] })),
      ...told.hidden.map((at) => ({ line: at, id: null, why: null, missing: [], differing: [] })),
      ...left.map((one) => ({
        line: one.line,
        id: one.id,
        why: one.why,
        missing: one.missing.map(({ name }) => name),
        differing: differingOf(one.differing),
      })),
    ].toSorted((a, b) => a.line - b.line),
    failed: told.failures.map((one) => ({ ...one, why: one.why.map(inEnglish) })),
    withoutFigure: told.without,
    files: [...told.files],
  };
}

function differingOf(all: readonly FieldDiffers[]): TableImportReport["merged"][number]["differing"] {
  return all.map(({ name, here, theirs }) => ({ field: name, here: here ?? "", theirs }));
}
