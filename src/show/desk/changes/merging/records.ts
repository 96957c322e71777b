import type { Text } from "../../../../base/text/said/said.ts";
import { clashName, isShifted, mergedRecords } from "../../../../read/edit/merge/merge.ts";
import type { Answer, FieldMerge, RecordMerge } from "../../../../read/edit/merge/merge.ts";
import { recordsIn } from "../../../../read/edit/merge/reading.ts";
import type { RecordRead, ThreeTexts } from "../../../../read/edit/merge/reading.ts";
import { resolvedText } from "../../../../read/edit/merge/resolve.ts";
import type { FieldRow } from "../../../pages/pieces.ts";
import { plainRows } from "../fields.ts";
import type { MergeClash, MergedAlone } from "./told.ts";
import { calledIn, headingOf, hiddenAmong, isHidden, keptOut, valueRows } from "./words.ts";
import type { Wording } from "./words.ts";

/** A merge in words, and how it is written once its clashes are answered in their order. */
export interface Merging {
  readonly clashes: readonly MergeClash[];
  readonly alone: readonly MergedAlone[];
  readonly written: (answers: readonly Answer[]) => { readonly text: string } | { readonly problem: Text };
}

/** The merge of a file record by record; null where one of its versions cannot be read so, or not which of its records is which. */
export function mergingByRecord(texts: ThreeTexts, given: Omit<Wording, "called">): Merging | null {
  const read = (text: string) => recordsIn(texts.path, text);
  const [mine, theirs] = [read(texts.mine), read(texts.theirs)];
  if (!mine || !theirs) return null;
  const all = [...theirs.values(), ...mine.values()];
  const hidden = hiddenAmong(all, given.hidden);
  const wording = { ...given, hidden, called: calledIn(all, hidden) };
  const base = texts.base === null ? null : read(texts.base);
  const merges = mergedRecords(base, mine, theirs);
  if (base !== null && isShifted(merges)) return null;
  const clashes = merges.flatMap((merge) => clashesOf(merge, wording, base !== null));
  return {
    clashes: clashes.map(({ clash }) => clash),
    alone: merges.flatMap((merge) => aloneIn(merge, wording)),
    written: (answers) =>
      resolvedText(
        texts,
        merges,
        new Map(clashes.map(({ name }, place): [string, Answer] => [name, answers[place] ?? "mine"])),
      ),
  };
}

function clashesOf(
  merge: RecordMerge,
  wording: Wording,
  hasBase: boolean,
): readonly { readonly name: string; readonly clash: MergeClash }[] {
  if (merge.became !== "clash") return [];
  const { base, mine, theirs } = merge;
  const heading = headingOf(wording, [mine, theirs, base]);
  const hides = [base, mine, theirs].some((one) => one && isHidden(wording.hidden, one));
  if (!mine || !theirs) {
    const whole = (record: typeof mine): readonly FieldRow[] =>
      record === null ? [] : hides ? plainRows("", () => true) : allRows(wording, record);
    const clash: MergeClash = {
      ...heading,
      field: null,
      base: whole(base),
      mine: whole(mine),
      theirs: whole(theirs),
      choices: ["mine", "theirs"],
      typed: null,
      asTyped: false,
    };
    return [{ name: clashName(merge), clash }];
  }
  return merge.fields.flatMap((one) => {
    if (one.became !== "clash") return [];
    const rows = (record: typeof base, value: typeof one.mine): readonly FieldRow[] =>
      record === null || value === null
        ? []
        : hides
          ? plainRows("", () => true)
          : valueRows(
              wording,
              { ...record, fields: { ...record.fields, ...placed(merge) } },
              one.field,
              value,
            );
    const typed = hides
      ? null
      : typedIn(wording, { ...mine, fields: { ...mine.fields, ...placed(merge) } }, one);
    const clash: MergeClash = {
      ...heading,
      field: one.field.replace(/-/g, " "),
      base: hasBase ? rows(base, one.base) : null,
      mine: rows(mine, one.mine),
      theirs: rows(theirs, one.theirs),
      choices: [
        "mine",
        "theirs",
        ...(one.canBeBoth ? (["both"] as const) : []),
        ...(typed === null ? [] : (["own"] as const)),
      ],
      typed,
      asTyped: false,
    };
    return [{ name: clashName(merge, one), clash }];
  });
}

/** One value as it is typed that own words can begin with; null of lists, names, and what is not shown. */
function typedIn(wording: Wording, record: RecordRead, { field, mine, theirs }: FieldMerge): string | null {
  const own = [mine, theirs].filter((one) => one !== null);
  if (field === "id" || !own.every((one) => typeof one === "string")) return null;
  if (keptOut(wording.hidden, record, field) || own.some(wording.hidden.names)) return null;
  return own[0] ?? null;
}

/** What any reading of a record says of withholding its place holds for all of them. */
function placed({ base, mine, theirs }: RecordMerge): Record<string, string> {
  const says = [base, mine, theirs].some((one) => one?.fields["withhold-location"] === "true");
  return says ? { "withhold-location": "true" } : {};
}

function allRows(wording: Wording, record: NonNullable<RecordMerge["mine"]>): readonly FieldRow[] {
  return Object.entries(record.fields).flatMap(([name, value]) =>
    valueRows(wording, record, name, value).map((row) => ({
      ...row,
      label: row.label === null ? name.replace(/-/g, " ") : `${name.replace(/-/g, " ")}, ${row.label}`,
    })),
  );
}

/** What became of a record by itself: as a whole, or in fields that only one side changed. */
function aloneIn(merge: RecordMerge, wording: Wording): readonly MergedAlone[] {
  const { base, mine, theirs, became, fields } = merge;
  const heading = headingOf(wording, [mine, theirs, base]);
  if (!mine || !theirs) {
    if (became === "clash" || became === "same") return [];
    const kept = (became === "theirs" ? theirs : mine) !== null;
    return [{ ...heading, side: became, how: kept ? "added" : "taken", fields: [] }];
  }
  return (["mine", "theirs", "both"] as const).flatMap((side): readonly MergedAlone[] => {
    const own = fields.filter((one) => one.became === side).map(({ field }) => field.replace(/-/g, " "));
    return own.length === 0 ? [] : [{ ...heading, side, how: "changed", fields: own }];
  });
}
