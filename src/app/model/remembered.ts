import type { Outcome } from "../../build.ts";
import type { Asked } from "../worker/messages.ts";
import { asked, send } from "./corpus.ts";

/** Hands the model's worker what earlier runs gave; where that cannot be had, all is computed again. */
export async function remembering(thread: Worker): Promise<void> {
  const { status, text } = await send("memo", undefined, "GET");
  if (status !== 200) return;
  const { compute } = JSON.parse(text) as { readonly compute: Readonly<Record<string, Outcome>> };
  const message: Asked = { ask: "remember", outcomes: Object.entries(compute) };
  thread.postMessage(message);
}

/** What is kept of some runs, by their keys: a document, for the worker to read; null where it cannot be had. */
export async function recalled(keys: readonly string[]): Promise<ArrayBuffer | null> {
  try {
    const answer = await asked("/corpus/memo/of", { method: "POST", body: JSON.stringify(keys) });
    return answer.ok ? await answer.arrayBuffer() : null;
  } catch {
    return null;
  }
}

/** Keeps what was computed for the next time; where that fails, it is computed again. */
export function keepOutcomes(document: Uint8Array<ArrayBuffer>): void {
  void asked("/corpus/memo", { method: "POST", body: document }).catch(() => undefined);
}
