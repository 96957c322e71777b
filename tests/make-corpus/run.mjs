// npm run make-corpus -- --arguments N --seed S [--to FOLDER] [--records N] [--files N] [--claims N] [--scholars N]
// As many records as so many arguments imply, or as many as are named; into a new folder where none is.
import { existsSync, mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { runnerImport } from "vite";

const usage =
  "Usage: npm run make-corpus -- (--arguments N | --records N) [--seed S] [--to FOLDER] [--files N] [--claims N] [--scholars N]";
const counts = ["records", "arguments", "files", "claims", "scholars"];
const named = [...counts, "seed", "to"].map((name) => [name, { type: "string" }]);
const options = { ...Object.fromEntries(named), help: { type: "boolean", short: "h" } };
const values = asked();
if (values.help) {
  console.log(usage);
  process.exit(0);
}
const given = { seed: Number(values.seed ?? 1) };
for (const name of counts) if (values[name] !== undefined) given[name] = Number(values[name]);
if (Object.values(given).some((one) => !Number.isInteger(one))) fail(usage);
if (given.records === undefined && given.arguments === undefined) fail(usage);
const to = values.to ?? `made-corpus-${given.records ?? `${given.arguments}-arguments`}-${given.seed}`;

// npm runs a script in the project's folder and tells in INIT_CWD where the user stood.
const folder = resolve(process.env.INIT_CWD ?? process.cwd(), to);
if (existsSync(folder) && readdirSync(folder).length > 0)
  fail(`Unexpected files in \`${to}\`, expected an empty folder or none`);

// Node 20 reads no TypeScript; Vite turns the generator and the product's own sources into modules on the way.
const root = fileURLToPath(new URL("../..", import.meta.url));
const { module } = await runnerImport(fileURLToPath(new URL("corpus.ts", import.meta.url)), {
  root,
  configFile: false,
  logLevel: "silent",
});
const size =
  given.records === undefined ? { ...module.sizeFor(given.arguments, given.seed), ...given } : given;
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

function asked() {
  try {
    return parseArgs({ options }).values;
  } catch {
    fail(usage);
  }
}

function fail(message) {
  console.error(message);
  process.exit(2);
}
