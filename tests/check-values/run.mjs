import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

// Node 20 reads no TypeScript; Vite turns the runner and the product's own sources into modules on the way.
const root = fileURLToPath(new URL("../..", import.meta.url));
const runner = fileURLToPath(new URL("runner.ts", import.meta.url));
const { module } = await runnerImport(runner, { root, configFile: false, logLevel: "silent" });

// npm runs a script in the project's folder and tells in INIT_CWD where the user stood.
const from = process.env.INIT_CWD ?? process.cwd();
process.exitCode = module.runFiles(
  process.argv.slice(2).map((file) => resolve(from, file)),
  (line) => process.stdout.write(`${line}\n`),
  (line) => process.stderr.write(`${line}\n`),
);
