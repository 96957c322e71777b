/** A text in which version control left the readings of two sides, marked: what both have, and where they differ. */
export interface Marked {
  readonly pieces: readonly MarkedPiece[];
  /** What the sides are called where they are marked; empty where nothing is said. */
  readonly names: { readonly mine: string; readonly theirs: string };
  /** Whether every difference also tells what stood there before. */
  readonly hasBase: boolean;
}

/** Lines that both sides have, or lines that differ; `start` and `end` take the marks in, in UTF-16 units. */
export type MarkedPiece =
  | { readonly is: "same"; readonly text: string }
  | {
      readonly is: "differs";
      readonly start: number;
      readonly end: number;
      readonly mine: string;
      readonly base: string | null;
      readonly theirs: string;
    };

const mark = /^(<{7}|\|{7}|={7}|>{7})(?:[ \t]([^\r\n]*))?\r?$/u;

/** The two sides of a text with conflict marks; null where it has none, or such as are not whole. */
export function markedIn(text: string): Marked | null {
  if (!/^\ufeff?<{7}/mu.test(text)) return null;
  const pieces: MarkedPiece[] = [];
  const names = { mine: "", theirs: "" };
  const same: string[] = [];
  let open: Open | null = null;
  let at = 0;
  for (const line of text.split(/(?<=\n)/u)) {
    const start = at;
    at += line.length;
    const found = mark.exec(line.replace(/^\ufeff/u, "").replace(/\n$/u, ""));
    const [sign, name = ""] = [found?.[1]?.[0], found?.[2]?.trim()];
    if (sign === undefined || (sign !== "<" && open === null)) (open ? open[open.in] : same).push(line);
    else if (sign === "<") {
      if (open) return null;
      // A byte-order mark before the first mark is of the text, not of the side.
      const ahead = line.startsWith("\ufeff") ? 1 : 0;
      same.push(line.slice(0, ahead));
      pieces.push({ is: "same", text: same.splice(0).join("") });
      names.mine ||= name;
      open = { in: "mine", start: start + ahead, mine: [], base: [], theirs: [], hasBase: false };
    } else if (open && sign === "|" && open.in === "mine") {
      open.in = "base";
      open.hasBase = true;
    } else if (open && sign === "=" && open.in !== "theirs") open.in = "theirs";
    else if (open && sign === ">" && open.in === "theirs") {
      names.theirs ||= name;
      const { mine, base, theirs, hasBase } = open;
      pieces.push({
        is: "differs",
        start: open.start,
        end: at,
        mine: mine.join(""),
        base: hasBase ? base.join("") : null,
        theirs: theirs.join(""),
      });
      open = null;
    } else if (open) open[open.in].push(line);
  }
  if (open || pieces.length === 0) return null;
  pieces.push({ is: "same", text: same.join("") });
  return {
    pieces: pieces.filter((one) => one.is === "differs" || one.text !== ""),
    names,
    hasBase: pieces.every((one) => one.is === "same" || one.base !== null),
  };
}

interface Open {
  in: "mine" | "base" | "theirs";
  hasBase: boolean;
  readonly start: number;
  readonly mine: string[];
  readonly base: string[];
  readonly theirs: string[];
}

/** One side's whole text, as it was before the two met; of `base` null where it is not told everywhere. */
export function sideOf(marked: Marked, side: "mine" | "theirs"): string;
export function sideOf(marked: Marked, side: "mine" | "base" | "theirs"): string | null;
export function sideOf(marked: Marked, side: "mine" | "base" | "theirs"): string | null {
  if (side === "base" && !marked.hasBase) return null;
  return marked.pieces.map((one) => (one.is === "same" ? one.text : (one[side] ?? ""))).join("");
}
