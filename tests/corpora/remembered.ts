import { vi } from "vitest";
import { memoStoreFor } from "../../src/host/memo-store.ts";
import { demoMemo } from "../demo-memo.ts";

/** Has the program know the demo's numbers from an earlier time: in the cache that is named, of a folder that holds the demo. */
export async function rememberDemo(cache: string, corpus: string): Promise<void> {
  const { compute } = await demoMemo();
  vi.stubEnv("XDG_CACHE_HOME", cache);
  memoStoreFor(corpus).save(compute);
  vi.unstubAllEnvs();
}
