import { mediaFragments } from "./selector.ts";
import type { Region } from "./selector.ts";

/** Words to be found and what stands about them; empty where nothing was written. */
export interface SoughtWords {
  readonly exact: string;
  readonly prefix: string;
  readonly suffix: string;
}

/** A place as some selector tells it, in parts: what it does not tell is null. */
export interface Sought {
  /** The file, below the corpus's folder. */
  readonly file: string | null;
  /** The page of the file, from 0. */
  readonly page: number | null;
  readonly words: SoughtWords | null;
  readonly region: (Region & { readonly in: "points" | "percent" }) | null;
  /** Where it ends, for a place that goes from one to another; it is not of the place itself. */
  readonly until: { readonly page: number | null; readonly words: SoughtWords | null } | null;
}

const nowhere: Sought = { file: null, page: null, words: null, region: null, until: null };

/** What a selector tells, whoever wrote it; null where it is none by which a place of a paper can be found. */
export function soughtBy(selector: unknown): Sought | null {
  const sought = partsOf(selector);
  return sought.page === null && sought.words === null && sought.region === null ? null : sought;
}

function partsOf(selector: unknown): Sought {
  // Several are several ways to the same place (W3C Web Annotation Data Model, 4.2).
  if (Array.isArray(selector)) return selector.map(partsOf).find(isSomewhere) ?? nowhere;
  if (typeof selector !== "object" || selector === null) return nowhere;
  const said = selector as Readonly<Record<string, unknown>>;
  switch (said["type"]) {
    case "SpecificResource":
      return { ...partsOf(said["selector"]), file: textOf(said["source"]) };
    case "RangeSelector": {
      const { page, words } = partsOf(said["endSelector"]);
      return { ...partsOf(said["startSelector"]), until: { page, words } };
    }
    case "TextQuoteSelector":
      return { ...nowhere, words: wordsIn(said) };
    case "FragmentSelector": {
      const inner = said["refinedBy"] === undefined ? nowhere : partsOf(said["refinedBy"]);
      const own = fragmentOf(textOf(said["value"]) ?? "", textOf(said["conformsTo"]));
      return { ...inner, page: own.page ?? inner.page, region: inner.region ?? own.region };
    }
    default:
      return nowhere;
  }
}

function isSomewhere({ page, words, region }: Sought): boolean {
  return page !== null || words !== null || region !== null;
}

function wordsIn(said: Readonly<Record<string, unknown>>): SoughtWords | null {
  const exact = textOf(said["exact"]);
  if (exact === null || exact.trim() === "") return null;
  return { exact, prefix: textOf(said["prefix"]) ?? "", suffix: textOf(said["suffix"]) ?? "" };
}

/** `page=3`, `page=3&viewrect=50,50,640,480` (RFC 3778), `xywh=percent:5,5,20,10` (Media Fragments). */
function fragmentOf(value: string, conformsTo: string | null): Pick<Sought, "page" | "region"> {
  const told = new Map(
    value
      .replace(/^#/u, "")
      .split("&")
      .map((part): [string, string] => {
        const sign = part.indexOf("=");
        return sign < 0 ? [part, ""] : [part.slice(0, sign), part.slice(sign + 1)];
      }),
  );
  const page = /^[1-9]\d{0,6}$/u.exec(told.get("page") ?? "");
  const image = conformsTo === null || conformsTo === mediaFragments;
  const [, percent] = image ? (/^percent:(.*)$/u.exec(told.get("xywh") ?? "") ?? []) : [];
  const points = told.get("viewrect");
  const region = points === undefined ? sidesOf(percent, "percent") : sidesOf(points, "points");
  return { page: page ? Number(page[0]) - 1 : null, region };
}

function sidesOf(text: string | undefined, unit: "points" | "percent"): Sought["region"] {
  const sides = (text ?? "").split(",").map((side) => (/^\d{1,7}(\.\d*)?$/u.test(side) ? Number(side) : NaN));
  const [x = NaN, y = NaN, w = NaN, h = NaN] = sides;
  return sides.length === 4 && x >= 0 && y >= 0 && w > 0 && h > 0 ? { x, y, w, h, in: unit } : null;
}

function textOf(value: unknown): string | null {
  return typeof value === "string" ? value : null;
}
