import type { Finding } from "../../base/finding.ts";
import { byText } from "../../base/order.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { count, say } from "../../base/text/said/said.ts";
import { isPlain } from "../../derive/lens.ts";
import type { Run } from "../../derive/run.ts";
import type { Graph } from "../../link/graph.ts";
import { toldHere } from "../../link/origin/companions.ts";
import { withheldIn, withheldSpans } from "../../link/withheld.ts";
import { accepted, levelled } from "./acceptance.ts";
import type { Slice } from "../resting/at-once.ts";
import type { Found, View } from "./rule.ts";
import { byCause } from "./tell.ts";
import { ruleDocs, rules } from "./index.ts";
import { unusedSettings } from "./sources/unused-acceptance.ts";

/**
 * All that the rules have to say, and the runs that they would need to say more; yields after each rule. `known` keeps
 * what rules said that need no more, for the same view with more numbers.
 */
export function* findingIn(
  view: View,
  known = new Map<string, Found>(),
): Generator<
  Slice | void,
  {
    readonly findings: readonly Finding[];
    readonly missing: readonly Run[];
  }
> {
  const findings: Finding[] = [];
  const missing: Run[] = [];
  const recorded: View = { ...view, graph: view.graph.supposed?.before ?? view.graph };
  for (const [place, rule] of rules.entries()) {
    const seen = rule.ofTheRecord ? recorded : view;
    const found = known.get(rule.id) ?? (rule.finding ? yield* rule.finding(seen) : rule.find(seen));
    const needed = found.missing ?? [];
    if (needed.length === 0) known.set(rule.id, found);
    for (const one of found.findings) findings.push(one);
    for (const run of needed) missing.push(run);
    yield { looked: "rules", done: place + 1, of: rules.length };
  }
  // What is accepted is only known to be unused once every number is there, of the record as it is.
  if (missing.length === 0 && view.derivations.missing.length === 0 && isPlain(view.lens)) {
    const told = [...view.graph.findings, ...findings];
    findings.push(...unusedSettings(view.graph, told, names));
  }
  return { findings: findings.sort(inPlace), missing };
}

const names = {
  all: ruleDocs.map(({ id }) => id),
  // Some entries of a bibliography that cannot be read whole are only noted.
  errors: ruleDocs.filter(({ id, level }) => level === "error" && id !== "bad-value").map(({ id }) => id),
};

/** Findings of any room as they are told: those of one cause together, at the levels and with the acceptances of the settings. */
export function settled(findings: readonly Finding[], graph: Graph): readonly Finding[] {
  const { settings } = graph;
  return gathered(toldHere(graph, findings), isWithheldIn(graph))
    .map((one) => levelled(one, settings.rules))
    .filter((one) => one !== null)
    .map((one) => accepted(one, settings.accept));
}

/** By file, place, rule and message: one order whatever the order of the files. */
export function inPlace(a: Finding, b: Finding): number {
  return (
    byText(a.at?.file ?? "", b.at?.file ?? "") ||
    (a.at?.start ?? 0) - (b.at?.start ?? 0) ||
    byText(a.rule, b.rule) ||
    byText(inEnglish(a.message), inEnglish(b.message))
  );
}

const gathering = ["unknown-reference", "unknown-field", "bad-value", "unreadable-file"];

/** Findings of one cause as one: the same thing was written in several places. What is missing is missing in each by itself, and what is withheld hides nothing else. */
function gathered(findings: readonly Finding[], isWithheld: (one: Finding) => boolean): readonly Finding[] {
  const causeOf = (one: Finding, place: number): string => {
    if (!gathering.includes(one.rule) || one.at === null || isWithheld(one)) return String(place);
    const message = inEnglish(one.message);
    return /^(?:Unknown|Unexpected|Missing file) [^`]*`/u.test(message)
      ? `${one.rule}\n${message}`
      : String(place);
  };
  const causes = findings.map((one, place) => ({ one, cause: causeOf(one, place) }));
  return byCause(causes, ({ cause }) => cause).map((group) =>
    together(group.map(({ one }) => one).toSorted(inPlace)),
  );
}

/** Tells findings about something withheld, or that stand where it is written. */
function isWithheldIn(graph: Graph): (one: Finding) => boolean {
  if (graph.settings.withhold.length === 0) return () => false;
  const withheld = withheldIn(graph);
  const spans = withheldSpans(graph);
  return ({ about, at }) =>
    about.some(withheld) ||
    (at !== null &&
      spans.some(({ file, start, end }) => file === at.file && start <= at.start && at.start < end));
}

function together(group: readonly Finding[]): Finding {
  const [first, ...others] = group;
  if (first === undefined) throw new Error("unexpected empty group, expected a finding");
  if (others.length === 0) return first;
  const spans = new Map(group.flatMap(({ at }) => (at ? [[`${at.file} ${at.start}`, at] as const] : [])));
  const also = [...spans.values()].slice(1);
  const message =
    also.length === 0 ? first.message : say`${first.message}; it is met in ${count(spans.size)} places`;
  const about = [...new Set(group.flatMap((one) => one.about))];
  const whole = group.every(({ fix }) => fix !== null && labelOf(fix) === labelOf(first.fix));
  const edits = new Map(
    group.flatMap(({ fix }) => (fix?.edits ?? []).map((one) => [`${one.file} ${one.start}`, one] as const)),
  );
  const fix = whole && first.fix ? { ...first.fix, edits: [...edits.values()] } : null;
  return { ...first, about, fix, message, ...(also.length > 0 ? { also } : {}) };
}

function labelOf(fix: Finding["fix"]): string {
  return fix === null ? "" : inEnglish(fix.label);
}
