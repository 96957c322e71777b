import { plugins } from "../../../plugins/index.ts";
import { compute } from "../../build.ts";
import type { Run } from "../../build.ts";

self.onmessage = (event: MessageEvent<Run>) => {
  const run = event.data;
  self.postMessage({ key: run.key, outcome: compute(run, plugins, () => undefined) });
};
