import { inEnglish } from "../../base/text/said/english.ts";
import { writtenOut } from "../../base/text/steering.ts";
import type { Choice, MergeClash, MergePage } from "../../show/desk/changes/merging/told.ts";
import type { FieldRow } from "../../show/pages/pieces.ts";

/** What is said on the command line for what a clash is settled for; own words are written in the app, or in an editor. */
const wordOf: Readonly<Partial<Record<Choice, string>>> = { mine: "ours", theirs: "theirs", both: "both" };

/** So many places, in words. */
export function countText(places: number): string {
  return places === 1 ? "one place" : `${places} places`;
}

/** What clashes in a file, place by place with both readings, and how each is settled. */
export function clashesText(
  file: string,
  { clashes, alone, by, names, withheld }: NonNullable<MergePage["marked"]>,
): readonly string[] {
  const first = clashes.map((_, place) => `--take ${place + 1}=ours`).slice(0, 3);
  return [
    `${file}: its two versions say two things in ${countText(clashes.length)} (${by === "record" ? "by record" : "by lines"})`,
    ...(withheld ? ["  It names something that the corpus withholds: its lines are not shown."] : []),
    ...clashes.flatMap((clash, place) => ["", ...clashText(clash, place + 1, names)]),
    "",
    ...(alone.length > 0 ? [`Put together by itself: ${alone.length} more`] : []),
    `Next: variorum merge-files --settle ${file} ${first.join(" ")}, or --take theirs for all`,
  ];
}

function clashText(
  { kind, text, field, base, mine, theirs, choices }: MergeClash,
  number: number,
  names: { readonly mine: string; readonly theirs: string },
): readonly string[] {
  const what = [kind, inEnglish(text)].filter((one) => one !== "").join(": ");
  return [
    writtenOut(`${number}  ${what}${field === null ? "" : `, ${field}`}`),
    ...(base === null ? [] : reading("before", base)),
    ...reading(called("ours", names.mine), mine),
    ...reading(called("theirs", names.theirs), theirs),
    `     take ${choices.flatMap((one) => wordOf[one] ?? []).join(", ")}`,
  ];
}

function called(side: string, name: string): string {
  return name === "" || name === side ? side : `${side} (${name})`;
}

function reading(who: string, rows: readonly FieldRow[]): readonly string[] {
  const lines = rows.map(
    ({ label, labelSaid, pieces }) =>
      `${label === null ? "" : `${labelSaid ? inEnglish(labelSaid) : label}: `}${pieces.map(({ text }) => text).join("")}`,
  );
  return [`   ${who}`, ...(lines.length === 0 ? ["nothing"] : lines).map((line) => `     ${line}`)].map(
    writtenOut,
  );
}
