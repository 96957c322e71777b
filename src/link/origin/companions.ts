import type { Finding, Id } from "../../base/finding.ts";
import type { Companion } from "../../read/settings/companions/corpus.ts";
import { ownerOfFile } from "../../read/settings/companions/files.ts";
import { isOfUse } from "../../read/settings/use.ts";
import type { Graph } from "../graph.ts";
import type { Names } from "../names/name.ts";

/** What tells where records and sources come from. */
type Ground = Pick<Graph, "records" | "sources" | "companions">;

/** The corpus that a record or a source is taken from; null for one of this corpus. */
export function companionFor({ records, sources, companions }: Ground, id: Id): Companion | null {
  if (companions.length === 0) return null;
  const file = records.get(id)?.file ?? sources.get(id)?.span.file;
  return file === undefined ? null : ownerOfFile(companions, file);
}

/** Whether an id leads into a companion corpus that cannot be read: what names it is not to blame. */
export function isInUnread(companions: readonly Companion[], id: Id): boolean {
  return companions.some((one) => one.title === null && isOfUse([one], id));
}

/** Names among which what is in a corpus that cannot be read is lost. */
export function withLostCorpora(names: Names, companions: readonly Companion[]): Names {
  if (companions.every(({ title }) => title !== null)) return names;
  return { ...names, lost: { has: (id) => names.lost.has(id) || isInUnread(companions, id) } };
}

/**
 * Findings as they are told in a corpus that uses others: what is no error in those is their own affair, and nothing is
 * mended in their files.
 */
export function toldHere(graph: Ground, findings: readonly Finding[]): readonly Finding[] {
  const { companions } = graph;
  if (companions.length === 0) return findings;
  const isTheirs = ({ about, at }: Finding): boolean =>
    (at !== null && ownerOfFile(companions, at.file) !== null) ||
    (about.length > 0 && about.every((id) => companionFor(graph, id) !== null));
  return findings.flatMap((one) => {
    if (one.level !== "error" && isTheirs(one)) return [];
    // Names are kept apart by what they begin with: that they are alike is no slip.
    if (one.rule === "near-name" && one.about.some((id) => companionFor(graph, id) !== null)) return [];
    const isMendedThere = one.fix?.edits.some(({ file }) => ownerOfFile(companions, file) !== null) ?? false;
    return [isMendedThere ? { ...one, fix: null } : one];
  });
}
