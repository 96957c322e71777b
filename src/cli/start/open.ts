import { spawn } from "node:child_process";
import { NoCorpus, readCorpusFolder } from "../../host/corpus-folder.ts";
import { memoStoreFor } from "../../host/memo-store.ts";
import { serve } from "../../server/serve.ts";
import { Stop } from "../fault.ts";

/** Serves a corpus on this machine, prints its address, and opens a browser where there is one. Ends with Ctrl + C. */
export async function openCorpus(
  folder: string,
  options: { readonly port?: string; readonly browser: boolean },
): Promise<void> {
  const port = options.port === undefined ? 0 : Number(options.port);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Stop(`Unexpected port \`${options.port ?? ""}\`, expected a number from 1 to 65535`);
  }
  try {
    readCorpusFolder(folder);
  } catch (error) {
    if (error instanceof NoCorpus) throw new Stop(error.message);
    throw error;
  }
  const server = await serve(folder, { port, memo: memoStoreFor(folder) }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === "EADDRINUSE") throw new Stop(`The port ${port} is taken, expected a free one`);
      throw error;
    },
  );
  process.stdout.write(`${server.url}\n`);
  process.stderr.write("Press Ctrl + C to end.\n");
  if (options.browser) openInBrowser(server.url);
  const end = (): void => void server.close().then(() => process.exit(0));
  process.once("SIGINT", end);
  process.once("SIGTERM", end);
}

/** Where there is no browser to open, the printed address is all there is to do. */
function openInBrowser(url: string): void {
  const [command, before] =
    process.platform === "darwin"
      ? (["open", []] as const)
      : process.platform === "win32"
        ? (["cmd", ["/c", "start", ""]] as const)
        : (["xdg-open", []] as const);
  const child = spawn(command, [...before, url], { stdio: "ignore", detached: true });
  child.on("error", () => undefined);
  child.unref();
}
