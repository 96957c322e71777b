// npm run make-corpus -- --records N --seed S --to FOLDER [--arguments N] [--claims N] [--scholars N]
import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { runnerImport } from "vite";

const usage = "Usage: npm run make-corpus -- --records N --seed S --to FOLDER [--arguments N]";
const text = { type: "string" };
const { values } = parseArgs({
  options: { records: text, seed: text, to: text, arguments: text, claims: text, scholars: text },
});
const size = { records: Number(values.records ?? NaN), seed: Number(values.seed ?? 1) };
for (const name of ["arguments", "claims", "scholars"])
  if (values[name] !== undefined) size[name] = Number(values[name]);
if (values.to === undefined || Object.values(size).some((one) => !Number.isInteger(one))) fail(usage);

// npm runs a script in the project's folder and tells in INIT_CWD where the user stood.
const folder = resolve(process.env.INIT_CWD ?? process.cwd(), values.to);
if (existsSync(folder) && readdirSync(folder).length > 0)
  fail(`Unexpected files in \`${values.to}\`, expected an empty folder or none`);

// Node 20 reads no TypeScript; Vite turns the generator and the product's own sources into modules on the way.
const root = fileURLToPath(new URL("../..", import.meta.url));
const { module } = await runnerImport(fileURLToPath(new URL("corpus.ts", import.meta.url)), {
  root,
  configFile: false,
  logLevel: "silent",
});
let files;
try {
  files = module.corpusOf(size);
} catch (error) {
  fail(error instanceof RangeError ? error.message : String(error));
}
for (const file of files) {
  const path = join(folder, file.path);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, file.text);
}
console.log(`${files.length} files of ${size.records} records in ${folder}`);

function fail(message) {
  console.error(message);
  process.exit(2);
}
