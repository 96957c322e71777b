import { edited } from "../../../base/text/edit.ts";
import { mergedText, mergePieces } from "../../../base/text/merging/merge.ts";
import type { Merged, Versions } from "../../../base/text/merging/marking.ts";
import { alike } from "./alike.ts";
import type { Alike } from "./alike.ts";
import { keepsComments } from "./comments-kept.ts";
import { mergedEntries } from "./entries.ts";
import { clashesIn, isShifted, mergedRecords } from "./merge.ts";
import type { Answer, FieldMerge, RecordMerge } from "./merge.ts";
import { recordsIn } from "./reading.ts";
import type { RecordRead } from "./reading.ts";
import { ownLinesOf } from "./lines.ts";
import { resolvedText, saysMerged } from "./resolve.ts";
import { isDoubled, isTold, isWhole } from "./told-by-lines.ts";

/**
 * Merges two versions of a file of a corpus that were made from a third: line by line where that gives a file that reads
 * as well as they do, else record by record or entry by entry; where that cannot be, lines that clash stay apart.
 */
export function mergedVersions(path: string, base: string, mine: string, theirs: string): Merged {
  // Nothing to merge, to the byte. That lines come to one side is not enough: a record that it moved may be gone on the other.
  if (mine === theirs || theirs === base) return { text: mine };
  if (mine === base) return { text: theirs };
  const lines = mergedText(base, mine, theirs);
  const made = mergedApart(path, alike(base, mine, theirs), "text" in lines ? lines.text : null);
  return "text" in made || made.mine !== made.theirs ? made : { text: made.mine };
}

function mergedApart(path: string, given: Alike, whole: string | null): Merged {
  const { base, mine, theirs } = given;
  if (/\.(?:bib|ris|json)$/u.test(path)) return mergedEntries(path, given, whole) ?? byLines(given, whole);
  const [old, own, other] = [base, mine, theirs].map((text) => recordsIn(path, text));
  if (!old || !own || !other) return byLines(given, whole);
  return byRecord(path, given, whole, { merges: mergedRecords(old, own, other), own, other });
}

type Records = ReadonlyMap<string, RecordRead>;

interface Sides {
  readonly merges: readonly RecordMerge[];
  readonly own: Records;
  readonly other: Records;
}

function byRecord(path: string, given: Alike, whole: string | null, sides: Sides): Merged {
  const { merges, own, other } = sides;
  const clashes = clashesIn(merges).length > 0;
  const isUnsure = isDoubled(merges) || isShifted(merges);
  if (whole !== null && isWhole(recordsIn(path, whole), own, other)) {
    const isTaken = clashes && isTold(merges, recordsIn(path, whole));
    if (isTaken || isUnsure || (!clashes && saysMerged(path, whole, merges))) return { text: whole };
  }
  const lines = whole === null ? byLines(given, null) : given;
  const apart: Versions = "text" in lines ? given : lines;
  if (isUnsure) return apart;
  // What lines can merge is merged so first: of a large file little is then left to be done record by record.
  const made =
    resolved(path, apart, given, merges) ?? (apart === given ? null : resolved(path, given, given, merges));
  return made ?? apart;
}

/** So many changes times letters are made record by record: each is read again. */
const most = 30_000_000;

/** Versions merged by record, where they then say what the merge of the given ones comes to; else null. */
function resolved(
  path: string,
  { base, mine, theirs }: Versions,
  given: Alike,
  wanted: readonly RecordMerge[],
): Merged | null {
  const [old, own, other] = [base ?? "", mine, theirs].map((text) => recordsIn(path, text));
  if (base === null || !old || !own || !other) return null;
  const merges = mergedRecords(old, own, other);
  const changes = merges.reduce((sum, one) => sum + (one.became === "same" ? 0 : one.fields.length + 1), 0);
  if (changes * mine.length > most) return null;
  const settled = (answer: "mine" | "theirs"): string | null => {
    const answers = new Map(clashesIn(merges).map((name): [string, Answer] => [name, answer]));
    const made = resolvedText({ path, base, mine, theirs }, merges, answers);
    return "text" in made && saysMerged(path, made.text, wanted, answer) ? made.text : null;
  };
  const isTable = path.endsWith(".csv");
  const keeps = (made: string, own = given.mine, other = given.theirs): boolean =>
    isTable || keepsComments(given.base, own, other, made);
  const one = settled("mine");
  if (clashesIn(wanted).length === 0) return one !== null && keeps(one) ? { text: one } : null;
  const two = settled("theirs");
  if (one === null || two === null) return null;
  // A record that one version lacks takes its comments along.
  const [less, more] = [
    withoutLacking(path, given.mine, wanted, "theirs"),
    withoutLacking(path, given.theirs, wanted, "mine"),
  ];
  if (!keeps(one, given.mine, more) || !keeps(two, less, given.theirs)) return null;
  return { base: before(path, base, two, merges), mine: one, theirs: two };
}

/** A version without the lines of records that clash with there being none on the other side. */
function withoutLacking(
  path: string,
  text: string,
  merges: readonly RecordMerge[],
  lacking: "mine" | "theirs",
): string {
  const read = recordsIn(path, text);
  const gone = merges.filter((one) => one.became === "clash" && one[lacking] === null);
  const spans = gone.flatMap(({ key }) => {
    const record = read?.get(key);
    return (record && ownLinesOf(text, record)) ?? [];
  });
  // A comment between two records may be of both.
  let at = 0;
  const edits = spans
    .toSorted((a, b) => a.start - b.start)
    .map(({ start, end }) => {
      const from = Math.max(start, at);
      at = Math.max(end, from);
      return { file: path, start: from, end: at, text: "" };
    });
  return edited(text, edits);
}

/** The versions with what lines can be merged in both; the text as a whole where no line clashes. */
function byLines({ base, mine, theirs }: Alike, whole: string | null): Merged {
  if (whole !== null) return { text: whole };
  const pieces = mergePieces(base, mine, theirs);
  const side = (of: "base" | "mine" | "theirs"): string =>
    pieces.map((one) => (one.is === "agreed" ? one.text : one[of])).join("");
  return { base: side("base"), mine: side("mine"), theirs: side("theirs") };
}

/** What their version said before where it clashes; null where that cannot be written. */
function before(path: string, base: string, theirs: string, merges: readonly RecordMerge[]): string | null {
  const [now, earlier] = [recordsIn(path, theirs), recordsIn(path, base)];
  if (!now || !earlier) return null;
  const back = [...new Set([...now.keys(), ...earlier.keys()])].flatMap((key): readonly RecordMerge[] => {
    const [is, was] = [now.get(key) ?? null, earlier.get(key) ?? null];
    const merge = merges.find((one) => one.key === key);
    const kept = is && { key, base: null, mine: is, theirs: null, fields: [], became: "mine" as const };
    if (merge?.became !== "clash") return kept ? [kept] : [];
    if (!is) return was ? [{ key, base: null, mine: null, theirs: was, fields: [], became: "theirs" }] : [];
    const names = new Set([...Object.keys(is.fields), ...Object.keys(was?.fields ?? {})]);
    const clashed = new Set(merge.fields.flatMap((one) => (one.became === "clash" ? [one.field] : [])));
    const fields = [...names].flatMap((field): readonly FieldMerge[] => {
      if (merge.fields.length > 0 && !clashed.has(field)) return [];
      const [mine, old] = [is.fields[field] ?? null, was?.fields[field] ?? null];
      return [{ field, became: "theirs", base: null, mine, theirs: old, canBeBoth: false }];
    });
    return [{ key, base: null, mine: is, theirs: was ?? is, fields, became: "theirs" }];
  });
  const made = resolvedText({ path, base, mine: theirs, theirs: base }, back, new Map());
  return "text" in made ? made.text : null;
}
