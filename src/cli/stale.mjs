// Tells whether dist/ is older than what it is built from, and builds it anew.
import { readdirSync, statSync } from "node:fs";
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { join } from "node:path";

const root = fileURLToPath(new URL("../../", import.meta.url));
const builtFrom = ["src", "plugins", "vite.config.ts", "package.json", "package-lock.json"];

/** The first path found that changed after dist/ was built, `dist` when there is none, else null. */
export function newerThanBuilt() {
  const stamp = statSync(join(root, "dist", "built"), { throwIfNoEntry: false });
  if (stamp === undefined) return "dist";
  const queue = [...builtFrom];
  for (let path = queue.pop(); path !== undefined; path = queue.pop()) {
    const found = statSync(join(root, path), { throwIfNoEntry: false });
    if (found === undefined) continue;
    // A folder's own time tells of files added and removed.
    if (found.mtimeMs > stamp.mtimeMs) return path;
    if (found.isDirectory()) queue.push(...readdirSync(join(root, path)).map((name) => `${path}/${name}`));
  }
  return null;
}

/** Builds when something is newer, telling so on standard error only; the exit code of the build, 0 when none was due. */
export function bringUpToDate() {
  const newer = newerThanBuilt();
  if (newer === null) return 0;
  const why = newer === "dist" ? "not built yet" : `${newer} is newer than dist/`;
  process.stderr.write(`Building Variorum (${why}) …\n`);
  const build = fileURLToPath(new URL("build.mjs", import.meta.url));
  return spawnSync(process.execPath, [build], { cwd: root, stdio: ["ignore", 2, 2] }).status ?? 3;
}
