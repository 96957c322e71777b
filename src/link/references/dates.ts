import { parseEdtf } from "../../base/date/edtf.ts";
import { finding } from "../../base/finding.ts";
import type { Finding } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Target } from "../../read/grammar/field.ts";
import { spanOf } from "../../read/record.ts";
import type { Step } from "../../read/yaml/tree.ts";
import type { ClaimRecord } from "../graph.ts";
import { pointsTo } from "./points-to.ts";
import type { Known } from "./points-to.ts";

const bounds = ["is", "after", "before"] as const;
const dated: readonly Target[] = ["claims", "artefacts"];

/** A claim with what it says of dates checked: each a date, or the id of a claim or an artefact; the others are told and left out. */
export function withDates(record: ClaimRecord, known: Known, findings: Finding[]): ClaimRecord {
  const { dates } = record.values;
  if (dates === undefined) return record;
  const checked = dates.map((one, place) => {
    const bad = bounds.filter((bound) => {
      const text = one[bound];
      return text !== undefined && !isDated(record, text, ["dates", place, bound], known, findings);
    });
    if (bad.length === 0) return one;
    return {
      event: one.event,
      ...Object.fromEntries(Object.entries(one).filter(([name]) => !bad.some((it) => it === name))),
    };
  });
  return checked.every((one, place) => one === dates[place])
    ? record
    : { ...record, values: { ...record.values, dates: checked } };
}

function isDated(
  record: ClaimRecord,
  text: string,
  path: readonly Step[],
  known: Known,
  findings: Finding[],
): boolean {
  const { names, sources, lost } = known;
  const named = names.records.has(text) || sources.has(text) || names.lost.has(text) || lost.has(text);
  if (!named && "ok" in parseEdtf(text)) return true;
  const like = /^[a-z0-9][a-z0-9/-]*$/u.test(text) && /[a-z]{2}/u.test(text);
  if (named || like) return pointsTo(record, text, dated, path, known, findings);
  const message = say`Unexpected \`${text}\`, expected a date (${"EDTF"}), or the id of a claim or an artefact`;
  findings.push(finding("bad-value", message, spanOf(record, ...path), { about: [record.id] }));
  return false;
}
