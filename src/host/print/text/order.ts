/** A stretch of a line that is set in one direction; those of a line stand in the order in which they are seen, from the left. */
export interface Stretch {
  readonly text: string;
  readonly rtl: boolean;
}

type Kind = "L" | "R" | "EN" | "AN" | "ES" | "CS" | "ET" | "N";

/** A letter with its marks, or a part that is set apart and has an order of its own. */
interface Piece {
  readonly text: string;
  kind: Kind;
  /** Arabic, after which European digits count as Arabic ones. */
  readonly arabic: boolean;
  level: number;
  readonly inner: readonly Stretch[] | null;
}

const rightToLeft = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;
const arabicDigit = /[\u0660-\u0669\u066b\u066c]/u;
const isolates = /[\u2066-\u2068]/u;
/** Marks that only order the text: they are not drawn. */
const unseen = /[\u200b\u202a-\u202e\u2060\ufeff]/u;

/**
 * The stretches of a line in the order in which they are seen: the bidirectional algorithm (Unicode, UAX 9) with implicit
 * levels and isolates; embeddings and overrides are passed over. A stretch from right to left is letters alone; signs among them
 * stand by themselves, mirrored where they are to be.
 */
export function seenOrder(line: string, rtl: boolean): readonly Stretch[] {
  const pieces = piecesOf(line);
  resolveNumbers(pieces, rtl);
  resolveNeutrals(pieces, rtl);
  const base = rtl ? 1 : 0;
  for (const piece of pieces) piece.level = levelOf(piece.kind, base);
  for (let at = pieces.length - 1; at >= 0; at--) {
    const piece = pieces[at];
    if (piece === undefined || !/^\s+$/u.test(piece.text)) break;
    piece.level = base;
  }
  return stretchesOf(reordered(pieces));
}

function piecesOf(line: string): readonly Piece[] {
  const pieces: Piece[] = [];
  const clusters = line.match(/\P{M}[\p{M}\u200c\u200d]*|\p{M}+/gu) ?? [];
  for (let at = 0; at < clusters.length; at++) {
    const text = clusters[at] ?? "";
    if (isolates.test(text)) {
      const end = closingOf(clusters, at);
      pieces.push(isolated(text, clusters.slice(at + 1, end).join("")));
      at = end;
    } else if (text === "\u200e" || text === "\u200f") {
      pieces.push(piece("", text === "\u200e" ? "L" : "R"));
    } else if (!unseen.test(text) && text !== "\u2069") {
      pieces.push(piece(text, kindOf(text)));
    }
  }
  return pieces;
}

const piece = (text: string, kind: Kind): Piece => ({
  text,
  kind,
  arabic: kind === "R" && /\p{Script=Arabic}/u.test(text),
  level: 0,
  inner: null,
});

function isolated(mark: string, inside: string): Piece {
  const first = /\p{L}/u.exec(inside)?.[0] ?? "";
  const rtl = mark === "\u2067" || (mark === "\u2068" && rightToLeft.test(first));
  return { ...piece("\ufffc", "N"), inner: seenOrder(inside, rtl) };
}

function closingOf(clusters: readonly string[], from: number): number {
  let depth = 0;
  for (let at = from; at < clusters.length; at++) {
    if (isolates.test(clusters[at] ?? "")) depth++;
    else if (clusters[at] === "\u2069" && --depth === 0) return at;
  }
  return clusters.length;
}

function kindOf(text: string): Kind {
  if (arabicDigit.test(text)) return "AN";
  if (/^[0-9\u00b2\u00b3\u00b9\u2070-\u2089\u06f0-\u06f9]/u.test(text)) return "EN";
  if (/^[+\-\u2212\u207a\u207b]/u.test(text)) return "ES";
  if (/^[,./:\u00a0\u202f\u060c]/u.test(text)) return "CS";
  if (/^[#$%\u00a2-\u00a5\u00b0\u00b1\u2030-\u2034\u20a0-\u20cf\u2213]/u.test(text)) return "ET";
  if (!/^[\p{L}\p{N}]/u.test(text)) return "N";
  return rightToLeft.test(text) ? "R" : "L";
}

/** Rules W2 to W7. */
function resolveNumbers(pieces: readonly Piece[], rtl: boolean): void {
  let strong: "L" | "R" | "AL" = rtl ? "R" : "L";
  for (const one of pieces) {
    if (one.kind === "L") strong = "L";
    else if (one.kind === "R") strong = one.arabic ? "AL" : "R";
    else if (one.kind === "EN" && strong === "AL") one.kind = "AN";
  }
  pieces.forEach((one, at) => {
    const [before, after] = [pieces[at - 1]?.kind, pieces[at + 1]?.kind];
    const joins = before === after && (before === "EN" || (before === "AN" && one.kind === "CS"));
    if ((one.kind === "ES" || one.kind === "CS") && joins && before !== undefined) one.kind = before;
  });
  pieces.forEach((one, at) => {
    if (one.kind !== "ET") return;
    let end = at;
    while (pieces[end]?.kind === "ET") end++;
    const near = pieces[at - 1]?.kind === "EN" || pieces[end]?.kind === "EN";
    for (const other of pieces.slice(at, end)) other.kind = near ? "EN" : "N";
  });
  let side: "L" | "R" = rtl ? "R" : "L";
  for (const one of pieces) {
    if (one.kind === "ES" || one.kind === "CS") one.kind = "N";
    if (one.kind === "L" || one.kind === "R") side = one.kind;
    else if (one.kind === "EN" && side === "L") one.kind = "L";
  }
}

/** Rules N1 and N2: what is neutral goes with both its neighbours where they agree, else with the line. */
function resolveNeutrals(pieces: readonly Piece[], rtl: boolean): void {
  const line = rtl ? "R" : "L";
  const side = (one: Piece | undefined): Kind => (one === undefined ? line : one.kind === "L" ? "L" : "R");
  for (let at = 0; at < pieces.length; at++) {
    if (pieces[at]?.kind !== "N") continue;
    let end = at;
    while (pieces[end]?.kind === "N") end++;
    const [before, after] = [side(pieces[at - 1]), side(pieces[end])];
    for (const one of pieces.slice(at, end)) one.kind = before === after ? before : line;
    at = end - 1;
  }
}

function levelOf(kind: Kind, base: 0 | 1): number {
  if (base === 0) return kind === "L" ? 0 : kind === "R" ? 1 : 2;
  return kind === "R" ? 1 : 2;
}

/** Rule L2. */
function reordered(pieces: readonly Piece[]): readonly Piece[] {
  const found = [...pieces];
  const highest = Math.max(0, ...found.map((one) => one.level));
  for (let level = highest; level > 0; level--) {
    for (let at = 0; at < found.length; at++) {
      if ((found[at]?.level ?? 0) < level) continue;
      let end = at;
      while ((found[end]?.level ?? -1) >= level) end++;
      found.splice(at, end - at, ...found.slice(at, end).reverse());
      at = end;
    }
  }
  return found;
}

const mirrors = new Map(
  ["()", "[]", "{}", "<>", "«»", "‹›", "≤≥"].flatMap(([a = "", b = ""]) => [
    [a, b],
    [b, a],
  ]),
);

function stretchesOf(seen: readonly Piece[]): readonly Stretch[] {
  const found: { text: string; rtl: boolean; whole: boolean }[] = [];
  for (const one of seen) {
    if (one.inner !== null) {
      found.push(...one.inner.map((each) => ({ ...each, whole: true })));
      continue;
    }
    const odd = one.level % 2 === 1;
    const mirrored = odd ? mirrors.get(one.text) : undefined;
    // A sign between words has no side of its own once it stands in its place.
    const rtl = odd && rightToLeft.test(one.text);
    const text = mirrored ?? one.text;
    const last = found.at(-1);
    // From right to left each word stands alone, so that what sets words from the left keeps their order.
    if (last !== undefined && !last.whole && last.rtl === rtl && mirrored === undefined)
      last.text = rtl ? text + last.text : last.text + text;
    else found.push({ text, rtl, whole: mirrored !== undefined });
  }
  return found.filter(({ text }) => text !== "").map(({ text, rtl }) => ({ text, rtl }));
}
