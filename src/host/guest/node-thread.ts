import { Worker } from "node:worker_threads";
import type { PluginFile } from "../../read/source-file.ts";
import type { Declared, Guest } from "./guest.ts";
import { endedWords, patience } from "./work.ts";
import type { Done, Work } from "./work.ts";

/**
 * Gives a thread one piece of work and waits for what comes of it. A guest that does not come to an end in good time,
 * or takes its thread down, gives null, and the thread is gone.
 */
export function answered(thread: Worker, given: Work): Promise<Done | null> {
  const stranger = "declare" in given || given.guest !== null;
  return new Promise((resolve, reject) => {
    const over = (): void => {
      clearTimeout(timer);
      thread.off("message", hear);
      thread.off("error", fail);
      thread.off("exit", exit);
    };
    const end = (): void => {
      over();
      // Whatever it still throws on its way out is nobody's any more.
      thread.on("error", () => undefined);
      void thread.terminate().then(() => resolve(null));
    };
    const hear = (said: Done): void => {
      if ("done" in said) return;
      over();
      resolve(said);
    };
    const fail = (error: unknown): void => {
      if (stranger) return end();
      over();
      reject(error instanceof Error ? error : new Error(String(error)));
    };
    const exit = (code: number): void => fail(new Error(`A thread that computes ended with code ${code}`));
    const timer = stranger ? setTimeout(end, patience) : undefined;
    thread.on("message", hear);
    thread.on("error", fail);
    thread.on("exit", exit);
    thread.postMessage(given);
  });
}

/** Asks the guests that are allowed what they are, each in a thread of its own; one already asked is not asked again. */
export async function declaredInThreads(
  script: URL,
  guests: readonly PluginFile[],
  asked: Map<string, Declared> = new Map(),
): Promise<readonly Declared[]> {
  const all: Declared[] = [];
  for (const guest of guests) {
    const key = `${guest.name} ${guest.hash}`;
    const declared = asked.get(key) ?? (await declaredInThread(script, guest));
    asked.set(key, declared);
    all.push(declared);
  }
  return all;
}

async function declaredInThread(script: URL, guest: Guest): Promise<Declared> {
  const thread = new Worker(script);
  const said = await answered(thread, { declare: guest });
  await thread.terminate();
  if (said && "declared" in said) return said.declared;
  return { ...guest, about: null, trouble: endedWords(guest.name) };
}
