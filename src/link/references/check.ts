import type { Finding, Id } from "../../base/finding.ts";
import type { Citation, Field, Fields } from "../../read/grammar/field.ts";
import { everywhere, kindOf } from "../../read/grammar/kinds.ts";
import type { Step } from "../../read/yaml/tree.ts";
import type { AnyLinked } from "../graph.ts";
import { apartAt } from "./apart.ts";
import { withDates } from "./dates.ts";
import { withOutcomes, withPrior } from "./outcomes.ts";
import { cited, pointsTo } from "./points-to.ts";
import type { Known } from "./points-to.ts";
import { withShown } from "./shown.ts";

/** A record without its dangling references, or null when one was lost that it cannot do without. */
export function checkReferences(record: AnyLinked, known: Known, findings: Finding[]): AnyLinked | null {
  const fields: Fields = { ...kindOf(record.list).fields, ...everywhere };
  const costly = record.list === "arguments" ? ["because"] : [];
  const values = checkMap(record, record.values, fields, [], known, findings, costly);
  if (values === null || !keepsNeeds(record, values)) return null;
  const kept = values === record.values ? record : ({ ...record, values } as unknown as AnyLinked);
  if (kept.list === "claims") return withDates(kept, known, findings);
  if (kept.list === "questions") return withPrior(kept, findings);
  if (kept.list === "examinations") return withOutcomes(kept, known, findings);
  return kept.list === "talks" ? withShown(kept, known, findings) : kept;
}

/** Whether what is left still has one of the sets of fields that its kind cannot do without. */
function keepsNeeds(record: AnyLinked, values: Values): boolean {
  const needs = kindOf(record.list).needs;
  return !needs || needs.oneOf.some((set) => set.split("+").every((name) => name in values));
}

type Values = Readonly<Record<string, unknown>>;

/** Stands for a value that YAML took apart. */
const apart = Symbol("apart");

function checkMap(
  record: AnyLinked,
  values: Values,
  fields: Fields,
  path: readonly Step[],
  known: Known,
  findings: Finding[],
  costly: readonly string[],
): Values | null {
  let changed: Record<string, unknown> | null = null;
  for (const [name, value] of Object.entries(values)) {
    const field = fields[name];
    if (!field) continue;
    const here = [...path, name];
    const kept = checkValue(record, value, field, here, known, findings, costly.includes(name));
    // A citation that a comma took apart costs the record: it is never read by half.
    if (kept === apart) return null;
    if (kept === value) continue;
    if (kept === null && (field.required || costly.includes(name))) return null;
    changed ??= Object.assign(Object.create(null) as Record<string, unknown>, values);
    if (kept === null) delete changed[name];
    else changed[name] = kept;
  }
  return changed ?? values;
}

function checkValue(
  record: AnyLinked,
  value: unknown,
  field: Field,
  path: readonly Step[],
  known: Known,
  findings: Finding[],
  whole: boolean,
): unknown {
  const entries = <T>(list: readonly T[], keep: (one: T, place: number) => unknown): unknown => {
    const kept = list.map(keep).filter((one) => one !== null);
    if (kept.length === list.length && kept.every((one, place) => one === list[place])) return value;
    return kept.length === 0 || (whole && kept.length < list.length) ? null : kept;
  };
  switch (field.type) {
    case "ref":
      return pointsTo(record, value as Id, field.to, path, known, findings) ? value : null;
    case "refs":
      return entries(value as readonly Id[], (id, place) =>
        pointsTo(record, id, field.to, [...path, place], known, findings) ? id : null,
      );
    case "citation":
      return pointsTo(record, (value as Citation).key, cited, path, known, findings) ? value : null;
    case "citations":
      if (apartAt(record, value as readonly Citation[], path, known, findings)) return apart;
      return entries(value as readonly Citation[], (citation, place) =>
        pointsTo(record, citation.key, cited, [...path, place], known, findings) ? citation : null,
      );
    case "numberMap":
    case "probability": {
      if (!(value instanceof Map)) return value;
      const answers = value as ReadonlyMap<Id, number>;
      const kept = new Map(
        [...answers].filter(([id]) => pointsTo(record, id, ["claims"], path, known, findings)),
      );
      return kept.size === answers.size ? value : kept.size === 0 ? null : kept;
    }
    case "group":
      return checkMap(record, value as Values, field.fields, path, known, findings, []);
    case "items":
      return entries(value as readonly Values[], (one, place) =>
        checkMap(record, one, field.fields, [...path, place], known, findings, []),
      );
    default:
      return value;
  }
}
