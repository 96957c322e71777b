import { useEffect, useRef, useState } from "react";
import type { Returned } from "../../../../show/desk/visit/returned.ts";
import type { VisitTold } from "../../../../show/desk/visit/filled/told.ts";
import { askModel } from "../../sheet/form/asking.ts";

/** What is written comes to, asked for again with every change; while one answer is under way only the latest waits. */
export function useTold(sheet: Returned, corpus: unknown): VisitTold | null {
  const [told, setTold] = useState<VisitTold | null>(null);
  const next = useRef<Returned | null>(null);
  const busy = useRef(false);
  useEffect(() => {
    next.current = sheet;
    if (busy.current) return;
    busy.current = true;
    const round = async (): Promise<void> => {
      for (let one = next.current; one; one = next.current) {
        next.current = null;
        const answer = await askModel("visit", one);
        if (answer) setTold(answer);
      }
      busy.current = false;
    };
    void round();
  }, [sheet, corpus]);
  return told;
}
