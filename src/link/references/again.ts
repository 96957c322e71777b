import type { Finding, Id } from "../../base/finding.ts";
import type { Source } from "../../read/bibliography/read.ts";
import type { AnyLinked } from "../graph.ts";
import { checkReferences } from "./check.ts";
import type { Known } from "./points-to.ts";

/** What could be referred to when records were last checked, and the records of which it is not sure that every reference led somewhere. */
interface Checked {
  readonly records: ReadonlyMap<Id, AnyLinked>;
  readonly sources: ReadonlyMap<Id, Source>;
  /** All others lead nowhere but to what there was. */
  readonly unsure: Set<Id>;
}

/** After an edit nearly all records are as they were, and refer to what is still there: those are not checked again. */
let before: Checked = { records: new Map(), sources: new Map(), unsure: new Set() };

/** Checks references as `checkReferences` does, for all records of a corpus of which none is lost yet. */
export function checkedAgain(
  known: Pick<Known, "names" | "sources">,
): (record: AnyLinked, known: Known, findings: Finding[]) => AnyLinked | null {
  const { records } = known.names;
  const { sources } = known;
  const was = isAllStillThere(before, records, sources) ? before : null;
  const unsure = new Set<Id>();
  before = { records, sources, unsure };
  // By what it says: a record that moved in its file is another object.
  const isWhole = ({ id, values }: AnyLinked): boolean =>
    was?.records.get(id)?.values === values && !was.unsure.has(id);
  return (record, all, findings) => {
    if (isWhole(record)) return record;
    const told = findings.length;
    const checked = checkReferences(record, all, findings);
    if (checked !== record || findings.length > told || !dependsOnIdsAlone(record)) unsure.add(record.id);
    return checked;
  };
}

/** What is more than before takes nothing from a reference that led somewhere. */
function isAllStillThere(was: Checked, records: Checked["records"], sources: Checked["sources"]): boolean {
  for (const [id, { list }] of was.records) if (records.get(id)?.list !== list) return false;
  for (const key of was.sources.keys()) if (!sources.has(key)) return false;
  return true;
}

/** Outcomes are held against the answers of questions; a date may come to be the name of something. */
function dependsOnIdsAlone(record: AnyLinked): boolean {
  return record.list !== "examinations" && !(record.list === "claims" && record.values.dates !== undefined);
}
