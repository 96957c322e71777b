import { createHash, timingSafeEqual } from "node:crypto";
import type { MiddlewareHandler } from "hono";
import { say } from "../base/text/said/said.ts";

/**
 * What the app's pages may do: run the scripts of this program, and ask nothing of anybody else. Compiling
 * WebAssembly is for the workers in which a corpus's plug-ins run and pictures of papers are decoded; pictures are
 * of the corpus, fetched with the token, and so come as `blob:`.
 */
export const policy =
  "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; font-src 'self'; img-src 'self' data: blob:; " +
  "worker-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** What every answer says, one that refuses and one to a request that nobody can read among them. */
export const always: Readonly<Record<string, string>> = {
  "Content-Security-Policy": policy,
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-store",
  // No page from elsewhere shares a window with the app, nor takes a picture or a script from here into itself.
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
};

/**
 * Lets those through who ask by the address that was printed, from a page of it or from no page at all. Another name
 * that leads to this machine is refused, whatever it is (a page whose name was made to lead here asks by its own),
 * and so is what a page from elsewhere sends, or links to.
 */
export function fromHereOnly(address: () => string): MiddlewareHandler {
  return async (context, next) => {
    const [host, origin, site] = ["host", "origin", "sec-fetch-site"].map((name) => context.req.header(name));
    const here = address();
    const isOwn = origin === undefined || origin === `http://${here}`;
    const isNear = site === undefined || site === "none" || site === "same-origin";
    if (host !== here || !isOwn || !isNear)
      return context.text("This address serves its own pages only.", 403);
    await next();
    // What tells of events says by itself that it may be kept, if it is asked for again.
    context.header("Cache-Control", "no-store");
    return undefined;
  };
}

/** The one place where the token may stand in an address, since whoever listens there can send no header. */
const listened = "/corpus/changes";

/** Lets those through who have the token. It is compared by its hash, so that the time it takes tells nothing of it. */
export function withToken(token: string): MiddlewareHandler {
  const wanted = hashed(token);
  return async (context, next) => {
    const asked = context.req.path === listened ? context.req.query("token") : undefined;
    const given = context.req.header("x-variorum-token") ?? asked ?? "";
    if (!timingSafeEqual(hashed(given), wanted))
      return context.json({ message: say`Open the address that was printed: it holds a token.` }, 403);
    await next();
    return undefined;
  };
}

function hashed(text: string): Buffer {
  return createHash("sha256").update(text).digest();
}
