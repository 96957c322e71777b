import { expect, test } from "vitest";
import { naiveLeast, naiveWellFounded } from "../../oracle/naive.ts";
import type { PlainRule } from "../../oracle/naive.ts";
import { filesOf } from "../../oracle/random-corpus.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import { atomOf, each, unattacked, valueOf } from "./explain-cases.ts";
import type { Told } from "./explain-cases.ts";

test("a core is what is open and decides one another, and some of it hangs on nothing else", () => {
  each("open", ({ id, core }, from) => {
    const open = openDependencies(from);
    const reached = reachedFrom(atomOf(from.one, id), open);
    const auxiliary = (atom: string): boolean => !open.has(atom);
    expect(core.circles.some((circle) => circle.deepest)).toBe(true);
    for (const { members, deepest } of core.circles) {
      const atoms = members.map((member) => atomOf(from.one, member));
      expect(atoms.filter(auxiliary)).toEqual([]);
      for (const atom of atoms) {
        expect(reached.has(atom) || atom === atomOf(from.one, id)).toBe(true);
        const below = reachedFrom(atom, open);
        for (const other of atoms) expect(below.has(other)).toBe(true);
        if (deepest) expect([...below].sort()).toEqual([...atoms].sort());
      }
    }
  });
});

/** For each open atom the open atoms that decide it, by the second evaluation. */
function openDependencies({ rules }: Told): ReadonlyMap<string, readonly string[]> {
  const model = naiveWellFounded(rules);
  const is = (atom: string): string => model.get(atom) ?? "false";
  const live = rules.filter(
    ({ positive, negative }) =>
      positive.every((it) => is(it) !== "false") && negative.every((it) => is(it) !== "true"),
  );
  const open = [...model.keys()].filter((atom) => is(atom) === "undefined");
  return new Map(
    open.map((atom) => [
      atom,
      live
        .filter(({ head }) => head === atom)
        .flatMap(({ positive, negative }) =>
          [...positive, ...negative].filter((it) => is(it) === "undefined"),
        ),
    ]),
  );
}

function reachedFrom(atom: string, next: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const reached = new Set(next.get(atom));
  for (const at of reached) for (const further of next.get(at) ?? []) reached.add(further);
  return reached;
}

const outcomes: Readonly<Record<string, string>> = { true: "stands", undefined: "open", false: "falls" };

test("a settler decides it as told, held or not, and every other member leaves it open", () => {
  let both = 0;
  each("open", ({ id, core }, from) => {
    const members = core.circles.flatMap((circle) => circle.members).filter((member) => member !== id);
    expect(core.untried).toBe(0);
    const known = new Map(core.settlers.map((settler) => [settler.id, settler]));
    for (const member of members) {
      const atom = atomOf(from.one, member);
      const without = from.rules.filter(({ head }) => head !== atom);
      const held = outcomes[valueOf(from, [...without, { head: atom, positive: [], negative: [] }], id)];
      const fell = outcomes[valueOf(from, without, id)];
      const settler = known.get(member);
      expect(
        { held: settler?.held ?? "open", fell: settler?.fell ?? "open" },
        `seed ${from.seed}, ${id}`,
      ).toEqual({
        held,
        fell,
      });
      if (held !== "open" && fell !== "open") both++;
    }
    expect(core.settlers.every((settler) => members.includes(settler.id))).toBe(true);
  });
  expect(both).toBeGreaterThan(50);
});

test("a claim stands in the corpus without an argument of its core that is told to open the way", () => {
  let met = 0;
  each("open", ({ id, core }, { one, model }) => {
    if (model.graph.records.get(id)?.list !== "claims") return;
    for (const { id: argument, fell } of core.settlers) {
      if (fell === "open" || !one.arguments.some((it) => it.id === argument)) continue;
      const less = { ...one, arguments: one.arguments.filter((it) => it.id !== argument) };
      const standing = modelOf(filesOf(less)).judgement.standings.get(id);
      if (fell === "stands") expect(standing).toBe("stands");
      else expect(["falls", "unsupported"]).toContain(standing);
      met++;
    }
  });
  expect(met).toBeGreaterThan(30);
});

test("were all that is missing there, nothing would be unsupported for want of it", () => {
  each("unsupported", ({ id, lacks }, from) => {
    expect(lacks.length, `seed ${from.seed}, ${id}`).toBeGreaterThan(0);
    const cured = lacks.flatMap(({ way, missing }): readonly string[] => {
      expect(way[0]).toBe(id);
      if (missing.what === "silence-unweighed") return [atomOf(from.one, missing.of)];
      if (missing.what === "circle") return missing.members.map((member) => atomOf(from.one, member));
      return [atomOf(from.one, missing.of)];
    });
    const facts = cured.map((head): PlainRule => ({ head, positive: [], negative: [] }));
    const least = naiveLeast([...from.rules, ...facts].map(unattacked), new Set());
    expect(least.has(atomOf(from.one, id)), `seed ${from.seed}, ${id}`).toBe(true);
  });
});
