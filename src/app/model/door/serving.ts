/** What is asked by a name. */
export type Given<Q, A extends keyof Q> = Q[A] extends (given: infer G) => unknown ? G : never;

/** What is answered to it. */
export type Told<Q, A extends keyof Q> = Q[A] extends (given: never) => infer T ? T : never;

/** Through a door to who holds the model. */
export interface Question<Q> {
  readonly number: number;
  readonly ask: keyof Q;
  readonly given: Given<Q, keyof Q>;
}

/** Through the door from there; null where the corpus cannot be read. */
export interface Answer<Q> {
  readonly number: number;
  readonly told: Told<Q, keyof Q> | null;
}

/** Answers questions through a door, each on the corpus as it is then. */
export function answerThrough<Q>(port: MessagePort, answersNow: () => Q | null): void {
  port.onmessage = ({ data }: MessageEvent<Question<Q>>) => {
    const answer = answersNow()?.[data.ask] as ((given: unknown) => Answer<Q>["told"]) | undefined;
    const told: Answer<Q> = { number: data.number, told: answer?.(data.given) ?? null };
    port.postMessage(told);
  };
}
