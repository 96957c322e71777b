import { useRef } from "react";
import type { CSSProperties, KeyboardEvent } from "react";
import { words, yearIn } from "../words/index.ts";
import { alongLines, mirrored } from "../words/reader/language.ts";
import { searchWords } from "../words/search.ts";
import { useActions } from "./actions.tsx";

interface Props {
  readonly years: readonly number[];
  readonly asOf: number | null;
  readonly toYear: (year: number | null) => void;
}

/** Unseen, but with its room kept: nothing moves when a year is chosen. */
const kept: CSSProperties = { visibility: "hidden" };

/** The year as of which the dispute is seen, on a rod graduated where something came into print. */
export function YearRod({ years, asOf, toYear }: Props) {
  const rod = useRef<HTMLDivElement>(null);
  const first = years[0];
  const last = years.at(-1);
  if (first === undefined || last === undefined) return null;
  const now = asOf === null || asOf >= last;
  const at = now ? last : Math.max(asOf, first - 1);
  const before = years.findLast((year) => year < at) ?? first - 1;
  const after = years.find((year) => year > at);
  const spread = Math.max(1, last - first);
  const place = (year: number): number => 2 + (96 * (Math.max(year, first) - first)) / spread;
  const go = (year: number | undefined): void => toYear(year === undefined || year >= last ? null : year);
  /** A button that goes out of use with its press hands the focus on to the rod. */
  const press = (year: number | undefined, usedUp: boolean): void => {
    go(year);
    if (usedUp) rod.current?.focus();
  };

  const onKey = (event: KeyboardEvent): void => {
    const key = alongLines(event.key);
    const back = key === "ArrowLeft" || key === "ArrowDown";
    const on = key === "ArrowRight" || key === "ArrowUp";
    if (back) go(before);
    else if (on) go(after);
    else if (event.key === "Home") go(first);
    else if (event.key === "End") go(undefined);
    else return;
    event.preventDefault();
  };
  const said = at < first ? words.before(yearIn(first)) : now ? words.untilToday(yearIn(last)) : yearIn(at);
  return (
    <div className="rod-row">
      <YearKeys earlier={() => go(before)} later={() => go(after)} now={() => go(undefined)} />
      <span className="rod-label" id="rod-label">
        {words.asKnownIn}
      </span>
      <button
        type="button"
        className="step back"
        onClick={() => press(before, before < first)}
        disabled={at < first}
        aria-label={words.earlier}
      >
        {mirrored ? "→" : "←"}
      </button>
      <div
        ref={rod}
        className="rod"
        role="slider"
        tabIndex={0}
        aria-labelledby="rod-label"
        aria-valuemin={first - 1}
        aria-valuemax={last}
        aria-valuenow={at}
        aria-valuetext={said}
        onKeyDown={onKey}
        onClick={(event) => {
          const box = event.currentTarget.getBoundingClientRect();
          const share = ((mirrored ? box.right - event.clientX : event.clientX - box.left) / box.width) * 100;
          go(
            years.reduce(
              (best, year) => (Math.abs(place(year) - share) < Math.abs(place(best) - share) ? year : best),
              last,
            ),
          );
        }}
      >
        <svg viewBox="0 0 1000 60" preserveAspectRatio="none" aria-hidden="true" focusable="false">
          <path className="staff" d="M0 30H1000" vectorEffect="non-scaling-stroke" />
          {years.map((year) => (
            <path
              key={year}
              className={year <= at ? "notch" : "notch after"}
              d={`M${place(year) * 10} 19V41`}
              vectorEffect="non-scaling-stroke"
            />
          ))}
        </svg>
        <span className="mark" style={{ insetInlineStart: `${place(at)}%` }} aria-hidden="true" />
        <span className="end first" aria-hidden="true">
          {yearIn(first)}
        </span>
        <span className="end last" aria-hidden="true">
          {yearIn(last)}
        </span>
      </div>
      <button
        type="button"
        className="step on"
        onClick={() => press(after, after === undefined || after >= last)}
        disabled={now}
        aria-label={words.later}
      >
        {mirrored ? "←" : "→"}
      </button>
      <output className="year">{said}</output>
      <button type="button" className="plain" style={now ? kept : {}} onClick={() => press(undefined, true)}>
        {words.toNow}
      </button>
    </div>
  );
}

/** The steps of the rod as actions of the page. */
function YearKeys({
  earlier,
  later,
  now,
}: {
  readonly earlier: () => void;
  readonly later: () => void;
  readonly now: () => void;
}) {
  useActions(searchWords.year, [
    { name: words.earlier, key: "<", run: earlier },
    { name: words.later, key: ">", run: later },
    { name: words.toNow, key: null, run: now },
  ]);
  return null;
}
