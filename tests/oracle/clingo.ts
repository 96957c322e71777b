import { run } from "clingo-wasm";
import { atomsOf, type Partial3, type PlainRule } from "./naive.ts";

/**
 * Every partial stable model of the rules, by the answer-set solver clingo: each atom is doubled into one that
 * says it is true and one that says it is not false, and the answer sets of the doubled program are the models
 * (Przymusinski 1990 gives the three-valued semantics; the doubling is common practice, from memory).
 */
export async function clingoPartialStable(rules: readonly PlainRule[]): Promise<Partial3[]> {
  const names = [...atomsOf(rules)];
  const number = new Map(names.map((name, index) => [name, index]));
  const lines = rules.flatMap(({ head, positive, negative }) => {
    const rule = (own: string, other: string) => {
      const body = [
        ...positive.map((atom) => `${own}(${number.get(atom)})`),
        ...negative.map((atom) => `not ${other}(${number.get(atom)})`),
      ];
      return `${own}(${number.get(head)})${body.length > 0 ? ` :- ${body.join(", ")}` : ""}.`;
    };
    return [rule("certain", "possible"), rule("possible", "certain")];
  });
  const sets = await clingoAnswerSets(
    [
      ...lines,
      ":- certain(X), not possible(X).",
      "#show certain/1.",
      "#show possible/1.",
      "#defined certain/1.",
      "#defined possible/1.",
    ].join("\n"),
  );
  return sets.map((atoms) => ({
    certain: chosen(atoms, "certain", names),
    possible: chosen(atoms, "possible", names),
  }));
}

/** All answer sets of an answer-set program, each the list of its shown atoms; an error of clingo throws. */
export async function clingoAnswerSets(
  program: string,
  options: readonly string[] = [],
): Promise<string[][]> {
  const result = await run(program, 0, [...options]);
  if (result.Result === "ERROR") throw new Error(`clingo: ${result.Error}`);
  return result.Call.flatMap((call) => (call.Witnesses ?? []).map((witness) => witness.Value ?? []));
}

function chosen(atoms: readonly string[], predicate: string, names: readonly string[]): Set<string> {
  const prefix = `${predicate}(`;
  return new Set(
    atoms
      .filter((atom) => atom.startsWith(prefix))
      .map((atom) => names[Number(atom.slice(prefix.length, -1))] ?? atom),
  );
}
