import { useLocation, useSearch } from "wouter";
import type { Lens } from "../build.ts";
import type { Wanted } from "./worker/messages.ts";

/** What the address says: the page, and the year as of which it is looked at. */
export interface Address {
  readonly wanted: Wanted;
  readonly asOf: number | null;
  readonly lens: Lens;
  readonly path: string;
}

/** The page that a path means; anything else is the contents. */
export function wantedAt(path: string): Wanted {
  const [first = "", ...rest] = path.replace(/^\//, "").split("/");
  const id = rest.map(decodeURIComponent).join("/");
  if (first === "question" && id !== "") return { page: "question", id };
  if (first === "record" && id !== "") return { page: "sheet", id };
  if (first === "outline") return { page: "outline" };
  if (first === "findings") return { page: "findings" };
  return { page: "contents" };
}

/** A path with the year kept, so that a look back in time goes along from page to page. */
export function withYear(path: string, asOf: number | null): string {
  return asOf === null ? path : `${path}?as-of=${asOf}`;
}

/** The path of a record's sheet. */
export function recordPath(id: string): string {
  return `/record/${id.split("/").map(encodeURIComponent).join("/")}`;
}

/** The path of a question's page. */
export function questionPath(id: string): string {
  return `/question/${id.split("/").map(encodeURIComponent).join("/")}`;
}

/** The present address, and a way to another year of it. */
export function useAddress(): Address & { readonly toYear: (year: number | null) => void } {
  const [path, go] = useLocation();
  const given = new URLSearchParams(useSearch()).get("as-of");
  const asOf = given !== null && /^-?\d{1,6}$/.test(given) ? Number(given) : null;
  return {
    wanted: wantedAt(path),
    asOf,
    lens: asOf === null ? {} : { asOf },
    path,
    toYear: (year) => go(withYear(path, year), { replace: true }),
  };
}
