import { inEnglish } from "../../base/text/said/english.ts";
import type { Likeness } from "../../read/bibliography/incoming/alike/alike.ts";
import type { EntryTold, ImportTold, TwinTold, UnreadTold } from "../../show/desk/import/told.ts";
import { fieldsMerged } from "../../show/desk/import/report.ts";
import { many } from "../print/fix.ts";
import { paint } from "../print/paint.ts";

/** Why two sources are taken for one, in words. */
const reasons: Readonly<Record<Likeness, string>> = {
  same: "the same in every field",
  doi: "the same DOI",
  isbn: "the same ISBN",
  title: "the same title and year",
  key: "the same key",
};

/** What an import did: what was added, merged and left alone, what could not be read, and how many in all. */
export function importText(told: ImportTold): readonly string[] {
  const out: string[] = [];
  for (const one of told.entries) out.push(...entryText(one));
  for (const one of told.failures) out.push(...unreadText(one, "not read"));
  if (told.besides.length > 0)
    out.push(`Stayed behind, since it is outside of the entries: ${placesText(told.besides)}.`);
  if (told.abbreviations.length > 0)
    out.push(`Abbreviations that came along: ${told.abbreviations.join(", ")}.`);
  if (told.lenders.length > 0)
    out.push(`Entries that only lend fields and came along: ${told.lenders.join(", ")}.`);
  for (const { file, isNew, entries } of told.goals)
    out.push(`${file}${isNew ? " (new, named in corpus.yaml)" : ""}: ${many(entries, "new source")}`);
  const added = told.entries.filter((one) => one.does === "add").length;
  const merged = told.entries.filter((one) => fieldsMerged(one).length > 0).length;
  const left = told.entries.length - added - merged;
  out.push(`${added} added, ${merged} merged, ${left} left alone, ${told.failures.length} not read.`);
  return out;
}

function entryText(one: EntryTold): readonly string[] {
  const where = paint.bold(`${one.file}:${one.line}`);
  if (one.hidden) return [`${where}  left alone: it is like something that the corpus withholds`];
  const twins = one.twins.slice(0, 3).map((twin) => `    ${twinText(twin)}`);
  const remarks = one.remarks.map((remark) => `    ${inEnglish(remark)}`);
  if (one.does === "add")
    return [`${where}  added as ${one.key ?? ""}${keyText(one)}: ${nameOf(one)}`, ...twins, ...remarks];
  const fields = fieldsMerged(one);
  const { into = "", missing = [], differing = [] } = one.merge ?? {};
  const other = differing
    .filter((field) => !field.taken)
    .map(({ name, here, theirs }) => `    ${name} differs: “${here ?? ""}” there, “${theirs}” here`);
  if (fields.length > 0)
    return [`${where}  merged into ${into}: ${fields.join(", ")}`, ...twins, ...other, ...remarks];
  const lacks =
    missing.length === 0 ? [] : [`    it lacks there: ${missing.map((field) => field.name).join(", ")}`];
  return [`${where}  left alone: ${nameOf(one)}`, ...twins, ...lacks, ...other, ...remarks];
}

function keyText({ keyIs, own, for: lent }: EntryTold): string {
  const along = lent === null ? "" : `, since ${lent} has fields from it`;
  if (keyIs === "made") return ` (made: it has no key)${along}`;
  return keyIs === "freed" ? ` (${own ?? ""} is taken)${along}` : along;
}

function nameOf({ label, title }: EntryTold): string {
  return title === "" || label.startsWith(title) ? label : `${label}, ${title}`;
}

function twinText({ of, key, file, line, why }: TwinTold): string {
  const how = why.includes("same") ? reasons.same : why.map((one) => reasons[one]).join(", ");
  return `like ${key} (${of === "corpus" ? "" : "of what comes in, "}${file}:${line}): ${how}`;
}

function unreadText({ file, line, why, text }: UnreadTold, word: string): readonly string[] {
  const lines = text.split(/\r?\n/);
  const shown = lines.slice(0, 6).map((one) => `      ┆ ${one.length > 100 ? `${one.slice(0, 99)}…` : one}`);
  const rest = lines.length > 6 ? [`      ┆ … ${many(lines.length - 6, "line")} more`] : [];
  return [
    `${paint.bold(`${file}:${line}`)}  ${paint.red(word)}`,
    ...why.map((one) => `    ${inEnglish(one)}`),
    ...shown,
    ...rest,
  ];
}

function placesText(all: readonly UnreadTold[]): string {
  const shown = all.slice(0, 5).map(({ file, line }) => `${file}:${line}`);
  return all.length > 5 ? `${shown.join(", ")} and ${all.length - 5} more` : shown.join(", ");
}
