import type { Finding, Id } from "../../base/finding.ts";
import { isList } from "../../base/json.ts";
import type { Json } from "../../base/json.ts";
import type { Target } from "../../read/grammar/field.ts";
import { listNames } from "../../read/grammar/kinds.ts";
import type { Step } from "../../read/yaml/tree.ts";
import type { Linked } from "../graph.ts";
import { pointsTo } from "./points-to.ts";
import type { Known } from "./points-to.ts";

const anything: readonly Target[] = [...listNames, "sources"];

/** What each word of a step of a talk may point to. */
const words: Readonly<Record<string, readonly Target[]>> = {
  question: ["questions"],
  around: anything,
  figure: ["derivations"],
  drawing: ["artefacts"],
  image: ["images"],
};

/** A talk with what its steps show checked; a step that would show what is not there shows nothing. */
export function withShown(talk: Linked<"talks">, known: Known, findings: Finding[]): Linked<"talks"> {
  const check = (id: Json, to: readonly Target[], path: readonly Step[]): boolean =>
    typeof id !== "string" || pointsTo(talk, id as Id, to, path, known, findings);
  const all = (value: Json, to: readonly Target[], path: readonly Step[]): boolean =>
    isList(value)
      ? value
          .map((one, at) => (isMap(one) ? map(one, [...path, at]) : check(one, to, [...path, at])))
          .every(Boolean)
      : check(value, to, path);
  const map = (value: { readonly [key: string]: Json }, path: readonly Step[]): boolean =>
    Object.entries(value)
      .map(([word, ids]) => {
        const to = words[word];
        return to === undefined || all(ids, to, [...path, word]);
      })
      .every(Boolean);
  const steps = talk.values.steps.map((step, place) => {
    const { show, ...rest } = step;
    if (show === undefined) return step;
    const path = ["steps", place, "show"];
    return (isMap(show) ? map(show, path) : all(show, anything, path)) ? step : rest;
  });
  return steps.every((step, place) => step === talk.values.steps[place])
    ? talk
    : { ...talk, values: { ...talk.values, steps } };
}

function isMap(value: Json): value is { readonly [key: string]: Json } {
  return value !== null && typeof value === "object" && !isList(value);
}
