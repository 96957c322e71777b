import { finding } from "../base/finding.ts";
import type { Finding, Id } from "../base/finding.ts";
import { gathered } from "../base/lists/gathered.ts";
import { coded, row, say } from "../base/text/said/said.ts";
import { spanOf } from "../read/record.ts";
import type { ArtefactRecord } from "./graph.ts";

/** Which thing is part of which. */
export interface Parts {
  readonly wholeOf: ReadonlyMap<Id, Id>;
  readonly withParts: (artefact: Id) => readonly Id[];
}

/** The tree of parts: by `part-of`, else by the id (`ring-a/post-12` is part of `ring-a`); circles are cut and told. */
export function partsOf(artefacts: readonly ArtefactRecord[], findings: Finding[]): Parts {
  const known = new Map(artefacts.map((one) => [one.id, one]));
  const wholeOf = new Map<Id, Id>();
  for (const { id, values } of artefacts) {
    const whole = values["part-of"] ?? nearestWhole(id, known);
    if (whole !== undefined) wholeOf.set(id, whole);
  }
  const settled = new Set<Id>();
  for (const artefact of artefacts) {
    const path = [artefact.id];
    for (let at = wholeOf.get(artefact.id); at !== undefined && !settled.has(at); at = wholeOf.get(at)) {
      if (path.includes(at)) {
        const circle = path.slice(path.indexOf(at));
        const message = say`Unexpected circle of parts ${row(circle.map(coded), "comma")}, expected a whole outside it`;
        findings.push(finding("bad-value", message, spanOf(artefact, "part-of"), { about: circle }));
        wholeOf.delete(artefact.id);
        break;
      }
      path.push(at);
    }
    for (const id of path) settled.add(id);
  }
  const partsIn = gathered(wholeOf.keys(), (part) => [wholeOf.get(part) ?? part]);
  const withParts = (id: Id): readonly Id[] => {
    const found: Id[] = [];
    const waiting = [id];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      found.push(next);
      waiting.push(...partsIn(next).toReversed());
    }
    return found;
  };
  return { wholeOf, withParts };
}

function nearestWhole(id: Id, known: ReadonlyMap<Id, ArtefactRecord>): Id | undefined {
  for (let slash = id.lastIndexOf("/"); slash > 0; slash = id.lastIndexOf("/", slash - 1)) {
    const whole = known.get(id.slice(0, slash));
    if (whole) return whole.id;
  }
  return undefined;
}
