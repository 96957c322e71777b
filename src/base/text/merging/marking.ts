import { mergePieces } from "./merge.ts";
import { lineHunks } from "./hunks.ts";

/** What the marks of a conflict say: what the two sides are called, and how many signs a mark has at least. */
export interface Marking {
  readonly names: { readonly mine: string; readonly theirs: string };
  readonly size: number;
}

/** Two versions of a text, and what stood where they differ before; null where that is not known. */
export interface Versions {
  readonly base: string | null;
  readonly mine: string;
  readonly theirs: string;
}

/** Two versions merged: as one; or as two that differ only where they clash. */
export type Merged = { readonly text: string } | Versions;

/** Lines that both versions have, or lines that differ. */
type Stretch = { readonly same: string } | Versions;

/**
 * Two versions in one text, in the marks that version control leaves: what both have stands once, what differs
 * stands between marks, with what stood there before where that can be told. `markedIn` reads both versions back.
 */
export function withMarks(versions: Versions, marking: Marking): string {
  const stretches = threeWay(versions) ?? twoWay(versions);
  const end = Object.values(versions).some((text) => text?.includes("\r\n")) ? "\r\n" : "\n";
  const size = sizeFor(versions, marking.size);
  const line = (sign: string, name = ""): string =>
    `${sign.repeat(size)}${name === "" ? "" : ` ${name.replace(/\s+/gu, " ").trim()}`}${end}`;
  const lines = (text: string): string => (text === "" || text.endsWith("\n") ? text : `${text}${end}`);
  return stretches
    .map((one) =>
      "same" in one
        ? one.same
        : [
            line("<", marking.names.mine),
            lines(one.mine),
            ...(one.base === null ? [] : [line("|"), lines(one.base)]),
            line("="),
            lines(one.theirs),
            line(">", marking.names.theirs),
          ].join(""),
    )
    .join("");
}

/** The stretches with what stood there before; null where they would not give just these two versions. */
function threeWay({ base, mine, theirs }: Versions): readonly Stretch[] | null {
  if (base === null) return null;
  const pieces = mergePieces(base, mine, theirs);
  const side = (of: "mine" | "theirs"): string =>
    pieces.map((one) => (one.is === "agreed" ? one.text : one[of])).join("");
  if (side("mine") !== mine || side("theirs") !== theirs) return null;
  return pieces.map((one) =>
    one.is === "agreed" ? { same: one.text } : { base: one.base, mine: one.mine, theirs: one.theirs },
  );
}

function twoWay({ mine, theirs }: Versions): readonly Stretch[] {
  const split = (text: string): readonly string[] => (text === "" ? [] : text.split(/(?<=\n)/u));
  const mark = mine.startsWith("\ufeff") && theirs.startsWith("\ufeff") ? 1 : 0;
  const [own, other] = [split(mine.slice(mark)), split(theirs.slice(mark))];
  const stretches: Stretch[] = mark === 0 ? [] : [{ same: "\ufeff" }];
  let at = 0;
  for (const { start, end, from, to } of lineHunks(own, other)) {
    stretches.push({ same: own.slice(at, start).join("") });
    stretches.push({
      base: null,
      mine: own.slice(start, end).join(""),
      theirs: other.slice(from, to).join(""),
    });
    at = end;
  }
  return [...stretches, { same: own.slice(at).join("") }];
}

/** So many signs that no line of a version reads as a mark. */
function sizeFor(versions: Versions, least: number): number {
  const runs = Object.values(versions).flatMap(
    (text) => text?.match(/^\ufeff?(?:<{7,100}|\|{7,100}|={7,100}|>{7,100})(?=[ \t\r\n]|$)/gmu) ?? [],
  );
  const longest = runs.reduce((most, one) => Math.max(most, one.replace("\ufeff", "").length + 1), 7);
  return Math.min(Math.max(least, longest), 100);
}
