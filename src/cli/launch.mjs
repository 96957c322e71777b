// Runs the built command line, after building it when a source is newer. `--start` as the first argument serves
// the demo corpus, or the corpus that the next argument names.
import { join, relative } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { bringUpToDate } from "./stale.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
const given = process.argv.slice(2);
const code = bringUpToDate();
if (code !== 0) process.exit(code);

// npm runs its scripts in the project's folder; a path is meant from where the user stands.
if (process.env["npm_lifecycle_event"] !== undefined && process.env["INIT_CWD"] !== undefined) {
  process.chdir(process.env["INIT_CWD"]);
}
const built = join(root, "dist", "cli.js");
process.argv = [process.argv[0], built, ...(given[0] === "--start" ? opening(given.slice(1)) : given)];
await import(pathToFileURL(built).href);

function opening(rest) {
  const named = rest[0] !== undefined && !rest[0].startsWith("-");
  return named ? ["open", ...rest] : ["open", relative(process.cwd(), join(root, "demo-corpus")), ...rest];
}
