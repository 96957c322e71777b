import type { Outcome } from "../../build.ts";
import type { Asked } from "../worker/messages.ts";
import { send } from "./corpus.ts";

/** Hands the model's worker what earlier runs gave; where that cannot be had, all is computed again. */
export async function remembering(thread: Worker): Promise<void> {
  const { status, text } = await send("memo", undefined, "GET");
  if (status !== 200) return;
  const { compute } = JSON.parse(text) as { readonly compute: Readonly<Record<string, Outcome>> };
  const message: Asked = { ask: "remember", outcomes: Object.entries(compute) };
  thread.postMessage(message);
}

/** Keeps what was computed for the next time; where that fails, it is computed again. */
export function keepOutcomes(outcomes: readonly (readonly [string, Outcome])[]): void {
  void send("memo", { version: 1, compute: Object.fromEntries(outcomes) });
}
