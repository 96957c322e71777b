import { randomFrom } from "../../src/base/outcome/random.ts";
import type { Random } from "../../src/base/outcome/random.ts";
import type { SourceFile } from "../../src/read/source-file.ts";
import { filesOf, randomCase } from "./random-corpus.ts";
import type { Case, CaseArgument, Strength } from "./random-corpus.ts";

const strengths: readonly Strength[] = ["weak", "ordinary", "strong"];

/** A random corpus with changes of it, each made anew from the case as it is. */
export interface ChangedCases {
  readonly one: Case;
  readonly added: readonly {
    readonly after: Case;
    readonly evidence: readonly string[];
    readonly steps: readonly string[];
  }[];
  readonly weighed: readonly { readonly after: Case; readonly strengths: ReadonlyMap<string, Strength> }[];
  readonly computed: readonly Case[];
}

/** Additions, other strengths and other numbers for the random case of a seed. */
export function changedCases(seed: number): ChangedCases {
  const random = randomFrom(seed + 70_000);
  const one = withSilence(randomCase(seed));
  const some = <T>(make: () => T): readonly T[] => Array.from({ length: 2 }, make);
  return {
    one,
    added: some(() => withMore(one, random)),
    weighed: some(() => weighedAnew(one, random)),
    computed: some(() => computedAnew(one, random)),
  };
}

/** The case, with an argument from silence where a number weighs one. */
function withSilence(one: Case): Case {
  const weigher = one.derivations.find(({ plugin }) => plugin === "silence");
  const therefore = weigher?.bearsOn[0]?.claim;
  if (therefore === undefined) return one;
  const because = one.observations.slice(0, 1).map(({ id }) => id);
  const step = { id: "a7", because, therefore, strength: "ordinary", scheme: "silence" } as const;
  return { ...one, arguments: [...one.arguments, step] };
}

/** One or two more arguments, from a new observation or from what is there, for or against anything. */
function withMore(one: Case, random: Random): ChangedCases["added"][number] {
  const pick = <T>(list: readonly T[]): T => list[random.below(list.length)]!;
  const chance = (share: number): boolean => random.uniform() < share;
  const evidence = chance(0.7) ? ["o8"] : [];
  const claims = one.claims.map(({ id }) => id);
  const known = [
    ...one.observations.map(({ id }) => id),
    ...one.measurements,
    ...one.derivations.map(({ id }) => id),
  ];
  const anything = [
    ...known,
    ...one.positions.map(({ id }) => id),
    ...one.arguments.map(({ id }) => id),
    ...evidence,
  ];
  const steps = Array.from({ length: 1 + random.below(2) }, (_, n): CaseArgument => {
    const aim = chance(0.5)
      ? { therefore: pick(claims) }
      : { against: [pick(chance(0.4) ? claims : anything), ...(chance(0.3) ? [pick(anything)] : [])] };
    return {
      id: `a${8 + n}`,
      because: [pick(chance(0.5) ? evidence.concat(known) : claims)],
      strength: pick(strengths),
      ...(chance(0.15) ? { scheme: "silence" as const } : {}),
      ...aim,
    };
  });
  const observations = evidence.map((id) => ({ id, present: "true" as const }));
  return {
    after: {
      ...one,
      observations: [...one.observations, ...observations],
      arguments: [...one.arguments, ...steps],
    },
    evidence,
    steps: steps.map(({ id }) => id),
  };
}

/** One argument, or one number's bearing, weighed otherwise. */
function weighedAnew(one: Case, random: Random): ChangedCases["weighed"][number] {
  const strength = strengths[random.below(3)] ?? "ordinary";
  const numbers = one.derivations.flatMap(({ id, bearsOn }) => bearsOn.map(({ claim }) => ({ id, claim })));
  const number = numbers[random.below(numbers.length * 2)];
  if (number) {
    const derivations = one.derivations.map((it) =>
      it.id === number.id
        ? { ...it, bearsOn: it.bearsOn.map((on) => (on.claim === number.claim ? { ...on, strength } : on)) }
        : it,
    );
    return {
      after: { ...one, derivations },
      strengths: new Map([[`${number.id}>${number.claim}`, strength]]),
    };
  }
  const chosen = one.arguments[random.below(one.arguments.length)]!;
  const steps = one.arguments.map((it) => (it.id === chosen.id ? { ...it, strength } : it));
  return { after: { ...one, arguments: steps }, strengths: new Map([[chosen.id, strength]]) };
}

/** Some derivations with another number, or that refuse now, or no longer. */
function computedAnew(one: Case, random: Random): Case {
  const derivations = one.derivations.map((it) =>
    random.uniform() < 0.5
      ? it
      : { ...it, p: [0.01, 0.2, 0.9][random.below(3)] ?? 0.2, refuses: random.uniform() < 0.3 },
  );
  return { ...one, derivations };
}

/** The case with testimony that counts, in which each scholar held the opposite before. */
export function recanted(one: Case): Case {
  const before = one.positions.flatMap(({ who, claim, stance, year }, n) =>
    stance === "holds" || stance === "rejects"
      ? [
          {
            id: `p${n + 4}`,
            who,
            claim,
            stance: stance === "holds" ? "rejects" : "holds",
            year: year - 50,
          } as const,
        ]
      : [],
  );
  return { ...one, positions: [...before, ...one.positions], testimony: true };
}

/** The files of a case in which a scholar or a source stands behind some of the records, so that they can be lost with it. */
export function signedFiles(one: Case, seed: number): readonly SourceFile[] {
  const random = randomFrom(seed + 90_000);
  const signs = ["observations", "measurements", "positions", "arguments"];
  const signed = (list: string, record: object): object => {
    const draw = random.uniform();
    if (!signs.includes(list) || draw < 0.5) return record;
    return {
      ...record,
      ...(draw < 0.6 && list !== "positions" ? { by: ["s0"] } : { from: [draw < 0.8 ? "k0" : "k1"] }),
    };
  };
  const books = ["k0", "k1"].map((id) => ({ id, type: "book", title: `The book ${id}` }));
  return [
    ...filesOf(one).map(({ path, text }) => {
      const lists = JSON.parse(text) as Readonly<Record<string, readonly object[]>>;
      if (path === "corpus.yaml")
        return { path, text: JSON.stringify({ ...lists, bibliography: ["books.json"] }) };
      const signedLists = Object.entries(lists).map(([list, records]) => [
        list,
        records.map((record) => signed(list, record)),
      ]);
      return { path, text: JSON.stringify(Object.fromEntries(signedLists)) };
    }),
    { path: "books.json", text: JSON.stringify(books) },
  ];
}
