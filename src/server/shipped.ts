import { createReadStream, statSync } from "node:fs";
import { extname, join } from "node:path";
import { Readable } from "node:stream";
import type { Context, Hono } from "hono";

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

/** A path of names that begin with a letter, a digit, `-` or `_`: it leads down, and nowhere else. */
const plain = /^\/[\w-][\w.-]*(?:\/[\w-][\w.-]*)*$/;

/** The addresses of the app's own files, in the folder `app`; whatever does not stand among them is a page, which the app shows by itself. */
export function shippedRoutes(hono: Hono, app: string): void {
  const given = (context: Context, file: string): Response => {
    const head = { "Content-Type": types[extname(file)] ?? "application/octet-stream" };
    // A stream that nobody reads would keep its file open.
    if (context.req.method === "HEAD") return context.body(null, 200, head);
    return context.body(Readable.toWeb(createReadStream(file)) as ReadableStream, 200, head);
  };
  hono.get("*", (context) => {
    const path = pathIn(context.req.url);
    if (path === null || /^\/corpus(?:\/|$)/.test(path)) return context.notFound();
    const what = plain.test(path) ? kindOf(join(app, path)) : null;
    if (what === "file") return given(context, join(app, path));
    return standsAmong(app, path) ? context.notFound() : given(context, join(app, "index.html"));
  });
}

/** Whether a path would be one of the app's files, though there is none of it: an id of a record may have points too. */
function standsAmong(app: string, path: string): boolean {
  const [, first = "", next] = path.split("/");
  return next === undefined
    ? extname(first) !== ""
    : plain.test(`/${first}`) && kindOf(join(app, first)) === "folder";
}

function kindOf(path: string): "file" | "folder" | null {
  try {
    const about = statSync(path);
    return about.isFile() ? "file" : about.isDirectory() ? "folder" : null;
  } catch {
    return null;
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
