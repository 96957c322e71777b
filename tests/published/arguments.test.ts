import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { claimGraphProgram, type ClaimGraph } from '../../src/judge/solver/claim-graph.ts';
import { frameworkOf, type Framework } from '../../src/judge/solver/framework.ts';
import { claimGraphLabels, frameworkResults, claimSets } from '../check-values/argument.ts';
import { clingoAnswerSets } from '../oracle/clingo.ts';

// Extensions and labels by gringo 5.4.1 and clasp 3.3.5 with the encodings in answer-set/, small ones also by trying
// every subset; the files say so case by case.
const published = <Case>(name: string): readonly Case[] =>
  JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8')).cases;

type FrameworkCase = Framework & {
  readonly id: string;
  readonly groundedLabelling: Readonly<Record<string, string>>;
} & Readonly<Record<'complete' | 'preferred' | 'stable' | 'semiStable', readonly (readonly string[])[]>>;

type GraphCase = {
  readonly id: string;
  readonly theory: ClaimGraph;
  readonly expected: {
    readonly groundedClaims: Readonly<Record<string, string>>;
    readonly preferredClaimSets: readonly (readonly string[])[];
    readonly stableClaimSets: readonly (readonly string[])[];
  };
};

const frameworks = published<FrameworkCase>('argument-frameworks.json');
const graphs = published<GraphCase>('claim-graphs.json');

test('the copies are whole', () => {
  expect(frameworks).toHaveLength(31);
  expect(graphs).toHaveLength(17);
});

describe('argument frameworks', () => {
  test.each(frameworks)('$id', (one) => {
    const results = frameworkResults(one, 100_000);
    expect(results.groundedLabelling).toEqual(one.groundedLabelling);
    expect(asSet(results.preferred)).toEqual(asSet(one.preferred));
    expect(asSet(results.complete)).toEqual(asSet(one.complete));
    expect(asSet(results.stable)).toEqual(asSet(one.stable));
    expect(asSet(results.semiStable)).toEqual(asSet(one.semiStable));
  });

  const encoding = (name: string) => readFileSync(new URL(`answer-set/${name}.lp`, import.meta.url), 'utf8');
  test.each(frameworks.filter((one) => one.arguments.length > 0))('$id, clingo with the encodings agrees', async (one) => {
    const facts = [
      ...one.arguments.map((name) => `arg(${name}).`),
      ...one.attacks.map(([attacker, attacked]) => `att(${attacker},${attacked}).`),
      '#defined att/2.',
    ];
    const sets = await clingoAnswerSets([...facts, encoding('common'), encoding('complete')].join('\n'));
    const named = sets.map((atoms) => atoms.map((atom) => atom.slice('in('.length, -1)));
    expect(asSet(frameworkResults(one, 100_000).complete)).toEqual(asSet(named));
  });
});

describe('claim graphs', () => {
  test.each(graphs)('$id', ({ theory, expected }) => {
    expect(claimGraphLabels(theory)).toEqual(expected.groundedClaims);
    expect(asSet(claimSets(theory, 'preferred'))).toEqual(asSet(expected.preferredClaimSets));
    expect(asSet(claimSets(theory, 'stable'))).toEqual(asSet(expected.stableClaimSets));
  });
});

test('a name that is not declared, or declared twice, is refused', () => {
  expect(() => frameworkOf({ arguments: ['a'], attacks: [['a', 'b']] })).toThrow('Unknown argument `b`');
  expect(() => frameworkOf({ arguments: ['a', 'a'], attacks: [] })).toThrow('Duplicate argument');
  const graph = { claims: ['a'], premises: ['b'], inferences: [], contraries: [], undercuts: [] };
  expect(() => claimGraphProgram(graph)).toThrow('Unknown claim `b`');
});

function asSet(sets: readonly (readonly string[])[]): readonly string[] {
  return sets.map((set) => [...set].sort().join(' ')).sort();
}
