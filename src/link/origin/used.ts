import type { Finding, Id } from "../../base/finding.ts";
import type { Used } from "../../read/settings/used/corpus.ts";
import { ownerOfFile } from "../../read/settings/used/files.ts";
import { isOfUse } from "../../read/settings/use.ts";
import type { Graph } from "../graph.ts";
import type { Names } from "../names/name.ts";

/** What tells where records and sources come from. */
type Ground = Pick<Graph, "records" | "sources" | "used">;

/** The corpus that a record or a source is taken from; null for one of this corpus. */
export function usedFor({ records, sources, used }: Ground, id: Id): Used | null {
  if (used.length === 0) return null;
  const file = records.get(id)?.file ?? sources.get(id)?.span.file;
  return file === undefined ? null : ownerOfFile(used, file);
}

/** Whether an id leads into a corpus that is used and cannot be read: what names it is not to blame. */
export function isInUnread(used: readonly Used[], id: Id): boolean {
  return used.some((one) => one.title === null && isOfUse([one], id));
}

/** Names among which what is in a corpus that cannot be read is lost. */
export function withLostCorpora(names: Names, used: readonly Used[]): Names {
  if (used.every(({ title }) => title !== null)) return names;
  return { ...names, lost: { has: (id) => names.lost.has(id) || isInUnread(used, id) } };
}

/**
 * Findings as they are told in a corpus that uses others: what is no error in those is their own affair, and nothing is
 * mended in their files.
 */
export function toldHere(graph: Ground, findings: readonly Finding[]): readonly Finding[] {
  const { used } = graph;
  if (used.length === 0) return findings;
  const isTheirs = ({ about, at }: Finding): boolean =>
    (at !== null && ownerOfFile(used, at.file) !== null) ||
    (about.length > 0 && about.every((id) => usedFor(graph, id) !== null));
  return findings.flatMap((one) => {
    if (one.level !== "error" && isTheirs(one)) return [];
    // Names are kept apart by what they begin with: that they are alike is no slip.
    if (one.rule === "near-name" && one.about.some((id) => usedFor(graph, id) !== null)) return [];
    const isMendedThere = one.fix?.edits.some(({ file }) => ownerOfFile(used, file) !== null) ?? false;
    return [isMendedThere ? { ...one, fix: null } : one];
  });
}
