import { saysSame, writtenOf } from "../../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../../read/edit/written.ts";
import { readTableRecords } from "../../../../../read/table/rows.ts";
import type { Asked } from "../asked.ts";
import type { RowDraft } from "../rows.ts";
import { writtenAnew } from "./anew.ts";
import { rewritten } from "./rewritten.ts";
import { signed } from "./sign.ts";

/**
 * A table as one of the corpus: the same file with names of fields in its head line and ids where it names things, where that
 * says what was meant; else, as of one that had several figures in a row, a table written anew.
 */
export function tableText(asked: Asked, drafts: readonly RowDraft[]): string {
  const kept = asked.wide ? null : rewritten(asked, drafts);
  return kept !== null && readsAs(asked, kept, drafts) ? kept : writtenAnew(asked, drafts);
}

/** Whether a table is read as the records that were meant. */
export function readsAs(asked: Asked, text: string, drafts: readonly RowDraft[]): boolean {
  const { list } = asked;
  const { settings } = asked.graph;
  const read = readTableRecords({ path: "table.csv", text }, list, settings);
  if (read.findings.length > 0 || read.records.length !== drafts.length) return false;
  return read.records.every(({ node }, place) =>
    saysSame(writtenOf(node), inSettings(asked, drafts[place]?.values ?? {})),
  );
}

/** A record as a table of the corpus writes it: with the corpus's decimal sign. */
function inSettings(asked: Asked, values: WrittenMap): WrittenMap {
  return Object.fromEntries(
    Object.entries(values).flatMap(([name, value]): readonly (readonly [string, Written])[] =>
      name.startsWith("x-") ? [] : [[name, typeof value === "string" ? signed(asked, name, value) : value]],
    ),
  );
}
