import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { PlacedBox, Scene, Section } from "../scene.ts";
import { bandsOf } from "./film/bands.ts";
import { bowsOf } from "./film/bows.ts";
import { heightsOf, type Heights } from "./film/heights.ts";
import { mirrored } from "./film/mirror.ts";
import { routesOf } from "./film/routes.ts";
import { placeAcross } from "./places/across.ts";
import { chooseSides, margin, standClear } from "./places/gaps.ts";
import { keptOrder } from "./places/keep.ts";
import { orderOf } from "./places/order.ts";
import { planOf, type Piece, type Plan } from "./places/plan.ts";
import { bowRunsOf, spansOf, type BowRun, type Span } from "./ways/bow-runs.ts";
import { chooseGutters, ledAstray } from "./ways/gutters.ts";
import { knotsOf } from "./ways/knots.ts";
import { giveLanes } from "./ways/lanes.ts";
import { stubsOf, type Stub } from "./ways/marks.ts";
import { netsOf, type Net } from "./channels/nets.ts";
import { tiersOf, wiresOf } from "./ways/tiers.ts";
import { giveTracks } from "./channels/tracks.ts";
import type { Tier, Wire } from "./ways/wire.ts";

/** What a layout is to follow: an earlier scene, whose boxes keep their order and place; whether it reads from the right; and the reader's language. */
export interface LayoutOptions {
  readonly before?: Scene;
  readonly mirrored?: boolean;
  readonly told?: (text: Text) => string;
}

/** Gives every box of a section its place and every line its way. */
export function layOut(section: Section, options: LayoutOptions = {}): Scene {
  const { before } = options;
  const plan = planOf(section);
  const rows = place(plan, before && options.mirrored ? mirrored(before) : before);
  const scene = sceneOf(plan, rows, wayThrough(plan, rows, options.told ?? inEnglish));
  return options.mirrored ? mirrored(scene) : scene;
}

function place(plan: Plan, before: Scene | undefined): readonly (readonly Piece[])[] {
  const known = new Set(before?.boxes.map(({ id }) => id));
  const shared = plan.section.boxes.filter(({ id }) => known.has(id)).length;
  // A scene of which little is left is no guide.
  const kept = before && 2 * shared >= plan.section.boxes.length ? before : null;
  const rows = kept ? keptOrder(plan, kept) : orderOf(plan);
  for (const row of rows) for (const [at, piece] of row.entries()) piece.place = at;
  chooseSides(plan.strikes, kept);
  if (kept) rows.forEach(standClear);
  else placeAcross(rows);
  return rows;
}

/** All ways of a map: its storeys, what runs through them, and what runs in each channel over them. */
interface Ways {
  readonly joined: readonly BowRun[];
  readonly spans: readonly Span[];
  readonly stubs: readonly Stub[];
  readonly tiers: readonly Tier[];
  readonly wires: readonly Wire[];
  readonly channels: readonly (readonly Net[])[];
  readonly tracks: readonly number[];
}

function wayThrough(plan: Plan, rows: readonly (readonly Piece[])[], told: (text: Text) => string): Ways {
  const { joined, apart } = bowRunsOf(plan);
  const spans = spansOf(joined);
  const heights = plan.rows.map(([piece]) => piece?.box.row ?? 0);
  const crowdedOut = new Set<Id>();
  for (;;) {
    const knots = knotsOf(plan, apart, crowdedOut);
    const stubs = stubsOf(knots, heights, told);
    const tiers = tiersOf(rows, spans, stubs);
    const wires = wiresOf(knots, stubs, tiers);
    let found = chooseGutters(wires, tiers);
    if (found.size === 0) {
      giveLanes(tiers);
      found = ledAstray(wires);
    }
    for (const name of found) crowdedOut.add(name);
    if (found.size > 0) continue;
    const channels = netsOf(wires, tiers);
    return { joined, spans, stubs, tiers, wires, channels, tracks: channels.map(giveTracks) };
  }
}

function sceneOf(plan: Plan, rows: readonly (readonly Piece[])[], ways: Ways): Scene {
  const { tiers, wires, channels, joined, spans } = ways;
  const heights = heightsOf(tiers, channels, ways.tracks);
  const topOf = (piece: Piece): number => topIn(heights, piece);
  const inOrder = plan.section.boxes.map(({ id }) => plan.pieceOf(id));
  const boxes = [...inOrder, ...ways.stubs.map(({ mark }) => mark)].map((piece): PlacedBox => ({
    ...piece.box,
    x: piece.x,
    y: topOf(piece),
  }));
  const { routes, attacks } = routesOf(wires, channels, heights, topOf);
  const things = rows[0]?.find(({ box }) => box.band === "things");
  const ground = things ? topOf(things) : heights.height;
  const rights = [
    ...boxes.map(({ x, width }) => x + width),
    ...[...routes, ...attacks].flatMap(({ points }) => points.map(({ x }) => x)),
  ];
  return {
    width: Math.ceil(rights.reduce((most, right) => Math.max(most, right), margin)) + margin,
    height: heights.height,
    ground,
    bands: bandsOf(rows, tiers, heights, ground),
    boxes,
    routes,
    attacks,
    bows: bowsOf(joined, spans, heights, topOf),
  };
}

/** Boxes stand on the lower edge of their row; things hang from the turf. */
function topIn({ tops, bottoms }: Heights, { tier, box, height }: Piece): number {
  return box.band === "things" ? (tops[tier] ?? 0) : (bottoms[tier] ?? 0) - height;
}
