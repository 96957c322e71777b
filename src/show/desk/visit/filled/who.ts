import type { Id } from "../../../../base/finding.ts";
import { nearest } from "../../../../base/nearest.ts";
import { coded, row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import type { Filled } from "./filled.ts";

/** Whose the readings are, when, and where they are said, as it is written into every record. */
export interface Signed {
  readonly by: Id | null;
  readonly day: string;
  readonly year: string;
  /** Null for what is the corpus's own. */
  readonly from: string | null;
}

/** A trouble with a field of the head of the sheet. */
export interface HeadTrouble {
  readonly field: "by" | "on" | "from" | "basis";
  readonly message: Text;
}

/** What the head of a sheet says, or what is wrong with it. */
export function signedBy(
  graph: Graph,
  filled: Filled,
): { readonly signed: Signed | null; readonly troubles: readonly HeadTrouble[] } {
  const by = filled.by.trim();
  const day = filled.on.trim();
  const from = filled.from.trim();
  const scholar = by === "" ? null : scholarCalled(graph, by);
  const troubles: HeadTrouble[] = [];
  if (by === "" && from === "")
    troubles.push({ field: "by", message: say`Missing scholar, expected who looked and measured` });
  if (by !== "" && scholar === null)
    troubles.push({
      field: "by",
      message: say`Unknown scholar \`${by}\`, expected ${scholarsNear(graph, by)}`,
    });
  if (!isDay(day))
    troubles.push({
      field: "on",
      message:
        day === ""
          ? say`Missing day, expected one such as ${coded("2026-05-04")}`
          : say`Unexpected day \`${day}\`, expected one such as ${coded("2026-05-04")}`,
    });
  if (from !== "" && !isCited(graph, from))
    troubles.push({
      field: "from",
      message: say`Unknown source \`${from}\`, expected the key of an entry of the bibliography, or nothing`,
    });
  if (filled.basis !== "" && !bases.includes(filled.basis))
    troubles.push({
      field: "basis",
      message: say`Unexpected \`${filled.basis}\`, expected one of ${row(bases.map(coded), "comma")}`,
    });
  const signed = { by: scholar, day, year: day.slice(0, 4), from: from === "" ? null : from };
  return { signed: troubles.length === 0 ? signed : null, troubles };
}

/** What may really have been looked at on a visit. */
export const bases: readonly string[] = ["autopsy", "cast", "replica", "scan", "photograph", "drawing"];

/** A scholar by id, or by one of the names that the record has, whatever their case and points. */
function scholarCalled(graph: Graph, given: string): Id | null {
  const withheld = withheldIn(graph);
  const all = graph.list("scholars").filter((one) => !withheld(one.id));
  const own = all.find((one) => one.id === given);
  if (own) return own.id;
  const named = all.filter(({ values }) =>
    [values.name, ...(values["known-as"] ?? [])].some((name) => plain(name) === plain(given)),
  );
  return named.length === 1 ? (named[0]?.id ?? null) : null;
}

function plain(name: string): string {
  return name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[\p{M}\p{P}\s]+/gu, "");
}

function scholarsNear(graph: Graph, given: string): Text {
  const withheld = withheldIn(graph);
  const ids = graph.list("scholars").map((one) => one.id);
  const near = nearest(
    given,
    ids.filter((id) => !withheld(id)),
  );
  return near.length > 0 ? say`${row(near.map(coded), "or")}` : say`a scholar of the corpus`;
}

/** A day of the calendar as ISO 8601 writes it. */
function isDay(text: string): boolean {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!found) return false;
  const [year, month, day] = found.slice(1).map(Number);
  if (year === undefined || month === undefined || day === undefined) return false;
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
  return year > 0 && day >= 1 && day <= days;
}

function isCited(graph: Graph, from: string): boolean {
  const key = from.split(/\s/u)[0] ?? "";
  if (withheldIn(graph)(key)) return false;
  return graph.sources.has(key) || graph.records.get(key)?.list === "passages";
}
