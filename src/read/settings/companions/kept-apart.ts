import { finding } from "../../../base/finding.ts";
import type { Finding, Id, Span } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Source } from "../../bibliography/read.ts";
import type { AnyRecord, Spoilt } from "../../record.ts";
import { nodeAt } from "../../yaml/tree.ts";
import { isOfUse } from "../use.ts";
import type { Use } from "../use.ts";

/** What the files of a corpus itself give. */
export interface Own {
  readonly records: readonly AnyRecord[];
  readonly sources: readonly Source[];
  readonly spoilt: readonly Spoilt[];
}

/** What a corpus has itself without what is called as if it were of one that it uses, which is told and not loaded. */
export function keptApart(own: Own, use: readonly Use[]): Own & { readonly findings: readonly Finding[] } {
  const isOther = (id: Id | null): boolean => id !== null && isOfUse(use, id);
  const records = own.records.filter(({ id }) => isOther(id));
  const keys = own.sources.filter(({ key }) => isOther(key));
  if (records.length === 0 && keys.length === 0) return { ...own, findings: [] };
  return {
    records: own.records.filter(({ id }) => !isOther(id)),
    sources: own.sources.filter(({ key }) => !isOther(key)),
    spoilt: [
      ...own.spoilt,
      ...records.map(({ id, list, file, node }) => ({ id: id ?? "", written: { list, file, node } })),
      ...keys.map(({ key }) => ({ id: key })),
    ],
    findings: [
      ...keys.map(({ key, keySpan }) => taken(key, keySpan)),
      ...records.map(({ id, file, node }) => {
        const { start, end } = nodeAt(node, ["id"]);
        return taken(id ?? "", { file, start, end });
      }),
    ],
  };
}

function taken(id: Id, at: Span): Finding {
  const begun = `${id.split("/")[0] ?? id}/`;
  const message = say`Unexpected id \`${id}\`, expected another name: what begins with \`${begun}\` is of a corpus that is used`;
  return finding("duplicate-id", message, at, { about: [id] });
}
