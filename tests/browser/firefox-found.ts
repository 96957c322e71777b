import { join } from "node:path";
import { firstThatRuns, runs } from "./find-chromium.ts";
import type { Found } from "./find-chromium.ts";

/** Where each system puts a Firefox that is not on the PATH. */
function usualPlaces(): readonly string[] {
  if (process.platform === "darwin") {
    const inside = join("Applications", "Firefox.app", "Contents", "MacOS", "firefox");
    return [join("/", inside), join(process.env["HOME"] ?? "", inside)];
  }
  if (process.platform === "win32") {
    return ["PROGRAMFILES", "PROGRAMFILES(X86)"]
      .map((name) => process.env[name])
      .flatMap((folder) => (folder === undefined ? [] : [join(folder, "Mozilla Firefox", "firefox.exe")]));
  }
  return ["/snap/bin/firefox", "/usr/lib/firefox-esr/firefox-esr"];
}

/** Looks at `VARIORUM_FIREFOX`, then for Debian's name and the usual one on the PATH, then in the usual places. */
export function findFirefox(): Found {
  const told = process.env["VARIORUM_FIREFOX"] ?? "";
  if (told !== "") {
    return runs(told) ? { path: told } : { missing: `VARIORUM_FIREFOX names ${told}, which cannot be run` };
  }
  const path = firstThatRuns(["firefox-esr", "firefox"], usualPlaces());
  if (path !== undefined) return { path };
  const how = process.platform === "linux" ? " (Debian: `apt-get install firefox-esr`)" : "";
  return { missing: `no Firefox found: install it${how}, or name one in VARIORUM_FIREFOX` };
}
