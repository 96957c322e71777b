import { randomFrom } from "../../src/base/outcome/random.ts";
import type { Computation, Plugin, Refusal } from "../../src/plugin.ts";
import type { SourceFile } from "../../src/read/source-file.ts";

export type Strength = "weak" | "ordinary" | "strong";
export type Stance = "holds" | "rejects" | "doubts" | "leaves-open";

export interface CaseArgument {
  readonly id: string;
  readonly because: readonly string[];
  readonly therefore?: string;
  readonly against?: readonly string[];
  readonly strength: Strength;
  readonly scheme?: "silence";
}

export interface CaseDerivation {
  readonly id: string;
  readonly plugin: "echo" | "silence";
  readonly values: readonly string[];
  /** Another derivation whose number it takes. */
  readonly after?: string;
  readonly p: number;
  readonly refuses: boolean;
  readonly bearsOn: readonly { readonly claim: string; readonly strength: Strength }[];
}

/** A small corpus as plain data, before it is written into files or into rules. */
export interface Case {
  readonly claims: readonly { readonly id: string; readonly incompatible: readonly string[] }[];
  readonly questions: readonly {
    readonly id: string;
    readonly answers: readonly string[];
    readonly exclusive: boolean;
  }[];
  readonly observations: readonly { readonly id: string; readonly present: "true" | "not-reported" }[];
  readonly measurements: readonly string[];
  readonly derivations: readonly CaseDerivation[];
  readonly positions: readonly {
    readonly id: string;
    readonly who: string;
    readonly claim: string;
    readonly stance: Stance;
    readonly year: number;
  }[];
  readonly arguments: readonly CaseArgument[];
  readonly testimony: boolean;
}

/** A random corpus from a seed: every kind of attack that the format knows turns up among a few hundred. */
export function randomCase(seed: number): Case {
  const random = randomFrom(seed);
  const chance = (share: number): boolean => random.uniform() < share;
  const pick = <T>(list: readonly T[]): T => list[random.below(list.length)]!;
  const some = <T>(list: readonly T[], most: number): readonly T[] => [
    ...new Set(Array.from({ length: 1 + random.below(most) }, () => pick(list))),
  ];
  const ids = (prefix: string, least: number, more: number): readonly string[] =>
    Array.from({ length: least + random.below(more) }, (_, n) => `${prefix}${n}`);
  const strength = (): Strength => (chance(0.6) ? "ordinary" : chance(0.5) ? "weak" : "strong");

  const claims = ids("c", 3, 4);
  const measurements = ids("m", 1, 3);
  const observations = ids("o", 2, 3).map((id) => ({
    id,
    present: chance(0.25) ? ("not-reported" as const) : ("true" as const),
  }));
  const derivations: CaseDerivation[] = ids("d", 0, 4).map((id, n) => ({
    id,
    plugin: chance(0.4) ? "silence" : "echo",
    values: some(measurements, 2),
    ...(n > 0 && chance(0.3) ? { after: `d${random.below(n)}` } : {}),
    p: pick([0.01, 0.2, 0.9]),
    refuses: chance(0.15),
    bearsOn: some(claims, 2).map((claim) => ({ claim, strength: strength() })),
  }));
  const positions = ids("p", 0, 4).map((id, n) => ({
    id,
    who: pick(["s0", "s1"]),
    claim: pick(claims),
    stance: pick(["holds", "holds", "rejects", "doubts", "leaves-open"] as const),
    year: 1900 + n,
  }));
  const argumentIds = ids("a", 2, 6);
  const evidence = [
    ...observations.map((one) => one.id),
    ...measurements,
    ...derivations.map((one) => one.id),
    ...positions.map((one) => one.id),
  ];
  const attackable = [...evidence, ...argumentIds];
  const rings = chance(0.15);
  const args = argumentIds.map((id, n): CaseArgument => {
    const silentOnes = observations.filter((one) => one.present === "not-reported").map((one) => one.id);
    const because = chance(0.05)
      ? ["nowhere", ...some(evidence, 1)]
      : silentOnes.length > 0 && chance(0.15)
        ? silentOnes
        : some(chance(0.4) ? claims : [...claims, ...evidence, ...evidence], 2);
    const base = {
      id,
      because,
      strength: strength(),
      ...(chance(0.08) ? { scheme: "silence" as const } : {}),
    };
    if (rings && n < 3)
      return { id, because: [claims[n]!], therefore: claims[(n + 1) % 3]!, strength: "ordinary" };
    if (chance(0.55)) return { ...base, therefore: pick(claims) };
    if (chance(0.4)) return { ...base, against: [pick(claims)] };
    if (chance(0.2)) return { ...base, against: [id] };
    if (chance(0.3)) return { ...base, against: [argumentIds[(n + 1) % argumentIds.length]!] };
    return { ...base, against: some(attackable, 3) };
  });
  return {
    claims: claims.map((id) => ({
      id,
      incompatible: chance(0.2) ? [pick(claims.filter((one) => one !== id))] : [],
    })),
    questions: ids("q", 0, 3).map((id) => ({ id, answers: some(claims, 3), exclusive: chance(0.7) })),
    observations,
    measurements,
    derivations,
    positions,
    arguments: args,
    testimony: chance(0.25),
  };
}

const numerals = ["nought", "one", "two", "three", "four", "five", "six", "seven"];

/** An id in letters alone, so that a sentence in which an id turned up would be told from one that quotes a text. */
function spelled(id: string): string {
  return `${id.charAt(0)} ${numerals[Number(id.slice(1))] ?? ""}`;
}

/** The files of a case: JSON is YAML, and every scalar is a text. */
export function filesOf(one: Case): readonly SourceFile[] {
  const file = (path: string, data: object): SourceFile => ({ path, text: JSON.stringify(data) });
  const records = {
    scholars: [
      { id: "s0", name: "Ada North" },
      { id: "s1", name: "Bo South" },
    ],
    artefacts: [{ id: "post", name: "A post" }],
    claims: one.claims.map(({ id, incompatible }) => ({
      id,
      text: `The claim ${spelled(id)}.`,
      ...(incompatible.length > 0 ? { "incompatible-with": incompatible } : {}),
    })),
    questions: one.questions.map(({ id, answers, exclusive }) => ({
      id,
      text: `Is it ${spelled(id)}?`,
      answers,
      exclusive: String(exclusive),
    })),
    observations: one.observations.map(({ id, present }) => ({
      id,
      of: "post",
      text: `Seen ${spelled(id)}.`,
      present,
    })),
    measurements: one.measurements.map((id, n) => ({
      id,
      of: "post",
      dimension: `width ${spelled(id)}`,
      value: `${n + 2}.0 m`,
    })),
    positions: one.positions.map((position) => ({ ...position, year: String(position.year) })),
    derivations: one.derivations.map(({ id, plugin, values, after, p, refuses, bearsOn }) => ({
      id,
      plugin,
      inputs: { values },
      parameters: {
        p: String(p),
        refuses: String(refuses),
        ...(after === undefined ? {} : { after: { number: `${after}.p` } }),
      },
      "bears-on": bearsOn.map(({ claim, strength }) => ({
        claim,
        strength,
        supports: { p: "< 0.05" },
        disputes: { p: "> 0.5" },
      })),
    })),
    arguments: one.arguments.map((argument) => ({ ...argument, text: `The step ${spelled(argument.id)}.` })),
  };
  return [
    file("corpus.yaml", { title: "A random corpus", testimony: one.testimony ? "counts" : "ignored" }),
    file("records.yaml", records),
  ];
}

const echo = (id: string): Plugin => ({
  id,
  version: "1",
  title: "Echo",
  doc: "Gives back the number it was given.",
  sources: [],
  inputs: [{ name: "values", kind: "measurements", doc: "Anything." }],
  parameters: [
    { name: "p", kind: "number", doc: "The number." },
    { name: "refuses", kind: "text", doc: "Whether it refuses." },
    { name: "after", kind: "number", doc: "Another number." },
  ],
  numbers: [{ name: "p", kind: "number", doc: "The number." }],
  compute: (_, settings): Computation | Refusal => {
    if (settings["refuses"]?.value === "true")
      return { refused: "told-to", message: "It was told to refuse.", details: {} };
    const value = settings["p"]?.kind === "number" ? settings["p"].value : 1;
    return { numbers: { p: { value, low: null, high: null } }, leftOut: [], warnings: [], data: null };
  },
  figure: () => ({ title: "", panels: [] }),
  sentence: () => "",
  cautions: [],
  examples: [],
});

/** Plug-ins for the cases: one that echoes, and one of the same sort that weighs silence. */
export const casePlugins: readonly Plugin[] = [echo("echo"), echo("silence")];
