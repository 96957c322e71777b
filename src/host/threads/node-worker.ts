import { readFile } from "node:fs/promises";
import { parentPort } from "node:worker_threads";
import { plugins } from "../../../plugins/index.ts";
import { work } from "../guest/work.ts";
import type { Work } from "../guest/work.ts";

let compiled: Promise<WebAssembly.Module> | null = null;

/** The interpreter for guests, which the build puts beside this script. */
function engine(): Promise<WebAssembly.Module> {
  compiled ??= readFile(new URL("./interpreter.wasm", import.meta.url)).then((bytes) =>
    WebAssembly.compile(bytes),
  );
  return compiled;
}

parentPort?.on(
  "message",
  (given: Work) => void work(given, plugins, engine, (done) => parentPort?.postMessage(done)),
);
