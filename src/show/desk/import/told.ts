import type { Id } from "../../../base/finding.ts";
import type { FileChange } from "../../../base/text/edit.ts";
import { linesIn } from "../../../base/text/lines/lines.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Likeness } from "../../../read/bibliography/incoming/alike/alike.ts";
import type { Unread } from "../../../read/bibliography/incoming/arrived.ts";
import type { Format } from "../../../read/bibliography/incoming/formats.ts";
import type { Outcome, Plan, Twin } from "../../../read/bibliography/incoming/plan.ts";
import type { ImportPlan } from "./plan.ts";
import { plainText } from "../../../read/bibliography/csl.ts";
import { withheldIn } from "../../withhold.ts";

/** What an entry is like: a source of the corpus, or an entry that came in before it. */
export interface TwinTold {
  readonly of: "corpus" | "file";
  readonly key: Id;
  readonly label: string;
  readonly title: string;
  readonly file: string;
  readonly line: number;
  readonly why: readonly Likeness[];
}

/** A field that the corpus's entry lacks, or that says something else. */
export interface FieldTold {
  readonly name: string;
  readonly here: string | null;
  readonly theirs: string;
  /** Of one that differs, whether what came in is taken. */
  readonly taken: boolean;
}

/** One entry that came in, and what becomes of it. */
export interface EntryTold {
  readonly place: number;
  readonly file: string;
  readonly line: number;
  readonly format: Format;
  /** It is like something withheld: nothing of it is told, and it is left alone. */
  readonly hidden: boolean;
  /** `Vane 1968`. */
  readonly label: string;
  readonly title: string;
  readonly language: string | null;
  readonly text: string;
  readonly does: "add" | "leave" | "merge";
  /** Its key in its file; null where it had none. */
  readonly own: Id | null;
  /** Its key in the corpus; null where it is not added. */
  readonly key: Id | null;
  readonly keyIs: Outcome["keyIs"];
  /** Why it comes along unasked: it lends fields to the entry of this key. */
  readonly for: Id | null;
  readonly twins: readonly TwinTold[];
  /** Where it can be merged: what would be added, and what differs. */
  readonly merge: {
    readonly into: Id;
    readonly missing: readonly FieldTold[];
    readonly differing: readonly FieldTold[];
  } | null;
  readonly remarks: readonly Text[];
}

/** A stretch that is no entry that could be read. */
export interface UnreadTold extends Unread {
  readonly file: string;
}

/** An import as it is shown before it is done, and the changes of files that do it. */
export interface ImportTold {
  readonly entries: readonly EntryTold[];
  readonly failures: readonly UnreadTold[];
  readonly besides: readonly UnreadTold[];
  /** The bibliographies that get entries, how many, and whether each is new. */
  readonly goals: readonly {
    readonly format: Format;
    readonly file: string;
    readonly isNew: boolean;
    readonly entries: number;
  }[];
  /** Names of abbreviations of BibTeX that come along. */
  readonly abbreviations: readonly string[];
  /** Keys of entries that only lend fields and come along. */
  readonly lenders: readonly Id[];
  readonly changes: readonly FileChange[];
  /** Why it cannot be done; null where it can. */
  readonly problem: Text | null;
}

/** Longest text of an entry that is shown, in UTF-16 units. */
const longest = 4000;

/** Tells a plan: every entry with what becomes of it, and nothing of what is withheld. */
export function importTold(graph: Graph, { plan, made, refused }: ImportPlan): ImportTold {
  const texts = new Map<string, string>();
  for (const { path, text } of plan.shelf.holdings) texts.set(path, text);
  const lineOf = linesIn(texts);
  const place: Where = (twin) => twinTold(plan, twin, (file, start) => lineOf(file, start).line);
  const unread = (of: "failures" | "besides"): readonly UnreadTold[] =>
    plan.arrived.flatMap((arrived) =>
      arrived[of].map((one) => ({ ...masked(graph, one), file: arrived.file.path })),
    );
  const goals = "problem" in made ? [] : [...made.goals];
  return {
    entries: plan.outcomes.flatMap((one) => (refused.has(one.place) ? [] : [entryTold(one, place)])),
    failures: [...unread("failures"), ...refusedIn(graph, plan, refused)],
    besides: unread("besides"),
    goals: goals.map(([format, { path, isNew }]) => ({
      format,
      file: path,
      isNew,
      entries: plan.outcomes.filter((one) => one.key !== null && one.arrived.format === format).length,
    })),
    abbreviations: "problem" in made ? [] : made.abbreviations,
    lenders: plan.along.map((one) => one.key),
    changes: "problem" in made ? [] : made.changes,
    problem: "problem" in made ? made.problem : null,
  };
}

/** Entries that could be read, and cannot come in as they are. */
function refusedIn(graph: Graph, plan: Plan, refused: ReadonlyMap<number, Text>): readonly UnreadTold[] {
  return plan.outcomes.flatMap(({ place, arrived, entry }) => {
    const why = refused.get(place);
    if (why === undefined) return [];
    const { line, text } = entry;
    return [{ ...masked(graph, { line, why: [why], text }), file: arrived.file.path }];
  });
}

type Where = (twin: Twin) => TwinTold;

function entryTold(outcome: Outcome, where: Where): EntryTold {
  const { place, arrived, entry, hidden, choice, key, keyIs, twins, merge } = outcome;
  const at = { place, file: arrived.file.path, line: entry.line, format: arrived.format, hidden };
  if (hidden)
    return {
      ...at,
      label: "",
      title: "",
      language: null,
      text: "",
      does: "leave",
      own: null,
      key: null,
      keyIs: "own",
      for: null,
      twins: [],
      merge: null,
      remarks: [],
    };
  const { source, keyless, text, remarks } = entry;
  const taken = choice.do === "merge" ? choice.take : [];
  const field = (one: {
    readonly name: string;
    readonly here: string | null;
    readonly theirs: string;
  }): FieldTold => ({
    name: one.name,
    here: one.here,
    theirs: one.theirs,
    taken: taken.includes(one.name),
  });
  return {
    ...at,
    label: source.label,
    title: plainText(source.csl.title ?? ""),
    language: source.csl.language ?? null,
    text: text.length > longest ? `${text.slice(0, longest)} …` : text,
    does: key === null ? choice.do : "add",
    own: keyless ? null : source.key,
    key,
    keyIs,
    for: outcome.for,
    twins: twins.map(where),
    merge: merge && {
      into: merge.held.source.key,
      missing: merge.missing.map(field),
      differing: merge.differing.map(field),
    },
    remarks,
  };
}

function twinTold(plan: Plan, twin: Twin, lineIn: (file: string, start: number) => number): TwinTold {
  const { of, why } = twin;
  if (twin.of === "corpus") {
    const { source, holding } = twin.held;
    const line = lineIn(holding.path, source.span.start);
    return {
      of,
      key: source.key,
      label: source.label,
      title: titleOf(source.csl.title),
      file: holding.path,
      line,
      why,
    };
  }
  const other = plan.outcomes[twin.place];
  if (!other)
    throw new Error(`unexpected place ${twin.place}, expected one of ${plan.outcomes.length} entries`);
  const { source, line } = other.entry;
  const key = other.key ?? source.key;
  return {
    of,
    key,
    label: source.label,
    title: titleOf(source.csl.title),
    file: other.arrived.file.path,
    line,
    why,
  };
}

const titleOf = (title: string | undefined): string => plainText(title ?? "");

/** A text that names something withheld is not shown. */
function masked(graph: Graph, one: Unread): Unread {
  const withheld = withheldIn(graph);
  const names = one.text.split(/[\s,{}()"=[\]:]+/).some((word) => word !== "" && withheld(word));
  if (names) return { line: one.line, why: [], text: "" };
  return one.text.length > longest ? { ...one, text: `${one.text.slice(0, longest)} …` } : one;
}
