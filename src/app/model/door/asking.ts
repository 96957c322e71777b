import type { Asked } from "../../worker/messages.ts";
import type { Answer, Given, Question, Told } from "./serving.ts";

/** A way to ask the worker that holds the model, past what it tells of the page. */
export interface Door<Q> {
  readonly open: (holder: Worker) => void;
  /** Asks a question by its name; null where the corpus cannot be read, or has nothing to answer. */
  readonly ask: <A extends keyof Q>(ask: A, given: Given<Q, A>) => Promise<Told<Q, A> | null>;
}

/** Those who wait for an answer, at all doors. */
const waiting = new Map<number, (told: unknown) => void>();
let number = 0;

/** A door of one kind, shut until it is opened. */
export function doorTo<Q>(kind: "forms" | "import" | "grid" | "arguing"): Door<Q> {
  let port: MessagePort | null = null;
  return {
    open: (holder) => {
      const { port1, port2 } = new MessageChannel();
      port = port2;
      port2.onmessage = ({ data }: MessageEvent<Answer<Q>>) => {
        waiting.get(data.number)?.(data.told);
        waiting.delete(data.number);
      };
      const lend: Asked = { ask: kind, port: port1 };
      holder.postMessage(lend, [port1]);
    },
    ask: <A extends keyof Q>(ask: A, given: Given<Q, A>) =>
      new Promise<Told<Q, A> | null>((resolve) => {
        number += 1;
        waiting.set(number, (told) => resolve(told as Told<Q, A> | null));
        const message: Question<Q> = { number, ask, given };
        port?.postMessage(message);
      }),
  };
}

/** Answers all that was asked with null, where the worker failed at it: nobody waits for ever. */
export function leaveAsking(): void {
  for (const resolve of waiting.values()) resolve(null);
  waiting.clear();
}
