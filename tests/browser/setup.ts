import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { memoStoreIn } from "../../src/host/memo-store.ts";
import { demoMemo } from "../demo-memo.ts";
import { findChromium, installChromium, mayInstall } from "./find-chromium.ts";
import type { Found } from "./find-chromium.ts";
import { findFirefox } from "./firefox-found.ts";

declare module "vitest" {
  export interface ProvidedContext {
    chromium: Found;
    firefox: Found;
    /** The file with the numbers of the demo corpus, computed once for all walks. */
    memo: string;
  }
}

/** Finds the browsers once for all walks, or installs a Chromium on a test machine, and computes the demo's numbers once. */
export default async function setup(project: TestProject): Promise<() => void> {
  const found = findChromium();
  project.provide("chromium", "missing" in found && mayInstall() ? installChromium() : found);
  project.provide("firefox", findFirefox());
  const folder = mkdtempSync(join(tmpdir(), "variorum-memo-"));
  project.provide("memo", join(folder, "memo.json"));
  memoStoreIn(join(folder, "memo.json")).save((await demoMemo()).compute);
  return () => rmSync(folder, { recursive: true, force: true });
}
