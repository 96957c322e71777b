import { randomBytes } from "node:crypto";
import type { ServerResponse } from "node:http";
import { fileURLToPath, pathToFileURL } from "node:url";
import { serve as listen } from "@hono/node-server";
import type { ServerType } from "@hono/node-server";
import { Hono } from "hono";
import type { Context } from "hono";
import { bodyLimit } from "hono/body-limit";
import { HTTPException } from "hono/http-exception";
import { streamSSE } from "hono/streaming";
import { NoCorpus } from "../host/corpus-folder.ts";
import { openDesk } from "../host/desk/desk.ts";
import { foldersBeside } from "../host/desk/files/companions.ts";
import { committedFiles } from "../host/desk/git.ts";
import { declaredInThreads } from "../host/guest/node-thread.ts";
import type { Declared } from "../host/guest/guest.ts";
import type { MemoStore } from "../host/memo-store.ts";
import { allowedGuests } from "../host/permissions.ts";
import type { SourceFile } from "../read/source-file.ts";
import { plugins } from "../../plugins/index.ts";
import { allowing } from "./allow.ts";
import { deskRoutes } from "./desk.ts";
import { enclosedRoutes } from "./enclosed.ts";
import { filesRoutes } from "./files.ts";
import { always, fromHereOnly, withToken } from "./guard.ts";
import { memoRoutes } from "./memo.ts";
import type { Reading } from "./reading.ts";
import { readingOf } from "./reading.ts";
import { shippedRoutes } from "./shipped.ts";
import { tellingRoutes } from "./telling.ts";
import { watchFolder } from "./watch.ts";

/** A corpus being served: its address with the token in it, and how to end it. */
export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

const nothingKept: MemoStore = { load: () => new Map(), save: () => undefined };

/** Serves the app and one corpus to this machine alone; port 0 takes a free one, `memo` keeps outcomes of runs. */
export async function serve(
  folder: string,
  options: { readonly port?: number; readonly app?: URL; readonly memo?: MemoStore } = {},
): Promise<Served> {
  const app = fileURLToPath(options.app ?? new URL("./app/", import.meta.url));
  const worker = new URL("../compute-worker.js", pathToFileURL(app));
  const asked = new Map<string, Declared>();
  const token = randomBytes(16).toString("hex");
  const desk = openDesk(folder);
  const watcher = watchFolder(folder);
  const reading = readingOf(folder, randomBytes(6).toString("hex"));
  const windows = new Set<() => void>();
  const tell = (): void => {
    for (const window of windows) window();
  };
  const lookAgain = (): void => {
    readAgain(reading);
    const main = reading.known()?.find(({ path }) => path === "corpus.yaml");
    watcher.also(foldersBeside(folder, main));
  };
  watcher.onChange(() => {
    desk.notice();
    lookAgain();
    tell();
  });
  // Before anybody asks, so that the first answer need not wait for the disk.
  lookAgain();
  const hono = new Hono();
  let host = "";

  hono.onError(answered);
  hono.use(fromHereOnly(() => host));
  hono.use("/corpus/*", withToken(token));
  const guests = (files: readonly SourceFile[]): Promise<readonly Declared[]> =>
    declaredInThreads(worker, allowedGuests(folder, files, plugins), asked);
  filesRoutes(hono, reading, { desk: () => desk.state(), guests }, { changed: tell, begun: watcher.begun });
  hono.post("/corpus/allow", bodyLimit({ maxSize: 64 * 1024 }), async (context) => {
    const refused = await allowing(folder, context.req);
    if (refused !== null) return context.json({ message: refused }, 409);
    reading.renew();
    watcher.tell();
    return context.body(null, 204);
  });
  deskRoutes(hono, desk, reading, tell);
  enclosedRoutes(hono, folder, watcher.tell);
  memoRoutes(hono, options.memo ?? nothingKept);
  tellingRoutes(hono, folder, { plugins, script: worker, store: options.memo ?? nothingKept });
  hono.get("/corpus/committed", async (context) => context.json(await committedFiles(folder)));
  hono.get("/corpus/changes", (context) =>
    streamSSE(context, async (stream) => {
      const ended = new Promise<void>((resolve) => stream.onAbort(resolve));
      const window = (): void => void stream.writeSSE({ event: "change", data: reading.version() });
      windows.add(window);
      await stream.writeSSE({ event: "ready", data: "" });
      await ended;
      windows.delete(window);
    }),
  );
  shippedRoutes(hono, app);

  const server = await new Promise<ServerType>((resolve, reject) => {
    const started = listen({ fetch: hono.fetch, hostname: "127.0.0.1", port: options.port ?? 0 }, (info) => {
      // As it stands in an address: the port that is HTTP's own is left out.
      host = info.port === 80 ? "127.0.0.1" : `127.0.0.1:${info.port}`;
      resolve(started);
    });
    // Before anything else sees a request, so that no answer goes without.
    started.prependListener("request", (_: unknown, answer: ServerResponse) => {
      for (const [name, value] of Object.entries(always)) answer.setHeader(name, value);
    });
    started.once("error", reject);
  });
  return {
    url: `http://${host}/#token=${token}`,
    close: async () => {
      await watcher.close();
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      if ("closeAllConnections" in server) server.closeAllConnections();
      await closed;
    },
  };
}

/** The answer where something was thrown: who goes away while sending is no fault of the program, and is told nothing. */
function answered(error: Error, context: Context): Response {
  if (error instanceof HTTPException) return error.getResponse();
  if ((error as NodeJS.ErrnoException).code === "ECONNRESET") return context.body(null, 400);
  console.error(error);
  return context.text("Internal Server Error", 500);
}

/** Reads the folder so that what is told of it is what it now holds; that it is no corpus any more is said to who asks. */
function readAgain(reading: Reading): void {
  try {
    reading.again();
  } catch (error) {
    if (!(error instanceof NoCorpus)) throw error;
  }
}
