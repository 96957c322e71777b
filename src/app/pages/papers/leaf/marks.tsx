import { useEffect, useState } from "react";
import { Link } from "wouter";
import { recordPath, underLens } from "../../../address.ts";
import { paperWords as words } from "../../../words/reading/papers.ts";
import type { Piece } from "../reader/paper.ts";
import type { PageMark } from "../words/marked.ts";
import { boxesOf } from "./layers.ts";
import type { Box } from "./layers.ts";

/** Something to be marked on a page: `passage` is underlined and numbered, `found` shaded, `now` the place that is looked at, `taken` what is being taken. */
export interface Drawn {
  readonly key: string;
  readonly as: "passage" | "found" | "now" | "taken";
  readonly mark: PageMark;
  /** The passage that a number in the margin leads to. */
  readonly passage?: { readonly id: string; readonly number: number; readonly at: string };
}

interface Props {
  readonly seat: HTMLElement | null;
  readonly pieces: readonly Piece[] | null;
  readonly drawn: readonly Drawn[];
  readonly height: number;
  readonly asOf: number | null;
}

/** How high a number in the margin is, in pixels: the least that can be hit. */
const high = 24;

/** What is marked on a page: lines under passages, numbers in the margin that lead to them, and places that were found. */
export function Marks({ seat, pieces, drawn, height, asOf }: Props) {
  const [boxes, setBoxes] = useState<ReadonlyMap<string, readonly Box[]>>(new Map());
  useEffect(() => {
    if (!seat) return;
    const frame = requestAnimationFrame(() =>
      setBoxes(new Map(drawn.map((one) => [one.key, boxesFor(seat, pieces, one.mark)]))),
    );
    return () => cancelAnimationFrame(frame);
  }, [seat, pieces, drawn]);
  return (
    <>
      {drawn.map(({ key, as, mark }) => (
        <div key={key} className={`paper-mark ${as} ${mark.words ? "words" : "part"}`} aria-hidden="true">
          {boxes.get(key)?.map(({ left, top, width, height: tall }) => (
            <span
              key={`${left} ${top}`}
              style={{ left: `${left}%`, top: `${top}%`, width: `${width}%`, height: `${tall}%` }}
            />
          ))}
        </div>
      ))}
      {numbersOf(drawn, boxes, height).map(({ id, number, at, top }) => (
        <Link
          key={id}
          href={underLens(recordPath(id), asOf)}
          className="paper-number"
          aria-label={words.mark(number, at)}
          data-passage={id}
          style={{ top: `${top}px` }}
        >
          {number}
        </Link>
      ))}
    </>
  );
}

/** The numbers in the margin, each beside the first line of its passage and under the one before it. */
function numbersOf(
  drawn: readonly Drawn[],
  boxes: ReadonlyMap<string, readonly Box[]>,
  height: number,
): readonly (NonNullable<Drawn["passage"]> & { readonly top: number })[] {
  const numbers: (NonNullable<Drawn["passage"]> & { readonly top: number })[] = [];
  for (const { key, passage, mark } of drawn) {
    const first = boxes.get(key)?.[0];
    if (!passage || (mark.words && !first)) continue;
    const free = (numbers.at(-1)?.top ?? -high) + high;
    numbers.push({ ...passage, top: Math.max(free, ((first?.top ?? 0) / 100) * height) });
  }
  return numbers;
}

function boxesFor(seat: HTMLElement, pieces: readonly Piece[] | null, mark: PageMark): readonly Box[] {
  if (mark.words) return pieces ? boxesOf(seat, pieces, mark.words.start, mark.words.end) : [];
  const { region } = mark;
  return region ? [{ left: region.x, top: region.y, width: region.w, height: region.h }] : [];
}
