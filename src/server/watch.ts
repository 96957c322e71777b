import { watch } from "chokidar";

/** Tells when something in a folder changed on disk; several changes at once are told once. */
export interface Watcher {
  readonly onChange: (tell: () => void) => () => void;
  /** When the folder is watched: what changed before is told by nobody. */
  readonly begun: Promise<void>;
  /** Tells of a change that is none of a file that is read. */
  readonly tell: () => void;
  /** Watches these folders besides, and no others that it watched before. */
  readonly also: (folders: readonly string[]) => void;
  readonly close: () => Promise<void>;
}

/** How long a folder must be quiet before its changes are told, in milliseconds. */
const quiet = 60;

/** Watches a corpus's folder; names that begin with a dot are passed over. */
export function watchFolder(folder: string): Watcher {
  const listeners = new Set<() => void>();
  let others: readonly string[] = [];
  const below = (path: string): string => {
    const root = [folder, ...others].find((one) => path.startsWith(one)) ?? "";
    return path.slice(root.length);
  };
  const watcher = watch(folder, {
    ignored: (path) => /(^|[/\\])(\.[^/\\.][^/\\]*|node_modules)([/\\]|$)/.test(below(path)),
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
    begun: new Promise((resolve) => watcher.once("ready", resolve)),
    tell: tellAll,
    also: (folders) => {
      const gone = others.filter((one) => !folders.includes(one));
      const fresh = folders.filter((one) => !others.includes(one));
      others = folders;
      if (gone.length > 0) watcher.unwatch([...gone]);
      if (fresh.length > 0) watcher.add([...fresh]);
    },
    close: async () => {
      clearTimeout(waiting);
      await watcher.close();
    },
  };
}
