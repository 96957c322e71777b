import type { Finding, Id } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Hole, Said, Text } from "../../../base/text/said/said.ts";
import { bearingOn } from "../../../derive/bearing.ts";
import { lossesOf } from "../../../derive/choices.ts";
import type { Loss } from "../../../derive/choices.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Run } from "../../../derive/run.ts";
import type { InCommon } from "../../../derive/trials/leave-out.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import { withheldIn } from "../../../link/withheld.ts";
import { atOnce } from "../../resting/at-once.ts";
import type { Found, Rule, View } from "../rule.ts";
import { few } from "../../../base/text/said/rows.ts";
import { byCause, quotedLabel, tell } from "../tell.ts";
import { saidAlone, saidOf } from "./saying.ts";
import type { Saying } from "./saying.ts";

/** Verdicts that turn when one artefact, source or survey is left out. */
export const verdictDependsOnOne: Rule = {
  id: "verdict-depends-on-one",
  level: "note",
  title: say`What a number says of a claim changes when one artefact, source or survey is left out.`,
  doc: say`The derivation was run again without each artefact, each source, and each survey or instrument whose readings share an error; searches then draw a thousand sets, and all of theirs where p comes near a limit. What turns the verdict carries it: say so, and look at that one again first. Where too little would be left to compute on there is no other verdict, and nothing is said.`,
  find: (view) => atOnce(finding(view)),
  finding,
};

function* finding(view: View): Generator<void, Found> {
  const missing = new Map<string, Run>();
  const stands = (id: Id): boolean => view.judgement.standings.get(id) === "stands";
  const findings: Finding[] = [];
  for (const derived of view.derivations.byId.values()) {
    const { each } = lossesOf(view, derived, stands);
    for (const run of each.flatMap((loss) => loss.missing)) missing.set(run.key, run);
    const turning = each.flatMap((loss) => turningIn(view.graph, loss));
    if (turning.length > 0) findings.push(told(view.graph, derived, turning));
    yield;
  }
  return { findings, missing: [...missing.values()] };
}

/** Something without which a number, computed all the same, says something else. */
interface Turning {
  readonly name: InCommon;
  readonly turned: ReadonlyMap<Id, Saying>;
}

/** Nothing is told of what is withheld. */
function turningIn(graph: Graph, { leaving, other, turned }: Loss): readonly Turning[] {
  const withheld = withheldIn(graph);
  if (other?.status !== "computed" || turned.size === 0 || leaving.ids.some(withheld)) return [];
  const name = leaving.names.find((one) => !withheld(one.name));
  return name === undefined ? [] : [{ name, turned }];
}

function told(graph: Graph, derived: Derived, turning: readonly Turning[]): Finding {
  const claims = [...new Set(turning.flatMap(({ turned }) => [...turned.keys()]))];
  const was = new Map(
    claims.map((claim) => [claim, bearingOn(derived.bearings, claim) ?? "inconclusive"] as const),
  );
  const causeOf = ({ turned }: Turning): string => JSON.stringify([...turned]);
  const ways = byCause(turning, causeOf).map((group) => {
    const [{ turned }] = group;
    const [alike, ...others] = new Set(turned.values());
    const short = turned.size === claims.length && others.length === 0 && alike !== undefined;
    const names = group.map(({ name }) => nameOf(graph, name));
    return withoutThem(names, short ? saidAlone[alike] : saidOf(graph, turned));
  });
  const message = say`${quotedLabel(graph, derived.id)} ${saidOf(graph, was)}, but ${row(ways)}.`;
  const records = turning.flatMap(({ name }) => (name.sort === "survey" ? [] : [name.name]));
  return tell(graph, "verdict-depends-on-one", "note", [derived.id, ...claims, ...records], message, {
    path: ["inputs"],
  });
}

/** What a number says when it is computed without any one of some things. */
function withoutThem(names: readonly Text[], says: Hole): Said {
  const [one = "", two, three] = names;
  if (names.length > 3) return say`without any one of ${few(names)} it ${says}`;
  if (three !== undefined) return say`without ${one} or without ${two ?? ""} or without ${three} it ${says}`;
  return two === undefined
    ? say`without ${one} it ${says}`
    : say`without ${one} or without ${two} it ${says}`;
}

function nameOf(graph: Graph, { sort, name }: InCommon): Text {
  return sort === "survey" ? say`the readings that share the error of ${name}` : labelText(graph, name);
}
