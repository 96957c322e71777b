import type { CslDate } from "../../date.ts";
import type { CslItem, CslName } from "../../csl.ts";
import { plainText } from "../../csl.ts";
import { extentIn } from "../arrived.ts";
import type { Entry } from "../arrived.ts";
import type { Format } from "../formats.ts";
import type { Held, Holding } from "../shelf.ts";
import type { Fresh, MergeField } from "./field.ts";
import { hands } from "./hands.ts";

/** Variables of CSL that are told in all three formats, with their fields in BibTeX and RIS. */
const variables: readonly (readonly [variable: string, bib: string, ris: string])[] = [
  ["author", "author", "AU"],
  ["editor", "editor", "ED"],
  ["translator", "translator", "A4"],
  ["title", "title", "TI"],
  ["container-title", "booktitle", "T2"],
  ["collection-title", "series", "T3"],
  ["publisher", "publisher", "PB"],
  ["publisher-place", "address", "CY"],
  ["issued", "date", "PY"],
  ["volume", "volume", "VL"],
  ["issue", "number", "IS"],
  ["page", "pages", "SP"],
  ["edition", "edition", "ET"],
  ["DOI", "doi", "DO"],
  ["ISBN", "isbn", "SN"],
  ["URL", "url", "UR"],
  ["abstract", "abstract", "AB"],
];

/** Other fields of BibTeX and RIS that say the same as one of those above, and give way to it. */
const others: ReadonlyMap<string, readonly string[]> = new Map([
  ["journaltitle", ["journal", "booktitle"]],
  ["journal", ["journaltitle", "booktitle"]],
  ["booktitle", ["journal", "journaltitle"]],
  ["address", ["location"]],
  ["publisher", ["school", "institution", "organization"]],
  ["date", ["year", "month", "day"]],
  ["year", ["date", "month", "day"]],
  ["AU", ["A1"]],
  ["TI", ["T1"]],
  ["T2", ["JO", "JF", "JA", "BT"]],
  ["PY", ["Y1", "DA"]],
  ["SP", ["EP"]],
  ["AB", ["N2"]],
]);

/** What an entry of one format says beyond, and otherwise than, the corpus's entry of another: by the variables of CSL. */
export function acrossFields({ source, holding }: Held, entry: Entry): readonly MergeField[] {
  const { format } = holding;
  const { start, end } = extentIn(holding.text, format, source.span);
  const typed = new Set(hands[format].fields(holding.text, start, end).map((one) => one.name));
  return variables.flatMap(([variable, bib, ris]): readonly MergeField[] => {
    const [is, other] = [source.csl[variable], entry.source.csl[variable]];
    if (other === undefined || wordsOf(other) === "") return [];
    if (is !== undefined && plain(wordsOf(is)) === plain(wordsOf(other))) return [];
    const theirs = wordsOf(other);
    const name =
      format === "json" ? variable : format === "ris" ? ris : bibName(bib, theirs, holding, source.csl);
    const write = freshOf(format, name, other);
    // What is typed there and says nothing in that kind of entry is not missing.
    if (is === undefined && [name, ...(others.get(name) ?? [])].some((one) => typed.has(one))) return [];
    const here = is === undefined ? null : wordsOf(is);
    return [{ name, here, theirs, write, drop: here === null ? [] : [name, ...(others.get(name) ?? [])] }];
  });
}

/** The name that the bibliography itself uses where BibTeX and biblatex have two. */
function bibName(name: string, said: string, holding: Holding, csl: CslItem): string {
  const used = known.get(holding) ?? namesIn(holding);
  known.set(holding, used);
  const uses = (field: string): boolean => used.has(field);
  if (name === "booktitle" && csl.type.startsWith("article"))
    return uses("journaltitle") ? "journaltitle" : "journal";
  return name === "date" && /^\d{4}$/.test(said) && !uses("date") ? "year" : name;
}

const known = new WeakMap<Holding, ReadonlySet<string>>();

function namesIn({ lexed }: Holding): ReadonlySet<string> {
  return new Set(lexed.flatMap((one) => one.fields.map((field) => field.name)));
}

function plain(text: string): string {
  return plainText(text)
    .normalize("NFC")
    .replace(/[–—]|-{2,}/g, "-")
    .replace(/\s+/g, " ")
    .toLowerCase();
}

type Value = CslItem[string];

/** A value of CSL as it is shown: names one after another, a date as EDTF. */
function wordsOf(value: Value): string {
  if (typeof value === "string") return value;
  if (Array.isArray(value)) return value.map((one) => nameText(one as CslName)).join("; ");
  return typeof value === "object" && value !== null ? dateText(value as CslDate) : `${value ?? ""}`;
}

function nameText(name: CslName): string {
  if (name.literal !== undefined) return name.literal;
  const family = [name["dropping-particle"], name["non-dropping-particle"], name.family]
    .filter(Boolean)
    .join(" ");
  return [family, name.suffix, name.given].filter(Boolean).join(", ");
}

/** A date as EDTF has it; empty where it is in words. */
function dateText(date: CslDate): string {
  const ends = (date["date-parts"] ?? []).map((part) =>
    part
      .map((number, place) => {
        const said = place === 0 && number < 0 ? number + 1 : number;
        return `${said < 0 ? "-" : ""}${`${Math.abs(said)}`.padStart(place === 0 ? 4 : 2, "0")}`;
      })
      .join("-"),
  );
  return ends.length === 0 ? "" : `${ends.join("/")}${date.circa === true ? "~" : ""}`;
}

function freshOf(format: Format, name: string, value: Value): readonly Fresh[] {
  if (format === "json")
    return [
      typeof value === "string" ? { name, text: value } : { name, text: JSON.stringify(value), bare: true },
    ];
  const names = Array.isArray(value) ? value.map((one) => one as CslName) : null;
  if (format === "ris") {
    if (names) return names.map((one) => ({ name, text: nameText(one) }));
    const text = name === "PY" ? wordsOf(value).replace(/[-/].*$/, "") : wordsOf(value);
    const [first = "", last] = name === "SP" ? text.split(/[-–—]/) : [text];
    return [{ name, text: first }, ...(last === undefined ? [] : [{ name: "EP", text: last }])];
  }
  if (names) return [{ name, text: names.map((one) => nameInTex(one)).join(" and ") }];
  const text = plainText(wordsOf(value));
  if (name === "doi" || name === "url") return [{ name, text }];
  return [{ name, text: name === "pages" ? text.replace(/[-–—]+/g, "--") : escaped(text) }];
}

function nameInTex(name: CslName): string {
  return name.literal === undefined ? escaped(nameText(name)) : `{${escaped(name.literal)}}`;
}

/** A text as TeX reads it. */
function escaped(text: string): string {
  return text
    .replace(/[\\{}]/g, "")
    .replace(/[&%$#_]/g, "\\$&")
    .replace(/~/g, "\\textasciitilde{}")
    .replace(/\^/g, "\\textasciicircum{}");
}
