import type { SourceFile } from "../build.ts";

interface Fetched {
  readonly files: readonly SourceFile[];
  readonly gone?: string;
}

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
  onFiles: (files: readonly SourceFile[]) => void,
  onTrouble: (why: string) => void,
): () => void {
  const key = token();
  const read = async (): Promise<void> => {
    const answer = await fetch("/corpus/files", { headers: { "x-variorum-token": key } });
    if (!answer.ok) return onTrouble(await answer.text());
    const { files, gone } = (await answer.json()) as Fetched;
    if (gone === undefined) onFiles(files);
    else onTrouble(gone);
  };
  const again = (): void =>
    void read().catch(() => onTrouble("The program was ended. Start it again to go on."));
  const changes = new EventSource(`/corpus/changes?token=${encodeURIComponent(key)}`);
  // `ready` comes at the start and after every break: files may have changed in between.
  changes.addEventListener("ready", again);
  changes.addEventListener("change", again);
  changes.onerror = () => {
    if (changes.readyState === EventSource.CLOSED) again();
  };
  return () => changes.close();
}
