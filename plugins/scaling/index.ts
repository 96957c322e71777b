import { isRefusal, refuse } from "../../src/plugin.ts";
import type { Computation, Json, Mark, Plugin } from "../../src/plugin.ts";
import { oneFactor } from "./one-factor.ts";

/** Whether two things are one design at two sizes: one scale factor for all homologous dimensions. */
export const scaling: Plugin = {
  id: "scaling",
  version: "1.0.0",
  title: "Scaling",
  doc: "Asks whether one scale factor fits all homologous dimensions of two things within their errors.",
  sources: [
    "Cochran 1954, Biometrics 10, 101–129 (heterogeneity, from memory)",
    "JCGM 100:2008 (GUM), section 5 (propagation of uncertainty)",
  ],
  inputs: [
    { name: "larger", kind: "measurements", doc: "Dimensions of the larger thing.", pairedWith: "smaller" },
    { name: "smaller", kind: "measurements", doc: "The same dimensions of the smaller thing." },
  ],
  parameters: [
    {
      name: "tolerance",
      kind: "quantity",
      doc: "Natural variation between products of one maker, a share.",
      default: "0 %",
    },
  ],
  numbers: [
    { name: "n", kind: "count", doc: "Pairs of dimensions." },
    { name: "k", kind: "number", doc: "The common scale factor." },
    { name: "heterogeneity", kind: "number", doc: "Cochran's Q about the common factor." },
    { name: "df", kind: "count", doc: "Degrees of freedom of Q." },
    { name: "p", kind: "probability", doc: "How often one true factor would scatter as much." },
    {
      name: "detectable",
      kind: "number",
      doc: "The departure of one dimension that would hardly be missed, a share.",
    },
  ],
  compute: (inputs, settings) => {
    const larger = inputs["larger"] ?? [];
    const smaller = inputs["smaller"] ?? [];
    const kinds = larger.map((one, i) => [one.quantity.kind, smaller[i]?.quantity.kind] as const);
    if (kinds.some(([a, b]) => a !== b)) {
      return refuse(
        "mixed-dimensions",
        "Unexpected pair of different kinds, expected one kind in each pair.",
      );
    }
    const tolerance = settings["tolerance"];
    const pairs = larger.map((one, i) => ({
      a: one.quantity.value,
      ua: one.quantity.u ?? 0,
      b: smaller[i]?.quantity.value ?? 0,
      ub: smaller[i]?.quantity.u ?? 0,
    }));
    const fit = oneFactor(pairs, tolerance?.kind === "quantity" ? tolerance.value.value : 0);
    if (isRefusal(fit)) return fit;
    const bare = (value: number) => ({ value, low: null, high: null });
    return {
      numbers: {
        n: bare(pairs.length),
        k: { value: fit.k, low: fit.low, high: fit.high },
        heterogeneity: bare(fit.heterogeneity),
        df: bare(fit.df),
        ...(fit.p === null ? {} : { p: bare(fit.p) }),
        ...(fit.detectable === null ? {} : { detectable: bare(fit.detectable) }),
      },
      leftOut: [],
      warnings: [
        ...(pairs.length === 1 ? ["one-dimension"] : []),
        ...(fit.departures.some((z) => z !== null && Math.abs(z) > 2) ? ["departing-dimension"] : []),
      ],
      data: {
        k: fit.k,
        rows: pairs.map(({ a, b }, i) => ({
          name: `${larger[i]?.dimension ?? ""} ${larger[i]?.artefact ?? ""}`,
          ratio: a / b,
          u: fit.uLog[i] ?? 0,
        })),
      },
    } satisfies Computation;
  },
  figure: (computation) => {
    const { k, rows } = computation.data as { readonly k: number; readonly rows: readonly Row[] };
    const bars: Mark = {
      mark: "bars",
      bars: rows.map((row, at) => ({
        at,
        low: row.ratio * Math.exp(-2 * row.u),
        high: row.ratio * Math.exp(2 * row.u),
        label: row.name,
      })),
    };
    return {
      title: "Homologous dimensions and their common factor",
      x: { label: "dimension", unit: "1" },
      y: { label: "ratio", unit: "1" },
      marks: [
        bars,
        {
          mark: "dots",
          points: rows.map((row, at) => [at, row.ratio] as const),
          labels: rows.map((row) => row.name),
        },
        { mark: "rule", axis: "y", at: k, label: "the common factor" },
      ],
    };
  },
  sentence: ({ numbers }) => {
    const [n, k, p] = [numbers["n"]?.value ?? 0, numbers["k"], numbers["p"]?.value];
    const factor = k
      ? `${k.value.toPrecision(4)} (${(k.low ?? k.value).toPrecision(4)} to ${(k.high ?? k.value).toPrecision(4)})`
      : "";
    if (p === undefined)
      return `One pair of dimensions gives a ratio of ${factor}; with one pair nothing can be tested.`;
    const verdict = p >= 0.05 ? "are compatible with" : "do not fit";
    const missed = numbers["detectable"]
      ? `; a departure of ${(100 * numbers["detectable"].value).toPrecision(2)} % would hardly be missed`
      : "";
    return `${n} pairs of dimensions ${verdict} one scale factor of ${factor} (Cochran's test: p = ${p.toPrecision(2)}${missed}).`;
  },
  cautions: [
    {
      id: "large-errors",
      text: "With large uncertainties the test accepts everything: look at what departure would hardly have been missed.",
    },
    {
      id: "tolerance",
      text: "Without a tolerance, surveys to the millimetre reject every factor: products of one maker vary by nature.",
    },
    {
      id: "common-error",
      text: "An error common to both measurements cancels in the ratio and is left out of it.",
    },
    { id: "one-dimension", text: "One dimension gives a ratio, and nothing to test it by." },
    {
      id: "departing-dimension",
      text: "At least one dimension departs from the common factor by more than twice its standard uncertainty.",
    },
  ],
  examples: [
    {
      title: "Two jars, invented: height, belly, rim and foot",
      source: "Expected values by R metafor 3.8-1, rma(log(a/b), (ua/a)² + (ub/b)², method = 'FE')",
      files: {
        "corpus.yaml": "title: Two jars\n",
        "jars.yaml": [
          "artefacts: [{ id: big, name: The big jar }, { id: small, name: The small jar }]",
          "measurements:",
          ...[
            ["height", "31.0 ± 0.3", "20.4 ± 0.3"],
            ["belly", "24.2 ± 0.3", "16.3 ± 0.3"],
            ["rim", "18.9 ± 0.3", "12.5 ± 0.3"],
            ["foot", "9.8 ± 0.2", "6.6 ± 0.2"],
          ].flatMap(([name, a, b]) => [
            `  - { of: big, dimension: ${name}, value: ${a} cm }`,
            `  - { of: small, dimension: ${name}, value: ${b} cm }`,
          ]),
          "derivations:",
          "  - id: same-shape",
          "    plugin: scaling",
          "    inputs: { larger: { of: big }, smaller: { of: small } }",
          "",
        ].join("\n"),
      },
      derivation: "same-shape",
      expected: {
        n: { value: 4, tolerance: 0 },
        k: { value: 1.50480049396334, tolerance: 1e-8 },
        heterogeneity: { value: 0.838995909564262, tolerance: 1e-8 },
        df: { value: 3, tolerance: 0 },
        p: { value: 0.840118764814202, tolerance: 1e-8 },
      },
    },
  ],
};

type Row = { readonly [key: string]: Json } & {
  readonly name: string;
  readonly ratio: number;
  readonly u: number;
};
