import { useCallback, useRef } from "react";
import type { RefObject } from "react";
import type { PageMark } from "../words/marked.ts";
import { boxesOf } from "./layers.ts";
import type { Layers } from "./layers.ts";

/** How far down the window what is gone to comes to stand, in parts of its height. */
const above = 0.28;

/** Ways to what is marked on a page: `reach` goes there, at once or as soon as its text is laid out, of which `laid` tells. */
export interface Reaching {
  readonly reach: (mark: PageMark, isUnmoved?: boolean) => void;
  readonly laid: (page: number) => void;
}

/** Goes to words and parts of a paper's pages; with `isUnmoved` only where they are not in sight. */
export function useReach(
  seat: RefObject<HTMLElement | null>,
  layers: Layers,
  go: (page: number, part?: number, above?: number) => void,
): Reaching {
  const wish = useRef<PageMark | null>(null);
  const reach = useCallback(
    (mark: PageMark, isUnmoved = false): void => {
      wish.current = null;
      const { page, words, region } = mark;
      if (!words) return go(page, region ? region.y / 100 : 0, region ? above : 0);
      const sheet = seat.current?.querySelector<HTMLElement>(`[data-sheet="${page}"]`);
      const pieces = layers.get(page);
      const boxes = sheet && pieces ? boxesOf(sheet, pieces, words.start, words.end) : [];
      const [box] = boxes;
      if (!box) {
        if (!pieces) wish.current = mark;
        return go(page);
      }
      if (isUnmoved && seat.current && sheet && isInSight(seat.current, sheet, box.top)) return;
      go(page, box.top / 100, above);
    },
    [seat, layers, go],
  );
  const laid = useCallback(
    (page: number): void => {
      if (wish.current?.page === page) reach(wish.current);
    },
    [reach],
  );
  return { reach, laid };
}

function isInSight(seat: HTMLElement, sheet: HTMLElement, top: number): boolean {
  const at = sheet.offsetTop + (top / 100) * sheet.offsetHeight - seat.scrollTop;
  return at > 0 && at < seat.clientHeight - 40;
}
