import type { Id } from "../../../../base/finding.ts";
import { isDirect } from "../places/gaps.ts";
import { goesUp, portMiddle, type Plan } from "../places/plan.ts";
import type { BowRun } from "./bow-runs.ts";
import { screen, type Foot, type Knot } from "./wire.ts";

/** Everything that is drawn as a line, and whether it is too long or runs round in a circle and so is cut. */
export function knotsOf(plan: Plan, apart: readonly BowRun[], crowdedOut: ReadonlySet<Id>): readonly Knot[] {
  const lines = plan.pulls.map((pull): Knot => {
    const from: Foot = { piece: pull.from, at: "top", port: pull.line.from.port };
    const to: Foot = { piece: pull.to, at: "bottom", port: pull.line.to.port };
    const { id } = pull.line;
    const name = `line:${id}`;
    const cut = !goesUp(pull) || crowdedOut.has(name) || isFar(from, to);
    const joins = pull.line.circle ? "circle" : null;
    return { id, name, kind: "line", from, to, cut, direct: false, joins };
  });
  const attacks = plan.strikes.map((strike): Knot => {
    const from: Foot = { piece: strike.from, at: strike.fromSide, port: "" };
    const to: Foot = { piece: strike.to, at: strike.toSide, port: "" };
    const { id } = strike.attack;
    const name = `attack:${id}`;
    const cut = crowdedOut.has(name) || isFar(from, to);
    const direct = isDirect(strike) && !cut;
    return { id, name, kind: "attack", from, to, cut, direct, joins: null };
  });
  const distant = apart.flatMap(({ id, kind, pieces: [a, b] }, at): readonly Knot[] => {
    if (!a || !b) return [];
    const [from, to] = [a, b].map((piece): Foot => ({ piece, at: "top", port: "" }));
    if (!from || !to) return [];
    const name = `${kind}:${id}:${at}`;
    return [{ id, name, kind, from, to, cut: true, direct: false, joins: kind }];
  });
  return [...lines, ...attacks, ...distant];
}

function isFar(from: Foot, to: Foot): boolean {
  return Math.abs(footX(from) - footX(to)) > screen;
}

/** About where a wire meets its box, in px; beside it for a side. */
export function footX({ piece, at, port }: Foot): number {
  if (at === "left") return piece.x - beside;
  if (at === "right") return piece.x + piece.width + beside;
  return piece.x + portMiddle(piece.box, at, port);
}

const beside = 20;
