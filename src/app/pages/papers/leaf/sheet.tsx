import { useEffect, useLayoutEffect, useRef, useState } from "react";
import type { ReactNode } from "react";
import type { OpenPaper, Piece, Shape } from "../reader/paper.ts";
import type { Layers } from "./layers.ts";

interface Props {
  readonly paper: OpenPaper;
  readonly page: number;
  readonly shape: Shape;
  /** Pixels of the window for a unit of the page. */
  readonly scale: number;
  readonly name: string;
  /** Whether it is near enough to what is looked at to be drawn. */
  readonly near: boolean;
  readonly layers: Layers;
  readonly onLaid: (page: number) => void;
  /** What lies over the page, given its element and the text that lies there. */
  readonly over: (seat: HTMLElement | null, pieces: readonly Piece[] | null) => ReactNode;
}

/** One page of a paper: what is drawn, its text over it to be selected, and what is marked on it. */
export function PaperSheet({ paper, page, shape, scale, name, near, layers, onLaid, over }: Props) {
  const [seat, setSeat] = useState<HTMLElement | null>(null);
  const [pieces, setPieces] = useState<readonly Piece[] | null>(null);
  return (
    <figure
      ref={setSeat}
      className="paper-sheet"
      aria-label={name}
      data-sheet={page}
      dir="ltr"
      style={{
        width: `${shape.width * scale}px`,
        height: `${shape.height * scale}px`,
        ["--total-scale-factor" as string]: scale,
      }}
    >
      {near && <Drawn paper={paper} page={page} shape={shape} scale={scale} />}
      {near && (
        <Laid
          paper={paper}
          page={page}
          onPieces={(laid) => {
            setPieces(laid);
            if (laid) layers.set(page, laid);
            else layers.delete(page);
            if (laid) onLaid(page);
          }}
        />
      )}
      {over(seat, pieces)}
    </figure>
  );
}

/** The most pixels that one page is drawn with. */
const mostPixels = 16 * 1024 * 1024;

function Drawn({ paper, page, shape, scale }: Pick<Props, "paper" | "page" | "shape" | "scale">) {
  const seat = useRef<HTMLDivElement>(null);
  const { width, height } = shape;
  useEffect(() => {
    const pixels = width * height * scale * scale;
    const fine = Math.min(window.devicePixelRatio, Math.sqrt(mostPixels / pixels));
    const canvas = document.createElement("canvas");
    const work = paper.draw(page, canvas, scale * fine);
    let isOver = false;
    // The page as it was drawn before stays until the new drawing is whole.
    void work.done.then(
      () => {
        if (!isOver) seat.current?.replaceChildren(canvas);
      },
      () => undefined,
    );
    return () => {
      isOver = true;
      work.leave();
    };
  }, [paper, page, width, height, scale]);
  return <div ref={seat} className="paper-drawn" aria-hidden="true" />;
}

function Laid({
  paper,
  page,
  onPieces,
}: {
  readonly paper: OpenPaper;
  readonly page: number;
  readonly onPieces: (pieces: readonly Piece[] | null) => void;
}) {
  const seat = useRef<HTMLDivElement>(null);
  const told = useRef(onPieces);
  useLayoutEffect(() => {
    told.current = onPieces;
  });
  useEffect(() => {
    const layer = document.createElement("div");
    layer.className = "paper-text";
    seat.current?.replaceChildren(layer);
    let isOver = false;
    void paper.lay(page, layer).then(
      (pieces) => {
        if (!isOver) told.current(pieces);
      },
      () => undefined,
    );
    return () => {
      isOver = true;
      told.current(null);
    };
  }, [paper, page]);
  return <div ref={seat} onPointerDown={(event) => steady(event.currentTarget)} />;
}

/**
 * Keeps a selection with the words while it is drawn: between lines, where there is no text, a browser would otherwise
 * take all that comes after. What is put behind the last word takes the pointer there instead.
 */
function steady(seat: HTMLElement): void {
  const layer = seat.firstElementChild;
  if (!layer) return;
  const ground = document.createElement("div");
  ground.className = "paper-ground";
  layer.append(ground);
  const follow = (): void => {
    const selection = window.getSelection();
    const { anchorNode, focusNode } = selection ?? {};
    const span = focusNode?.parentElement;
    if (!anchorNode || !focusNode || !span || !layer.contains(span) || span === layer) return;
    const isForward =
      (anchorNode.compareDocumentPosition(focusNode) & Node.DOCUMENT_POSITION_PRECEDING) === 0;
    if (isForward) span.after(ground);
    else span.before(ground);
  };
  const end = (): void => {
    ground.remove();
    document.removeEventListener("selectionchange", follow);
    for (const what of ["pointerup", "pointercancel"]) document.removeEventListener(what, end);
  };
  document.addEventListener("selectionchange", follow);
  for (const what of ["pointerup", "pointercancel"]) document.addEventListener(what, end);
}
