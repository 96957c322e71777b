import { nearest } from "../../../../base/nearest.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { fieldName } from "../../../../read/grammar/field-words.ts";
import { registersIn } from "./artefact.ts";
import { dimensionKnown, dimensionNames, fieldsOf } from "./meaning.ts";
import type { Meaning, TableList } from "./meaning.ts";
import { headKey, numberKey } from "./number.ts";
import { unitInHead } from "./unit-in-head.ts";
import { usualDimensions, usualOfArtefact, usualOfMeasurement, usualRegisters } from "./usual.ts";

/** What a column of a table is taken for. */
export interface ColumnMatch {
  /** As the head line has it. */
  readonly head: string;
  readonly meaning: Meaning;
  readonly why: Text;
  /** It should be looked at before it is believed. */
  readonly unsure: boolean;
}

type Guess = Omit<ColumnMatch, "head">;

/**
 * What the columns of a table are, by their heads: names of fields, of dimensions of the corpus and their other spellings,
 * of registers, and headings that are usual. A column that nothing fits is kept as a field of the scholar's own.
 */
export function matched(graph: Graph, head: readonly string[], list: TableList): readonly ColumnMatch[] {
  const taken = new Set<string>();
  const found: ColumnMatch[] = [];
  for (const name of head) {
    const guess = guessFor(graph, name, list, found);
    const key = keyOf(guess.meaning);
    const twice = key !== null && taken.has(key);
    if (key !== null) taken.add(key);
    found.push({
      head: name,
      ...(twice ? { ...ownField(name), why: say`another column is that already` } : guess),
    });
  }
  return withUnits(found);
}

/** The list that a table is likely to be of: measurements where a column is a value or figures of a dimension. */
export function likelyList(graph: Graph, head: readonly string[]): TableList {
  const named = head.some((name) => {
    const known = usualIn(
      usualOfMeasurement,
      headKey(unitInHead(name, graph.settings.quantities.units).name),
    );
    return known === "value" || known === "dimension";
  });
  const measured = matched(graph, head, "measurements").some(({ meaning }) => meaning.is === "dimension");
  return named || measured ? "measurements" : "artefacts";
}

function guessFor(graph: Graph, head: string, list: TableList, before: readonly ColumnMatch[]): Guess {
  const said = head.trim();
  if (said === "") return { meaning: { is: "nothing" }, why: say`it has no head`, unsure: false };
  return (
    byField(said, list) ??
    byRegister(graph, said, list) ??
    (list === "measurements" ? byFigure(graph, said, before) : null) ??
    byUsual(graph, said, list) ??
    (list === "measurements" ? byUnit(graph, said) : null) ??
    byNear(graph, said, list) ??
    ownField(said)
  );
}

function byField(head: string, list: TableList): Guess | null {
  if (list === "measurements" && (head === "unit" || head === "uncertainty")) {
    const meaning: Meaning =
      head === "unit" ? { is: "unit" } : { is: "uncertainty", dimension: null, unit: null };
    return { meaning, why: say`it is the name of a field`, unsure: false };
  }
  if (!fieldsOf(list).includes(head) && !/^x-./u.test(head)) return null;
  return { meaning: { is: "field", field: head }, why: say`it is the name of a field`, unsure: false };
}

function byRegister(graph: Graph, head: string, list: TableList): Guess | null {
  const key = headKey(head);
  const registers = registersIn(graph);
  const own = registers.find((one) =>
    [one, `${one} number`, `${one} no`].some((name) => headKey(name) === key),
  );
  const usual = own === undefined ? usualIn(usualRegisters, key) : null;
  const register = own ?? usual;
  if (register === undefined || register === null) return null;
  const meaning: Meaning =
    list === "artefacts" ? { is: "number", register } : { is: "field", field: "of", register };
  const why =
    own === undefined
      ? say`a usual heading for numbers of the register ${register}`
      : say`the corpus has numbers of this register`;
  return { meaning, why, unsure: false };
}

/** Figures of a dimension, or what is ± of them: a head with a sign for that (`± depth`) is never the dimension itself. */
function byFigure(graph: Graph, head: string, before: readonly ColumnMatch[]): Guess | null {
  const signed = signs.test(head) ? byError(graph, head, before) : null;
  const found = signed ?? byDimension(graph, head) ?? byError(graph, head, before);
  const halved = found?.meaning.is === "uncertainty" && oneStandard.test(head);
  if (!found || !halved || graph.settings.quantities.plusMinus === "standard") return found;
  const why = say`it says one standard deviation, where ± is two in this corpus: give all rows the field ${fieldName("coverage")} with ${"1"}`;
  return { ...found, why, unsure: true };
}

/** Heads that say 1 s of what is ±. */
const oneStandard = /[Ss]tandard|σ|\b(?:sd|std|s\.d\.)(?!\p{L})|[Éé]cart|معياري/u;

/** A dimension that the corpus has, as its name or another spelling, with or without a unit behind it. */
function byDimension(graph: Graph, head: string): Guess | null {
  const { name, unit } = unitInHead(head, graph.settings.quantities.units);
  const whole = dimensionKnown(graph, head);
  const known = whole ?? dimensionKnown(graph, name);
  const meaning = (dimension: string): Meaning => ({
    is: "dimension",
    dimension,
    unit: whole === null ? unit : null,
  });
  if (known !== null)
    return { meaning: meaning(known), why: say`the corpus calls a dimension so`, unsure: false };
  const key = headKey(name);
  const usual = usualDimensions.filter((all) => all.includes(key)).flat();
  const [own, ...others] = dimensionNames(graph).filter((one) => usual.includes(headKey(one)));
  if (own === undefined) return null;
  return {
    meaning: meaning(own),
    why: say`a usual heading for the dimension ${own}`,
    unsure: others.length > 0 || key.length < 3,
  };
}

/** Words by which a column says that it is ± of another: a sign, or one of the usual words for it. */
const signs = /^(?:±|\+\/?[-−]|σ|δ)\s*|\s*(?:±|\+\/?[-−]|σ)$/u;

function byError(graph: Graph, head: string, before: readonly ColumnMatch[]): Guess | null {
  const { units } = graph.settings.quantities;
  const { name, unit } = unitInHead(head, units);
  const bare = name.replace(signs, "").trim();
  const signed = bare !== name;
  const words = numberKey(bare).split(" ");
  const usual = usualOfMeasurement["uncertainty"] ?? [];
  const word = usual
    .filter((one) => ` ${words.join(" ")} `.includes(` ${one} `) && one.length > 1)
    .toSorted((a, b) => b.length - a.length)[0];
  const only = signed ? bare === "" : usual.includes(headKey(bare));
  if (only) {
    const last = before.findLast(({ meaning }) => meaning.is === "dimension")?.meaning;
    const valued = before.some(({ meaning }) => meaning.is === "field" && meaning.field === "value");
    const dimension = last?.is === "dimension" && !valued ? last.dimension : null;
    const why =
      dimension === null
        ? say`a usual heading for what is ± of figures`
        : say`it stands behind the figures of ${dimension}`;
    return { meaning: { is: "uncertainty", dimension, unit }, why, unsure: !signed };
  }
  if (!signed && word === undefined) return null;
  const rest = signed ? bare : ` ${words.join(" ")} `.replace(` ${word ?? ""} `, " ").trim();
  const of = byDimension(graph, rest.replace(/^(?:of|von|de|di) /u, ""))?.meaning;
  if (of?.is !== "dimension") return null;
  return {
    meaning: { is: "uncertainty", dimension: of.dimension, unit: unit ?? of.unit },
    why: say`it says ± and names the dimension ${of.dimension}`,
    unsure: !signed,
  };
}

function byUsual(graph: Graph, head: string, list: TableList): Guess | null {
  const { name, unit } = unitInHead(head, graph.settings.quantities.units);
  const usual = list === "artefacts" ? usualOfArtefact : usualOfMeasurement;
  const field = usualIn(usual, headKey(head)) ?? usualIn(usual, headKey(name));
  if (field === null) return null;
  if (field === "unit")
    return { meaning: { is: "unit" }, why: say`a usual heading for units`, unsure: false };
  return {
    meaning: { is: "field", field, ...(field === "value" && unit !== null ? { unit } : {}) },
    why: say`a usual heading for ${fieldName(field)}`,
    unsure: false,
  };
}

/** What has a unit in its head holds figures, of a dimension that the corpus does not know. */
function byUnit(graph: Graph, head: string): Guess | null {
  const { name, unit } = unitInHead(head, graph.settings.quantities.units);
  if (unit === null) return null;
  return {
    meaning: { is: "dimension", dimension: inSentence(graph, name), unit },
    why: say`it has a unit, and the corpus knows no dimension that is called so`,
    unsure: true,
  };
}

/** A name as it stands within a sentence: a capital that only begins the head is none of its own, but in German. */
function inSentence(graph: Graph, name: string): string {
  const capital = /^\p{Lu}\p{Ll}/u.test(name) && !/^de\b/u.test(graph.settings.language);
  return capital ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}

function byNear(graph: Graph, head: string, list: TableList): Guess | null {
  const { name, unit } = unitInHead(head, graph.settings.quantities.units);
  const dimensions = list === "measurements" ? dimensionNames(graph) : [];
  const [near] = nearest(name, [...fieldsOf(list), ...dimensions], 1);
  if (near === undefined || name.length < 4) return null;
  const meaning: Meaning = dimensions.includes(near)
    ? { is: "dimension", dimension: near, unit }
    : { is: "field", field: near };
  return { meaning, why: say`the nearest name is ${near}`, unsure: true };
}

/** A field of the scholar's own, so that nothing of a table is lost. */
function ownField(head: string): Guess {
  const name = numberKey(head).replaceAll(" ", "-");
  if (name === "") return { meaning: { is: "nothing" }, why: say`nothing fits it`, unsure: true };
  return { meaning: { is: "field", field: `x-${name}` }, why: say`nothing fits it`, unsure: true };
}

function usualIn(usual: Readonly<Record<string, readonly string[]>>, key: string): string | null {
  return Object.entries(usual).find(([, all]) => all.includes(key))?.[0] ?? null;
}

/** What may be said once in a table. */
function keyOf(meaning: Meaning): string | null {
  if (meaning.is === "nothing") return null;
  if (meaning.is === "field") return `field ${meaning.field}`;
  if (meaning.is === "dimension") return `dimension ${meaning.dimension}`;
  if (meaning.is === "uncertainty") return `uncertainty ${meaning.dimension ?? ""}`;
  return meaning.is === "number" ? `number ${meaning.register}` : "unit";
}

/** What is ± of figures that come bare is in their unit, unless its own head says another. */
function withUnits(columns: readonly ColumnMatch[]): readonly ColumnMatch[] {
  return columns.map((one) => {
    const { meaning } = one;
    if (meaning.is !== "uncertainty" || meaning.unit !== null || meaning.dimension === null) return one;
    const of = columns.find(
      (other) => other.meaning.is === "dimension" && other.meaning.dimension === meaning.dimension,
    )?.meaning;
    return of?.is === "dimension" && of.unit !== null
      ? { ...one, meaning: { ...meaning, unit: of.unit } }
      : one;
  });
}
