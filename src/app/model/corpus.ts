import type { SourceFile } from "../../build.ts";
import type { Declared } from "../../host/guest/guest.ts";

interface Fetched {
  readonly files: readonly SourceFile[];
  /** Plug-ins of the corpus that are allowed to run. */
  readonly guests?: readonly Declared[];
  readonly gone?: string;
}

const ended = "The program was ended. Start it again to go on.";

/** The token of the opened address; it stays in this tab, so that a reload still has it. */
function token(): string {
  const given = new URLSearchParams(location.hash.slice(1)).get("token");
  if (given !== null) {
    sessionStorage.setItem("token", given);
    history.replaceState(null, "", location.pathname + location.search);
  }
  return sessionStorage.getItem("token") ?? "";
}

/** Follows the corpus on disk: its files now, and again whenever one of them changes. */
export function followCorpus(
  onFiles: (files: readonly SourceFile[], guests: readonly Declared[]) => void,
  onTrouble: (why: string) => void,
): () => void {
  const key = token();
  const read = async (): Promise<void> => {
    const answer = await fetch("/corpus/files", { headers: { "x-variorum-token": key } });
    if (!answer.ok) return onTrouble(await answer.text());
    const { files, guests = [], gone } = (await answer.json()) as Fetched;
    if (gone === undefined) onFiles(files, guests);
    else onTrouble(gone);
  };
  const again = (): void => void read().catch(() => onTrouble(ended));
  const changes = new EventSource(`/corpus/changes?token=${encodeURIComponent(key)}`);
  // `ready` comes at the start and after every break: files may have changed in between.
  changes.addEventListener("ready", again);
  changes.addEventListener("change", again);
  changes.onerror = () => {
    if (changes.readyState === EventSource.CLOSED) again();
  };
  return () => changes.close();
}

/** Asks that a plug-in of the corpus be allowed, as the file with this hash; why it was not, or null when it was. */
export async function allowPlugin(name: string, hash: string): Promise<string | null> {
  try {
    const headers = { "x-variorum-token": token(), "content-type": "application/json" };
    const body = JSON.stringify({ name, hash });
    const answer = await fetch("/corpus/allow", { method: "POST", headers, body });
    return answer.ok ? null : await answer.text();
  } catch {
    return ended;
  }
}
