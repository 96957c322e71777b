import * as z from "zod";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { EntryTold, ImportTold, UnreadTold } from "./told.ts";

const key = z.string();
const file = z.string().describe("As it was named on the command line.");
const line = z.int().describe("From 1.");
const why = z.array(z.enum(["same", "doi", "isbn", "title", "key"]));
const like = z
  .array(z.strictObject({ of: z.enum(["corpus", "file"]), key, file: z.string(), line, why }))
  .describe("What it is taken for, the most like first, and why.");
const beyond = {
  missing: z.array(z.string()).describe("Fields that the corpus's entry lacks still."),
  differing: z
    .array(z.strictObject({ field: z.string(), here: z.string(), theirs: z.string() }))
    .describe("Fields that say something else in the corpus; they were left as they are there."),
};
const unread = z.array(z.strictObject({ file, line, why: z.array(z.string()), text: z.string() }));

/** What an import did, for a script. */
export const importSchema = z.strictObject({
  format: z.literal(1),
  added: z.array(
    z.strictObject({
      file,
      line,
      key,
      keyIs: z
        .enum(["own", "made", "freed"])
        .describe("Its own, made for it, or another since its own is taken."),
      own: key.nullable().describe("Its key in its own file; null where it had none."),
      to: z.string().describe("The bibliography that it was added to."),
      for: key.nullable().describe("The entry that has fields from it, so that it came along; else null."),
      like,
    }),
  ),
  merged: z.array(z.strictObject({ file, line, into: key, fields: z.array(z.string()), ...beyond, like })),
  leftAlone: z
    .array(
      z.strictObject({
        file,
        line,
        own: key.nullable(),
        withheld: z.boolean().describe("It is like something that the corpus withholds, and not told of."),
        ...beyond,
        like,
      }),
    )
    .describe("What is there already."),
  failed: unread.describe("What was to be an entry and could not be read."),
  besides: unread.describe("What stood between the entries and stayed behind."),
  abbreviations: z.array(z.string()).describe("Abbreviations of BibTeX that came along."),
  lenders: z.array(key).describe("Entries that only lend fields and came along."),
  files: z.array(z.strictObject({ file: z.string(), isNew: z.boolean(), entries: z.int() })),
});

/** A report of an import by its schema. */
export type ImportReport = z.infer<typeof importSchema>;

/** What an import did as one JSON document. */
export function importReport(told: ImportTold): ImportReport {
  const { entries, goals } = told;
  const at = ({ file: from, line: on }: EntryTold) => ({ file: from, line: on });
  return {
    format: 1,
    added: entries
      .filter((one) => one.does === "add")
      .map((one) => ({
        ...at(one),
        key: one.key ?? "",
        keyIs: one.keyIs,
        own: one.own,
        to: goals.find((goal) => goal.format === one.format)?.file ?? "",
        for: one.for,
        like: likeOf(one),
      })),
    merged: entries.flatMap((one) => {
      const fields = fieldsMerged(one);
      if (fields.length === 0 || !one.merge) return [];
      return [
        { ...at(one), into: one.merge.into, fields: [...fields], ...beyondOf(one, true), like: likeOf(one) },
      ];
    }),
    leftAlone: entries
      .filter((one) => one.does !== "add" && fieldsMerged(one).length === 0)
      .map((one) => ({
        ...at(one),
        own: one.own,
        withheld: one.hidden,
        ...beyondOf(one, false),
        like: likeOf(one),
      })),
    failed: told.failures.map(unreadOf),
    besides: told.besides.map(unreadOf),
    abbreviations: [...told.abbreviations],
    lenders: [...told.lenders],
    files: goals.map(({ file: path, isNew, entries: n }) => ({ file: path, isNew, entries: n })),
  };
}

/** The fields that an entry writes into the corpus's: those that are missing there, and those that were chosen. */
export function fieldsMerged({ does, merge }: EntryTold): readonly string[] {
  if (does !== "merge" || !merge) return [];
  return [...merge.missing, ...merge.differing.filter((one) => one.taken)].map((one) => one.name);
}

function beyondOf(
  { merge }: EntryTold,
  merged: boolean,
): Pick<ImportReport["leftAlone"][number], "missing" | "differing"> {
  return {
    missing: merged ? [] : (merge?.missing ?? []).map((one) => one.name),
    differing: (merge?.differing ?? [])
      .filter((one) => !merged || !one.taken)
      .map(({ name, here, theirs }) => ({ field: name, here: here ?? "", theirs })),
  };
}

function likeOf({ twins }: EntryTold): ImportReport["added"][number]["like"] {
  return twins.map(({ of, key: its, file: where, line: on, why: how }) => ({
    of,
    key: its,
    file: where,
    line: on,
    why: [...how],
  }));
}

function unreadOf({ file: from, line: on, why: reasons, text }: UnreadTold): ImportReport["failed"][number] {
  return { file: from, line: on, why: reasons.map(inEnglish), text };
}
