import type { Standing } from "../../judge/judge.ts";
import { standingWords } from "../words/index.ts";

/** A standing as its line and its word: solid, two dashed, stepping down, dotted. */
export function StandingMark({
  standing,
  bare = false,
}: {
  readonly standing: Standing;
  readonly bare?: boolean;
}) {
  return (
    <span className={`standing ${standing}`}>
      <svg width="32" height="12" viewBox="0 0 32 12" aria-hidden="true" focusable="false">
        {lines[standing]}
      </svg>
      <span className={bare ? "unseen" : "word"}>{standingWords[standing]}</span>
    </span>
  );
}

/** A standing that another took the place of, drawn, and said aloud in words. */
export function StandingTurn({
  was,
  is,
  said,
}: {
  readonly was: Standing;
  readonly is: Standing;
  readonly said: string;
}) {
  return (
    <span className="turn">
      <span className="unseen">{said}</span>
      <span aria-hidden="true">
        <StandingMark standing={was} />
        <span>→</span>
        <StandingMark standing={is} />
      </span>
    </span>
  );
}

const lines = {
  stands: <path d="M0 6H32" strokeWidth="4" />,
  open: <path d="M0 3.5H32M0 8.5H32" strokeWidth="1.8" strokeDasharray="6.5 6" />,
  falls: <path d="M0 3H13L17 9H32" strokeWidth="2.5" fill="none" />,
  unsupported: <path d="M1 6H32" strokeWidth="2" strokeDasharray="0.1 5.4" strokeLinecap="round" />,
} as const;
