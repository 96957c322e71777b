import { finding } from "../../base/finding.ts";
import type { Finding, Span } from "../../base/finding.ts";
import { nearest } from "../../base/nearest.ts";
import type { QuantityKind } from "../../base/quantity.ts";
import { kindWords } from "../../base/unit/kind-words.ts";
import { coded, row, say } from "../../base/text/said/said.ts";
import { suchAs } from "../../read/decode/named.ts";
import { spanOf } from "../../read/record.ts";
import type { DimensionSetting, Settings } from "../../read/settings/settings.ts";
import { folded } from "../dimension.ts";
import { readSum } from "./expression.ts";
import type { Unread, WrittenTerm } from "./expression.ts";
import type { Tie, TieTerm } from "./tie.ts";

/** The dimensions of a corpus: those declared and those met, one name for all spellings, and the kind of each. */
export interface Dimensions {
  readonly met: Iterable<string>;
  readonly nameOf: (written: string) => string;
  readonly kindOf: (name: string) => QuantityKind | null;
}

/** What dimensions come to by others, as `equals` of the settings has it, and what is wrong with it; a bad one is left out. */
export function tiesIn(
  settings: Settings,
  dimensions: Dimensions,
): { readonly ties: readonly Tie[]; readonly findings: readonly Finding[] } {
  const written = settings.dimensions.flatMap((one) => one.equals.map((sum, at) => ({ one, sum, at })));
  if (written.length === 0) return { ties: [], findings: [] };
  const names = [
    ...settings.dimensions.flatMap((one) => [one.name, ...one.also]),
    ...new Set(dimensions.met),
  ];
  const known = new Set(names.map(folded));
  const isName = (text: string): boolean => known.has(folded(text));
  const findings: Finding[] = [];
  const placed = written.flatMap(({ one, sum, at }) => {
    const span = spanOf({ file: settings.file, node: settings.node }, "dimensions", one.name, "equals", at);
    const tie = tieOf(one, sum, dimensions, { names, isName });
    if (!("message" in tie)) return [{ tie, span }];
    findings.push(finding("bad-value", tie.message, within(span, sum, tie)));
    return [];
  });
  const circling = circlesIn(placed.map(({ tie }) => tie));
  for (const circle of circling) {
    const span = placed.find(({ tie }) => tie === circle[0])?.span ?? null;
    const message = say`Unexpected circle of dimensions that equal one another, ${row(
      circle.map(({ dimension }) => coded(dimension)),
      "comma",
    )}, expected one of them to be given by the others alone`;
    findings.push(finding("bad-value", message, span));
  }
  const bad = new Set(circling.flat());
  return { ties: placed.map(({ tie }) => tie).filter((tie) => !bad.has(tie)), findings };
}

/** The names that a term may have, as written. */
interface Known {
  readonly names: readonly string[];
  readonly isName: (text: string) => boolean;
}

function tieOf(one: DimensionSetting, sum: string, dimensions: Dimensions, known: Known): Tie | Unread {
  const read = readSum(sum, known.isName);
  if ("message" in read) return read;
  const trouble = troubleIn(one, read, dimensions, known);
  if (trouble !== null) return trouble;
  const terms = gathered(one, read, dimensions);
  if (terms.length > 0) return { dimension: one.name, written: sum.trim(), terms };
  const message = say`Unexpected \`${sum}\`, which comes to nothing, expected a sum such as ${coded("head + shaft")}`;
  return { message, start: 0, end: sum.length };
}

/** The place of a piece of a text that stands in the file as it is; else of the whole. */
function within(span: Span, text: string, { start, end }: Unread): Span {
  return span.end - span.start === text.length
    ? { file: span.file, start: span.start + start, end: span.start + Math.max(end, start + 1) }
    : span;
}

function troubleIn(
  { name }: DimensionSetting,
  terms: readonly WrittenTerm[],
  { nameOf, kindOf }: Dimensions,
  { names, isName }: Known,
): Unread | null {
  const kind = kindOf(name);
  for (const { name: written, of, start, end } of terms) {
    if (written !== null && !isName(written)) {
      const due = suchAs(say`one that is declared or measured`, nearest(written, names));
      const message = say`Unknown dimension \`${written}\`, expected ${due}`;
      return { message, start, end };
    }
    const term = written === null ? name : nameOf(written);
    const other = kindOf(term);
    if (kind !== null && other !== null && kind !== other) {
      const message = say`Unexpected ${kindWords[other]} \`${term}\` in what the ${kindWords[kind]} \`${name}\` equals, expected one kind`;
      return { message, start, end };
    }
    if (of === "itself" && term === name) {
      const message = say`Unexpected \`${name}\` in what it equals itself, expected other dimensions`;
      return { message, start, end };
    }
  }
  return null;
}

/** The terms by the names that the corpus has for them, each dimension once. */
function gathered(
  { name }: DimensionSetting,
  terms: readonly WrittenTerm[],
  { nameOf }: Dimensions,
): readonly TieTerm[] {
  const byName = new Map<string, TieTerm>();
  for (const { name: written, factor, of } of terms) {
    const dimension = written === null ? name : nameOf(written);
    const key = `${of}\n${dimension}`;
    byName.set(key, { dimension, of, factor: factor + (byName.get(key)?.factor ?? 0) });
  }
  return [...byName.values()].filter(({ factor }) => factor !== 0);
}

/** Ties each of which leads back to itself over dimensions of one thing; a part is another thing than its whole. */
function circlesIn(ties: readonly Tie[]): readonly (readonly Tie[])[] {
  const circles: (readonly Tie[])[] = [];
  const done = new Set<Tie>();
  const visit = (tie: Tie, path: readonly Tie[]): void => {
    const again = path.indexOf(tie);
    if (again >= 0) circles.push(path.slice(again));
    if (again >= 0 || done.has(tie)) return;
    const own = tie.terms.filter(({ of }) => of === "itself").map(({ dimension }) => dimension);
    for (const next of ties.filter(({ dimension }) => own.includes(dimension))) visit(next, [...path, tie]);
    done.add(tie);
  };
  for (const tie of ties) visit(tie, []);
  return circles;
}
