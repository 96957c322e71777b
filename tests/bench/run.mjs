// npm run bench [-- NAME …]: runs every file here with a default export, or those whose name holds one of the words
// given, prints each ratio beside its goal, and puts it in docs/figures.md, which the README quotes. A missed goal is
// told, and is no fault; a fault ends with code 1.
import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";
import { heads, keepFigures, told } from "./figures.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = fileURLToPath(new URL("../..", import.meta.url));
const wanted = process.argv.slice(2);
const named = (file) => wanted.length === 0 || wanted.some((word) => file.includes(word));
const benches = readdirSync(here).filter(isBench).sort();
const files = benches.filter(named);
if (files.length === 0) {
  console.error(`Unknown bench ${wanted.join(", ")}, expected a part of one of ${benches.join(", ")}`);
  process.exit(2);
}

const rows = [];
let faults = 0;
for (const file of files) {
  process.stderr.write(`${file} …\n`);
  try {
    const found = (await rowsOf(file)).map(told);
    rows.push(...found);
    keepFigures(`npm run bench -- ${file.replace(/-bench\.\w+$/, "")}`, found);
  } catch (error) {
    faults++;
    console.error(`${file}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
  }
}
print(rows);
const missed = rows.filter((row) => row.at(-1) === "missed").length;
console.log(`${rows.length} rows, ${missed} missed, ${faults} faults`);
console.log("docs/figures.md and README.md have these figures now.");
process.exit(faults === 0 ? 0 : 1);

/** A bench is a module with a default export; what it is made of may lie beside it. */
function isBench(file) {
  return (
    /^(?!run\.).*\.(ts|mjs)$/.test(file) && /^export default /m.test(readFileSync(`${here}${file}`, "utf8"))
  );
}

/** Node 20 reads no TypeScript; Vite turns a bench and the product's own sources into modules on the way. */
async function rowsOf(file) {
  const config = { root, configFile: false, logLevel: "silent" };
  const { module } = await runnerImport(`${here}${file}`, config);
  if (typeof module.default !== "function")
    throw new TypeError("Missing default export, expected a function");
  const found = await module.default();
  return Array.isArray(found) ? found : [found];
}

function print(lines) {
  const all = [heads, ...lines];
  const widths = heads.map((_, column) => Math.max(...all.map((line) => line[column].length)));
  for (const line of all) {
    const cells = line.map((cell, column) =>
      column === 1 || column === 6 ? cell.padEnd(widths[column]) : cell.padStart(widths[column]),
    );
    console.log(cells.join("  ").trimEnd());
  }
}
