import { randomFrom } from "../../../src/base/outcome/random.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import type { ClaimGraph } from "../../../src/judge/solver/claim-graph.ts";
import type { Framework } from "../../../src/judge/solver/framework.ts";
import type { Standpoints } from "../../../src/judge/standpoints/standpoints.ts";

/** The files of a corpus with these lists; JSON is YAML. */
export function corpus(lists: object, settings: object = {}): readonly SourceFile[] {
  return [
    { path: "corpus.yaml", text: JSON.stringify({ format: "1", title: "A case", ...settings }) },
    { path: "records.yaml", text: JSON.stringify(lists) },
  ];
}

const post = [{ id: "post", name: "A post" }];
const seen = (id: string) => ({ id, of: "post", text: `Seen ${id}.` });

/** A framework as format.md 5 puts it into a corpus: all lean on one observation and are against the list of their targets. */
export function frameworkCorpus({ arguments: names, attacks }: Framework): readonly SourceFile[] {
  const targets = (name: string): readonly string[] =>
    attacks.filter(([attacker]) => attacker === name).map(([, attacked]) => attacked);
  return corpus({
    artefacts: post,
    observations: [seen("common")],
    claims: names.map((name) => ({ id: `for-${name}`, text: `For ${name}.` })),
    arguments: names.map((id) => ({
      id,
      because: ["common"],
      // An argument against nothing is for something of its own.
      ...(targets(id).length > 0 ? { against: targets(id) } : { therefore: `for-${id}` }),
    })),
  });
}

/** A claim graph as format.md 5 puts it into a corpus. */
export function claimGraphCorpus(graph: ClaimGraph): readonly SourceFile[] {
  const steps = [
    ...graph.premises.map((claim) => ({
      id: `premise-${claim}`,
      because: [`seen-${claim}`],
      therefore: claim,
    })),
    ...graph.inferences.map((one) => ({
      id: one.id,
      because: one.premises,
      therefore: one.conclusion,
    })),
  ];
  const attacks = [
    ...graph.contraries.map(([claim, target]) => ({
      because: [claim],
      against: steps.filter((one) => one.therefore === target).map((one) => one.id),
    })),
    ...graph.undercuts.map(([claim, inference]) => ({ because: [claim], against: [inference] })),
  ].filter((one) => one.against.length > 0);
  return corpus({
    artefacts: post,
    observations: graph.premises.map((claim) => seen(`seen-${claim}`)),
    claims: graph.claims.map((id) => ({ id, text: `The claim ${id}.` })),
    arguments: [...steps, ...attacks.map((one, n) => ({ id: `attack-${n}`, ...one }))],
  });
}

/**
 * Pairs of rival claims, and for each pair a claim that follows from either; `joined` by a claim that leans on all first
 * ones, which is `locked` with a rival of its own.
 */
export function pairsCorpus(pairs: number, how: "apart" | "joined" | "locked"): readonly SourceFile[] {
  const all = Array.from({ length: pairs }, (_, n) => n);
  const whole = { id: "for-whole", because: all.map((n) => `left-${n}`), therefore: "whole" };
  return corpus({
    artefacts: post,
    observations: [seen("common")],
    claims: [
      ...all.flatMap((n) => [
        { id: `left-${n}`, text: `Left ${n}.`, "incompatible-with": [`right-${n}`] },
        { id: `right-${n}`, text: `Right ${n}.` },
        { id: `either-${n}`, text: `Either ${n}.` },
      ]),
      { id: "whole", text: "The whole.", "incompatible-with": ["piecemeal"] },
      { id: "piecemeal", text: "Piecemeal." },
    ],
    arguments: [
      ...all.flatMap((n) => [
        { id: `for-left-${n}`, because: ["common"], therefore: `left-${n}` },
        { id: `for-right-${n}`, because: ["common"], therefore: `right-${n}` },
        { id: `left-either-${n}`, because: [`left-${n}`], therefore: `either-${n}` },
        { id: `right-either-${n}`, because: [`right-${n}`], therefore: `either-${n}` },
      ]),
      ...(how === "apart" ? [] : [whole]),
      ...(how === "locked" ? [{ id: "for-piecemeal", because: ["common"], therefore: "piecemeal" }] : []),
    ],
  });
}

/** Claims each with an argument of its own, from the common observation or from other claims, many of which cannot both be right. */
export function rivalsCorpus(seed: number): readonly SourceFile[] {
  const random = randomFrom(seed);
  const ids = Array.from({ length: 4 + random.below(6) }, (_, n) => `c${n}`);
  const claims = ids.map((id, n) => {
    const rivals = ids.slice(0, n).filter(() => random.uniform() < 0.35);
    return { id, text: `The claim ${id}.`, ...(rivals.length > 0 ? { "incompatible-with": rivals } : {}) };
  });
  return corpus({
    artefacts: post,
    observations: [seen("common")],
    claims,
    arguments: ids.map((id, n) => ({
      id: `a${n}`,
      because: n > 1 && random.uniform() < 0.3 ? [`c${random.below(n)}`] : ["common"],
      therefore: id,
    })),
  });
}

/** What holds in a standpoint and what is open in it, as far as it hangs on no more than one component. */
export interface Multiplied {
  readonly holds: readonly string[];
  readonly open: readonly string[];
}

/** The standpoints multiplied out: what holds in all of them, and one alternative of each component. */
export function multiplied({ judgement }: Model, { components }: Standpoints): readonly Multiplied[] {
  const common = [...judgement.standings].filter(([, standing]) => standing === "stands").map(([id]) => id);
  let all = [{ holds: common, open: [] as string[] }];
  for (const { alternatives } of components) {
    all = all.flatMap((one) =>
      alternatives.flatMap(({ fates, ways }) => {
        const those = (fate: string) => [...fates].filter(([, is]) => is === fate).map(([id]) => id);
        const made = { holds: [...one.holds, ...those("stands")], open: [...one.open, ...those("open")] };
        return Array.from({ length: ways }, () => made);
      }),
    );
  }
  return all.map(({ holds, open }) => ({ holds: holds.sort(), open: open.sort() }));
}

/** Tells the ids that have a standing of their own and hang on no more than one component. */
export function multipliedIds({ judgement }: Model, { components }: Standpoints): (id: string) => boolean {
  const inOne = new Set(components.flatMap((one) => [...one.claims, ...one.evidence, ...one.arguments]));
  return (id) => judgement.standings.has(id) && (inOne.has(id) || judgement.standings.get(id) !== "open");
}
