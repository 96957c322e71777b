import type { Context, Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import * as z from "zod";
import { say } from "../base/text/said/said.ts";
import type { Said } from "../base/text/said/said.ts";
import type { Desk } from "../host/desk/desk.ts";
import { isDraftName, largestDraft } from "../host/desk/drafts.ts";
import { CannotWrite, Stale } from "../host/desk/refusal.ts";
import { largestTable } from "../read/source-file.ts";
import type { Reading } from "./reading.ts";

const hash = z.string().regex(/^[0-9a-f]{64}$/);
const name = z.string().trim().min(1).max(500);
const place = z.number().int().min(0);
const file = z.string().min(1).max(1024);
const change = z.object({
  file,
  madeFor: hash.nullable(),
  edits: z.array(z.object({ file, start: place, end: place, text: z.string() })),
  gone: z.literal(true).optional(),
});
const changes = z
  .array(change)
  .min(1)
  .max(5000)
  .refine((all) => new Set(all.map((one) => one.file)).size === all.length, "each file once");
const edit = z.object({ step: name, changes });
const back = z.object({ n: z.number().int().min(0), step: name.optional() });

const against = (context: Context, message: Said, status: 400 | 404 | 413): Response =>
  context.json({ message }, status);
const tooLarge = (context: Context): Response => against(context, say`What was sent is too large.`, 413);
const largeBody = bodyLimit({ maxSize: largestTable + 8 * 1024 * 1024, onError: tooLarge });
const smallBody = bodyLimit({ maxSize: 64 * 1024, onError: tooLarge });
const draftBody = bodyLimit({ maxSize: largestDraft, onError: tooLarge });

/**
 * The addresses by which a corpus is changed; `tell` has every window read it again. Once its body is read, each
 * request is worked off without a pause, so that those of two windows come one after the other. Who says in `have`
 * which state of the files it has is told with the answer what changed since.
 */
export function deskRoutes(hono: Hono, desk: Desk, reading: Reading, tell: () => void): void {
  const changing = (context: Context, one: () => Readonly<Record<string, unknown>>): Response => {
    try {
      const answer = one();
      reading.some(
        desk
          .steps()
          .at(-1)
          ?.files.map(({ file }) => file) ?? [],
      );
      const have = context.req.query("have");
      const since = have === undefined ? null : reading.since(have);
      const corpus = since === null || since.whole ? {} : { corpus: since };
      // Behind the answer: whoever made the change then knows of it already.
      setImmediate(tell);
      return context.json({ ...answer, desk: desk.state(), ...corpus });
    } catch (error) {
      return refusal(context, error);
    }
  };
  hono.post("/corpus/edit", largeBody, async (context) => {
    const asked = edit.safeParse(await context.req.json().catch(() => null));
    if (!asked.success) return against(context, say`Expected the name of a step and changes of files.`, 400);
    const { step } = asked.data;
    const given = asked.data.changes.map(({ gone, ...one }) => (gone ? { ...one, gone } : one));
    return changing(context, () => ({ n: desk.edit(step, given) }));
  });
  hono.post("/corpus/undo", smallBody, (context) => changing(context, () => ({ step: desk.undo() })));
  hono.post("/corpus/redo", smallBody, (context) => changing(context, () => ({ step: desk.redo() })));
  hono.post("/corpus/back", smallBody, async (context) => {
    const asked = back.safeParse(await context.req.json().catch(() => null));
    if (!asked.success) return against(context, say`Expected the number of a step.`, 400);
    return changing(context, () => ({ n: desk.back(asked.data.n, asked.data.step) }));
  });
  hono.get("/corpus/history", (context) => {
    try {
      return context.json({ steps: desk.steps() });
    } catch (error) {
      return refusal(context, error);
    }
  });
  hono.get("/corpus/text", (context) => {
    const asked = hash.safeParse(context.req.query("hash"));
    const text = asked.success ? desk.text(asked.data) : null;
    if (text === null) return against(context, say`There is no such text in the history.`, 404);
    return context.body(new Uint8Array(text), 200, { "Content-Type": "text/plain; charset=utf-8" });
  });
  draftRoutes(hono, desk);
}

function draftRoutes(hono: Hono, { drafts }: Desk): void {
  const unknown = (context: Context): Response => against(context, say`There is no such draft.`, 404);
  hono.get("/corpus/drafts", (context) => context.json({ drafts: drafts.list() }));
  hono.get("/corpus/drafts/:name", (context) => {
    const asked = context.req.param("name");
    const json = isDraftName(asked) ? drafts.get(asked) : null;
    if (json === null) return unknown(context);
    return context.body(json, 200, { "Content-Type": "application/json" });
  });
  hono.put("/corpus/drafts/:name", draftBody, async (context) => {
    const json = await context.req.text();
    return done(context, () => drafts.put(context.req.param("name"), json));
  });
  hono.delete("/corpus/drafts/:name", (context) =>
    done(context, () => drafts.remove(context.req.param("name"))),
  );
}

function done(context: Context, one: () => void): Response {
  try {
    one();
    return context.body(null, 204);
  } catch (error) {
    return refusal(context, error);
  }
}

function refusal(context: Context, error: unknown): Response {
  if (!(error instanceof CannotWrite)) throw error;
  return context.json(
    { message: say`${error.said}.`, stale: error instanceof Stale ? error.files : [] },
    409,
  );
}
