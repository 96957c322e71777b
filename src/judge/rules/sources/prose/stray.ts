import { finding } from "../../../../base/finding.ts";
import type { Finding, Id, Span } from "../../../../base/finding.ts";
import { nearestAmong } from "../../../../base/nearest.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import { slipAmong } from "../../../../base/text/slip.ts";
import { conditionOf } from "../../../../derive/bearing.ts";
import type { Graph } from "../../../../link/graph.ts";
import { isInUnread } from "../../../../link/origin/companions.ts";
import { expected } from "../../../../link/references/points-to.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import { suchAs } from "../../../../read/decode/named.ts";
import type { Target } from "../../../../read/grammar/field.ts";
import { kindWords } from "../../../../read/grammar/words.ts";
import type { NumberPiece, ProsePiece } from "../../../../read/prose/prose.ts";
import type { View } from "../../rule.ts";

/** Errors of prose: what leads nowhere with the nearest names, what leads to something withheld, what compares nothing. */
export function strayProse(view: View): readonly Finding[] {
  const { graph } = view;
  const lead = leading(graph);
  return graph.prose.flatMap(({ pieces }) => pieces.flatMap((piece) => ofPiece(view, lead, piece)));
}

type Lead = (id: Id, to: readonly Target[], at: Span) => readonly Finding[];

function ofPiece(view: View, lead: Lead, piece: ProsePiece): readonly Finding[] {
  switch (piece.is) {
    case "claim":
      return lead(piece.id, ["claims"], piece.idAt);
    case "citation":
      return piece.cites.flatMap(({ id, idAt }) => lead(id, ["sources", "passages"], idAt));
    case "number": {
      const found = lead(piece.id, ["derivations"], piece.idAt);
      return found.length > 0 ? found : ofNumber(view, piece);
    }
  }
}

/** Tells whether an id leads to something of the right kind that may be shown. */
function leading(graph: Graph): Lead {
  const withheld = withheldIn(graph);
  const lost = new Set([
    ...graph.leftOut.map((one) => one.id),
    ...(graph.spoilt ?? []).flatMap(({ id }) => id ?? []),
  ]);
  const like = new Map<string, ReturnType<typeof likeAmong>>();
  return (id, to, at) => {
    const record = graph.records.get(id);
    const kind = record?.list ?? (graph.sources.has(id) ? "sources" : null);
    if (withheld(id)) {
      const message = say`Unexpected \`${id}\`, which is withheld, expected what may be shown`;
      return [finding("unknown-reference", message, at, { about: [id] })];
    }
    if (kind !== null && to.includes(kind)) return [];
    if (kind !== null) {
      const message = say`Unexpected ${kindWords[kind]} \`${id}\`, expected ${expected(to)}`;
      return [finding("unknown-reference", message, at)];
    }
    // The record is to blame, and is blamed.
    if (lost.has(id) || isInUnread(graph.companions, id)) return [];
    const key = to.join(" ");
    const among = like.get(key) ?? likeAmong(graph, to);
    like.set(key, among);
    const meant = among.slip(id);
    const bare = at.end - at.start === id.length;
    const fix =
      meant !== null && bare ? { label: say`Write ${meant}`, edits: [{ ...at, text: meant }] } : null;
    const message = say`Unknown id \`${id}\`, expected ${suchAs(expected(to), among.nearest(id))}`;
    return [finding("unknown-reference", message, at, { fix })];
  };
}

function likeAmong(
  graph: Graph,
  to: readonly Target[],
): {
  readonly nearest: ReturnType<typeof nearestAmong>;
  readonly slip: ReturnType<typeof slipAmong>;
} {
  const withheld = withheldIn(graph);
  const ids = [
    ...(to.includes("sources") ? graph.sources.keys() : []),
    ...[...graph.records.values()].filter((one) => to.includes(one.list)).map((one) => one.id),
  ].filter((id) => !withheld(id));
  return { nearest: nearestAmong(ids), slip: slipAmong(ids) };
}

/** What is wrong with the number of a derivation that there is: its name, or what it is compared with. */
function ofNumber({ graph, plugins }: View, piece: NumberPiece): readonly Finding[] {
  const record = graph.records.get(piece.id);
  const plugin =
    record?.list === "derivations" ? plugins.find((one) => one.id === record.values.plugin) : undefined;
  // Without its plug-in nobody can say which numbers there are.
  if (plugin === undefined) return [];
  const names = plugin.numbers.map((one) => one.name);
  if (!names.includes(piece.name)) {
    const message = say`Unknown number \`${piece.name}\`, expected one of ${row(names, "comma")}`;
    return [finding("unknown-reference", message, piece.nameAt)];
  }
  if (piece.comparison === null) return [];
  const read = conditionOf({ [piece.name]: piece.comparison }, plugin, graph.settings.quantities);
  return "why" in read ? [finding("bad-value", read.why, piece.at)] : [];
}
