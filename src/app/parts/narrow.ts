import { useSyncExternalStore } from "react";

const query = "screen and (max-width: 700px)";

/** Whether the window is too narrow for a table, as on a telephone or at 200 % zoom. */
export function useNarrow(): boolean {
  return useSyncExternalStore(follow, () => window.matchMedia(query).matches);
}

function follow(changed: () => void): () => void {
  const media = window.matchMedia(query);
  media.addEventListener("change", changed);
  return () => media.removeEventListener("change", changed);
}
