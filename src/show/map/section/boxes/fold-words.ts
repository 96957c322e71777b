import type { Id } from "../../../../base/finding.ts";
import type { Standing } from "../../../../judge/judge.ts";
import { directlyBelow, reached } from "../net/reach.ts";
import type { Field, Hidden } from "../open/shown.ts";
import { folds } from "../open/sketch.ts";
import type { Sketch } from "../open/sketch.ts";
import { counted } from "./words.ts";

/** How a claim stands where the fold's words are said. */
export type StandingOf = (id: Id) => Standing | null;

/** What lies folded up in a box, in words (`12 claims, 2 fall, 1 hangs`); null where nothing does. */
export function foldWords(
  field: Field,
  sketch: Sketch,
  drawn: ReadonlySet<Id>,
  standingOf: StandingOf,
): string | null {
  if (sketch.id === folds.things) return counted(sketch.records.length, "more thing");
  const { under, against, rivals } = sketch.hidden;
  if (sketch.id === folds.answers) return counted(under.length, "more answer");
  if (sketch.id === folds.others) return `${counted(under.length, "more claim")}${fates(under, standingOf)}`;
  if (sketch.of !== null) return counted(under.length, "more argument");
  const parts = [
    ...belowWords(field, sketch.hidden, drawn, standingOf),
    ...(against.length > 0 ? [`${against.length} against it`] : []),
    ...(rivals.length > 0 ? [counted(rivals.length, "rival")] : []),
  ];
  return parts.length > 0 ? parts.join(", ") : null;
}

function belowWords(
  { net }: Field,
  { under }: Hidden,
  drawn: ReadonlySet<Id>,
  standingOf: StandingOf,
): readonly string[] {
  if (under.length === 0) return [];
  const hidden = [...reached(under, (id) => directlyBelow(net, id))].filter((id) => !drawn.has(id));
  const claims = hidden.filter((id) => net.kindOf(id) === "claim");
  if (claims.length > 0) return [`${counted(claims.length, "claim")}${fates(claims, standingOf)}`];
  const steps = hidden.filter((id) => net.kindOf(id) === "step");
  if (steps.length > 0) return [counted(steps.length, "argument")];
  return [counted(under.length, "input")];
}

/** How many of some claims fall, and how many hang in the air. */
function fates(claims: readonly Id[], standingOf: StandingOf): string {
  const count = (standing: Standing): number => claims.filter((id) => standingOf(id) === standing).length;
  const [fall, hang] = [count("falls"), count("unsupported")];
  return `${fall > 0 ? `, ${fall} ${fall === 1 ? "falls" : "fall"}` : ""}${hang > 0 ? `, ${hang} ${hang === 1 ? "hangs" : "hang"}` : ""}`;
}
