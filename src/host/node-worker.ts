import { parentPort } from "node:worker_threads";
import { plugins } from "../../plugins/index.ts";
import { compute } from "../derive/run.ts";
import type { Run } from "../derive/run.ts";

parentPort?.on("message", (run: Run) => {
  const outcome = compute(run, plugins, (done) => parentPort?.postMessage({ key: run.key, done }));
  parentPort?.postMessage({ key: run.key, outcome });
});
