import { useMemo } from "react";
import { useLocation, useSearch } from "wouter";
import type { Lens } from "../build.ts";
import { suppositionIn, suppositionText } from "../link/suppose/supposition.ts";
import type { Supposition } from "../link/suppose/supposition.ts";
import type { VisitAsked } from "../show/desk/visit/asked.ts";
import type { Most } from "../show/scholars/matrix.ts";
import { language } from "./words/reader/language.ts";
import type { Wanted } from "./worker/messages.ts";

/** What the address says: the page, how it is looked at, and the lens: the year as of which, and what is supposed. */
export interface Address {
  readonly wanted: Wanted;
  readonly asOf: number | null;
  readonly lens: Lens;
  readonly path: string;
  readonly query: URLSearchParams;
}

/** Pages by the first part of their path, with the rest of it and what stands behind the question mark. */
const pagesAt: Readonly<Record<string, (id: string, query: URLSearchParams) => Wanted | null>> = {
  question: (id) => (id === "" ? null : { page: "question", id }),
  record: (id) => (id === "" ? null : { page: "sheet", id }),
  map: (_, query) => ({
    page: "map",
    // What is written on the map is measured where it is laid out.
    language,
    view: {
      question: query.get("question"),
      unfolded: (query.get("open") ?? "").split(/[\s,]+/).filter((id) => id !== ""),
      focus: query.get("focus"),
      only: query.has("only"),
      narrow: query.has("narrow"),
    },
  }),
  literature: () => ({ page: "literature" }),
  outline: (_, query) => ({
    page: "outline",
    open: (query.get("open") ?? "").split(",").filter((id) => id !== ""),
  }),
  artefacts: (_, query) => ({
    page: "artefacts",
    draw: (query.get("draw") ?? "").split(",").filter((id) => id !== ""),
  }),
  artefact: (id) => (id === "" ? null : { page: "artefact", id }),
  image: (id) => (id === "" ? null : { page: "image", id }),
  numbers: () => ({ page: "numbers" }),
  number: (id) => (id === "" ? null : { page: "number", id }),
  workbench: (_, query) => ({ page: "workbench", of: query.get("of") }),
  scholars: (_, query) => ({
    page: "scholars",
    most: query.has("look") ? matrixAsked(query.get("questions")) : { questions: 0 },
  }),
  scholar: (id) => (id === "" ? null : { page: "scholar", id }),
  history: () => ({ page: "history" }),
  standpoints: () => ({ page: "standpoints" }),
  examinations: () => ({ page: "examinations" }),
  visit: (id, query) => ({
    page: "visit",
    asked: {
      examination: id === "" ? null : id,
      keeper: id === "" ? query.get("keeper") : null,
      also: id === "" ? query.getAll("also") : [],
    },
  }),
  write: (_, query) => ({
    page: "telling",
    asked: {
      kind: query.get("kind") ?? "review",
      question: query.get("question"),
      examination: query.get("examination"),
      style: query.get("style"),
      sections: query.get("sections")?.split(",") ?? null,
    },
  }),
  talks: (_, query) => ({ page: "talks", propose: query.get("propose") }),
  // What is written on a map in a slide is measured where it is laid out.
  talk: (id) => (id === "" ? { page: "talks", propose: null } : { page: "talk", id, language }),
  findings: () => ({ page: "findings" }),
  changes: (_, query) => {
    const step = query.get("step");
    const of = query.get("look") !== "steps" ? "commit" : step === null ? "steps" : `step-${step}`;
    return { page: "changes", of };
  },
  merge: (file, query) =>
    file === ""
      ? null
      : {
          page: "merge",
          file,
          answers: query.get("answers") ?? "",
          own: query.get("own") ?? "",
          byLines: query.get("by") === "lines",
        },
  search: () => ({ page: "search" }),
  records: (_, query) => ({ page: "records", words: query.get("words") ?? "" }),
  grid: (_, query) => ({ page: "grid", presets: presetsIn(query) }),
  import: () => ({ page: "import" }),
  paper: (id) => (id === "" ? null : { page: "paper", id }),
  entry: (id) => (id === "" ? null : { page: "entry", id }),
  new: (list, query) => ({ page: "form", list, record: null, presets: presetsIn(query) }),
  edit: (id) => (id === "" ? null : { page: "form", list: null, record: id, presets: [] }),
};

/** So many cells of the scholars' matrix are told before more of a large one is asked for. */
const firstCells = 8000;

/** How much of the matrix an address asks for: so many questions, else as many as can be looked over. */
function matrixAsked(questions: string | null): Most {
  return /^\d{1,6}$/.test(questions ?? "") ? { questions: Number(questions) } : { cells: firstCells };
}

/** The page that a path means; anything else is the contents. */
export function wantedAt(path: string, query: URLSearchParams): Wanted {
  const [first = "", ...rest] = path.replace(/^\//, "").split("/");
  const id = rest.map(decoded).join("/");
  const page = Object.hasOwn(pagesAt, first) ? pagesAt[first] : undefined;
  return page?.(id, query) ?? { page: "contents" };
}

/** A part of a path as it was meant; one that nobody could have made stays as it is. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/**
 * A path under what is looked at: the year, and the outcome that the present address supposes, go along from page to
 * page. A path that supposes something itself keeps to that.
 */
export function underLens(path: string, asOf: number | null): string {
  const under = new URLSearchParams(path.split("?")[1]).has("suppose") ? null : supposedAt(presentSearch());
  const kept = [
    ...(asOf === null ? [] : [`as-of=${asOf}`]),
    ...(under === null ? [] : [`suppose=${encodeURIComponent(suppositionText(under))}`]),
  ];
  return kept.length === 0 ? path : `${path}${path.includes("?") ? "&" : "?"}${kept.join("&")}`;
}

/** What stands behind the question mark of the window's address; nothing where there is no window. */
function presentSearch(): URLSearchParams {
  return new URLSearchParams(typeof location === "undefined" ? "" : location.search);
}

/** The outcome that an address supposes, `suppose=EXAMINATION:OUTCOME`; what is not of that form is an outcome of no name. */
function supposedAt(query: URLSearchParams): Supposition | null {
  const given = query.get("suppose");
  if (given === null || given === "") return null;
  return suppositionIn(given) ?? { examination: given, outcome: "" };
}

/** A path as it would be looked at if an examination had ended so. */
export function supposingPath(path: string, supposition: Supposition): string {
  const under = `suppose=${encodeURIComponent(suppositionText(supposition))}`;
  return `${path}${path.includes("?") ? "&" : "?"}${under}`;
}

/** The path of the page of one record: its sheet, or the page of its kind. */
export function pathOf(page: string, id: string): string {
  return `/${page}/${id.split("/").map(encodeURIComponent).join("/")}`;
}

/** The path of a record's sheet. */
export const recordPath = (id: string): string => pathOf("record", id);

/** The path of a question's page. */
export const questionPath = (id: string): string => pathOf("question", id);

/** The path of a visit's sheet: that of an examination, or of all that is at a keeper's. */
export function visitPath({ examination, keeper, also }: VisitAsked): string {
  if (examination !== null) return pathOf("visit", examination);
  const query = [...(keeper === null ? [] : [["keeper", keeper]]), ...also.map((id) => ["also", id])];
  return query.length === 0 ? "/visit" : `/visit?${new URLSearchParams(query).toString()}`;
}

/** The path of a source's papers. */
export const paperPath = (key: string): string => pathOf("paper", key);

/** The path of the merge of a file. */
export const mergePath = (file: string): string => pathOf("merge", file);

/** The path of the map: of the question that is looked at, where one is. */
export function mapPath(wanted: Wanted): string {
  return wanted.page === "question" ? `/map?question=${encodeURIComponent(wanted.id)}` : "/map";
}

/** What of an address is about how the corpus is looked at, and not about a form. */
const lens: readonly string[] = ["as-of", "suppose"];

/** What is known of a new record already, by the address of its form: names of fields with values. */
export function presetsIn(query: URLSearchParams): readonly (readonly [string, string])[] {
  return [...query].filter(([name]) => !lens.includes(name));
}

/** The present address, and ways to another year of it and to another look at it. */
export function useAddress(): Address & {
  readonly toYear: (year: number | null) => void;
  /** Changes what stands behind the question mark; null takes a name away. Back leads to the look before. */
  readonly toLook: (changes: Readonly<Record<string, string | null>>, kept?: "push" | "replace") => void;
} {
  const [path, go] = useLocation();
  const search = useSearch();
  return useMemo(() => {
    const query = new URLSearchParams(search);
    const given = query.get("as-of");
    const asOf = given !== null && /^-?\d{1,6}$/.test(given) ? Number(given) : null;
    const suppose = supposedAt(query);
    const toLook = (changes: Readonly<Record<string, string | null>>, kept = "push"): void => {
      const next = new URLSearchParams(search);
      for (const [name, value] of Object.entries(changes)) {
        if (value === null) next.delete(name);
        else next.set(name, value);
      }
      const text = next.toString();
      go(text === "" ? path : `${path}?${text}`, { replace: kept === "replace" });
    };
    return {
      wanted: wantedAt(path, query),
      asOf,
      lens: { ...(asOf === null ? {} : { asOf }), ...(suppose === null ? {} : { suppose }) },
      path,
      query,
      toYear: (year) => toLook({ "as-of": year === null ? null : String(year) }, "replace"),
      toLook,
    };
  }, [path, search, go]);
}
