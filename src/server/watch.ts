import { watch } from "chokidar";

/** Tells when something in a folder changed on disk; several changes at once are told once. */
export interface Watcher {
  readonly onChange: (tell: () => void) => () => void;
  /** Tells of a change that is none of a file that is read. */
  readonly tell: () => void;
  readonly close: () => Promise<void>;
}

/** How long a folder must be quiet before its changes are told, in milliseconds. */
const quiet = 60;

/** Watches a corpus's folder; names that begin with a dot are passed over. */
export function watchFolder(folder: string): Watcher {
  const listeners = new Set<() => void>();
  const watcher = watch(folder, {
    ignored: (path) => /(^|[/\\])(\.[^/\\.][^/\\]*|node_modules)([/\\]|$)/.test(path.slice(folder.length)),
    ignoreInitial: true,
    followSymlinks: false,
  });
  const tellAll = (): void => {
    for (const tell of listeners) tell();
  };
  let waiting: NodeJS.Timeout | undefined;
  watcher.on("all", () => {
    clearTimeout(waiting);
    waiting = setTimeout(tellAll, quiet);
  });
  return {
    onChange: (tell) => {
      listeners.add(tell);
      return () => void listeners.delete(tell);
    },
    tell: tellAll,
    close: async () => {
      clearTimeout(waiting);
      await watcher.close();
    },
  };
}
