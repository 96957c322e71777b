import { finding } from "../../../../base/finding.ts";
import type { Finding, Id } from "../../../../base/finding.ts";
import { formatComputed, formatIn } from "../../../../base/quantity/quantity-print.ts";
import { coded, say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import { conditionOf, holds } from "../../../../derive/bearing.ts";
import type { Derived, DerivedNumber } from "../../../../derive/derived/derived.ts";
import { isPlain } from "../../../../derive/lens.ts";
import type { ClaimPiece, HeldTo, NumberPiece, ProsePiece } from "../../../../read/prose/prose.ts";
import type { Rule, View } from "../../rule.ts";
import { byCause, quotedLabel } from "../../tell.ts";
import { strayProse } from "./stray.ts";
import { straySections } from "./sections.ts";

/** Prose of the scholar's own that says what no longer follows from the record. */
export const outdatedProse: Rule = {
  id: "outdated-prose",
  level: "warning",
  title: say`Prose in the review says what no longer follows.`,
  doc: say`A text in \`review/\` holds itself to a standing, \`{{claim:ID stands}}\`, or to a comparison, \`{{number:ID.p < 0.01}}\`, and the record now gives another. Read the sentence again: say what follows now, or look at what changed since it was written. Texts are never changed for you.`,
  ofTheRecord: true,
  find: (view) => {
    // What leads nowhere is an error, and is told once the plug-ins have said which numbers there are.
    const stray = [...strayProse(view), ...straySections(view.graph)];
    // Prose is about the record as it is, not about another year or what is only supposed.
    if (!isPlain(view.lens)) return { findings: stray };
    const pieces = view.graph.prose.flatMap((one) => one.pieces);
    const found = pieces.flatMap((piece) => {
      const message = outdated(view, piece);
      return message === null || piece.is === "citation" ? [] : [{ piece, message }];
    });
    const groups = byCause(found, ({ piece }) => causeOf(piece));
    return { findings: [...stray, ...groups.map(told)] };
  },
};

/** A piece that no longer holds, with what is said of it. */
interface Outdated {
  readonly piece: ClaimPiece | NumberPiece;
  readonly message: Text;
}

function causeOf(piece: ClaimPiece | NumberPiece): string {
  return piece.is === "claim"
    ? `claim ${piece.id} ${piece.standing ?? ""}`
    : `number ${piece.id}.${piece.name} ${piece.comparison ?? ""}`;
}

function told([first, ...others]: readonly [Outdated, ...Outdated[]]): Finding {
  const { piece, message } = first;
  const one = finding("outdated-prose", message, piece.at, { level: "warning", about: [piece.id] });
  return others.length === 0 ? one : { ...one, also: others.map((other) => other.piece.at) };
}

function outdated(view: View, piece: ProsePiece): Text | null {
  if (piece.is === "claim" && piece.standing !== null) return ofClaim(view, piece.id, piece.standing);
  if (piece.is !== "number" || piece.comparison === null) return null;
  const derived = view.derivations.byId.get(piece.id);
  return derived === undefined || derived.status === "pending" ? null : ofNumber(view, piece, derived);
}

function ofClaim({ graph, judgement }: View, id: Id, held: HeldTo): Text | null {
  const now = judgement.standings.get(id);
  if (graph.records.get(id)?.list !== "claims" || now === undefined || now === held) return null;
  return say`The prose gives ${quotedLabel(graph, id)} the standing “${words[held]}”, expected what follows now: “${words[now]}”.`;
}

const words: Readonly<Record<HeldTo, Said>> = {
  stands: say`stands`,
  open: say`open`,
  falls: say`falls`,
  unsupported: say`unsupported`,
};

function ofNumber(view: View, piece: NumberPiece, derived: Derived): Text | null {
  const { graph, plugins } = view;
  const record = graph.records.get(piece.id);
  const plugin =
    record?.list === "derivations" ? plugins.find((one) => one.id === record.values.plugin) : undefined;
  const name = piece.name;
  const declared = plugin?.numbers.find((one) => one.name === name);
  if (plugin === undefined || declared === undefined) return null;
  const read = conditionOf({ [name]: piece.comparison ?? "" }, plugin, graph.settings.quantities);
  // Told as an error, with the place of the piece.
  if ("why" in read) return null;
  const said = say`The prose says that ${name} of ${quotedLabel(graph, piece.id)} is ${coded(piece.comparison ?? "")}`;
  const number = Object.hasOwn(derived.numbers, name) ? derived.numbers[name] : undefined;
  if (derived.status !== "computed" || number === undefined)
    return say`${said}, expected what follows now: it is not computed.`;
  return holds(read.condition, derived.numbers)
    ? null
    : say`${said}, expected what follows now: it is ${amountOf(number)}.`;
}

/** A number with its interval, sizes in the unit of the SI. */
function amountOf({ value, low, high, kind, unit }: DerivedNumber): Text {
  const digits = kind === "count" ? 15 : kind === "probability" ? 3 : 4;
  const amount = (one: number | null): string =>
    one === null
      ? "…"
      : kind === "input"
        ? formatIn(one, { name: unit, size: 1 }, digits)
        : formatComputed(one, kind, digits);
  return low === null && high === null
    ? amount(value)
    : say`${amount(value)} (${amount(low)} to ${amount(high)})`;
}
