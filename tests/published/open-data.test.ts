import { readFileSync } from "node:fs";
import { Store } from "n3";
import type { Quad } from "n3";
import Validator from "rdf-validate-shacl";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { build } from "../../src/build.ts";
import type { Model } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import { cslJsonOf } from "../../src/write/data/formats/csl-json.ts";
import { graphMlOf } from "../../src/write/data/formats/graphml.ts";
import { jsonLdOf } from "../../src/write/data/formats/json-ld.ts";
import { turtleOf } from "../../src/write/data/formats/turtle.ts";
import { openData } from "../../src/write/data/open-data.ts";
import type { Triple } from "../../src/write/data/open-data.ts";
import { ownTerms } from "../../src/write/data/terms/own-terms.ts";
import { iriOf, prefixes } from "../../src/write/data/terms/prefixes.ts";
import { everything } from "../oracle/open-data/corpus.ts";
import { judgedBy } from "../oracle/open-data/judges.ts";
import { canonicalOf, nQuadsOf, nTriples, quadsIn } from "../oracle/open-data/parsed.ts";
import { declared, upward } from "../oracle/open-data/vocabulary.ts";
import { judged } from "../outputs/judges/judged.ts";

const base = "https://example.org/variorum/test/";
const asked = { base, program: "Variorum 0", versions: new Map([["counts", "1"]]), today: "2026-11-26" };

/** A corpus as data, read back by a parser that is not ours. */
interface Case {
  readonly model: Model;
  readonly triples: readonly Triple[];
  readonly turtle: string;
  readonly json: string;
  readonly quads: readonly Quad[];
}

function caseOf(model: Model | null): Case {
  if (!model) throw new Error("no model");
  const triples = openData(model, asked);
  const turtle = turtleOf(triples, base, ["head"]);
  return { model, triples, turtle, json: jsonLdOf(triples, base), quads: quadsIn(turtle) };
}

const cases: Record<string, Case> = {};
const terms = turtleOf(ownTerms(), null);

beforeAll(async () => {
  const computed = await evaluate(everything, plugins, emptyMemo(), computingHere(plugins));
  cases["everything"] = caseOf(computed.model);
  // Not computed: its numbers take long, and pending ones are a case of their own.
  cases["demo"] = caseOf(build(readCorpusFolder("demo-corpus"), plugins, emptyMemo()).model);
});

function one(name: string): Case {
  const found = cases[name];
  if (!found) throw new Error(`no case ${name}`);
  return found;
}

/** What the shapes say against some quads, by the property that is wrong. */
async function violations(quads: readonly Quad[]): Promise<readonly string[]> {
  const shapes = quadsIn(readFileSync("tests/oracle/open-data/shapes.ttl", "utf8"));
  const above = [...declared].flatMap(([term, { is, above: all }]) =>
    is === "class" ? all.map((up) => `<${term}> <${iriOf("rdfs:subClassOf")}> <${up}> .`) : [],
  );
  const data = new Store([...quads, ...quadsIn(above.join("\n"))]);
  const { results } = await new Validator(new Store([...shapes])).validate(data);
  return results.map(({ dataset, term }) => [...dataset.match(term)].map(({ object }) => object.value).join(" "));
}

describe.each(["everything", "demo"])("the open data of %s", (name) => {
  const of = (): Case => one(name);

  test("n3 and jsonld agree with what was written on the number of triples, and with each other on the graph", async () => {
    const { triples, quads, json } = of();
    const through = await nQuadsOf(json);
    expect(quads.length).toBe(triples.length);
    expect(through.trim().split("\n").length).toBe(triples.length);
    const sorted = (all: readonly Quad[]): readonly string[] => nTriples(all).split("\n").sort();
    expect(sorted(quadsIn(through))).toEqual(sorted(quads));
  });

  test("every term is declared by its vocabulary, ours by us", () => {
    const own = new Set(quadsIn(terms).map(({ subject }) => subject.value));
    const spaces = Object.entries(prefixes).filter(([prefix]) => !["xsd", "edtf", "rdf"].includes(prefix));
    const used = new Set(
      [...of().quads, ...quadsIn(terms)].flatMap(({ subject, predicate, object }) =>
        [subject, predicate, object].filter(({ termType }) => termType === "NamedNode").map(({ value }) => value),
      ),
    );
    const unknown = [...used].filter(
      (iri) => spaces.some(([, space]) => iri.startsWith(space)) && !declared.has(iri) && !own.has(iri),
    );
    expect(unknown).toEqual([]);
  });

  test("every subject and object is of the class that the property asks for", () => {
    const quads = [...of().quads, ...quadsIn(terms)];
    const classes = new Map<string, Set<string>>();
    for (const { subject, predicate, object } of quads) {
      if (predicate.value !== iriOf("rdf:type")) continue;
      const all = classes.get(subject.value) ?? new Set();
      for (const one of upward(object.value)) all.add(one);
      classes.set(subject.value, all);
    }
    const wrong = quads.flatMap(({ subject, predicate, object }) => {
      const { domain = null, range = null } = declared.get(predicate.value) ?? {};
      const literal = range === iriOf("rdfs:Literal");
      const fits = (one: { readonly value: string }, sort: string | null): boolean =>
        sort === null || classes.get(one.value)?.has(sort) === true;
      const object_ = literal ? object.termType === "Literal" : fits(object, range);
      return fits(subject, domain) && object_ ? [] : [`${subject.value} ${predicate.value} ${object.value}`];
    });
    expect(wrong).toEqual([]);
  });

  test("it keeps to the shapes, with the classes above merged in", async () => {
    expect(await violations(of().quads)).toEqual([]);
  });

  test("no absence is told as a value that was observed, and no claim as a fact", () => {
    const store = new Store([...of().quads]);
    const at = (term: Parameters<typeof iriOf>[0]): string => iriOf(term);
    const positive = ["crmsci:O8_observed", "crmsci:O9_observed_property_type", "crmsci:O16_observed_value"] as const;
    for (const type of ["vr:observed-absence", "vr:cannot-be-told", "vr:not-reported"] as const) {
      const subjects = store.getSubjects(at("crm:P2_has_type"), at(type), null);
      if (name === "everything") expect(subjects.length).toBeGreaterThan(0);
      for (const subject of subjects)
        for (const property of positive) expect(store.countQuads(subject, at(property), null, null)).toBe(0);
    }
    const never = of().quads.filter(({ predicate }) => /\/(?:O36|J33)_/.test(predicate.value));
    expect(never).toEqual([]);
    // What a claim says stands in it as words: its node is told of nothing but of itself.
    for (const claim of store.getSubjects(at("rdf:type"), at("crminf:I4_Proposition_Set"), null)) {
      const told = store.getQuads(claim, null, null, null).map(({ predicate }) => predicate.value);
      expect(told.filter((one) => one.startsWith(prefixes.crm) && !one.includes("P3_"))).toEqual([]);
      expect(told.filter((one) => one.startsWith(prefixes.crmsci))).toEqual([]);
    }
  });

  judged(["rapper"], "rapper (raptor2) counts as many triples", () => {
    expect(judgedBy("rapper", of().turtle)).toBe(of().triples.length);
    expect(judgedBy("rapper", terms)).toBe(ownTerms().length);
  });

  judged(["rdflib"], "rdflib counts as many triples", () => {
    expect(judgedBy("rdflib", of().turtle)).toBe(of().triples.length);
    expect(judgedBy("rdflib", terms)).toBe(ownTerms().length);
  });

  judged(["xmllint"], "xmllint reads the GraphML", () => {
    expect(judgedBy("xmllint", graphMlOf(of().model))).toBe(0);
  });
});

test.each([
  "crm:P39_measured",
  "crm:P40_observed_dimension",
  "crm:P91_has_unit",
  "crmsci:O33_is_relative_to",
  "crmsci:O10_assigned_dimension",
  "crminf:J4_that",
  "crminf:J5_holds_to_be",
  "crm:P2_has_type",
  "vr:locator",
] as const)("the shapes miss %s where it is gone", async (property) => {
  const without = one("everything").quads.filter(({ predicate }) => predicate.value !== iriOf(property));
  expect((await violations(without)).length).toBeGreaterThan(0);
});

test("from Turtle to N-Triples and back, and through JSON-LD, the canonical form is the same (RDFC-1.0)", async () => {
  const { quads, json } = one("everything");
  const canonical = await canonicalOf(nTriples(quads));
  expect(await canonicalOf(nTriples(quadsIn(nTriples(quads))))).toBe(canonical);
  expect(await canonicalOf(await nQuadsOf(json))).toBe(canonical);
});

test("300 BC is 300 BC in every file: -0299 in EDTF and xsd, -300 in CSL", () => {
  const { quads, model } = one("everything");
  const store = new Store([...quads]);
  const valuesOf = (subject: string, property: Parameters<typeof iriOf>[0]): readonly string[] =>
    store.getObjects(subject, iriOf(property), null).map(({ value }) => value);
  const span = `${base}k-18#date-1.time`;
  expect(valuesOf(span, "crm:P82_at_some_time_within")).toEqual(["-0299"]);
  expect(valuesOf(span, "crm:P82a_begin_of_the_begin")).toEqual(["-0299-01-01T00:00:00"]);
  expect(valuesOf(span, "crm:P82b_end_of_the_end")).toEqual(["-0299-12-31T23:59:59"]);
  expect(valuesOf(`${base}old-scroll`, "dcterms:issued")).toEqual(["-0299"]);
  const items = JSON.parse(cslJsonOf(model)) as readonly { readonly id: string; readonly issued: object }[];
  expect(items.find(({ id }) => id === "old-scroll")?.issued).toEqual({ "date-parts": [[-300]] });
});
