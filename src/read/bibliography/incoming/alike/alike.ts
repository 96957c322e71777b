import type { CslItem, CslName } from "../../csl.ts";
import { yearOf } from "../../date.ts";
import type { Source } from "../../source.ts";
import { doiOf, isbnsOf } from "./identifiers.ts";
import { foldedTitle, titleOf, titlesApart } from "./titles.ts";

/** Why two sources are taken for one: they say the same throughout, share a DOI or an ISBN, have one title and year, or one key. */
export type Likeness = "same" | "doi" | "isbn" | "title" | "key";

/** The order in which likenesses count. */
export const likenesses: readonly Likeness[] = ["same", "doi", "isbn", "title", "key"];

/** Sources in which others like them are looked for. */
export interface Index<T> {
  readonly add: (source: Source, as: T) => void;
  /** Those like a source, the most like first. */
  readonly like: (source: Source, keyed: boolean) => readonly Found<T>[];
}

/** A source like another: what it was entered as, and why it is like it. */
export interface Found<T> {
  readonly as: T;
  readonly source: Source;
  readonly why: readonly Likeness[];
}

/** How many that share one mark are looked at: a file may give a thousand entries one title. */
const most = 50;

/** An index with nothing in it. */
export function emptyIndex<T>(): Index<T> {
  const all: { readonly source: Source; readonly as: T }[] = [];
  const byMark = new Map<string, number[]>();
  return {
    add: (source, as) => {
      for (const mark of marksOf(source)) {
        const list = byMark.get(mark);
        if (list) list.push(all.length);
        else byMark.set(mark, [all.length]);
      }
      all.push({ source, as });
    },
    like: (source, keyed) => {
      const near = new Set(marksOf(source).flatMap((mark) => (byMark.get(mark) ?? []).slice(0, most)));
      const found = [...near].flatMap((place): readonly Found<T>[] => {
        const other = all[place];
        const why = other ? likeness(source, other.source, keyed) : [];
        return other && why.length > 0 ? [{ ...other, why }] : [];
      });
      return found.toSorted((a, b) => rank(a) - rank(b));
    },
  };
}

function rank({ why }: Found<unknown>): number {
  return Math.min(...why.map((one) => likenesses.indexOf(one)));
}

/** What sources that could be one have in common, for finding them. */
function marksOf(source: Source): readonly string[] {
  const { csl } = source;
  const doi = doiOf(csl);
  const { whole, main } = titleOf(csl);
  return [
    `key ${source.key}`,
    `same ${saidBy(source)}`,
    ...(doi === null ? [] : [`doi ${doi}`]),
    ...isbnsOf(csl).map((isbn) => `isbn ${isbn}`),
    ...new Set([whole, main].filter((one) => one !== "").map((one) => `title ${one}`)),
  ];
}

function likeness(a: Source, b: Source, keyed: boolean): readonly Likeness[] {
  // An entry set has the data of its first member, and is like another set alone.
  if (a.members.length !== b.members.length) return a.key === b.key && keyed ? ["key"] : [];
  const why: Likeness[] = [];
  if (saidBy(a) === saidBy(b)) why.push("same");
  if (a.members.length > 0) return why.length > 0 ? why : a.key === b.key && keyed ? ["key"] : [];
  const doi = doiOf(a.csl);
  if (doi !== null && doi === doiOf(b.csl)) why.push("doi");
  if (oneBook(a.csl, b.csl)) why.push("isbn");
  if (oneTitle(a, b)) why.push("title");
  if (keyed && a.key === b.key && (why.length > 0 || !titlesApart(a.csl, b.csl))) why.push("key");
  return why;
}

const known = new WeakMap<Source, string>();

/** All that a source says but its key, in one text. */
export function saidBy(source: Source): string {
  const text = known.get(source) ?? textOf(source);
  known.set(source, text);
  return text;
}

function textOf(source: Source): string {
  const said = Object.entries(source.csl)
    .filter(([name]) => name !== "id")
    .toSorted(([a], [b]) => (a < b ? -1 : 1));
  return JSON.stringify([said, source.andOthers]);
}

/** Parts have the ISBN of what they are parts of, volumes may share one. */
const parts: ReadonlySet<string> = new Set([
  "chapter",
  "paper-conference",
  "entry",
  "entry-dictionary",
  "entry-encyclopedia",
  "article-journal",
  "article-magazine",
  "article-newspaper",
]);

function oneBook(a: CslItem, b: CslItem): boolean {
  if (parts.has(a.type) || parts.has(b.type)) return false;
  if (a.volume !== undefined && b.volume !== undefined && a.volume !== b.volume) return false;
  const others = new Set(isbnsOf(b));
  return isbnsOf(a).some((isbn) => others.has(isbn));
}

function oneTitle(a: Source, b: Source): boolean {
  const [one, other] = [titleOf(a.csl), titleOf(b.csl)];
  if (one.whole === "" || other.whole === "") return false;
  const same = one.whole === other.whole || one.main === other.whole || one.whole === other.main;
  const year = yearOf(a.csl.issued);
  if (!same || year === null || year !== yearOf(b.csl.issued)) return false;
  const apart = (["volume", "issue", "page", "container-title"] as const).some(
    (field) => differ(a.csl[field], b.csl[field]) && parts.has(a.csl.type) === parts.has(b.csl.type),
  );
  // A short title such as `Introduction` is no sign of one work where the names or the places differ.
  return shareName(a, b) && !(apart && one.whole.split(" ").length < 4);
}

function differ(a: string | undefined, b: string | undefined): boolean {
  return a !== undefined && b !== undefined && foldedTitle(a) !== foldedTitle(b);
}

function shareName(a: Source, b: Source): boolean {
  if (a.names.length === 0 || b.names.length === 0) return true;
  const others = new Set(b.names.map(familyOf));
  return a.names.some((name) => others.has(familyOf(name)));
}

function familyOf(name: CslName): string {
  const words = foldedTitle(name.family ?? name.literal ?? name.given ?? "").split(" ");
  return words.at(-1) ?? "";
}
