import type { Finding, Id, Span } from "../../../base/finding.ts";
import { differing } from "../../../base/text/edit.ts";
import type { Checked, Model, Stood } from "../../../build.ts";
import { findingsAt } from "../../../build.ts";
import { inPlace } from "../../../judge/rules/findings.ts";
import { rules } from "../../../judge/rules/index.ts";
import { withheldIn } from "../../../link/withheld.ts";
import { hasSameTextIn } from "../../../read/source-file.ts";

/** What was last found out about a corpus that takes longer than to say what stands: it is shown until it is known anew. */
export interface Carried {
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
  /** What the rules found. */
  readonly ruled: readonly Finding[];
  /** What was withheld then: where that is other now, it may not be said again. */
  readonly withheld: readonly Id[];
  /** The texts in which that was found. */
  readonly files: ReadonlyMap<string, string>;
}

const byRule = new Set(rules.map(({ id }) => id));

/** What of a model is carried on. */
export function carriedFrom({ model, findings }: Checked<Model>): Carried | null {
  if (!model) return null;
  const ruled = findings.filter(({ rule }) => byRule.has(rule));
  return { restsOn: model.restsOn, ruled, withheld: withheldOf(model), files: model.files };
}

/** What of an earlier model may be said beside what stands now; null where nothing may. */
export function stillSaid(stood: Stood, carried: Carried | undefined): Carried | null {
  if (!carried) return null;
  const now = withheldOf(stood);
  const isSame = now.length === carried.withheld.length && now.every((id, at) => id === carried.withheld[at]);
  return isSame ? carried : null;
}

function withheldOf({ graph }: Stood): readonly Id[] {
  if (graph.settings.withhold.length === 0) return [];
  return [...graph.records.keys(), ...graph.sources.keys()].filter(withheldIn(graph));
}

/** A model of what stands now, with what of the last one still can be said of it; with nothing carried, that part is empty. */
export function withCarried(stood: Stood, carried: Carried | null): Checked<Model> {
  const { graph, judgement } = stood;
  const said = findingsAt(graph, stood.said, []);
  const isThere = (id: Id): boolean => graph.records.has(id) || graph.sources.has(id);
  const restsOn = [...(carried?.restsOn ?? [])].filter(
    ([claim, losses]) => judgement.standings.get(claim) === "stands" && losses.every(isThere),
  );
  const move = movingTo(carried?.files ?? new Map<string, string>(), stood.files);
  const ruled = (carried?.ruled ?? []).flatMap((one) => (one.about.every(isThere) ? move(one) : []));
  return {
    model: {
      ...stood,
      restsOn: new Map(restsOn),
      lossSets: null,
      history: null,
      plan: null,
      missing: stood.derivations.missing,
    },
    findings: [...said, ...ruled].toSorted(inPlace),
  };
}

/** Brings findings from some texts to others: what follows a change moves with its text, what the change touches is left out. */
function movingTo(
  was: ReadonlyMap<string, string>,
  is: ReadonlyMap<string, string>,
): (one: Finding) => readonly Finding[] {
  const changes = new Map<
    string,
    { readonly start: number; readonly end: number; readonly longer: number }
  >();
  for (const file of was.keys()) {
    if (hasSameTextIn(was, is, file)) continue;
    const { start, end, text } = differing(was.get(file) ?? "", is.get(file) ?? "");
    changes.set(file, { start, end, longer: text.length - (end - start) });
  }
  const moved = ({ file, start, end }: Span): Span | null => {
    const change = changes.get(file);
    if (!change || end <= change.start) return { file, start, end };
    if (start >= change.end) return { file, start: start + change.longer, end: end + change.longer };
    return start <= change.start && change.end <= end ? { file, start, end: end + change.longer } : null;
  };
  return (one) => {
    const at = one.at && moved(one.at);
    const also = one.also?.map(moved);
    if ((one.at && !at) || also?.includes(null)) return [];
    // Its edits were made for the text before.
    const fix = one.fix?.edits.some(({ file }) => changes.has(file)) ? null : one.fix;
    return [{ ...one, at, fix, ...(also ? { also: also.filter((it) => it !== null) } : {}) }];
  };
}
