import type { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { outcomesIn, together } from "../host/memo-store.ts";
import type { MemoStore } from "../host/memo-store.ts";

/** More than a corpus's numbers and figures come to; what is not kept is computed again. */
const largest = 64 * 1024 * 1024;

/** How long nobody asks before what was loaded is let go, in ms. */
const idle = 20_000;

/** The addresses at which the app finds the outcomes of earlier runs, and leaves those of its own. */
export function memoRoutes(hono: Hono, memo: MemoStore): void {
  hono.get("/corpus/memo", (context) =>
    context.json({ version: 1, compute: Object.fromEntries(memo.load()) }),
  );
  let loaded: ReturnType<MemoStore["load"]> | null = null;
  let forgetting: NodeJS.Timeout | undefined;
  /** What is kept, for who asks for it part by part; not held for longer than that takes. */
  const kept = (): ReturnType<MemoStore["load"]> => {
    loaded ??= memo.load();
    clearTimeout(forgetting);
    forgetting = setTimeout(() => (loaded = null), idle).unref();
    return loaded;
  };
  hono.post("/corpus/memo/of", bodyLimit({ maxSize: 1024 * 1024 }), async (context) => {
    const asked: unknown = await context.req.json().catch(() => null);
    const keys = Array.isArray(asked) ? asked.filter((key) => typeof key === "string") : [];
    const all = kept();
    const known = keys.flatMap((key) => {
      const outcome = all.get(key);
      return outcome ? [[key, outcome] as const] : [];
    });
    return context.json({ version: 1, compute: Object.fromEntries(known) });
  });
  hono.post("/corpus/memo", bodyLimit({ maxSize: largest }), async (context) => {
    const given = outcomesIn(await context.req.json().catch(() => null));
    if (given.size > 0) loaded = null;
    if (given.size > 0) memo.save(together(memo.load(), given));
    return context.body(null, 204);
  });
}
