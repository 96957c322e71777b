import type { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { outcomesIn } from "../host/memo-store.ts";
import type { MemoStore } from "../host/memo-store.ts";

/** More than a corpus's numbers and figures come to; what is not kept is computed again. */
const largest = 64 * 1024 * 1024;

/** The addresses at which the app finds the outcomes of earlier runs, and leaves those of its own. */
export function memoRoutes(hono: Hono, memo: MemoStore): void {
  hono.get("/corpus/memo", (context) =>
    context.json({ version: 1, compute: Object.fromEntries(memo.load()) }),
  );
  hono.post("/corpus/memo", bodyLimit({ maxSize: largest }), async (context) => {
    const given = outcomesIn(await context.req.json().catch(() => null));
    if (given.size > 0) memo.save(new Map([...memo.load(), ...given]));
    return context.body(null, 204);
  });
}
