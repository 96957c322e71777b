import { useCallback, useEffect, useRef, useState } from "react";

/** What is shown of a talk at this moment, alike in every window of it. */
export interface Showing {
  /** The slide, from 0. */
  readonly at: number;
  readonly dark: boolean;
  readonly clock: Clock;
}

/** A clock that runs only while something is shown: what it ran before, and since when it runs again, in ms. */
export interface Clock {
  readonly ran: number;
  readonly since: number | null;
}

type Message = { readonly say: "showing"; readonly showing: Showing } | { readonly say: "where" };

const start: Showing = { at: 0, dark: false, clock: { ran: 0, since: null } };

/** What a window does to what is shown. */
export type Change = (next: (now: Showing) => Showing) => void;

/** What is shown of a talk, kept in step between the window in the hall and the one with the notes. */
export function useShowing(talk: string): readonly [Showing, Change] {
  const [showing, setShowing] = useState(start);
  const now = useRef(start);
  const channel = useRef<BroadcastChannel | null>(null);
  useEffect(() => {
    const open = new BroadcastChannel(`variorum talk ${talk}`);
    channel.current = open;
    open.onmessage = ({ data }: MessageEvent<Message>) => {
      if (data.say === "showing") {
        now.current = data.showing;
        setShowing(data.showing);
      } else if (now.current !== start) open.postMessage(told(now.current));
    };
    open.postMessage({ say: "where" } satisfies Message);
    return () => {
      channel.current = null;
      open.close();
    };
  }, [talk]);
  const change = useCallback<Change>((next) => {
    now.current = next(now.current);
    setShowing(now.current);
    channel.current?.postMessage(told(now.current));
  }, []);
  return [showing, change];
}

const told = (showing: Showing): Message => ({ say: "showing", showing });

/** Another slide, within those there are; the screen is light again. */
export function toSlide(at: number, count: number): (now: Showing) => Showing {
  return (now) => ({ ...now, dark: false, at: Math.max(0, Math.min(count - 1, at)) });
}

/** A clock that goes on, or stands. */
export function clockAt(clock: Clock, runs: boolean, time: number): Clock {
  if (runs) return clock.since === null ? { ...clock, since: time } : clock;
  return clock.since === null ? clock : { ran: clock.ran + time - clock.since, since: null };
}

/** What a clock shows at a time, in ms. */
export function elapsedOn({ ran, since }: Clock, time: number): number {
  return ran + (since === null ? 0 : Math.max(0, time - since));
}
