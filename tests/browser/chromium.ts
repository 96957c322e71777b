import { chromium } from "playwright-core";
import type { Browser } from "playwright-core";
import { findChromium } from "./find-chromium.ts";
import { flags } from "./flags.ts";
import { patience, walksIn } from "./walking.ts";

/** Starts a Chromium with a fresh profile of its own, which is removed when it is closed. */
export async function launch(path?: string): Promise<Browser> {
  const found = path === undefined ? findChromium() : { path };
  if ("missing" in found) throw new Error(found.missing);
  return chromium.launch({ executablePath: found.path, args: [...flags], timeout: patience });
}

/** A walk in a Chromium. */
export const walk = walksIn("chromium", launch);
