import type { BrowserContext, Page } from "playwright-core";

/** By this word what a page's policy refused is known in its console. */
const refused = "refused by the policy:";

/** Has whatever it runs in say what its policy refuses; it runs there, and so knows nothing of this file. */
const telling = (word: string): void =>
  addEventListener("securitypolicyviolation", (event) => {
    console.error(word, event.effectiveDirective, event.blockedURI, event.sourceFile ?? "");
  });

/** Where a page of ours may ask for something: at this machine's own address, in itself, and in a file. */
const own =
  /^(?:http:\/\/127\.0\.0\.1:\d+\/|data:|blob:(?:http:\/\/127\.0\.0\.1:|null)|file:|about:|chrome-error:)/;

/**
 * Watches every page of a browser window, those it opens and its workers too, for what its policy refuses and for what
 * is asked of anybody else; gives the way to what was seen.
 */
export async function watched(window: BrowserContext): Promise<() => readonly string[]> {
  const seen: string[] = [];
  await window.addInitScript(telling, refused);
  window.on("console", (message) => {
    if (message.text().startsWith(refused)) seen.push(message.text());
  });
  window.on("request", (request) => {
    if (!own.test(request.url())) seen.push(`asked of somebody else: ${request.url().slice(0, 200)}`);
  });
  window.on("page", (page: Page) => {
    page.on("websocket", (line) => seen.push(`a line to ${line.url()}`));
    page.on("worker", (worker) => {
      // A worker that ended before it could be asked has nothing more to say.
      worker.evaluate(telling, refused).catch(() => undefined);
    });
  });
  return () => seen;
}
