import { StyleFails } from "../../../../write/references/references.ts";
import { setWithSources } from "../../../../write/telling/set/sources.ts";
import type { SettingAsked, SettingTold } from "./messages.ts";

self.onmessage = async ({ data: { number, preview } }: MessageEvent<SettingAsked>) => {
  const { manuscript, sources, style } = preview;
  const graph = { sources: new Map(sources.map((one) => [one.key, one] as const)) };
  const told: SettingTold = await setWithSources(manuscript, graph, style).then(
    (set) => ({ number, set }),
    (error: unknown) => {
      if (!(error instanceof StyleFails)) throw error;
      return { number, trouble: error.message };
    },
  );
  self.postMessage(told);
};
