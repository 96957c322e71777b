import type { Id } from "../../base/finding.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import type { Argument } from "../argument.ts";
import type { Judgement, Standing } from "../judge.ts";

/** Why something has its standing, as records; `sentenceOf` puts it into words. */
export type Reason =
  /** An argument for it works; `answered` attacks on that argument fall. */
  | { readonly why: "argued"; readonly by: Id; readonly from: readonly Id[]; readonly answered: number }
  /** Nothing that works is against a piece of evidence or an argument whose premises hold. */
  | { readonly why: "unattacked"; readonly answered: number }
  /** Its best argument meets a live attack. */
  | { readonly why: "contested"; readonly by: Id; readonly against: Id; readonly rival: Id | null }
  /** What it leans on is open itself. */
  | { readonly why: "leans-on-open"; readonly by: Id | null; readonly premise: Id }
  /** A working argument against it, or against every argument for it. */
  | { readonly why: "beaten"; readonly by: Id; readonly rival: Id | null }
  /** What it leans on falls. */
  | { readonly why: "leans-on-fallen"; readonly by: Id | null; readonly premise: Id }
  | { readonly why: "no-argument" }
  | { readonly why: "leans-on-unsupported"; readonly by: Id | null; readonly premise: Id }
  | { readonly why: "circle"; readonly through: readonly Id[] }
  | { readonly why: "silence-unweighed"; readonly by: Id | null }
  | { readonly why: "not-computed"; readonly status: string; readonly said: string };

/** The reason of one standing. */
export function reasonOf(graph: Graph, derivations: Derivations, judgement: Judgement, id: Id): Reason {
  const { compiled, standings } = judgement;
  const standing = standings.get(id) ?? "unsupported";
  const place = compiled.arguments.findIndex((argument) => argument.id === id);
  const argument = place >= 0 ? compiled.arguments[place] : undefined;
  if (argument) return argumentReason(argument, place, standing);
  const derived = derivations.byId.get(id);
  if (derived && derived.status !== "computed") {
    return { why: "not-computed", status: derived.status, said: derived.why ?? "it is still to be computed" };
  }
  if (graph.records.get(id)?.list === "claims") return claimReason(standing);
  return evidenceReason(standing, derived?.used ?? []);

  function standingOf(other: Id): Standing {
    return standings.get(other) ?? (compiled.atoms.has(other) ? "stands" : "unsupported");
  }

  function working(places: readonly number[], wanted: Standing): Argument | undefined {
    const found = places.find((at) => standingOf(compiled.arguments[at]?.id ?? "") === wanted);
    return found === undefined ? undefined : compiled.arguments[found];
  }

  function fallen(places: readonly number[]): number {
    return places.filter((at) => standingOf(compiled.arguments[at]?.id ?? "") === "falls").length;
  }

  /** The rival claim for which an attacker argues, where that is what makes it one. */
  function rivalOf(attacker: Argument, targets: readonly Id[]): Id | null {
    const { therefore } = attacker;
    return therefore !== null && !targets.some((target) => attacker.against.includes(target))
      ? therefore
      : null;
  }

  function argumentReason(step: Argument, at: number, is: Standing): Reason {
    const attackers = compiled.attackers[at] ?? [];
    const premise = (wanted: Standing): Id | undefined =>
      step.because.find((one) => standingOf(one) === wanted);
    const against = (wanted: Standing): Argument | undefined => working(attackers, wanted);
    if (is === "stands") return { why: "unattacked", answered: fallen(attackers) };
    if (is === "open") {
      const attacker = against("open");
      if (attacker)
        return { why: "contested", by: step.id, against: attacker.id, rival: rivalOf(attacker, [step.id]) };
      return { why: "leans-on-open", by: null, premise: premise("open") ?? step.id };
    }
    if (is === "falls") {
      const attacker = against("stands");
      if (attacker) return { why: "beaten", by: attacker.id, rival: rivalOf(attacker, [step.id]) };
      return { why: "leans-on-fallen", by: null, premise: premise("falls") ?? step.id };
    }
    const bare = premise("unsupported");
    if (bare === undefined && step.silent) return { why: "silence-unweighed", by: null };
    return bare === undefined
      ? { why: "no-argument" }
      : { why: "leans-on-unsupported", by: null, premise: bare };
  }

  function claimReason(is: Standing): Reason {
    const pro = compiled.pro.get(id) ?? [];
    const contra = compiled.contra.get(id) ?? [];
    if (is === "stands") {
      const by = working(pro, "stands");
      if (by) {
        const at = compiled.arguments.indexOf(by);
        return { why: "argued", by: by.id, from: by.because, answered: fallen(compiled.attackers[at] ?? []) };
      }
    }
    if (is === "open") {
      const by = working(pro, "open");
      if (by) {
        const inner = argumentReason(by, compiled.arguments.indexOf(by), "open");
        return inner.why === "leans-on-open" ? { ...inner, by: by.id } : inner;
      }
    }
    if (is === "falls") {
      const against = working(contra, "stands");
      if (against) return { why: "beaten", by: against.id, rival: null };
      const fell = working(pro, "falls");
      if (fell) {
        const inner = argumentReason(fell, compiled.arguments.indexOf(fell), "falls");
        return inner.why === "leans-on-fallen" ? { ...inner, by: fell.id } : inner;
      }
    }
    return unsupportedReason(pro);
  }

  function unsupportedReason(pro: readonly number[]): Reason {
    const first = compiled.arguments[pro[0] ?? -1];
    if (!first) return { why: "no-argument" };
    const circle = circleThrough(id);
    if (circle !== null) return { why: "circle", through: circle };
    for (const at of pro) {
      const step = compiled.arguments[at];
      if (!step) continue;
      const inner = argumentReason(step, at, "unsupported");
      if (inner.why === "silence-unweighed" || inner.why === "leans-on-unsupported")
        return { ...inner, by: step.id };
    }
    return { why: "leans-on-unsupported", by: first.id, premise: first.because[0] ?? first.id };
  }

  /** A way from a claim through unsupported premises back to itself. */
  function circleThrough(claim: Id): readonly Id[] | null {
    const before = new Map<Id, Id>();
    const waiting = [claim];
    for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
      for (const step of (compiled.pro.get(at) ?? []).map((one) => compiled.arguments[one])) {
        for (const premise of step?.because ?? []) {
          if (premise === claim) return wayFrom(at, before);
          if (before.has(premise) || standingOf(premise) !== "unsupported") continue;
          before.set(premise, at);
          waiting.push(premise);
        }
      }
    }
    return null;
  }

  function evidenceReason(is: Standing, used: readonly Id[]): Reason {
    const contra = compiled.contra.get(id) ?? [];
    if (is === "stands") return { why: "unattacked", answered: fallen(contra) };
    const attacker = working(contra, is === "open" ? "open" : "stands");
    if (attacker && is === "open") return { why: "contested", by: id, against: attacker.id, rival: null };
    if (attacker) return { why: "beaten", by: attacker.id, rival: null };
    const premise = used.find((one) => standingOf(one) === is) ?? id;
    if (is === "open") return { why: "leans-on-open", by: null, premise };
    return is === "falls"
      ? { why: "leans-on-fallen", by: null, premise }
      : { why: "leans-on-unsupported", by: null, premise };
  }
}

function wayFrom(last: Id, before: ReadonlyMap<Id, Id>): readonly Id[] {
  const way = [last];
  for (let at = before.get(last); at !== undefined; at = before.get(at)) way.unshift(at);
  return way;
}
