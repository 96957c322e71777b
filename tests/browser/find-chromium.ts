import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/** A Chromium to walk in, or one line on how to get one. */
export type Found = { readonly path: string } | { readonly missing: string };

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome"];

/** Where each system puts a browser that is not on the PATH. */
function usualPlaces(): readonly string[] {
  if (process.platform === "darwin") {
    return ["Chromium.app/Contents/MacOS/Chromium", "Google Chrome.app/Contents/MacOS/Google Chrome"].flatMap(
      (app) => [`/Applications/${app}`, join(process.env["HOME"] ?? "", "Applications", app)],
    );
  }
  if (process.platform === "win32") {
    return ["PROGRAMFILES", "PROGRAMFILES(X86)", "LOCALAPPDATA"]
      .map((name) => process.env[name])
      .filter((folder) => folder !== undefined)
      .flatMap((folder) => [
        join(folder, "Chromium", "Application", "chrome.exe"),
        join(folder, "Google", "Chrome", "Application", "chrome.exe"),
      ]);
  }
  return ["/snap/bin/chromium", "/opt/google/chrome/chrome", "/usr/lib/chromium/chromium"];
}

/** Whether a path is that of a program that this user may run. */
export function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Looks at `VARIORUM_CHROMIUM`, then for the usual names on the PATH, then in the usual places. */
export function findChromium(): Found {
  const told = process.env["VARIORUM_CHROMIUM"];
  if (told !== undefined && told !== "") {
    return runs(told) ? { path: told } : { missing: `VARIORUM_CHROMIUM names ${told}, which cannot be run` };
  }
  const path = firstThatRuns(names, usualPlaces());
  return path === undefined ? { missing: howToInstall() } : { path };
}

/** The first program that can be run, by its names on the PATH, then by whole paths. */
export function firstThatRuns(called: readonly string[], places: readonly string[]): string | undefined {
  const folders = (process.env["PATH"] ?? "").split(delimiter).filter((folder) => folder !== "");
  const ending = process.platform === "win32" ? ".exe" : "";
  const onPath = folders.flatMap((folder) => called.map((name) => join(folder, name + ending)));
  return [...onPath, ...places].find(runs);
}

function howToInstall(): string {
  const how =
    process.platform === "linux"
      ? "install it (Debian: `apt-get install chromium`)"
      : "install Chromium or Google Chrome";
  return `no Chromium found: ${how}, or name one in VARIORUM_CHROMIUM`;
}

/** Whether this is a test machine that is ours to furnish: `CI` set, root, Debian, and no browser named by the user. */
export function mayInstall(): boolean {
  const ci = process.env["CI"] ?? "";
  const told = process.env["VARIORUM_CHROMIUM"] ?? "";
  return (
    told === "" &&
    ci !== "" &&
    ci !== "false" &&
    process.getuid?.() === 0 &&
    existsSync("/etc/debian_version")
  );
}

/** Installs Debian's Chromium; what the package tool says goes to standard error. */
export function installChromium(): Found {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [["update"], ["install", "-y", "--no-install-recommends", "chromium"]]) {
    const { status } = spawnSync("apt-get", args, { env, stdio: ["ignore", 2, 2] });
    if (status !== 0) return { missing: `\`apt-get ${args.join(" ")}\` failed, so there is no Chromium` };
  }
  return findChromium();
}
