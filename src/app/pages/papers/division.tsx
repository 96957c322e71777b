import { useState } from "react";
import { mirrored } from "../../words/reader/language.ts";
import { paperWords as words } from "../../words/reading/papers.ts";

const stored = "paper-division";
const [least, most] = [30, 80];

/** How much of the width a paper takes, in percent; the browser remembers it. */
export function useDivision(): readonly [number, (share: number) => void] {
  const [share, setShare] = useState(remembered);
  const set = (next: number): void => {
    const within = Math.round(Math.max(least, Math.min(most, next)));
    setShare(within);
    try {
      localStorage.setItem(stored, String(within));
    } catch {
      // What cannot be remembered holds for this window.
    }
  };
  return [share, set];
}

function remembered(): number {
  try {
    const share = Number(localStorage.getItem(stored) ?? "");
    return share >= least && share <= most ? share : 62;
  } catch {
    return 62;
  }
}

interface Props {
  readonly share: number;
  readonly onShare: (share: number) => void;
}

/** The line between a paper and what stands beside it, which pointer and arrow keys move. */
export function Division({ share, onShare }: Props) {
  return (
    <div
      className="paper-division"
      role="presentation"
      onPointerDown={(event) => {
        event.preventDefault();
        event.currentTarget.setPointerCapture(event.pointerId);
        event.currentTarget.querySelector("input")?.focus();
      }}
      onPointerMove={(event) => {
        if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
        const box = event.currentTarget.parentElement?.getBoundingClientRect();
        if (!box) return;
        const along = (100 * (event.clientX - box.left)) / box.width;
        onShare(mirrored ? 100 - along : along);
      }}
    >
      <input
        type="range"
        aria-label={words.division}
        min={least}
        max={most}
        step={2}
        value={share}
        onChange={(event) => onShare(Number(event.target.value))}
      />
    </div>
  );
}
