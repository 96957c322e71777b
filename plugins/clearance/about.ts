import { say, type Caution, type Example } from "../../src/plugin.ts";

/** The conditions under which clearances mislead (methods E). */
export const cautions: readonly Caution[] = [
  {
    id: "fits-is-not-belongs",
    text: say`To fit is not to belong: how many other pegs of the class would fit as well can be told only where several joints are given, and then is.`,
  },
  {
    id: "shapes",
    text: say`Only sizes are compared: of a square peg in a round socket compare the diagonal, and see that the shapes agree (common practice).`,
  },
  {
    id: "independence",
    text: say`The product over several dimensions takes their errors as independent; the wider limits hold whatever their dependence.`,
  },
  {
    id: "shrinkage",
    text: say`Wood that dried and clay that was fired have shrunk: the sizes compared are those of now, not those of use.`,
  },
  {
    id: "no-trial",
    text: say`Trying parts together can harm both: whether they may be is for their keeper and a conservator to say (common practice).`,
  },
  {
    id: "left-open",
    whenMet: true,
    text: say`A size known only as at least or at most so much leaves open whether its dimension fits.`,
  },
  {
    id: "ranges",
    whenMet: true,
    text: say`A range is read as what one part may measure, all of it equally likely; the spread of several parts says nothing of one.`,
  },
  {
    id: "unlike-dimensions",
    whenMet: true,
    text: say`Dimensions of different names were paired: see that they lie against each other when the parts are joined.`,
  },
  {
    id: "common-error",
    whenMet: true,
    text: say`An error common to both sizes cancels as far as they are alike, and is taken so.`,
  },
];

const pivot = (socket: readonly string[], peg: readonly string[], more: readonly string[] = []): string =>
  [
    "artefacts: [{ id: sill, name: The sill }, { id: pivot, name: The door pivot }]",
    "measurements:",
    ...socket.map((one) => `  - { of: sill, ${one} }`),
    ...peg.map((one) => `  - { of: pivot, ${one} }`),
    "derivations:",
    "  - id: joint",
    "    plugin: clearance",
    "    inputs: { socket: { of: sill }, peg: { of: pivot } }",
    ...more,
    "",
  ].join("\n");

const corpus = "format: 1\ntitle: A door\n";

/** Worked examples with numbers from outside. */
export const examples: readonly Example[] = [
  {
    title: "A door pivot and its socket, invented: width and thickness",
    source: "Chances by scipy 1.17.1, scipy.stats.norm, and their product; the bounds are Fréchet's",
    files: {
      "corpus.yaml": corpus,
      "door.yaml": pivot(
        ["dimension: width, value: 42.0 ± 0.5 mm", "dimension: thickness, value: 12.0 ± 0.3 mm"],
        ["dimension: width, value: 40.5 ± 0.4 mm", "dimension: thickness, value: 11.8 ± 0.3 mm"],
      ),
    },
    derivation: "joint",
    expected: {
      clearance: { value: 0.0002, tolerance: 1e-12 },
      "p-fit": { value: 0.674800524021369, tolerance: 1e-9 },
    },
  },
  {
    title: "The same pivot in a socket that is too wide, where 3 mm are the loosest",
    source: "Chance by scipy 1.17.1, scipy.stats.norm",
    files: {
      "corpus.yaml": corpus,
      "door.yaml": pivot(
        ["dimension: width, value: 47.0 ± 0.5 mm"],
        ["dimension: width, value: 40.5 ± 0.4 mm"],
        ["    parameters: { loosest: 3 mm }"],
      ),
    },
    derivation: "joint",
    expected: {
      clearance: { value: 0.0065, tolerance: 1e-12 },
      "p-fit": { value: 2.30046214750126e-8, tolerance: 1e-15 },
    },
  },
  {
    title: "Two ranges, invented",
    source: "Chance by scipy 1.17.1, scipy.integrate.quad over the exact trapezoid",
    files: {
      "corpus.yaml": corpus,
      "door.yaml": pivot(["dimension: width, value: 40–43 mm"], ["dimension: width, value: 41–42 mm"]),
    },
    derivation: "joint",
    expected: { clearance: { value: 0, tolerance: 1e-12 }, "p-fit": { value: 0.5, tolerance: 1e-9 } },
  },
];
