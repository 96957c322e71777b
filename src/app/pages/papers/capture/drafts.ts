import { useEffect, useState } from "react";
import { keptBegun } from "./begun.ts";
import type { Begun } from "./begun.ts";

/** What was begun from a source and not saved, and a way to look again; null before the desk has told it. */
export function useDrafts(source: string): {
  readonly drafts: readonly Begun[] | null;
  readonly look: () => void;
} {
  const [drafts, setDrafts] = useState<readonly Begun[] | null>(null);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let stale = false;
    void keptBegun(source).then((all) => {
      if (!stale) setDrafts(all);
    });
    return () => {
      stale = true;
    };
  }, [source, turn]);
  return { drafts, look: () => setTurn((before) => before + 1) };
}
