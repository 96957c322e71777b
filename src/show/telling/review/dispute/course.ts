import type { Id } from "../../../../base/finding.ts";
import { yearWords } from "../../../../base/date/year-words.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import { historyOf } from "../../../judged/history/history.ts";
import type { History, HistoryStep, Publication } from "../../../judged/history/history.ts";
import { broughtInWords } from "../../../judged/history/sentence.ts";
import type { StanceName } from "../../../scholars/taken.ts";
import type { PositionRecord } from "../../../../link/graph.ts";
import type { Block, Citing, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { asideFor, citesFor } from "../pieces/cites.ts";
import { listed, paragraph } from "../pieces/inlines.ts";
import { becameSentences } from "./became.ts";
import { familiesOf, stanceOn, stanceVerb, tookThese } from "./stances.ts";

/** The dispute in the order of publication: what each work held, and what then followed from all that was in print. */
export function courseSection(sight: Sight): readonly Block[] {
  return historyIn(sight).flatMap((step) => stepBlocks(sight, step));
}

function historyIn({ model, graph, plugins, memo }: Sight): History {
  const { lens, judgement } = model;
  return model.history ?? historyOf({ graph, plugins, memo, lens }, judgement).history;
}

function stepBlocks(sight: Sight, { year, publications, changes }: HistoryStep): readonly Block[] {
  const became = becameSentences(sight, changes);
  const brought = publications.map((one) => published(sight, one, became.length > 0));
  const told = brought.flatMap(({ said }) => said);
  if (told.length === 0 && became.length === 0) return [];
  if (brought.some(({ items }) => items.length > 0))
    return [...brought.flatMap(broughtBlocks), ...paragraph(became)];
  if (year === null)
    return paragraph([[say`What this review adds itself changes the picture once more.`], ...became]);
  const lead: Inlines =
    told.length === 0 ? [say`What is dated ${yearWords(year)} is in none of these works.`] : [];
  return paragraph([lead, ...told, ...became]);
}

/** What a publication brought: sentences, and what one of them introduces as a list. */
interface Brought {
  readonly said: readonly Inlines[];
  readonly items: readonly Inlines[];
}

function broughtBlocks({ said, items }: Brought): readonly Block[] {
  const list: Block = { is: "list", ordered: false, items };
  return [...paragraph(said), ...(items.length === 0 ? [] : [list])];
}

const stanceOrder: readonly StanceName[] = ["holds", "doubts", "leaves-open", "rejects"];

/** What a publication brought to the questions: the positions taken in it, else how much of what. */
function published(sight: Sight, { source, brought }: Publication, changes: boolean): Brought {
  if (source === null) return { said: [], items: [] };
  const { graph } = sight;
  const taken = bySource(sight).taken.get(source) ?? [];
  const authors = graph.authorsOf(source);
  // What was read in another work alone is told with that work.
  const own = taken.filter(
    ({ values }) => values.via === undefined && values.who.every((who) => authors.includes(who)),
  );
  const others = taken.filter((position) => !own.includes(position));
  const byOthers = others.map((one) => positionOf(sight, one));
  if (own.length > mostInSentence) {
    const work: Citing = { is: "citing", manner: "sentence", cites: [{ id: source }] };
    return { said: [...byOthers, [work, tookThese]], items: positionItems(sight, source, own) };
  }
  const told = [...ownPositions(sight, source, own), ...byOthers];
  if (told.length > 0) return { said: told, items: [] };
  const kinds = brought.filter(({ list }) => list !== "passages" && list !== "images");
  const bears = kinds.length > 0 && (changes || bySource(sight).bears.has(source));
  const work: Citing = { is: "citing", manner: "sentence", cites: [{ id: source }] };
  const said = bears ? [[work, say` contributed ${row(kinds.map((one) => broughtInWords([one])))}.`]] : [];
  return { said, items: [] };
}

/** As many positions of a work are one sentence; more are a list. */
const mostInSentence = 3;

/** What the authors of a work held in it, one by one, each with its place. */
function positionItems(sight: Sight, source: Id, own: readonly PositionRecord[]): readonly Inlines[] {
  const several = (sight.graph.sources.get(source)?.names.length ?? 1) > 1;
  return stanceOrder.flatMap((stance) =>
    own
      .filter(({ values }) => values.stance === stance)
      .map(({ id, values }): Inlines => {
        const cites = citesFor(sight, id).filter((one) => one.id === source && one.at !== undefined);
        const place: Inlines = cites.length > 0 ? [" ", { is: "citing", manner: "year", cites }] : [];
        return [stanceVerb(stance, "then", several), ...stanceOn(sight, stance, values.claim), ...place, "."];
      }),
  );
}

/** What the authors of a work held in it: its place with the first thing they said, its year with the others. */
function ownPositions(sight: Sight, source: Id, own: readonly PositionRecord[]): readonly Inlines[] {
  const inOrder = stanceOrder.flatMap((stance) => own.filter(({ values }) => values.stance === stance));
  const [first] = inOrder;
  if (!first) return [];
  const several = (sight.graph.sources.get(source)?.names.length ?? 1) > 1;
  const places = (position: PositionRecord): Citing["cites"] =>
    citesFor(sight, position.id).filter(({ id, at }) => id === source && at !== undefined);
  const [opening = { id: source }] = places(first);
  const clauses = stanceOrder.map((stance): Inlines => {
    const those = inOrder.filter(({ values }) => values.stance === stance);
    const claims = those.map((position): Inlines => {
      const cites = places(position).filter(({ at }) => position !== first || at !== opening.at);
      const place: Inlines = cites.length > 0 ? [" ", { is: "citing", manner: "year", cites }] : [];
      return [...stanceOn(sight, stance, position.values.claim), ...place];
    });
    return those.length === 0 ? [] : [stanceVerb(stance, "then", several), ...listed(claims)];
  });
  return [[{ is: "citing", manner: "sentence", cites: [opening] }, " ", ...listed(clauses), "."]];
}

/** A position that is reported by somebody else than who takes it. */
function positionOf(sight: Sight, { id, values }: PositionRecord): Inlines {
  return [
    ...familiesOf(sight, values.who),
    " ",
    stanceVerb(values.stance, "then", values.who.length > 1),
    ...stanceOn(sight, values.stance, values.claim),
    ...asideFor(sight, id),
    ".",
  ];
}

/** What is known of works by their keys: the positions taken in each in its own year, and from which something bears on the questions. */
interface BySource {
  readonly taken: ReadonlyMap<Id, readonly PositionRecord[]>;
  readonly bears: ReadonlySet<Id>;
}

const gathered = new WeakMap<Sight, BySource>();

/** Gathered once: to look through all records for each work would grow with the square. */
function bySource(sight: Sight): BySource {
  const known = gathered.get(sight);
  if (known) return known;
  const { graph, shown } = sight;
  const taken = new Map<Id, PositionRecord[]>();
  const bears = new Set<Id>();
  for (const record of graph.records.values()) {
    if (!shown(record.id)) continue;
    const { sources, year } = graph.provenance(record.id);
    for (const source of sources) bears.add(source);
    const [first] = sources;
    if (record.list !== "positions" || first === undefined || year !== graph.sources.get(first)?.year)
      continue;
    const those = taken.get(first);
    if (those) those.push(record);
    else taken.set(first, [record]);
  }
  const found = { taken, bears };
  gathered.set(sight, found);
  return found;
}
