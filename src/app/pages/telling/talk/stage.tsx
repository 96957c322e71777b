import { useLayoutEffect, useRef } from "react";
import type { Leaf } from "../../../../show/telling/talk/layout/leaf.ts";
import type { Shape } from "../../../../show/telling/talk/layout/room.ts";
import { talkWords as words } from "../../../words/telling/talk.ts";
import { usePresentingKeys } from "./keys.ts";
import { clockAt, toSlide } from "./showing.ts";
import type { Change, Showing } from "./showing.ts";
import { Slide } from "./slide.tsx";

interface Props {
  readonly leaves: readonly Leaf[];
  readonly shape: Shape;
  readonly showing: Showing;
  readonly change: Change;
  readonly openNotes: () => void;
  readonly end: () => void;
}

/** The slides in a hall: one fills the window or the screen, and keys, a clicker or the pointer lead on. */
export function Stage({ leaves, shape, showing, change, openNotes, end }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const { at, dark } = showing;
  const count = leaves.length;
  const leaf = leaves[Math.min(at, count - 1)];
  const go = (next: number): void => change(toSlide(next, count));
  const full = (): void => {
    const done = document.fullscreenElement ? document.exitFullscreen() : stage.current?.requestFullscreen();
    // A window that may not fill the screen shows the slides all the same.
    done?.catch(() => undefined);
  };
  useLayoutEffect(() => {
    const open = dialog.current;
    open?.showModal();
    stage.current?.focus();
    change((now) => ({ ...now, clock: clockAt(now.clock, true, Date.now()) }));
    return () => {
      change((now) => ({ ...now, clock: clockAt(now.clock, false, Date.now()) }));
      if (document.fullscreenElement) void document.exitFullscreen().catch(() => undefined);
      open?.close();
    };
  }, [change]);
  const doing = {
    on: () => go(at + 1),
    back: () => go(at - 1),
    first: () => go(0),
    last: () => go(count - 1),
    dark: () => change((now) => ({ ...now, dark: !now.dark })),
    full,
    notes: openNotes,
    end,
  };
  usePresentingKeys(doing);
  if (leaf === undefined) return null;
  return (
    <dialog
      ref={dialog}
      className="presenting"
      aria-label={words.actions}
      onCancel={(event) => {
        event.preventDefault();
        end();
      }}
    >
      <div ref={stage} className={dark ? "screen darkened" : "screen"} tabIndex={-1}>
        <div className={`hall ${shape === "16:9" ? "wide" : "upright"}`} hidden={dark}>
          <Slide leaf={leaf} shape={shape} name={`shown-${at}`} />
          {/* A click anywhere on the slide leads on; the buttons below do the same for everybody. */}
          <button type="button" className="anywhere" tabIndex={-1} aria-hidden="true" onClick={doing.on} />
        </div>
        <p className="unseen" aria-live="polite">
          {dark ? words.darkened : words.arrived(at + 1, count, leaf.title)}
        </p>
        <div className="steer">
          <button type="button" onClick={doing.back} disabled={at === 0}>
            {words.back}
          </button>
          <span className="where">{words.slideOf(at + 1, count)}</span>
          <button type="button" onClick={doing.on} disabled={at === count - 1}>
            {words.on}
          </button>
          <button type="button" onClick={full}>
            {words.full}
          </button>
          <button type="button" onClick={end}>
            {words.end}
          </button>
        </div>
      </div>
    </dialog>
  );
}
