import { firefox } from "playwright-core";
import { patience, walksIn } from "./walking.ts";

interface Message {
  readonly id: number;
  readonly method: string;
}

/** What goes to a browser and comes from it, as Playwright has it within. */
interface Line {
  send: (message: Message) => void;
  readonly onmessage?: (answer: object) => void;
}

interface Starter {
  connectToTransport: (line: Line, ...more: readonly unknown[]) => Promise<unknown>;
}

/**
 * A command of WebDriver BiDi that Playwright gives before every page, and that no long-term Firefox knows yet: it sets
 * what a page is told of dark and light, motion and contrast, which these walks leave as they are.
 */
const notYetKnown = "emulation.setMediaFeaturesOverride";

let isTaught = false;

/** Has Playwright take the one command that is not known for done; its way in is its own, and so it is looked for with care. */
function teach(): void {
  if (isTaught) return;
  const inner = firefox as unknown as {
    readonly _connection?: { readonly toImpl?: (one: unknown) => { readonly _bidiFirefox?: Starter } };
  };
  const starter = inner._connection?.toImpl?.(firefox)._bidiFirefox;
  if (!starter) throw new Error("Playwright has no way to an unchanged Firefox where it had one");
  const connect = starter.connectToTransport.bind(starter);
  starter.connectToTransport = (line, ...more) => {
    const send = line.send.bind(line);
    line.send = (message) => {
      if (message.method !== notYetKnown) return send(message);
      setImmediate(() => line.onmessage?.({ type: "success", id: message.id, result: {} }));
    };
    return connect(line, ...more);
  };
  isTaught = true;
}

/** What a fresh profile would ask of its maker: nothing of it, and nothing is fetched for later. */
const quiet = {
  "app.update.auto": false,
  "app.normandy.enabled": false,
  "browser.safebrowsing.malware.enabled": false,
  "browser.safebrowsing.phishing.enabled": false,
  "datareporting.policy.dataSubmissionEnabled": false,
  "extensions.getAddons.cache.enabled": false,
  "extensions.systemAddon.update.enabled": false,
  "network.captive-portal-service.enabled": false,
  "network.connectivity-service.enabled": false,
  "toolkit.telemetry.enabled": false,
};

/** A walk in an unchanged Firefox. */
export const walkInFirefox = walksIn("firefox", (path) => {
  teach();
  return firefox.launch({
    channel: "moz-firefox",
    executablePath: path,
    firefoxUserPrefs: quiet,
    timeout: patience,
  });
});
