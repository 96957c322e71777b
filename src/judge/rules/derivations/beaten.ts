import type { Edit, Finding, Id } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Hole, Said } from "../../../base/text/said/said.ts";
import { derive } from "../../../derive/derive.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Run } from "../../../derive/run.ts";
import type { DerivationRecord } from "../../../link/graph.ts";
import { quoted } from "../../../read/yaml/split.ts";
import { valueAt } from "../../../read/yaml/tree.ts";
import type { Node } from "../../../read/yaml/tree.ts";
import type { Rule, View } from "../rule.ts";
import { chained } from "../../../base/text/said/rows.ts";
import { byCause, labels, quotedLabel, tell } from "../tell.ts";

/** Numbers whose inputs an argument beat, with what they would be without those. */
export const beatenInput: Rule = {
  id: "beaten-input",
  level: "warning",
  title: say`A derivation used a measurement that does not hold.`,
  doc: say`An argument against the measurement works, so the number does not hold either. Leave the measurement out with \`without\` to go on without it (the change is offered, with the number it gives), or answer the argument: the choice is yours.`,
  find: (view) => {
    const missing: Run[] = [];
    const found = [...view.derivations.byId.values()].flatMap((derived): readonly Beaten[] => {
      const record = view.graph.records.get(derived.id);
      if (derived.status !== "computed" || record?.list !== "derivations") return [];
      const beaten = derived.used.filter((id) => {
        const standing = view.judgement.standings.get(id);
        return standing !== undefined && standing !== "stands";
      });
      if (beaten.length === 0) return [];
      const leaving = beaten.filter((id) => view.graph.records.get(id)?.list === "measurements");
      const { other, run } =
        leaving.length === beaten.length ? without(view, derived.id, leaving) : { other: null, run: null };
      if (run) missing.push(run);
      return [{ derived, beaten, other, edits: editsOf(record, leaving) }];
    });
    const findings = byCause(found, ({ beaten }) => beaten.join("\n")).map((group) => told(view, group));
    return { findings, missing };
  },
};

/** A derivation, what it used that does not hold, and what it would be without. */
interface Beaten {
  readonly derived: Derived;
  readonly beaten: readonly Id[];
  readonly other: Derived | null;
  readonly edits: readonly Edit[];
}

function told({ graph }: View, group: readonly [Beaten, ...Beaten[]]): Finding {
  const [{ beaten }] = group;
  const one = beaten.length === 1;
  const names = row(group.map(({ derived }) => quotedLabel(graph, derived.id)));
  const inputs = labels(graph, beaten);
  const used = one
    ? say`${names} used ${inputs}, which does not hold, expected evidence that does`
    : say`${names} used ${inputs}, which do not hold, expected evidence that does`;
  const numbers = group.flatMap(({ derived, other }): readonly Said[] => {
    if (other === null) return [];
    const told = numbersOf(derived, other);
    return [group.length > 1 ? say`in ${quotedLabel(graph, derived.id)} ${told}` : say`${told}`];
  });
  const message = numbers.length > 0 ? say`${used}; ${withoutThem(one, numbers)}.` : say`${used}.`;
  const edits = group.flatMap((it) => it.edits);
  // Only where every derivation is mended by it: half of a finding is none.
  const whole = group.every((it) => it.edits.length > 0);
  const fix = whole
    ? { fix: { label: one ? say`Leave it out` : say`Leave them out`, edits, choice: true as const } }
    : {};
  const about = [...group.map(({ derived }) => derived.id), ...beaten];
  return tell(graph, "beaten-input", "warning", about, message, { path: ["inputs"], ...fix });
}

/** The derivation as it would be without some measurements, or the run that would tell. */
function without(
  { graph, plugins, memo, lens }: View,
  id: Id,
  beaten: readonly Id[],
): { readonly other: Derived | null; readonly run: Run | null } {
  const asked = { ...lens, instead: [...(lens.instead ?? []), { derivation: id, without: beaten }] };
  const { byId, missing } = derive(graph, plugins, memo, asked, [id]);
  const other = byId.get(id) ?? null;
  if (other?.status !== "pending") return { other, run: null };
  return { other: null, run: missing.find((run) => run.key === other.run?.key) ?? null };
}

function withoutThem(one: boolean, numbers: readonly Said[]): Said {
  const all = chained(numbers, (before, next) => say`${before}; ${next}`);
  return one ? say`without it, ${all}` : say`without them, ${all}`;
}

/** The numbers that change most visibly, the first three: `p 0.031 instead of 0.004`. */
function numbersOf(derived: Derived, other: Derived): Hole {
  if (other.status !== "computed") return say`it would be refused`;
  const changed = Object.entries(derived.numbers).flatMap(([name, { value }]) => {
    const now = other.numbers[name]?.value;
    return now === undefined || shown(now) === shown(value)
      ? []
      : [say`${name} would be ${shown(now)} instead of ${shown(value)}`];
  });
  return changed.length === 0 ? say`its numbers stay` : row(changed.slice(0, 3));
}

function shown(value: number): string {
  return Number.isInteger(value) ? String(value) : value.toPrecision(3);
}

/** Edits that leave measurements out of every selection of a derivation that is written so that it can be said in place. */
function editsOf(record: DerivationRecord, beaten: readonly Id[]): readonly Edit[] {
  const inputs = valueAt(record.node, "inputs");
  if (inputs?.is !== "map") return [];
  if (beaten.length === 0) return [];
  return inputs.entries.flatMap(({ key, value }): readonly Edit[] => {
    const edit = (node: { readonly start: number; readonly end: number }, text: string): readonly Edit[] => [
      { file: record.file, start: node.start, end: node.end, text },
    ];
    if (value.is === "list" && key !== "pairs") {
      const left = textsIn(value).filter((id) => !beaten.includes(id));
      return left.length === value.items.length || left.length === 0 || !inOneLine(value)
        ? []
        : edit(value, listed(left));
    }
    const [first] = value.is === "map" ? value.entries : [];
    if (value.is !== "map" || !first || valueAt(value, "of") === null) return [];
    const already = valueAt(value, "without");
    if (already && !inOneLine(already)) return [];
    if (already) return edit(already, listed([...textsIn(already), ...beaten]));
    const { parting } = value;
    const at = { start: first.keyStart, end: first.keyStart };
    return parting === undefined ? [] : edit(at, `without: ${listed(beaten)}${parting}`);
  });
}

/** Whether ids are written in one line with nothing else between them, so that nothing is lost when they are written anew. */
function inOneLine(node: Node): boolean {
  if (node.is !== "list") return node.is === "text";
  const written = node.items.reduce((sum, item) => sum + item.end - item.start + 2, 0);
  return node.items.every((item) => item.is === "text") && node.end - node.start === written;
}

/** Ids as a list in one line; a made name stands in quotes. */
function listed(ids: readonly Id[]): string {
  return `[${ids.map((id) => (/^[a-z0-9/-]+$/u.test(id) ? id : quoted(id))).join(", ")}]`;
}

function textsIn(node: Node): readonly string[] {
  if (node.is === "list") return node.items.flatMap(textsIn);
  return node.is === "text" ? [node.text] : [];
}
