import type { Id } from "../../base/finding.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import { speakerOf } from "../../link/names/spoken.ts";
import type { Argument } from "../argument.ts";
import type { Judgement, Standing } from "../judge.ts";
import { evaluationOf } from "./evaluation.ts";
import { wayTo } from "./ways.ts";

/** Why something has its standing, as records; `sentenceOf` puts it into words. */
export type Reason =
  /** An argument for it works; `answered` attacks on that argument fall. */
  | { readonly why: "argued"; readonly by: Id; readonly from: readonly Id[]; readonly answered: number }
  /** Nothing that works is against a piece of evidence or an argument whose premises hold. */
  | { readonly why: "unattacked"; readonly answered: number }
  /** Its best argument meets a live attack. */
  | ({ readonly why: "contested"; readonly by: Id; readonly against: Id } & Opposed)
  /** What it leans on is open itself. */
  | { readonly why: "leans-on-open"; readonly by: Id | null; readonly premise: Id }
  /** A working argument against it, or against every argument for it. */
  | ({ readonly why: "beaten"; readonly by: Id } & Opposed)
  /** What it leans on falls. */
  | { readonly why: "leans-on-fallen"; readonly by: Id | null; readonly premise: Id }
  | { readonly why: "no-argument" }
  | { readonly why: "leans-on-unsupported"; readonly by: Id | null; readonly premise: Id }
  /** What it leans on does not count here, or could not be read. */
  | { readonly why: "leans-on-absent"; readonly by: Id | null; readonly premise: Id; readonly read: boolean }
  | { readonly why: "absent"; readonly read: boolean }
  | { readonly why: "circle"; readonly through: readonly Id[] }
  | { readonly why: "silence-unweighed"; readonly by: Id | null }
  | { readonly why: "not-computed"; readonly status: string };

/** The claim that makes an attack one: a rival of the claim argued for, or the claim argued against; null where the attack names what it hits. */
interface Opposed {
  readonly rival: Id | null;
  readonly target: Id | null;
}

/** Whether a record is among what counts, or could not be read at all. */
export function presenceOf(
  graph: Graph,
  judgement: Judgement,
  id: Id,
): "counts" | "not-counted" | "not-read" {
  if (!graph.records.has(id) && !graph.records.has(speakerOf(id))) return "not-read";
  return evaluationOf(judgement).argument(id) || judgement.counts(id) ? "counts" : "not-counted";
}

/** The claim for which an attacker argues, where that is what makes it one. */
export function opposed(attacker: Argument, step: Argument | null): Opposed {
  const { therefore } = attacker;
  if (step === null || therefore === null || attacker.against.includes(step.id))
    return { rival: null, target: null };
  return step.against.includes(therefore)
    ? { rival: null, target: therefore }
    : { rival: therefore, target: null };
}

/** The reason of one standing. */
export function reasonOf(graph: Graph, derivations: Derivations, judgement: Judgement, id: Id): Reason {
  const evaluation = evaluationOf(judgement);
  const { argument, argumentsFor, attackersOf, beatenBy, fallsWith, isBare, needsOf, standingOf } =
    evaluation;
  const standing = judgement.standings.get(id) ?? "unsupported";
  const step = argument(id);
  if (step) return argumentReason(step, standing);
  const derived = derivations.byId.get(id);
  if (derived && derived.status !== "computed") {
    return { why: "not-computed", status: derived.status };
  }
  const presence = presenceOf(graph, judgement, id);
  if (presence !== "counts") return { why: "absent", read: presence !== "not-read" };
  return graph.records.get(id)?.list === "claims" ? claimReason(standing) : evidenceReason(standing);

  function fallen(attacked: Id): number {
    return attackersOf(attacked).filter((one) => standingOf(one.id) === "falls").length;
  }

  function attacker(attacked: Id, is: Standing): Argument | undefined {
    return is === "open"
      ? attackersOf(attacked).find((one) => standingOf(one.id) === "open")
      : beatenBy(attacked)[0];
  }

  /** The way down, through what is as this is, to what an attack hits; never by what follows from its fall. */
  function wayDown(is: "open" | "falls"): readonly Id[] {
    const isClaim = (one: Id): boolean => graph.records.get(one)?.list === "claims";
    const way =
      is === "falls"
        ? wayTo(id, fallsWith, (one) => beatenBy(one).length > 0)
        : wayTo(
            id,
            (one) => needsOf(one).filter((need) => standingOf(need) === "open"),
            (one) => !isClaim(one) && attacker(one, "open") !== undefined,
          );
    return way ?? [id];
  }

  function leaning(is: "open" | "falls", by: Id | null, premise: Id): Reason {
    return { why: is === "open" ? "leans-on-open" : "leans-on-fallen", by, premise };
  }

  function argumentReason(one: Argument, is: Standing): Reason {
    if (is === "stands") return { why: "unattacked", answered: fallen(one.id) };
    if (is === "unsupported") return bareReason(one, null);
    const met = attacker(one.id, is);
    if (!met) return leaning(is, null, wayDown(is)[1] ?? one.id);
    return is === "open"
      ? { why: "contested", by: one.id, against: met.id, ...opposed(met, one) }
      : { why: "beaten", by: met.id, ...opposed(met, one) };
  }

  function claimReason(is: Standing): Reason {
    if (is === "unsupported") return unsupportedReason();
    if (is === "stands") {
      const by = argumentsFor(id).find((one) => standingOf(one.id) === "stands");
      if (by) return { why: "argued", by: by.id, from: by.because, answered: fallen(by.id) };
      return { why: "no-argument" };
    }
    const [, by, premise] = wayDown(is);
    const best = argument(by ?? "");
    if (!best) {
      const against = attackersOf(id).find((one) => standingOf(one.id) === "stands");
      return against ? { why: "beaten", by: against.id, rival: null, target: null } : { why: "no-argument" };
    }
    return premise === undefined ? argumentReason(best, is) : leaning(is, best.id, premise);
  }

  function evidenceReason(is: Standing): Reason {
    if (is === "stands") return { why: "unattacked", answered: fallen(id) };
    if (is === "unsupported") {
      const premise = needsOf(id).find(isBare);
      return { why: "leans-on-unsupported", by: null, premise: premise ?? id };
    }
    const met = attacker(id, is);
    if (!met) return leaning(is, null, wayDown(is)[1] ?? id);
    const by = met.id;
    return is === "open"
      ? { why: "contested", by: id, against: by, rival: null, target: null }
      : { why: "beaten", by, rival: null, target: null };
  }

  function unsupportedReason(): Reason {
    const [first] = argumentsFor(id);
    if (!first) return { why: "no-argument" };
    const ways = argumentsFor(id).map(wayRound);
    const circle = ways.find((way) => way !== null);
    if (circle && !ways.includes(null)) return { why: "circle", through: circle };
    const open = argumentsFor(id)[ways.indexOf(null)] ?? first;
    return bareReason(open, open.id);
  }

  /** What an argument under which there is nothing lacks. */
  function bareReason(one: Argument, by: Id | null): Reason {
    const premise = needsOf(one.id).find(isBare);
    if (premise === undefined) return one.silent ? { why: "silence-unweighed", by } : { why: "no-argument" };
    const presence = presenceOf(graph, judgement, premise);
    return presence === "counts"
      ? { why: "leans-on-unsupported", by, premise }
      : { why: "leans-on-absent", by, premise, read: presence !== "not-read" };
  }

  /** The claims by which an argument for this claim leads through unsupported premises back to it; null where it does not. */
  function wayRound(one: Argument): readonly Id[] | null {
    const bare = (of: Id): readonly Id[] => needsOf(of).filter(isBare);
    const way = wayTo(one.id, bare, (end) => needsOf(end).includes(id));
    return way && [id, ...way].filter((at) => graph.records.get(at)?.list === "claims");
  }
}
