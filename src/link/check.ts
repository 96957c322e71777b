import { finding } from "../base/finding.ts";
import type { Finding, Id } from "../base/finding.ts";
import { nearest } from "../base/nearest.ts";
import type { Source } from "../read/bibliography/read.ts";
import type { Citation, Field, Fields, Target } from "../read/grammar/field.ts";
import { everywhere, kindOf } from "../read/grammar/kinds.ts";
import { spanOf } from "../read/record.ts";
import type { Step } from "../read/yaml/tree.ts";
import type { AnyLinked } from "./graph.ts";
import type { Names } from "./name.ts";

/** What references are checked against. */
export interface Known {
  readonly names: Names;
  readonly sources: ReadonlyMap<Id, Source>;
  /** Records lost so far: what refers to them is not blamed again. */
  readonly lost: ReadonlySet<Id>;
}

const locatorWord = /^(pp?|figs?|pls?|nos?|nn?|cols?|chs?|vols?|tabs?|§+)\.?$/i;

/** A record without its dangling references, or null when one was lost that it cannot do without. */
export function checkReferences(record: AnyLinked, known: Known, findings: Finding[]): AnyLinked | null {
  const fields: Fields = { ...kindOf(record.list).fields, ...everywhere };
  const costly = record.list === "arguments" ? ["because"] : [];
  const values = checkMap(record, record.values, fields, [], known, findings, costly);
  if (values === null || !keepsNeeds(record, values)) return null;
  return values === record.values ? record : ({ ...record, values } as unknown as AnyLinked);
}

/** Whether what is left still has one of the sets of fields that its kind cannot do without. */
function keepsNeeds(record: AnyLinked, values: Values): boolean {
  const needs = kindOf(record.list).needs;
  return !needs || needs.oneOf.some((set) => set.split("+").every((name) => name in values));
}

type Values = Readonly<Record<string, unknown>>;

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
      return entries(value as readonly Citation[], (citation, place) =>
        pointsTo(record, citation.key, cited, [...path, place], known, findings) ? citation : null,
      );
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

const cited: readonly Target[] = ["sources", "passages"];

/** Tells whether an id leads to something of the right kind, and says so when it does not. */
export function pointsTo(
  record: AnyLinked,
  id: Id,
  to: readonly Target[],
  path: readonly Step[],
  known: Known,
  findings: Finding[],
): boolean {
  const { names, sources, lost } = known;
  const at = spanOf(record, ...path);
  const about = [record.id];
  const target = names.records.get(id);
  if (target && !lost.has(id)) {
    if (names.shared.has(id)) {
      const message = `Unstable reference \`${id}\`, expected a record with an id of its own: several are called so`;
      const insert = { file: target.file, start: target.node.start, end: target.node.start };
      const own = id.replace(/[^a-z0-9/]+/g, "-");
      const fix = { label: `Name it \`${own}\``, edits: [{ ...insert, text: idText(target, own) }] };
      findings.push(finding("unstable-reference", message, at, { level: "note", about, fix }));
    }
    if ((to as readonly string[]).includes(target.list)) return true;
    const message = `Unexpected ${kindOf(target.list).singular} \`${id}\`, expected ${expected(to)}`;
    findings.push(finding("unknown-reference", message, at, { about }));
    return false;
  }
  if (sources.has(id)) {
    if (to.includes("sources")) return true;
    const message = `Unexpected source \`${id}\`, expected ${expected(to)}`;
    findings.push(finding("unknown-reference", message, at, { about }));
    return false;
  }
  if (lost.has(id) || names.lost.has(id)) return false;
  if (locatorWord.test(id) && to === cited) {
    const message = `Unexpected \`${id}\` as a source, expected quotes round a citation that holds a comma`;
    findings.push(finding("split-value", message, at, { about }));
    return false;
  }
  const near = nearest(id, candidates(to, known));
  const only = near.length === 1 ? near[0] : undefined;
  const fix =
    only === undefined
      ? null
      : { label: `Write ${only}`, edits: [{ ...at, end: at.start + id.length, text: only }] };
  const hint = near.length > 0 ? ` such as ${near.map((name) => `\`${name}\``).join(" or ")}` : "";
  findings.push(
    finding("unknown-reference", `Unknown id \`${id}\`, expected ${expected(to)}${hint}`, at, { about, fix }),
  );
  return false;
}

/** The text that gives a record an id, put before its first field in the manner of its first line. */
function idText(record: AnyLinked, id: Id): string {
  const first = record.node.entries[0];
  const flow = first !== undefined && record.node.start < first.keyStart;
  return flow ? "" : `id: ${id}\n${" ".repeat(4)}`;
}

function candidates(to: readonly Target[], known: Known): readonly Id[] {
  const ids: Id[] = to.includes("sources") ? [...known.sources.keys()] : [];
  for (const record of known.names.records.values()) {
    if ((to as readonly string[]).includes(record.list)) ids.push(record.id);
  }
  return ids;
}

function expected(to: readonly Target[]): string {
  const words = to.map((target) => (target === "sources" ? "source" : kindOf(target).singular));
  const article = /^[aeiou]/.test(words[0] ?? "") ? "an" : "a";
  return words.length <= 3 ? `${article} ${words.join(" or ")}` : `something that can be referred to here`;
}
