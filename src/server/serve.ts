import { randomBytes } from "node:crypto";
import { createReadStream, existsSync, statSync } from "node:fs";
import { extname, join, normalize } from "node:path";
import { Readable } from "node:stream";
import { fileURLToPath, pathToFileURL } from "node:url";
import { serve as listen } from "@hono/node-server";
import type { ServerType } from "@hono/node-server";
import { Hono } from "hono";
import { streamSSE } from "hono/streaming";
import { say } from "../base/text/said/said.ts";
import { NoCorpus } from "../host/corpus-folder.ts";
import { openDesk } from "../host/desk/desk.ts";
import { committedFiles } from "../host/desk/git.ts";
import { declaredInThreads } from "../host/guest/node-thread.ts";
import type { Declared } from "../host/guest/guest.ts";
import type { MemoStore } from "../host/memo-store.ts";
import { allowedGuests } from "../host/permissions.ts";
import { plugins } from "../../plugins/index.ts";
import { allowing } from "./allow.ts";
import { deskRoutes } from "./desk.ts";
import { enclosedRoutes } from "./enclosed.ts";
import { memoRoutes } from "./memo.ts";
import type { Reading } from "./reading.ts";
import { readingOf } from "./reading.ts";
import { tellingRoutes } from "./telling.ts";
import { watchFolder } from "./watch.ts";

/** A corpus being served: its address with the token in it, and how to end it. */
export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

const policy =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; font-src 'self'; img-src 'self' data: blob:; " +
  "worker-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
};

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
  watcher.onChange(() => {
    desk.notice();
    readAgain(reading);
    tell();
  });
  const hono = new Hono();
  let host = "";

  hono.use(async (context, next) => {
    const origin = context.req.header("origin");
    const fromHere =
      context.req.header("host") === host && (origin === undefined || origin === `http://${host}`);
    if (!fromHere) return context.text("This address serves its own pages only.", 403);
    await next();
    if (!context.res.headers.has("Content-Security-Policy"))
      context.header("Content-Security-Policy", policy);
    context.header("X-Content-Type-Options", "nosniff");
    context.header("Referrer-Policy", "no-referrer");
    context.header("Cache-Control", "no-store");
    return undefined;
  });
  hono.use("/corpus/*", async (context, next) => {
    const given = context.req.header("x-variorum-token") ?? context.req.query("token");
    if (given !== token)
      return context.json({ message: say`Open the address that was printed: it holds a token.` }, 403);
    await next();
    return undefined;
  });
  hono.get("/corpus/files", async (context) => {
    try {
      const files = reading.again();
      const told = reading.since(context.req.query("have"));
      const state = desk.state();
      const guests = await declaredInThreads(worker, allowedGuests(folder, files, plugins), asked);
      return context.json({ ...told, guests, desk: state });
    } catch (error) {
      if (error instanceof NoCorpus) return context.json({ files: [], gone: error.said });
      throw error;
    }
  });
  hono.post("/corpus/allow", async (context) => {
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
  hono.get("*", (context) => {
    const given = pathIn(context.req.url);
    if (given === null) return context.notFound();
    const path = normalize(given).replace(/^[/\\]+/, "");
    const wanted = join(app, path);
    const file =
      path !== "" && wanted.startsWith(app) && existsSync(wanted) && statSync(wanted).isFile()
        ? wanted
        : join(app, "index.html");
    if (file.endsWith("index.html") && extname(path) !== "" && path !== "index.html")
      return context.notFound();
    const body = Readable.toWeb(createReadStream(file)) as ReadableStream;
    return context.body(body, 200, { "Content-Type": types[extname(file)] ?? "application/octet-stream" });
  });

  const server = await new Promise<ServerType>((resolve, reject) => {
    const started = listen({ fetch: hono.fetch, hostname: "127.0.0.1", port: options.port ?? 0 }, (info) => {
      host = `127.0.0.1:${info.port}`;
      resolve(started);
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

/** Reads the folder so that what is told of it is what it now holds; that it is no corpus any more is said to who asks. */
function readAgain(reading: Reading): void {
  try {
    reading.again();
  } catch (error) {
    if (!(error instanceof NoCorpus)) throw error;
  }
}

/** The path of an address, its signs decoded; null where they are written wrongly. */
function pathIn(url: string): string | null {
  try {
    return decodeURIComponent(new URL(url).pathname);
  } catch {
    return null;
  }
}
