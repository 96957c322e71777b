import type { Id, Span } from "../../base/finding.ts";
import { wordMet } from "../decode/met.ts";
import { plainText } from "./csl.ts";
import type { CslItem, CslName } from "./csl.ts";
import { yearOf, yearText } from "./date.ts";

/** A person or body as a bibliography names it. */
export type Name = CslName & { readonly orcid?: string };

/** One entry of a bibliography, with its places in the file. */
export interface Source {
  readonly key: Id;
  readonly csl: CslItem;
  /** The whole entry in its file. */
  readonly span: Span;
  readonly keySpan: Span;
  /** The authors, else the editors. */
  readonly names: readonly Name[];
  /** Whether the entry says that there are more than it names. */
  readonly andOthers: boolean;
  /** The year since when it is in print, astronomical (0 is 1 BC); for a reprint, that of the original; null when unknown. */
  readonly year: number | null;
  /** What the source is called in running text: `Vane 1968`, `Hale & Reed 1896`, `Hale et al. n.d.`. */
  readonly label: string;
  /** The keys that an entry set stands for; otherwise empty. */
  readonly members: readonly Id[];
}

/** What a reader of one format knows about an entry beside its CSL. */
export interface Reading {
  readonly csl: CslItem;
  readonly span: Span;
  readonly keySpan: Span;
  readonly andOthers?: boolean;
  /** ORCIDs of the names, by their place in the list; null where there is none. */
  readonly orcids?: readonly (string | null)[];
}

/** The source of an entry: names, year and label are drawn from its CSL. */
export function sourceOf(reading: Reading): Source {
  const { span, keySpan, andOthers = false } = reading;
  const csl = keyedWhole(reading.csl);
  const named = csl.author?.length ? csl.author : (csl.editor ?? []);
  const { orcids } = reading;
  const names = orcids?.some((orcid) => orcid !== null)
    ? named.map((name, place) => withOrcid(name, orcids[place] ?? null))
    : named;
  const year = yearOf(csl["original-date"]) ?? yearOf(csl.issued);
  return {
    key: csl.id,
    csl,
    span,
    keySpan,
    names,
    andOthers,
    year,
    label: wordMet(label(csl, names, andOthers)),
    members: none,
  };
}

const withOrcid = (name: CslName, orcid: string | null): Name => (orcid === null ? name : { ...name, orcid });

const none: readonly Id[] = [];

/** An entry whose key has its letters whole, as one that names it is read: a file may write them in parts (Unicode NFD). */
function keyedWhole(csl: CslItem): CslItem {
  const id = csl.id.normalize("NFC");
  return id === csl.id ? csl : { ...csl, id };
}

/** The bare identifier in an ORCID or its web address, null when there is none. */
export function orcidIn(text: unknown): string | null {
  return typeof text === "string" ? (/\d{4}-\d{4}-\d{4}-\d{3}[\dX]/.exec(text)?.[0] ?? null) : null;
}

function label(csl: CslItem, names: readonly Name[], andOthers: boolean): string {
  const issued = yearText(csl.issued);
  const original = yearText(csl["original-date"]);
  const when =
    original !== "" && issued !== "" && original !== issued
      ? `[${original}] ${issued}`
      : issued || original || "n.d.";
  const [first, second] = names.map(familyOf);
  if (first === undefined) {
    const title = shortTitle(csl);
    return when === "n.d." && title !== "" ? title : `${title || csl.id} ${when}`;
  }
  if (second === undefined) return `${first}${andOthers ? " et al." : ""} ${when}`;
  return names.length > 2 || andOthers ? `${first} et al. ${when}` : `${first} & ${second} ${when}`;
}

function familyOf(name: Name): string {
  const family = [name["non-dropping-particle"] ?? "", name.family ?? ""]
    .filter((part) => part !== "")
    .join(" ");
  return plainText(name.literal ?? (family === "" ? (name.given ?? "") : family));
}

function shortTitle(csl: CslItem): string {
  const title = plainText(csl["title-short"] ?? csl.title ?? "");
  if (title.length <= 40) return title;
  const cut = title.slice(0, 40);
  return `${cut.slice(0, Math.max(cut.lastIndexOf(" "), 20)).trimEnd()}…`;
}
