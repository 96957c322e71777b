import type { BrowserContext } from "playwright-core";

/** Holds back, by so many ms, what comes to a page in its turn: pictures and effects, workers, news of files; it runs there, and so knows nothing of this file. */
const holding = (ms: number): void => {
  // React gives its tasks to this where it is: effects that are not laid out with a picture come as late again behind it.
  Object.assign(window, { setImmediate: (task: () => void) => setTimeout(task, ms) });

  const post = Worker.prototype.postMessage as (this: Worker, ...given: readonly unknown[]) => void;
  const later = function (this: Worker, ...given: readonly unknown[]): void {
    setTimeout(() => post.apply(this, [...given]), ms);
  };
  Object.defineProperty(Worker.prototype, "postMessage", { value: later });
  const heard = Object.getOwnPropertyDescriptor(Worker.prototype, "onmessage");
  Object.defineProperty(Worker.prototype, "onmessage", {
    set(this: Worker, hear: (event: MessageEvent) => void) {
      heard?.set?.call(this, (event: MessageEvent) => setTimeout(() => hear.call(this, event), ms));
    },
  });

  const listen = EventSource.prototype.addEventListener as EventTarget["addEventListener"];
  const listenLater = function (this: EventSource, name: string, hear: (event: Event) => void): void {
    listen.call(this, name, (event) => void setTimeout(() => hear.call(this, event), 2 * ms));
  };
  Object.defineProperty(EventSource.prototype, "addEventListener", { value: listenLater });

  const draw = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (then) =>
    draw(() => setTimeout(() => then(performance.now()), Math.min(ms / 4, 60)));
};

/**
 * Where `VARIORUM_HELD_BACK` is a number of ms, what a page waits for comes so much later, the program's answers and the code
 * of pages too, each by a delay of its own: a walk that looks once at what comes by another way than its key did fails then.
 */
export async function heldBack(window: BrowserContext): Promise<void> {
  const ms = Number(process.env["VARIORUM_HELD_BACK"] ?? "0");
  if (!(ms > 0)) return;
  await window.addInitScript(holding, ms);
  await window.route(/^http:\/\/127\.0\.0\.1:\d+\/(?:corpus|assets)\//, async (route) => {
    const isAnswer = route.request().url().includes("/corpus/");
    await new Promise((done) => setTimeout(done, isAnswer ? 2 * ms : ms));
    // Who asked may have gone meanwhile.
    await route.fallback().catch(() => undefined);
  });
}
