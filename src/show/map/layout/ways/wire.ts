import type { Id } from "../../../../base/finding.ts";
import type { Piece, Slab } from "../places/plan.ts";

/** One screen: what is longer across is cut, in px. */
export const screen = 1000;

/** What a way on the map is drawn for. */
export type WireKind = "line" | "attack" | "rivals" | "conflict";

/** Where a wire meets a box: at a port of an edge, or at a side. */
export interface Foot {
  readonly piece: Piece;
  readonly at: "top" | "bottom" | "left" | "right";
  readonly port: Id;
}

/** Two ends that belong together, drawn whole or cut. */
export interface Knot {
  /** The line, attack, rivals or conflict. */
  readonly id: Id;
  /** Unique among all knots, and the same in every layout of them. */
  readonly name: Id;
  readonly kind: WireKind;
  readonly from: Foot;
  readonly to: Foot;
  readonly cut: boolean;
  /** An attack that runs level between neighbours. */
  readonly direct: boolean;
  /** What its marks say first: that it runs in a circle, or joins what cannot be right together. */
  readonly joins: "circle" | "rivals" | "conflict" | null;
}

/** A line, an attack or a stub on its way through the tiers, from its lowest to its highest. */
export interface Wire {
  readonly knot: Knot;
  /** Further lines that share the stub. */
  readonly also: readonly Knot[];
  readonly from: Foot;
  readonly to: Foot;
  /** None for what is direct. */
  readonly stops: readonly Stop[];
}

/** Where a wire is in one tier: at a box, in a gutter, or passing between marks. */
export interface Stop {
  readonly wire: Wire;
  readonly tier: number;
  readonly foot: Foot | null;
  /** In px: a guess until the lanes are given. */
  x: number;
  gutter: Gutter | null;
}

/** The room between two boxes of a row, with the wires that run in it. */
export interface Gutter {
  readonly left: number;
  readonly right: number;
  /** Attacks that turn at the box left of it, and at the box right of it. */
  readonly leftEnds: Stop[];
  readonly rightEnds: Stop[];
  readonly passing: Stop[];
}

/** One storey of the map from the ground up: boxes of a row, marks, or the words of bows. */
export interface Tier {
  readonly kind: "row" | "marks" | "words";
  readonly row: number;
  readonly slabs: Slab[];
  readonly height: number;
  readonly gutters: readonly Gutter[];
  readonly stops: Stop[];
}

/** Whether a foot is at a side of its box. */
export function isSide({ at }: Foot): boolean {
  return at === "left" || at === "right";
}

/** Where a wire comes from, one tier down. */
export function beforeOf({ wire, tier }: Stop): number | null {
  return wire.stops.find((stop) => stop.tier === tier - 1)?.x ?? null;
}

/** Where it goes on, one tier up. */
export function afterOf({ wire, tier }: Stop): number | null {
  return wire.stops.find((stop) => stop.tier === tier + 1)?.x ?? null;
}
