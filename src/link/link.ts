import { finding } from "../base/finding.ts";
import type { Finding, Id } from "../base/finding.ts";
import type { QuantityKind } from "../base/quantity.ts";
import { say } from "../base/text/said/said.ts";
import type { Source } from "../read/bibliography/read.ts";
import type { ListName } from "../read/grammar/field.ts";
import type { Reading } from "../read/read.ts";
import { dimensionKinds, namesOf, valueTrouble } from "./dimension.ts";
import type { AnyLinked, Graph, Linked } from "./graph.ts";
import { inputReferences } from "./inputs.ts";
import { nameRecords } from "./names/name.ts";
import { isInUnread, withLostCorpora } from "./origin/companions.ts";
import { authorship } from "./origin/people.ts";
import { provenanceOf } from "./origin/provenance.ts";
import { besideRecords, withReplaced } from "./origin/replaced.ts";
import type { Tied } from "./origin/replaced.ts";
import { partsOf } from "./parts.ts";
import { checkedAgain } from "./references/again.ts";
import { checkReferences } from "./references/check.ts";
import { misplacedSettings } from "./references/settings.ts";
import { tiesIn } from "./ties/ties.ts";

/**
 * Ties records to one another: an immutable graph in which every reference leads somewhere. What was tied before is
 * taken over where an edit ties nothing otherwise.
 */
export function link(reading: Reading, before?: Tied): Graph {
  return withReplaced(before, reading) ?? tied(reading);
}

function tied(reading: Reading): Graph {
  const { settings } = reading;
  const findings: Finding[] = [];
  const sources = uniqueSources(reading.sources, findings);
  const names = withLostCorpora(
    nameRecords(reading.records, sources, reading.spoilt),
    reading.companions ?? [],
  );
  for (const one of names.findings) findings.push(one);
  const tying = withoutDangling(names.records, sources, names, findings);

  const lists = listsOf(tying);
  const listIn = <L extends ListName>(list: L): readonly Linked<L>[] =>
    (lists.get(list) ?? []) as unknown as readonly Linked<L>[];
  const met = listIn("measurements");
  const dimensionName = namesOf(
    settings.dimensions,
    met.map((record) => record.values.dimension),
  );
  const kinds = dimensionKinds(settings.dimensions, met, dimensionName);
  const anySign = new Set(settings.dimensions.filter((one) => one.anySign).map((one) => one.name));
  const troubled = new Set<Id>();
  for (const record of met) {
    const name = dimensionName(record.values.dimension);
    const trouble = valueTrouble(record, name, kinds.get(name), anySign.has(name));
    if (!trouble) continue;
    findings.push(trouble);
    troubled.add(record.id);
  }
  const kept = troubled.size === 0 ? tying : new Map([...tying].filter(([id]) => !troubled.has(id)));
  if (troubled.size > 0)
    lists.set(
      "measurements",
      met.filter(({ id }) => !troubled.has(id)),
    );
  const kindOf = (name: string): QuantityKind | null => kinds.get(name) ?? null;
  const equalities = tiesIn(settings, {
    met: met.map((record) => record.values.dimension),
    nameOf: dimensionName,
    kindOf,
  });
  findings.push(...equalities.findings);
  const featureName = namesOf(
    [],
    listIn("observations").flatMap((record) => record.values.feature ?? []),
  );

  const parts = partsOf(listIn("artefacts"), findings);
  const authors = authorship(listIn("scholars"));
  // Works of the same people have the same list of their names.
  const authorsKnown = new Map<Source["names"], readonly Id[]>();
  const authorsOf = (key: Id): readonly Id[] => {
    const source = sources.get(key);
    if (!source) return [];
    const known = authorsKnown.get(source.names) ?? authors(source).scholars;
    authorsKnown.set(source.names, known);
    return known;
  };
  const isLost = (id: Id): boolean => isInUnread(reading.companions ?? [], id);
  return {
    settings,
    sources,
    records: kept,
    ...besideRecords(reading),
    leftOut: kept === names.records ? [] : [...names.records.values()].filter((one) => !kept.has(one.id)),
    list: listIn,
    provenance: provenanceOf(kept, sources, authorsOf),
    authorsOf,
    wholeOf: parts.wholeOf,
    withParts: parts.withParts,
    dimensionName,
    dimensionKind: kindOf,
    ties: equalities.ties,
    featureName,
    rivalsOf: rivals(listIn("claims"), listIn("questions")),
    findings: [...findings, ...misplacedSettings(settings, kept, sources, isLost)],
    supposed: null,
  };
}

function listsOf(records: ReadonlyMap<Id, AnyLinked>): Map<ListName, readonly AnyLinked[]> {
  const lists = new Map<ListName, AnyLinked[]>();
  for (const record of records.values()) {
    const list = lists.get(record.list);
    if (list) list.push(record);
    else lists.set(record.list, [record]);
  }
  return lists;
}

function uniqueSources(all: readonly Source[], findings: Finding[]): ReadonlyMap<Id, Source> {
  const sources = new Map<Id, Source>();
  for (const source of all) {
    if (sources.has(source.key)) {
      const message = say`Duplicate key \`${source.key}\` in the bibliographies, expected another; the first is kept`;
      findings.push(finding("duplicate-id", message, source.keySpan, { about: [source.key] }));
    } else sources.set(source.key, source);
  }
  return sources;
}

/**
 * Drops what refers to nothing, and what cannot do without it, until nothing more is lost; where all is well it is the same
 * map as before, which takes the room of a twentieth of what all records say.
 */
function withoutDangling(
  named: ReadonlyMap<Id, AnyLinked>,
  sources: ReadonlyMap<Id, Source>,
  names: ReturnType<typeof nameRecords>,
  findings: Finding[],
): ReadonlyMap<Id, AnyLinked> {
  let kept = named;
  const copied = (): Map<Id, AnyLinked> => {
    const copy = kept === named ? new Map(named) : (kept as Map<Id, AnyLinked>);
    kept = copy;
    return copy;
  };
  const lost = new Set<Id>();
  const known = { names, sources, lost };
  const checkFirst = checkedAgain(known);
  for (let round = 0, again = true; again; round++) {
    again = false;
    // Only the first round tells: later ones meet nothing but what was lost in the rounds before.
    const said: Finding[] = round === 0 ? findings : [];
    const check = round === 0 ? checkFirst : checkReferences;
    for (const record of kept.values()) {
      const checked = check(record, known, said);
      const whole =
        checked?.list === "derivations" && round === 0 ? inputReferences(checked, known, said) : true;
      if (checked && whole) {
        if (checked !== record) copied().set(record.id, checked);
        continue;
      }
      copied().delete(record.id);
      lost.add(record.id);
      again = true;
    }
  }
  return kept;
}

/** Claims that cannot be right together: named as incompatible by either, or answers of one exclusive question. */
function rivals(
  claims: readonly Linked<"claims">[],
  questions: readonly Linked<"questions">[],
): (claim: Id) => readonly Id[] {
  const lists = new Map([...rivalSets(claims, questions)].map(([claim, others]) => [claim, [...others]]));
  return (claim) => lists.get(claim) ?? [];
}

function rivalSets(
  claims: readonly Linked<"claims">[],
  questions: readonly Linked<"questions">[],
): ReadonlyMap<Id, ReadonlySet<Id>> {
  const sets = new Map<Id, Set<Id>>();
  const both = (a: Id, b: Id): void => {
    sets.set(a, (sets.get(a) ?? new Set<Id>()).add(b));
    sets.set(b, (sets.get(b) ?? new Set<Id>()).add(a));
  };
  for (const claim of claims)
    for (const other of claim.values["incompatible-with"] ?? []) both(claim.id, other);
  for (const { values } of questions) {
    if (values.exclusive === false) continue;
    for (const a of values.answers) for (const b of values.answers) if (a !== b) both(a, b);
  }
  return sets;
}
