import type { Finding, Id } from "../../../base/finding.ts";
import { derive } from "../../../derive/derive.ts";
import type { Derivations } from "../../../derive/derive.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Lens } from "../../../derive/lens.ts";
import type { ComputeMemo, Run } from "../../../derive/run.ts";
import { lossesOf, trialsOf } from "../../../derive/choices.ts";
import { judge } from "../../../judge/judge.ts";
import type { Judgement } from "../../../judge/judge.ts";
import type { DerivationRecord, Graph } from "../../../link/graph.ts";
import { link } from "../../../link/link.ts";
import { underSupposition } from "../../../link/suppose/under.ts";
import type { Plugin } from "../../../plugin.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import { readCorpus } from "../../../read/read.ts";
import type { ReadMemo } from "../../../read/read.ts";
import { readRecords } from "../../../read/records.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import type { Draft } from "./draft/draft.ts";
import { looksElsewhere, looksOf, settingsKey } from "./draft/looks.ts";
import { recordOf } from "./draft/record.ts";

/** What a derivation is tried in: the corpus as it is, what was computed before, and the lens it is looked at under. */
export interface Corpus {
  readonly files: readonly SourceFile[];
  readonly read: ReadMemo;
  readonly compute: ComputeMemo;
  readonly plugins: readonly Plugin[];
  readonly lens: Lens;
}

/** The corpus as it would be with a draft among its derivations. */
export interface Trial {
  readonly id: Id;
  readonly graph: Graph;
  readonly derivations: Derivations;
  readonly judgement: Judgement;
  /** Null while the draft cannot be read as a derivation. */
  readonly record: DerivationRecord | null;
  readonly derived: Derived | null;
  /** What is wrong with what the draft says. */
  readonly findings: readonly Finding[];
  /** The settings as a key, by which looks are told apart. */
  readonly key: string | null;
  /** How often the data were looked at, these settings included. */
  readonly looks: number;
}

/** A path that no file of a corpus can have: names that begin with a dot are passed over. */
const place = ".workbench.yaml";

/** The corpus tied together with a draft among its records, and what is wrong with what that says. */
type Tied = Pick<Trial, "graph" | "findings">;

/** Tries drafts as if they stood in the corpus; the corpus with the last few is remembered, and so tied only once. */
export function rememberedTrials(): (corpus: Corpus, draft: Draft, id: Id) => Trial | null {
  const tied: (Tied & { readonly files: readonly SourceFile[]; readonly key: string })[] = [];
  const tiedWith = ({ files, read, lens }: Corpus, record: WrittenMap, id: Id): Tied | null => {
    const text = JSON.stringify({ derivations: [record] });
    const key = JSON.stringify([text, lens.suppose ?? null]);
    const known = tied.find((one) => one.files === files && one.key === key);
    if (known) return known;
    const reading = readCorpus(files, read);
    if (!("settings" in reading)) return null;
    const own = readRecords({ path: place, text }, reading.settings.quantities);
    const graph = link({
      ...reading,
      records: [
        ...reading.records.filter((one) => one.list !== "derivations" || one.id !== id),
        ...own.records,
      ],
      spoilt: [...reading.spoilt, ...own.spoilt],
    });
    const findings = [...own.findings, ...graph.findings.filter((one) => one.at?.file === place)];
    const fresh = { files, key, graph: underSupposition(graph, lens.suppose).graph, findings };
    tied.splice(0, tied.length, fresh, ...tied.slice(0, 2));
    return fresh;
  };
  let last: { readonly of: readonly unknown[]; readonly trial: Trial } | null = null;
  const trialIn = (corpus: Corpus, found: Tied | null, draft: Draft, id: Id): Trial | null => {
    if (found === null) return null;
    const { compute, plugins, lens } = corpus;
    // While a text is typed nothing else changes: the corpus is not judged again for every letter.
    const looked = JSON.stringify([lens, draft.of, draft.looksBefore, draft.seen]);
    const of = [found, id, plugins, compute.size, looked];
    if (last?.of.every((one, at) => one === of[at]) === true) return last.trial;
    const trial = tried(corpus, found, draft, id);
    last = { of, trial };
    return trial;
  };
  return (corpus, draft, id) => {
    const alone = tiedWith(corpus, recordOf(draft, id, looksOf(draft)), id);
    const looks = looksOf(draft, null, alone === null ? 0 : looksElsewhere(alone.graph, draft, id));
    const found = looks === looksOf(draft) ? alone : tiedWith(corpus, recordOf(draft, id, looks), id);
    const first = trialIn(corpus, found, draft, id);
    // What is about to be seen is a look itself: it is computed as one, once.
    if (first === null || first.looks === looks) return first;
    return trialIn(corpus, tiedWith(corpus, recordOf(draft, id, first.looks), id), draft, id);
  };
}

function tried({ compute, plugins, lens }: Corpus, { graph, findings }: Tied, draft: Draft, id: Id): Trial {
  const derivations = derive(graph, plugins, compute, lens);
  const found = graph.records.get(id);
  const record = found?.list === "derivations" ? found : null;
  const derived = derivations.byId.get(id) ?? null;
  const key = record === null ? null : settingsKey(graph, plugins, compute, id);
  return {
    id,
    graph,
    derivations,
    judgement: judge(graph, derivations, lens),
    record,
    derived,
    findings,
    key,
    looks: looksOf(draft, key, looksElsewhere(graph, draft, id)),
  };
}

/** The runs that a trial needs: its number, what that changes in others, and what other choices of readings would give. */
export function runsFor({ plugins, compute, lens }: Corpus, trial: Trial): readonly Run[] {
  const { graph, derivations, judgement, derived } = trial;
  const bench = { graph, plugins, memo: compute, lens };
  const stands = (id: Id): boolean => judgement.standings.get(id) === "stands";
  const choices = derived?.status === "computed" ? trialsOf(bench, derived, stands) : [];
  const losses = derived?.status === "computed" ? lossesOf(bench, derived, stands).each : [];
  return [
    ...derivations.missing,
    ...choices.flatMap((one) => one.missing),
    ...losses.flatMap((one) => one.missing),
  ];
}
