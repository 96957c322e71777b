import { useEffect, useLayoutEffect, useRef, useState } from "react";
import type { Leaf } from "../../../../show/telling/talk/layout/leaf.ts";
import type { Shape } from "../../../../show/telling/talk/layout/room.ts";
import { talkWords as words } from "../../../words/telling/talk.ts";
import { usePresentingKeys } from "./keys.ts";
import { clockAt, elapsedOn, toSlide } from "./showing.ts";
import type { Change, Clock, Showing } from "./showing.ts";
import { Slide } from "./slide.tsx";

interface Props {
  readonly leaves: readonly Leaf[];
  readonly shape: Shape;
  readonly minutes: number;
  readonly showing: Showing;
  readonly change: Change;
}

/** The window before the speaker: the notes, what is shown and what comes next, and the clock. */
export function NotesWindow({ leaves, shape, minutes, showing, change }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const { at, dark, clock } = showing;
  const count = leaves.length;
  const [leaf, next] = [leaves[Math.min(at, count - 1)], leaves[at + 1]];
  const go = (to: number): void => change(toSlide(to, count));
  useLayoutEffect(() => {
    const open = dialog.current;
    open?.showModal();
    open?.focus();
    return () => open?.close();
  }, []);
  const doing = {
    on: () => go(at + 1),
    back: () => go(at - 1),
    first: () => go(0),
    last: () => go(count - 1),
    dark: () => change((now) => ({ ...now, dark: !now.dark })),
  };
  usePresentingKeys({ ...doing, full: () => undefined, notes: null, end: null });
  if (leaf === undefined) return null;
  return (
    <dialog
      ref={dialog}
      className="speaking"
      tabIndex={-1}
      aria-label={words.notes}
      onCancel={(event) => event.preventDefault()}
    >
      <header>
        <p className="where" aria-live="polite">
          {dark ? words.darkened : words.slideOf(at + 1, count)}
        </p>
        <Time clock={clock} minutes={minutes} change={change} />
        <p className="steps">
          <button type="button" onClick={doing.back} disabled={at === 0}>
            {words.back}
          </button>
          <button type="button" onClick={doing.on} disabled={at >= count - 1}>
            {words.on}
          </button>
          <button type="button" onClick={doing.dark} aria-pressed={dark}>
            {words.dark}
          </button>
        </p>
      </header>
      <section className="spoken">
        <h1 dir="auto">{leaf.title}</h1>
        {leaf.notes === null ? (
          <p className="quiet">{words.noNotes}</p>
        ) : (
          <p className="note" dir="auto">
            {leaf.notes}
          </p>
        )}
      </section>
      <section className="views">
        <figure>
          <Slide leaf={leaf} shape={shape} name={`now-${at}`} />
          <figcaption>{words.slide(at + 1)}</figcaption>
        </figure>
        {next === undefined ? (
          <p className="quiet">{words.lastSlide}</p>
        ) : (
          <figure>
            <Slide leaf={next} shape={shape} name={`next-${at + 1}`} />
            <figcaption>{words.next}</figcaption>
          </figure>
        )}
      </section>
    </dialog>
  );
}

function Time({
  clock,
  minutes,
  change,
}: {
  readonly clock: Clock;
  readonly minutes: number;
  readonly change: Change;
}) {
  const [now, setNow] = useState(() => Date.now());
  const runs = clock.since !== null;
  useEffect(() => {
    if (!runs) return undefined;
    const tick = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(tick);
  }, [runs]);
  const elapsed = elapsedOn(clock, now);
  const over = elapsed > minutes * 60_000;
  return (
    <p className={over ? "clock over" : "clock"}>
      <span className="label">{words.elapsed}</span> <time role="timer">{timeText(elapsed)}</time>{" "}
      <span>{words.planned(minutes)}</span> {over && <strong>{words.over}</strong>}
      <button
        type="button"
        onClick={() => change((was) => ({ ...was, clock: clockAt(was.clock, !runs, Date.now()) }))}
      >
        {runs ? words.stopClock : words.startClock}
      </button>
    </p>
  );
}

/** Minutes and seconds, as a clock shows them. */
function timeText(ms: number): string {
  const seconds = Math.floor(ms / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}
