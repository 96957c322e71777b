import { randomFrom } from "../../src/base/outcome/random.ts";
import type { Random } from "../../src/base/outcome/random.ts";
import type { Plugin } from "../../src/plugin.ts";
import type { SourceFile } from "../../src/read/source-file.ts";
import { casePlugins, filesOf, randomCase } from "./random-corpus.ts";

const artefacts = ["ring", "ring/east", "ring/west", "ditch"] as const;
const sources = ["ash-1901", "birch-1932", "cedar-1960"] as const;
const scholars = ["s0", "s1"] as const;

/** Everything that can be lost in a losable corpus. */
export const losable: readonly string[] = [...artefacts, ...sources, ...scholars];

type Fields = Readonly<Record<string, unknown>>;
type Records = Readonly<Record<string, readonly Fields[]>>;

/** A random corpus whose records come from things, sources and scholars, and whose numbers change with what they are computed on. */
export function losableFiles(seed: number): readonly SourceFile[] {
  const random = randomFrom(7_000_000 + seed);
  const [settings, file] = filesOf(randomCase(seed));
  const records = JSON.parse(file?.text ?? "{}") as Records;
  const list = (name: string): readonly Fields[] => records[name] ?? [];
  const changed = {
    ...records,
    artefacts: artefacts.map((id) => ({ id, name: `The ${id.replace("/", ", ")}` })),
    observations: list("observations").map((one) => ({
      ...one,
      of: pick(random, artefacts),
      ...said(random),
    })),
    measurements: list("measurements").map((one) => ({
      ...one,
      of: pick(random, artefacts),
      dimension: "width",
      ...said(random),
    })),
    arguments: [
      ...list("arguments").map((one) => ({ ...one, ...(random.uniform() < 0.4 ? said(random) : {}) })),
      ...furtherArguments(random, [...list("observations"), ...list("measurements"), ...list("claims")]),
    ],
    positions: list("positions").map((one) => ({ ...one, from: pick(random, sources) })),
    derivations: list("derivations").map((one) => ({ ...one, ...inputsOf(random, one) })),
  };
  const bibliography = sources.map((id) => ({
    id,
    type: "book",
    title: `The book ${id.split("-")[0] ?? ""}`,
    issued: { "date-parts": [[Number(id.split("-")[1])]] },
    ...(id.startsWith("ash") ? { author: [{ given: "Ada", family: "North" }] } : {}),
  }));
  const own = { ...(JSON.parse(settings?.text ?? "{}") as Fields), bibliography: ["books.json"] };
  return [
    { path: "corpus.yaml", text: JSON.stringify(own) },
    { path: "records.yaml", text: JSON.stringify(changed) },
    { path: "books.json", text: JSON.stringify(bibliography) },
  ];
}

function pick<T>(random: Random, list: readonly T[]): T {
  return list[random.below(list.length)]!;
}

function said(random: Random): Fields {
  return {
    ...(random.uniform() < 0.7 ? { from: pick(random, sources) } : {}),
    ...(random.uniform() < 0.2 ? { via: pick(random, sources) } : {}),
    ...(random.uniform() < 0.3 ? { by: pick(random, scholars) } : {}),
  };
}

/** More for one claim than a random case has, so that no single loss ends it. */
function furtherArguments(random: Random, premises: readonly Fields[]): readonly Fields[] {
  return Array.from({ length: random.below(5) }, (_, n) => ({
    id: `e${n}`,
    because: [...new Set([pick(random, premises)["id"], pick(random, premises)["id"]])],
    therefore: "c0",
    text: "A further step.",
  }));
}

/** Half of the numbers select by thing and dimension, some with a source that is preferred. */
function inputsOf(random: Random, derivation: Fields): Fields {
  if (derivation["plugin"] !== "echo" || random.uniform() < 0.5) return {};
  const prefer = random.uniform() < 0.4 ? { prefer: [pick(random, sources)] } : {};
  return { inputs: { values: { of: pick(random, artefacts), dimension: "width", ...prefer } } };
}

/** The plug-ins of the random cases, with numbers that hang on every value that goes in. */
export const losablePlugins: readonly Plugin[] = casePlugins.map((plugin) => ({
  ...plugin,
  compute: (inputs, settings, tools) => {
    const result = plugin.compute(inputs, settings, tools);
    if ("refused" in result) return result;
    const values = (inputs["values"] ?? []).map(({ quantity }) => quantity.value ?? 0);
    const sum = values.reduce((all, value) => all + Math.round(10 * value), 0);
    const value = [0.01, 0.2, 0.9][(sum + Math.round(100 * (result.numbers["p"]?.value ?? 0))) % 3]!;
    return { ...result, numbers: { p: { value, low: null, high: null } } };
  },
}));
