import { useId, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { KeyboardEvent, ReactNode, RefObject } from "react";
import type { Id } from "../../../base/finding.ts";
import type { MapPage, PlacedBox } from "../../../show/map/scene.ts";
import type { WholeWords } from "../../../show/map/whole.ts";
import { mapWords } from "../../words/shown/map.ts";
import type { MapDoes } from "./does.ts";
import { useMapKeys } from "./keys.ts";
import { Panel } from "./panel.tsx";
import { aroundAll, describe } from "./said.ts";
import { stageOn } from "../stage/stage.ts";
import type { Stage } from "../stage/stage.ts";
import { aboutBox, marksOf } from "../arguing/boxes.ts";
import { takeLine } from "../arguing/drawn.ts";
import { putAway, useInHand } from "../arguing/hand.ts";
import { useArguingKeys } from "../arguing/ways.ts";
import { inFoldWords } from "./fold-words.ts";
import type { Going } from "../stage/ways.ts";

interface Props {
  readonly page: MapPage & WholeWords;
  /** Framed anew whenever this is another. */
  readonly frame: string;
  readonly at: Id | null;
  readonly asOf: number | null;
  readonly name: string;
  readonly stageRef: RefObject<Stage | null>;
  readonly does: MapDoes;
  /** What is told within the frame beside the map. */
  readonly children?: ReactNode;
}

/** The picture lies under the widget's own outline, which else nobody would see who moves by keys. */
const under = { whole: { isolation: "isolate" }, picture: { zIndex: -1 } } as const;

/** The map as one widget: the picture, its keys, what is said of the current box, and the panel over it. */
export function Drawing({ page, frame, at, asOf, name, stageRef, does, children }: Props) {
  const [current, setCurrent] = useState<Id | null>(at);
  const [stayed, setStayed] = useState<Going | null>(null);
  const whole = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const host = useRef<HTMLDivElement>(null);
  const panel = useRef<HTMLElement>(null);
  const framed = useRef<string | null>(null);
  const help = useId();
  const boxes = useMemo(() => new Map(page.scene.boxes.map((box) => [box.id, box])), [page.scene]);
  const box = current === null ? undefined : boxes.get(current);

  const fold = (id: Id): void => {
    // A fold is gone once it is open: what it hung on takes its place.
    if (boxes.get(id)?.look.as === "fold") setCurrent(stageRef.current?.along(id, "up") ?? null);
    does.fold(id);
  };
  const take = (id: Id | null): void => {
    setStayed(null);
    setCurrent(id);
    if (id !== null) stageRef.current?.reveal(id);
  };
  const enter = (): void => whole.current?.focus({ preventScroll: true });
  const letGo = (): void => {
    take(null);
    enter();
  };
  const open = (id: Id): void => {
    const [record] = boxes.get(id)?.records ?? [];
    if (record !== undefined) does.open(record, id);
  };
  const tap = (id: Id, spot: { readonly x: number; readonly y: number }): void => {
    enter();
    const tapped = boxes.get(id);
    if (!tapped) return;
    if (tapped.look.as === "mark") return take(tapped.look.to);
    if (tapped.look.as === "fold") return fold(id);
    setStayed(null);
    setCurrent(id);
    if (inFoldWords(tapped, spot)) fold(id);
  };

  const latest = useRef({ tap, open });
  useLayoutEffect(() => {
    latest.current = { tap, open };
  });
  const taken = useRef(current);
  useLayoutEffect(() => {
    if (!canvas.current || !host.current) return undefined;
    const built = stageOn(canvas.current, host.current, {
      select: setCurrent,
      tap: (id, spot) => latest.current.tap(id, spot),
      open: (id) => latest.current.open(id),
      drew: takeLine,
      moved: () => putOver(panel.current, taken.current, stageRef.current),
    });
    stageRef.current = built;
    framed.current = null;
    return () => {
      built.end();
      stageRef.current = null;
    };
  }, [stageRef]);

  const draft = useInHand()?.draft ?? null;
  const marks = useMemo(() => draft && marksOf(page.scene, draft), [page.scene, draft]);
  useArguingKeys(() => aboutBox(box));
  useLayoutEffect(() => {
    taken.current = current;
    const { scene, states, beaten, view } = page;
    const { focus } = view;
    const focused = scene.boxes.find((one) => focus !== null && one.records.includes(focus))?.id ?? null;
    const opening =
      framed.current === frame ? null : { at: (framed.current === null ? current : null) ?? focused };
    framed.current = frame;
    stageRef.current?.show({ scene, states, beaten, current, marks }, opening);
  }, [page, current, frame, stageRef, marks]);

  const onMapKey = useMapKeys({ page, current, stageRef, whole, take, open, fold, stay: setStayed, does });
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || draft === null) return onMapKey(event);
    event.preventDefault();
    putAway();
  };
  const state = box ? (page.states[box.id] ?? null) : null;
  const around = useMemo(() => aroundAll(page.scene), [page.scene]);
  const said = box ? describe(box, state, around.get(box.id)) : "";
  return (
    <div className="map-frame" onKeyDown={onKey}>
      <div
        className="map-widget"
        ref={whole}
        style={under.whole}
        role="application"
        aria-label={name}
        aria-describedby={help}
        tabIndex={0}
        // The graph takes the focus away when it is pressed: without it no key would move the map.
        onPointerUp={enter}
      >
        <canvas ref={canvas} style={under.picture} aria-hidden="true" />
        <div className="map-graph" ref={host} style={under.picture} aria-hidden="true" />
        <p className="unseen" id={help}>
          {mapWords.help}
        </p>
        <output className="unseen">{stayed === null ? said : mapWords.nothing[stayed]}</output>
      </div>
      {box && box.look.as !== "mark" && (
        <Panel
          key={box.id}
          box={box}
          state={state}
          whole={page.whole[box.id] ?? null}
          asOf={asOf}
          place={panel}
          does={{
            leave: () => does.leave(box.id),
            ...looks(page, box, does),
            fold: box.folded !== null || page.view.unfolded.includes(box.id) ? () => fold(box.id) : null,
            enter,
            unfolded: page.view.unfolded.includes(box.id),
            close: letGo,
          }}
        />
      )}
      {children}
    </div>
  );
}

/** Ways to look closer at a box; null where it is looked at so already. */
function looks(
  { view }: MapPage,
  { records: [record] }: PlacedBox,
  does: MapDoes,
): { readonly focus: (() => void) | null; readonly only: (() => void) | null } {
  if (record === undefined) return { focus: null, only: null };
  const here = view.focus === record;
  return {
    focus: here && !view.only ? null : () => does.focus(record),
    only: here && view.only ? null : () => does.only(record),
  };
}

/** Puts the panel over its box, within the map; out of sight with a box that is out of sight. */
function putOver(panel: HTMLElement | null, id: Id | null, stage: Stage | null): void {
  if (!panel || id === null || !stage) return;
  const spot = stage.spot(id);
  const room = panel.parentElement;
  if (!spot || !room) return;
  const [wide, high] = [room.clientWidth, room.clientHeight];
  const away =
    spot.left + spot.width < 0 || spot.top + spot.height < 0 || spot.left > wide || spot.top > high;
  const edge = 6;
  const left = Math.max(edge, Math.min(spot.left - 9, wide - panel.offsetWidth - edge));
  const top = Math.max(edge, Math.min(spot.top - 9, high - panel.offsetHeight - edge));
  panel.style.visibility = away ? "hidden" : "visible";
  panel.style.transform = `translate(${Math.round(left)}px, ${Math.round(top)}px)`;
}
