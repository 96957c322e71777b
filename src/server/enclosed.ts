import { closeSync, createReadStream } from "node:fs";
import { Readable } from "node:stream";
import type { Context, Hono } from "hono";
import { say } from "../base/text/said/said.ts";
import { CannotWrite } from "../host/desk/refusal.ts";
import {
  AlreadyThere,
  TooLarge,
  encloseNew,
  enclosedIn,
  largestEnclosed,
  openEnclosed,
} from "../host/enclosed.ts";

/** A picture that is opened by itself runs nothing and asks for nothing. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'";

/** The addresses of the papers and pictures in a corpus's folder: what there is, the bytes of one, and a new one brought in; `tell` has every window look again. */
export function enclosedRoutes(hono: Hono, folder: string, tell: () => void): void {
  hono.get("/corpus/enclosed", (context) => context.json({ enclosed: enclosedIn(folder) }));
  hono.get("/corpus/enclosed/*", (context) => {
    const found = openEnclosed(folder, fileAt(context));
    if (!found) return context.json({ message: say`There is no such paper or picture.` }, 404);
    const head = {
      "Content-Type": found.type,
      "Content-Length": String(found.bytes),
      "Content-Security-Policy": policy,
    };
    if (context.req.method === "HEAD") {
      closeSync(found.open);
      return context.body(null, 200, head);
    }
    const body = Readable.toWeb(createReadStream("", { fd: found.open })) as ReadableStream;
    return context.body(body, 200, head);
  });
  hono.put("/corpus/enclosed/*", async (context) => {
    const given = context.req.raw.body;
    try {
      if (Number(context.req.header("content-length") ?? 0) > largestEnclosed) throw new TooLarge();
      await encloseNew(folder, fileAt(context), given === null ? nothing() : partsOf(given));
      tell();
      return context.body(null, 201);
    } catch (error) {
      if (!(error instanceof CannotWrite)) throw error;
      const status = error instanceof AlreadyThere ? 409 : error instanceof TooLarge ? 413 : 400;
      return context.json({ message: say`${error.said}.` }, status);
    }
  });
}

/** The path of a file in the corpus by an address; one that is written wrongly is no path. */
function fileAt(context: Context): string {
  try {
    return decodeURIComponent(new URL(context.req.url).pathname).slice("/corpus/enclosed/".length);
  } catch {
    return "";
  }
}

async function* nothing(): AsyncGenerator<Uint8Array> {}

async function* partsOf(body: ReadableStream<Uint8Array>): AsyncGenerator<Uint8Array> {
  const reader = body.getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      yield value;
    }
  } finally {
    // Where the rest is not wanted, no more of it is asked for.
    await reader.cancel().catch(() => undefined);
  }
}
