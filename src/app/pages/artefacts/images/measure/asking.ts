import { useEffect, useRef, useState } from "react";
import type { PictureAsked, PictureTold } from "../../../../../show/artefacts/picture/asked.ts";
import { askModel } from "../../../sheet/form/asking.ts";

/**
 * What comes of what is being measured, by the corpus as it is; while one question is under way only the latest waits for
 * the next. It is asked again, too, when `corpus` is another.
 */
export function usePictureTold(asked: PictureAsked, corpus: unknown): PictureTold | null {
  const [told, setTold] = useState<PictureTold | null>(null);
  const next = useRef<PictureAsked | null>(null);
  const busy = useRef(false);
  const key = JSON.stringify(asked);
  useEffect(() => {
    next.current = JSON.parse(key) as PictureAsked;
    if (busy.current) return;
    busy.current = true;
    const round = async (): Promise<void> => {
      for (let one = next.current; one; one = next.current) {
        next.current = null;
        setTold(await askModel("picture", one));
      }
      busy.current = false;
    };
    void round();
  }, [key, corpus]);
  return told;
}
