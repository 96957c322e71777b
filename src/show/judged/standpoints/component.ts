import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Acceptance } from "../../../judge/standpoints/ways/accepted.ts";
import type { Fate } from "../../../judge/standpoints/told/apart.ts";
import type { Alternative, Component } from "../../../judge/standpoints/component.ts";
import type { Contradiction } from "../../../judge/standpoints/told/contradiction.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelText, withoutStop } from "../../../link/names/label.ts";
import { claimText } from "../../pages/question.ts";
import { fitLine, named } from "./named.ts";
import type { FitLine, Named } from "./named.ts";

/** Alternatives that are shown with all they decide; of those beyond only what tells them is. */
export const laidOut = 12;

/** Something by which an alternative is told, and what becomes of it there. */
export interface Told extends Named {
  readonly fate: Fate;
}

/** One coherent way to decide a component. */
export interface Way {
  readonly toldBy: readonly Told[];
  readonly fits: readonly FitLine[];
  /** Above 1 where only what is withheld tells so many apart. */
  readonly ways: number;
}

/** Something open, with what becomes of it in each alternative that is laid out, in their order. */
export interface FateRow extends Named {
  readonly fates: readonly Fate[];
}

/** In how many standpoints a claim holds; the last three where the effort did not suffice to tell all. */
export type Accepted = "all" | "some" | "none" | "some or all" | "some or none" | "not known";

/** A part of what is open that is decided on its own. */
export interface ComponentPage {
  readonly about: readonly (Pick<Contradiction, "kind"> & { readonly between: readonly Named[] })[];
  /** Questions whose answers it decides. */
  readonly questions: readonly Named[];
  /** In digits; at least so many where not `exact`. */
  readonly count: string;
  readonly exact: boolean;
  /** Something in it is open in every way to decide it. */
  readonly undecided: boolean;
  readonly ways: readonly Way[];
  /** What becomes of claims, those first whose fate is not always the same; of evidence and of arguments. */
  readonly claims: readonly FateRow[];
  readonly evidence: readonly FateRow[];
  readonly arguments: readonly FateRow[];
  /** Alternatives beyond those. */
  readonly more: readonly Way[];
  /** Where there are too many to lay out: in how many of them each claim holds, and whom some of them fits. */
  readonly accepted: readonly (Named & { readonly holds: Accepted })[];
  readonly fits: readonly FitLine[];
  readonly unknown: readonly Named[];
}

/** A component in words and rows. */
export function componentPage(graph: Graph, one: Component, tellable: (id: Id) => boolean): ComponentPage {
  const claim = (id: Id): Named => ({ id, text: claimText(graph, id) });
  const shown = one.alternatives.slice(0, laidOut);
  const rows = (ids: readonly Id[], name: (id: Id) => Named): readonly FateRow[] =>
    shown.length === 0
      ? []
      : ids.map((id) => ({ ...name(id), fates: shown.map(({ fates }) => fates.get(id) ?? "falls") }));
  const record = (id: Id): Named => named(graph, id);
  const differing = ({ id }: FateRow): boolean =>
    new Set(one.alternatives.map(({ fates }) => fates.get(id))).size > 1;
  const claims = rows(one.claims, claim);
  const way = (alternative: Alternative): Way => wayOf(graph, alternative);
  return {
    about: one.about.map(({ kind, between }) => ({
      kind,
      between: between.map((id) => ({
        id,
        text: bare(graph.records.get(id)?.list === "claims" ? claimText(graph, id) : labelText(graph, id)),
      })),
    })),
    questions: questionsOn(graph, one.claims).filter(tellable).map(record),
    count: String(one.count),
    exact: one.exact,
    undecided: one.alternatives.length > 0 && one.alternatives.every(hasOpen),
    ways: shown.map(way),
    claims: [...claims.filter(differing), ...claims.filter((row) => !differing(row))],
    evidence: rows(one.evidence, record),
    arguments: rows(one.arguments, record),
    more: one.alternatives.slice(laidOut).map(way),
    accepted:
      one.alternatives.length > 0
        ? []
        : [...one.accepted].map(([id, is]) => ({ ...claim(id), holds: acceptedIn(is) })),
    fits: one.fits.map((fit) => fitLine(graph, fit)),
    unknown: one.unknown.map(record),
  };
}

/** What is called by a sentence stands inside another one. */
function bare(text: Text): Text {
  return typeof text === "string" ? withoutStop(text) : text;
}

function hasOpen({ fates }: Alternative): boolean {
  return [...fates.values()].includes("open");
}

function wayOf(graph: Graph, { toldBy, fates, fits, ways }: Alternative): Way {
  return {
    toldBy: toldBy.map((id) => ({ id, text: labelText(graph, id), fate: fates.get(id) ?? "falls" })),
    fits: fits.map((fit) => fitLine(graph, fit)),
    ways,
  };
}

function questionsOn(graph: Graph, claims: readonly Id[]): readonly Id[] {
  const here = new Set(claims);
  return graph
    .list("questions")
    .filter((one) => one.values.answers.some((answer) => here.has(answer)))
    .map((one) => one.id);
}

/** An acceptance as one word. */
export function acceptedIn({ inAll, inSome }: Acceptance): Accepted {
  if (inAll === true) return "all";
  if (inSome === false) return "none";
  if (inSome === true) return inAll === false ? "some" : "some or all";
  return inAll === false ? "some or none" : "not known";
}
