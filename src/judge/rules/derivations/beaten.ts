import type { Edit, Id } from "../../../base/finding.ts";
import { derive } from "../../../derive/derive.ts";
import type { Derived } from "../../../derive/derive.ts";
import type { Run } from "../../../derive/run.ts";
import type { DerivationRecord } from "../../../link/graph.ts";
import { labelOf } from "../../../link/label.ts";
import { valueAt } from "../../../read/yaml/tree.ts";
import type { Node } from "../../../read/yaml/tree.ts";
import type { Rule, View } from "../rule.ts";
import { inWords, tell } from "../tell.ts";

/** Numbers whose inputs an argument beat, with what they would be without those. */
export const beatenInput: Rule = {
  id: "beaten-input",
  level: "warning",
  title: "A derivation used a measurement that does not hold.",
  doc: "An argument against the measurement works, so the number does not hold either. Leave the measurement out with `without` to go on without it (the edit is offered, with the number it gives), or answer the argument.",
  find: (view) => {
    const { graph, derivations, judgement } = view;
    const missing: Run[] = [];
    const findings = [...derivations.byId.values()].flatMap((derived) => {
      const record = graph.records.get(derived.id);
      if (derived.status !== "computed" || record?.list !== "derivations") return [];
      const beaten = derived.used.filter((id) => {
        const standing = judgement.standings.get(id);
        return standing !== undefined && standing !== "stands";
      });
      if (beaten.length === 0) return [];
      const leaving = beaten.filter((id) => graph.records.get(id)?.list === "measurements");
      const { other, run } =
        leaving.length === beaten.length ? without(view, derived.id, leaving) : { other: null, run: null };
      if (run) missing.push(run);
      const names = inWords(beaten.map((id) => labelOf(graph, id)));
      const them = beaten.length === 1 ? "it" : "them";
      const message = `“${labelOf(graph, derived.id)}” used ${names}, which ${beaten.length === 1 ? "does" : "do"} not hold, expected evidence that does${other ? `; without ${them}, ${numbersOf(derived, other)}` : ""}.`;
      const edits = editsOf(record, leaving);
      const fix = edits.length > 0 ? { fix: { label: `Leave ${them} out`, edits } } : {};
      const more = { path: ["inputs"], ...fix };
      return [tell(graph, "beaten-input", "warning", [derived.id, ...beaten], message, more)];
    });
    return { findings, missing };
  },
};

/** The derivation as it would be without some measurements, or the run that would tell. */
function without(
  { graph, plugins, memo, lens }: View,
  id: Id,
  beaten: readonly Id[],
): { readonly other: Derived | null; readonly run: Run | null } {
  const asked = { ...lens, instead: [...(lens.instead ?? []), { derivation: id, without: beaten }] };
  const { byId, missing } = derive(graph, plugins, memo, asked, (one) => one === id);
  const other = byId.get(id) ?? null;
  if (other?.status !== "pending") return { other, run: null };
  return { other: null, run: missing.find((run) => run.key === other.run?.key) ?? null };
}

/** The numbers that change most visibly, the first three: `p 0.031 instead of 0.004`. */
function numbersOf(derived: Derived, other: Derived): string {
  if (other.status !== "computed") return "it would be refused";
  const changed = Object.entries(derived.numbers).flatMap(([name, { value }]) => {
    const now = other.numbers[name]?.value;
    return now === undefined || now === value
      ? []
      : [`${name} would be ${shown(now)} instead of ${shown(value)}`];
  });
  return changed.length === 0 ? "its numbers stay" : inWords(changed.slice(0, 3));
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
      return left.length === value.items.length ? [] : edit(value, `[${left.join(", ")}]`);
    }
    const [first] = value.is === "map" ? value.entries : [];
    if (value.is !== "map" || !first || valueAt(value, "of") === null) return [];
    const already = valueAt(value, "without");
    if (already) return edit(already, `[${[...textsIn(already), ...beaten].join(", ")}]`);
    // Where a block begins its own line, the line's indentation is not known here.
    const flow = value.start < first.keyStart;
    const at = { start: first.keyStart, end: first.keyStart };
    return flow ? edit(at, `without: [${beaten.join(", ")}], `) : [];
  });
}

function textsIn(node: Node): readonly string[] {
  if (node.is === "list") return node.items.flatMap(textsIn);
  return node.is === "text" ? [node.text] : [];
}
