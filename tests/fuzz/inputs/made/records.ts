import type { Random } from "../../../../src/base/outcome/random.ts";
import type { Field, Fields, ListName } from "../../../../src/read/grammar/field.ts";
import { kindOf, listNames } from "../../../../src/read/grammar/kinds.ts";
import { few, oneOf, times } from "../input.ts";
import { oddNames, oddNumbers } from "../mutate/signs.ts";

/** A file of records of every list, whose every reference leads to the next of them and at last to the first. */
export function circles(random: Random): string {
  const size = 1 + few(random, 6);
  const lists = random.below(2) === 0 ? [oneOf(random, listNames)] : listNames;
  const next = (list: string, place: number): string => `${list}-${(place + 1) % size}`;
  const parts = lists.map((list) => {
    const records = times(size, (place) => {
      const to = (field: Field): string =>
        "to" in field ? next(oneOf(random, [...field.to, list]), place) : next(list, place);
      return `  - ${JSON.stringify({ ...filled(kindOf(list).fields, to, random), ...named(list, place) })}\n`;
    });
    return `${list}:\n${records.join("")}`;
  });
  return parts.join("");
}

const named = (list: ListName, place: number): object =>
  "id" in kindOf(list).fields ? { id: `${list}-${place}` } : {};

/** Values for the fields of a record, all that must be there and most of the others. */
function filled(fields: Fields, to: (field: Field) => string, random: Random): object {
  const given = Object.entries(fields).filter(([, field]) => field.required || random.below(3) > 0);
  return Object.fromEntries(given.map(([name, field]) => [name, valueFor(field, to, random)]));
}

function valueFor(field: Field, to: (field: Field) => string, random: Random): unknown {
  if (random.below(60) === 0) return oneOf(random, [[], {}, "", [[]], ...oddNames, ...oddNumbers]);
  switch (field.type) {
    case "choice":
      return oneOf(random, field.of);
    case "group":
      return filled(field.fields, to, random);
    case "items":
      return times(1 + few(random, 2), () => filled(field.fields, to, random));
    case "named":
      return { [to(field)]: filled(field.fields, to, random) };
    case "json":
      return { values: { of: to(field), dimension: "depth" } };
    case "number":
    case "amount":
    case "whole":
      return oneOf(random, ["1", "0", "3", oneOf(random, oddNumbers)]);
    case "year":
    case "date":
      return oneOf(random, ["1968", "480 BC", "1968/1970", to(field), oneOf(random, oddNumbers)]);
    case "quantity":
    case "quantities":
      return oneOf(random, ["3.2 m", "12 ± 1 cm", "≥ 4 kg", "17", oneOf(random, oddNumbers)]);
    case "flag":
      return oneOf(random, ["true", "false"]);
    case "textMap":
    case "numberMap":
    case "probability":
      return { [to(field)]: oneOf(random, ["0.5", "1", oneOf(random, oddNumbers)]) };
    default:
      return random.below(8) === 0 ? times(1 + few(random, 4), () => to(field)) : to(field);
  }
}

/** Derivations that take each other's numbers, with settings and inputs of every plug-in. */
export function numbersInCircles(random: Random): string {
  const size = 1 + few(random, 30);
  const plugin = (): string =>
    oneOf(random, "unit-fit scaling spacing clearance silence counts chronology nothing".split(" "));
  const value = (): string =>
    oneOf(random, [
      `{ number: d${random.below(size + 1)}.p }`,
      "3 m",
      "0.4 m",
      "2",
      oneOf(random, oddNumbers),
    ]);
  const inputs = (): string =>
    oneOf(random, [
      "{ values: { of: a, dimension: depth } }",
      "{ larger: { of: a, dimension: depth }, smaller: { of: a/b, dimension: depth } }",
      "{ pairs: [[m0, m1], [m1, m0]] }",
      "{ gaps: [m0, m1, m2], other: [m2] }",
      "{ socket: { of: a }, peg: { of: a } }",
      "{ reported: [], known: [o], occasions: { of: a } }",
      "{ of: [a, a/b] }",
      "[]",
    ]);
  const derived = times(
    size,
    (place) =>
      `  - { id: d${place}, plugin: ${plugin()}, inputs: ${inputs()}, parameters: { draws: 49, unit: ${value()}, low: ${value()}, high: ${value()}, period: ${value()}, per: ${value()} }, bears-on: [{ claim: c, supports: { p: "< 0.05" }, disputes: { p: "> ${oneOf(random, oddNumbers)}" } }] }\n`,
  );
  const values = times(
    3 + few(random, 12),
    (place) =>
      `  - { id: m${place}, of: ${oneOf(random, ["a", "a/b"])}, dimension: depth, value: ${JSON.stringify(random.below(4) === 0 ? oneOf(random, oddNumbers) : `${random.below(90) / 10} m`)} }\n`,
  );
  return `artefacts: [{ id: a, name: a }, { id: a/b, name: b }]\nclaims: [{ id: c, text: t }]\nobservations: [{ id: o, of: a, text: t, feature: f }]\nmeasurements:\n${values.join("")}derivations:\n${derived.join("")}`;
}

/** Arguments at random over a few claims and observations: for, against, on each other and on themselves. */
export function reasoning(random: Random): string {
  const [claims, steps] = [2 + few(random, 10), 1 + few(random, 40)];
  const any = (): string =>
    oneOf(random, [`c${random.below(claims)}`, `g${random.below(steps)}`, "o", "p", "nowhere"]);
  const list = (): string => `[${times(1 + few(random, 3), any).join()}]`;
  return `artefacts: [{ id: a, name: a }]
observations: [{ id: o, of: a, text: t }]
scholars: [{ id: s, name: S }]
positions: [{ id: p, who: s, claim: c0, stance: holds }]
questions: [{ id: q, text: t, answers: [${times(claims, (n) => `c${n}`).join()}] }]
claims:
${times(claims, (n) => `  - { id: c${n}, text: t, incompatible-with: [c${random.below(claims)}] }\n`).join("")}arguments:
${times(steps, (n) => `  - { id: g${n}, because: ${list()}, ${random.below(2) === 0 ? `therefore: c${random.below(claims)}` : `against: ${list()}`}, strength: ${oneOf(random, ["weak", "ordinary", "strong"])}, scheme: ${oneOf(random, ["silence", "other", "trace"])} }\n`).join("")}`;
}
