import type { Id } from "../../../../base/finding.ts";
import { count, row, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Standing } from "../../../../judge/judge.ts";
import { directlyBelow, reached } from "../net/reach.ts";
import type { Field, Hidden } from "../open/shown.ts";
import { folds } from "../open/sketch.ts";
import type { Sketch } from "../open/sketch.ts";

/** How a claim stands where the fold's words are said. */
export type StandingOf = (id: Id) => Standing | null;

/** What lies folded up in a box, in words (`12 claims, 2 fall, 1 hangs`); null where nothing does. */
export function foldWords(
  field: Field,
  sketch: Sketch,
  drawn: ReadonlySet<Id>,
  standingOf: StandingOf,
): Said | null {
  if (sketch.id === folds.things) return more.things(sketch.records.length);
  const { under, against, rivals } = sketch.hidden;
  if (sketch.id === folds.answers) return more.answers(under.length);
  if (sketch.id === folds.others) return inOneLine([more.claims(under.length), ...fates(under, standingOf)]);
  if (sketch.of !== null) return more.arguments(under.length);
  const parts = [
    ...belowWords(field, sketch.hidden, drawn, standingOf),
    ...(against.length > 0 ? [say`${count(against.length)} against it`] : []),
    ...(rivals.length > 0 ? [rivalsIn(rivals.length)] : []),
  ];
  return parts.length > 0 ? inOneLine(parts) : null;
}

const inOneLine = (parts: readonly Said[]): Said => say`${row(parts, "comma")}`;

const more = {
  things: (n: number): Said => (n === 1 ? say`1 more thing` : say`${count(n)} more things`),
  answers: (n: number): Said => (n === 1 ? say`1 more answer` : say`${count(n)} more answers`),
  claims: (n: number): Said => (n === 1 ? say`1 more claim` : say`${count(n)} more claims`),
  arguments: (n: number): Said => (n === 1 ? say`1 more argument` : say`${count(n)} more arguments`),
} as const;

const rivalsIn = (n: number): Said => (n === 1 ? say`1 rival` : say`${count(n)} rivals`);

/** So many arguments: `1 argument`, `12 arguments`. */
export const argumentsIn = (n: number): Said => (n === 1 ? say`1 argument` : say`${count(n)} arguments`);

function belowWords(
  { net }: Field,
  { under }: Hidden,
  drawn: ReadonlySet<Id>,
  standingOf: StandingOf,
): readonly Said[] {
  if (under.length === 0) return [];
  const hidden = [...reached(under, (id) => directlyBelow(net, id))].filter((id) => !drawn.has(id));
  const claims = hidden.filter((id) => net.kindOf(id) === "claim");
  const n = claims.length;
  if (n > 0) return [n === 1 ? say`1 claim` : say`${count(n)} claims`, ...fates(claims, standingOf)];
  const steps = hidden.filter((id) => net.kindOf(id) === "step");
  if (steps.length > 0) return [argumentsIn(steps.length)];
  return [under.length === 1 ? say`1 input` : say`${count(under.length)} inputs`];
}

/** How many of some claims fall, and how many hang in the air. */
function fates(claims: readonly Id[], standingOf: StandingOf): readonly Said[] {
  const those = (standing: Standing): number => claims.filter((id) => standingOf(id) === standing).length;
  const [fall, hang] = [those("falls"), those("unsupported")];
  return [
    ...(fall > 0 ? [fall === 1 ? say`1 falls` : say`${count(fall)} fall`] : []),
    ...(hang > 0 ? [hang === 1 ? say`1 hangs` : say`${count(hang)} hang`] : []),
  ];
}
