import { useLayoutEffect, useRef } from "react";
import type { Region } from "../../../../show/desk/papers/selector.ts";
import { paperWords as words } from "../../../words/reading/papers.ts";

interface Props {
  /** The part that is marked on this page, in percent; null for none. */
  readonly region: Region | null;
  /** Somebody asked to mark a part: until then a finger moves the pages, and only a mouse or a pen marks. */
  readonly isAsked: boolean;
  readonly onRegion: (region: Region | null) => void;
  readonly onTake: () => void;
}

/** The smallest part that can be marked, in percent of the page. */
const least = 1;

/** A page on which a part is marked: by dragging over it, then by keys. */
export function RegionLayer({ region, isAsked, onRegion, onTake }: Props) {
  const part = useRef<HTMLButtonElement>(null);
  const from = useRef<{ readonly x: number; readonly y: number } | null>(null);
  const isThere = region !== null;
  useLayoutEffect(() => {
    if (isThere && from.current === null) part.current?.focus({ preventScroll: true });
  }, [isThere]);
  return (
    <div
      className={isAsked ? "paper-region asked" : "paper-region"}
      role="presentation"
      onKeyDown={(event) => {
        if (!region || event.ctrlKey || event.metaKey || event.altKey) return;
        const next = regionMoved(region, event.key, event.shiftKey);
        if (next) onRegion(next);
        else if (event.key === "Escape") onRegion(null);
        else if (event.key === "Enter") onTake();
        else return;
        event.preventDefault();
        event.stopPropagation();
      }}
      onPointerDown={(event) => {
        if (event.button !== 0 || (event.pointerType === "touch" && !isAsked)) return;
        event.preventDefault();
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = placeIn(event.currentTarget, event.clientX, event.clientY);
      }}
      onPointerMove={(event) => {
        if (!from.current) return;
        const to = placeIn(event.currentTarget, event.clientX, event.clientY);
        onRegion(between(from.current, to));
      }}
      onPointerUp={() => {
        from.current = null;
        if (region && (region.w < least || region.h < least)) onRegion(null);
        else part.current?.focus({ preventScroll: true });
      }}
      onPointerCancel={() => {
        from.current = null;
      }}
    >
      {region && (
        <button
          type="button"
          ref={part}
          className="paper-part"
          aria-label={words.regionAt(...sidesOf(region))}
          style={{
            left: `${region.x}%`,
            top: `${region.y}%`,
            width: `${region.w}%`,
            height: `${region.h}%`,
          }}
        />
      )}
    </div>
  );
}

function sidesOf({ x, y, w, h }: Region): [number, number, number, number] {
  return [Math.round(x), Math.round(y), Math.round(w), Math.round(h)];
}

function placeIn(seat: HTMLElement, x: number, y: number): { readonly x: number; readonly y: number } {
  const { left, top, width, height } = seat.getBoundingClientRect();
  const inPage = (part: number, whole: number): number => Math.max(0, Math.min(100, (100 * part) / whole));
  return { x: inPage(x - left, width), y: inPage(y - top, height) };
}

function between(
  a: { readonly x: number; readonly y: number },
  b: { readonly x: number; readonly y: number },
): Region {
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  return { x, y, w: Math.abs(a.x - b.x), h: Math.abs(a.y - b.y) };
}

/** A part of a page moved by an arrow key by 1 %, or with `size` made larger or smaller, within the page; null for another key. */
export function regionMoved({ x, y, w, h }: Region, key: string, size: boolean): Region | null {
  const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[key];
  if (!step) return null;
  const [dx = 0, dy = 0] = step;
  const within = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));
  return size
    ? { x, y, w: within(w + dx, least, 100 - x), h: within(h + dy, least, 100 - y) }
    : { x: within(x + dx, 0, 100 - w), y: within(y + dy, 0, 100 - h), w, h };
}
