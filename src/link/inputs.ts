import type { Finding, Id } from "../base/finding.ts";
import { isList } from "../base/json.ts";
import type { Json } from "../base/json.ts";
import type { Target } from "../read/grammar/field.ts";
import type { Step } from "../read/yaml/tree.ts";
import { pointsTo } from "./references/points-to.ts";
import type { Known } from "./references/points-to.ts";
import type { DerivationRecord } from "./graph.ts";

const things: readonly Target[] = ["artefacts"];
const listed: readonly Target[] = ["measurements", "observations"];

/** What each word of a selection may point to. */
const words: Readonly<Record<string, readonly Target[]>> = {
  of: things,
  by: ["scholars"],
  from: ["sources", "passages"],
  without: listed,
  prefer: ["sources"],
};

/** Checks the ids in a derivation's inputs and parameters; false when one that it lists is missing. */
export function inputReferences(record: DerivationRecord, known: Known, findings: Finding[]): boolean {
  const check = (id: Json | undefined, to: readonly Target[], path: readonly Step[]): boolean =>
    typeof id !== "string" || pointsTo(record, id.split(/\s/)[0] ?? id, to, path, known, findings);
  const entries = (value: Json, to: readonly Target[], path: readonly Step[]): boolean =>
    isList(value)
      ? value.map((id, place) => check(id, to, [...path, place])).every(Boolean)
      : check(value, to, path);

  const input = (value: Json, path: readonly Step[]): boolean => {
    if (typeof value === "string" || isList(value)) return entries(value, listed, path);
    if (value === null || typeof value !== "object") return true;
    return Object.entries(value)
      .map(([word, ids]) => {
        if (word === "number") return number(ids, [...path, word]);
        const to = words[word];
        return to === undefined || entries(ids, to, [...path, word]);
      })
      .every(Boolean);
  };
  const number = (value: Json, path: readonly Step[]): boolean => {
    if (typeof value !== "string") return true;
    const id = derivationOf(value);
    return check(id, ["derivations"], path);
  };

  // What is dated may be an event in words, which leads nowhere; of a record it must be an artefact.
  const dated = (value: Json, path: readonly Step[]): boolean => {
    if (isList(value)) return value.map((id, place) => dated(id, [...path, place])).every(Boolean);
    if (typeof value === "string") return !known.names.records.has(value) || check(value, things, path);
    if (value === null || typeof value !== "object") return true;
    return Object.entries(value)
      .map(([word, ids]) =>
        word === "of"
          ? dated(ids, [...path, word])
          : word !== "without" || entries(ids, ["relations"], [...path, word]),
      )
      .every(Boolean);
  };

  const inputs = record.values.inputs;
  if (inputs === null || typeof inputs !== "object" || isList(inputs)) return true;
  const good = Object.entries(inputs).map(([name, value]) => {
    const path = ["inputs", name];
    if (name === "of") return dated(value, path);
    if (name !== "pairs" || !isList(value)) return input(value, path);
    return value.map((pair, place) => entries(pair, listed, [...path, place])).every(Boolean);
  });
  const parameters = record.values.parameters;
  const settings =
    parameters && typeof parameters === "object" && !isList(parameters) ? Object.entries(parameters) : [];
  for (const [name, value] of settings) {
    if (value && typeof value === "object" && !isList(value) && "number" in value) {
      good.push(number(value["number"] ?? null, ["parameters", name, "number"]));
    }
  }
  return good.every(Boolean);
}

/** The derivation whose number is meant by `other-derivation.name`. */
export function derivationOf(reference: string): Id {
  const dot = reference.lastIndexOf(".");
  return dot < 0 ? reference : reference.slice(0, dot);
}

/** The derivations whose numbers a derivation takes, in its inputs or its parameters. */
export function derivationsTaken({ values }: DerivationRecord): readonly Id[] {
  const taken = new Set<Id>();
  const look = (value: Json | undefined): void => {
    if (value === undefined) return;
    if (isList(value)) value.forEach(look);
    else if (value !== null && typeof value === "object")
      for (const [word, one] of Object.entries(value))
        if (word === "number" && typeof one === "string") taken.add(derivationOf(one));
        else look(one);
  };
  look(values.inputs);
  look(values.parameters);
  return [...taken];
}
