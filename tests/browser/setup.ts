import type { TestProject } from "vitest/node";
import { findChromium, installChromium, mayInstall } from "./find-chromium.ts";
import type { Found } from "./find-chromium.ts";

declare module "vitest" {
  export interface ProvidedContext {
    chromium: Found;
  }
}

/** Finds a Chromium once for all walks, or installs one on a test machine. */
export default function setup(project: TestProject): void {
  const found = findChromium();
  project.provide("chromium", "missing" in found && mayInstall() ? installChromium() : found);
}
