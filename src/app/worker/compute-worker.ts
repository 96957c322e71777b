import address from "@jitl/quickjs-wasmfile-release-sync/wasm?url";
import { plugins } from "../../../plugins/index.ts";
import { work } from "../../host/guest/work.ts";
import type { Work } from "../../host/guest/work.ts";

let compiled: Promise<WebAssembly.Module> | null = null;

/** The interpreter for guests, from the place the app itself came from. */
function engine(): Promise<WebAssembly.Module> {
  compiled ??= fetch(address)
    .then((answer) => answer.arrayBuffer())
    .then((bytes) => WebAssembly.compile(bytes));
  return compiled;
}

self.onmessage = (event: MessageEvent<Work>) => {
  work(event.data, plugins, engine, (done) => self.postMessage(done)).catch((error: unknown) => {
    // Thrown outside the promise, so that the thread's owner hears of it.
    setTimeout(() => {
      throw error;
    });
  });
};
