import { useCallback, useLayoutEffect, useRef, useState } from "react";
import type { KeyboardEvent, PointerEvent, ReactNode } from "react";
import type { Point } from "../../../../../show/artefacts/picture/points.ts";
import { useActions } from "../../../../parts/actions.tsx";
import { imageWords as words } from "../../../../words/recording/images.ts";
import { Loupe } from "./loupe.tsx";
import { inPicture, insight, keptIn, onFrame, wholeView, zoomedAt } from "./view.ts";
import type { Size, View } from "./view.ts";

/** What a picture is measured with: what its marks are, and what a click or a key does. */
export interface Tools {
  readonly onSet: (point: Point) => void;
  readonly onBack: () => void;
  /** Marks over the picture, in px of the frame. */
  readonly marks: (view: View) => ReactNode;
}

interface Props {
  readonly url: string;
  readonly name: string;
  readonly size: Size;
  /** Its lines stay sharp however near. */
  readonly drawn: boolean;
  readonly tools: Tools | null;
  /** What the next click does, in words. */
  readonly told: string;
}

const stepBy = 1.25;

/** A picture in a frame of its own: nearer and farther, moved, and, with tools, measured on; by pointer and by keys. */
export function Stage({ url, name, size, drawn, tools, told }: Props) {
  const seat = useRef<HTMLDivElement>(null);
  const frame = useFrame(seat);
  const [looked, setView] = useState<View | null>(null);
  // Until the frame has a size nothing is shown in it.
  const room = frame ?? size;
  const view = looked ?? wholeView(size, room);
  const [cross, setCross] = useState<Point | null>(null);
  const pressed = useRef<{ readonly at: Point; readonly view: View; moved: boolean } | null>(null);
  useActions(words.keys, [
    { name: words.keyMove, key: "Arrow keys", run: null, own: true },
    { name: words.keyZoom, key: "+ − 0", run: null, own: true },
    ...(tools
      ? [
          { name: words.keySet, key: "Enter", run: null, own: true as const },
          { name: words.keyBack, key: "Backspace", run: null, own: true as const },
        ]
      : []),
  ]);
  const inFrame = useCallback((client: Point): Point => {
    const one = seat.current;
    const box = one?.getBoundingClientRect();
    // What lies in the frame begins inside its line.
    return {
      x: client.x - (box?.left ?? 0) - (one?.clientLeft ?? 0),
      y: client.y - (box?.top ?? 0) - (one?.clientTop ?? 0),
    };
  }, []);
  useWheel(seat, (client, by) => {
    setView(zoomedAt(view, by, inFrame(client), size, room));
  });
  const middle = { x: room.width / 2, y: room.height / 2 };
  const zoom = (by: number): void =>
    setView(zoomedAt(view, by, cross ? onFrame(cross, view) : middle, size, room));
  const toPicture = (client: Point): Point => inPicture(inFrame(client), view, size);
  const at = (event: PointerEvent): Point => ({ x: event.clientX, y: event.clientY });

  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>): void => {
    if (event.target !== event.currentTarget || event.altKey || event.ctrlKey || event.metaKey) return;
    const arrow = arrows[event.key];
    if (arrow) {
      if (tools) {
        const from = cross ?? rounded(inPicture(middle, view, size));
        const by = event.shiftKey ? 10 : 1;
        const next = within({ x: from.x + arrow.x * by, y: from.y + arrow.y * by }, size);
        setCross(next);
        setView(insight(view, next, size, room));
      } else setView(keptIn({ ...view, x: view.x - arrow.x * 60, y: view.y - arrow.y * 60 }, size, room));
    } else if (event.key === "+" || event.key === "=") zoom(stepBy);
    else if (event.key === "-" || event.key === "−") zoom(1 / stepBy);
    else if (event.key === "0") setView(null);
    else if (tools && event.key === "Enter") {
      const point = cross ?? rounded(inPicture(middle, view, size));
      setCross(point);
      tools.onSet(point);
    } else if (tools && event.key === "Backspace") tools.onBack();
    else return;
    event.preventDefault();
  };
  const onPointerMove = (event: PointerEvent): void => {
    const from = pressed.current;
    if (from) {
      const [dx, dy] = [event.clientX - from.at.x, event.clientY - from.at.y];
      if (!from.moved && Math.hypot(dx, dy) < 4) return;
      from.moved = true;
      setView(keptIn({ ...from.view, x: from.view.x + dx, y: from.view.y + dy }, size, room));
    } else if (tools) setCross(toPicture(at(event)));
  };
  return (
    <div className="staged">
      <div
        className={tools ? "stage measuring" : "stage"}
        ref={seat}
        dir="ltr"
        tabIndex={0}
        role="application"
        aria-label={`${words.stage}: ${name}`}
        aria-describedby="stage-help stage-told"
        onKeyDown={onKeyDown}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          pressed.current = { at: at(event), view, moved: false };
        }}
        onPointerMove={onPointerMove}
        onPointerUp={(event) => {
          const from = pressed.current;
          pressed.current = null;
          if (from && !from.moved && tools) {
            const point = toPicture(at(event));
            setCross(point);
            tools.onSet(point);
          }
        }}
        onPointerCancel={() => {
          pressed.current = null;
        }}
      >
        <img
          hidden={frame === null}
          src={url}
          alt=""
          width={size.width}
          height={size.height}
          draggable={false}
          style={{
            transform: `translate(${String(view.x)}px, ${String(view.y)}px) scale(${String(view.zoom)})`,
            imageRendering: !drawn && view.zoom > 3 ? "pixelated" : "auto",
          }}
        />
        {tools && (
          <svg className="marks" width={room.width} height={room.height}>
            {tools.marks(view)}
            {cross && <Cross at={onFrame(cross, view)} />}
          </svg>
        )}
        {tools && cross && <Loupe url={url} size={size} drawn={drawn} at={cross} view={view} frame={room} />}
      </div>
      <div className="stage-foot">
        <span className="ways">
          <button type="button" onClick={() => zoom(stepBy)}>
            {words.larger}
          </button>
          <button type="button" onClick={() => zoom(1 / stepBy)}>
            {words.smaller}
          </button>
          <button type="button" onClick={() => setView(null)}>
            {words.whole}
          </button>
          <span className="quiet figures">{words.zoomed(Math.round(view.zoom * 100))}</span>
        </span>
        <output className="quiet figures" id="stage-told">
          {told}
          {tools && cross && ` ${words.at(String(cross.x), String(cross.y))}`}
        </output>
      </div>
      <p className="quiet" id="stage-help">
        {tools ? words.measureHelp : words.lookHelp}
      </p>
    </div>
  );
}

/** Which way each arrow key leads. */
export const arrows: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

const rounded = ({ x, y }: Point): Point => ({ x: Math.round(x), y: Math.round(y) });

/** A place kept within a picture. */
export const within = ({ x, y }: Point, { width, height }: Size): Point => ({
  x: Math.max(0, Math.min(width, x)),
  y: Math.max(0, Math.min(height, y)),
});

function Cross({ at }: { readonly at: Point }) {
  const arms = `M${String(at.x - 14)} ${String(at.y)}h10m8 0h10M${String(at.x)} ${String(at.y - 14)}v10m0 8v10`;
  return (
    <g className="cross" aria-hidden="true">
      <path className="halo" d={arms} />
      <path d={arms} />
    </g>
  );
}

/** The size of the frame, as the window leaves it. */
function useFrame(seat: { readonly current: HTMLDivElement | null }): Size | null {
  const [frame, setFrame] = useState<Size | null>(null);
  useLayoutEffect(() => {
    const one = seat.current;
    if (!one) return;
    const look = (): void => setFrame({ width: one.clientWidth, height: one.clientHeight });
    const watch = new ResizeObserver(look);
    watch.observe(one);
    return () => watch.disconnect();
  }, [seat]);
  return frame;
}

/** Ctrl and the wheel zoom; React's own listener could not keep the page from zooming, too. */
function useWheel(
  seat: { readonly current: HTMLDivElement | null },
  onZoom: (client: Point, by: number) => void,
): void {
  const latest = useRef(onZoom);
  useLayoutEffect(() => {
    latest.current = onZoom;
  });
  useLayoutEffect(() => {
    const one = seat.current;
    const onWheel = (event: WheelEvent): void => {
      if (!event.ctrlKey) return;
      event.preventDefault();
      latest.current({ x: event.clientX, y: event.clientY }, 1.002 ** -event.deltaY);
    };
    one?.addEventListener("wheel", onWheel, { passive: false });
    return () => one?.removeEventListener("wheel", onWheel);
  }, [seat]);
}
