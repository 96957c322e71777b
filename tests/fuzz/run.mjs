// npm run fuzz [-- --inputs N --commands N --seed S --from N --keep]: puts inputs that were changed or made up through
// the reader, each in a process that is watched, and some through the command line. Prints what was found, and ends with
// 1 where there is a find; `--keep` writes each, as small as it gets, into tests/corpora/fuzzed.
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { bringUpToDate } from "../../src/cli/stale.mjs";
import { builtChild } from "./built.mjs";
import { triedThroughCommands } from "./commands.mjs";
import { kept } from "./kept.mjs";
import { triedInRow } from "./watched.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const number = (name, usual) => {
  const given = values[name] === undefined ? usual : Number(values[name]);
  if (Number.isInteger(given) && given >= 0) return given;
  console.error(`Unexpected --${name} ${values[name]}, expected a whole number`);
  return process.exit(2);
};
const { values } = parseArgs({
  options: Object.fromEntries([
    ...["inputs", "commands", "seed", "from"].map((name) => [name, { type: "string" }]),
    ["keep", { type: "boolean" }],
  ]),
});
const [inputs, commands, seed, from] = [
  number("inputs", 20_000),
  number("commands", 200),
  number("seed", 1),
  number("from", 0),
];

if (commands > 0 && bringUpToDate() !== 0) process.exit(3);
const begun = performance.now();
const child = await builtChild();
const counts = new Map();
const finds = new Map();
let [done, slowest, heaviest, processor] = [0, { ms: 0 }, { memory: 0 }, 0];
const find = (what, place, more) => {
  const known = finds.get(what);
  finds.set(what, { place: known?.place ?? place, times: (known?.times ?? 0) + 1, ...more });
  if (!known) console.log(`find at ${place}: ${what}`);
};
try {
  await triedInRow(child.path, { root, seed, from, to: from + inputs }, (one) => {
    done++;
    processor += one.ms;
    if (one.ms > slowest.ms) slowest = one;
    if (one.memory > heaviest.memory) heaviest = one;
    const format = one.format ?? "not ended";
    counts.set(format, (counts.get(format) ?? 0) + 1);
    for (const what of one.faults) find(what, one.place);
    if (done % 1000 === 0) process.stderr.write(`${done} of ${inputs} inputs, ${finds.size} finds\n`);
  });
  const own = [...finds];
  const asked =
    commands === 0 ? null : await triedThroughCommands({ root, child: child.path, seed, commands }, find);
  const rows = [...counts].sort(([a], [b]) => (a < b ? -1 : 1));
  for (const [format, count] of rows) console.log(`  ${format.padEnd(10)} ${String(count).padStart(6)}`);
  if (asked)
    console.log(`${asked.count} through the command line, slowest ${(asked.slowest / 1000).toFixed(1)} s`);
  for (const [what, { place, times }] of finds) console.log(`${times} × ${what} (first at ${place})`);
  const many = done.toLocaleString("en");
  const mebi = Math.round(heaviest.memory / 2 ** 20);
  console.log(
    `${many} inputs, ${finds.size} finds, slowest ${Math.round(slowest.ms)} ms (${slowest.how ?? "–"}, at ${slowest.place ?? "–"}), ` +
      `most memory ${mebi} MB; ${Math.round(processor / 1000)} s of the processor, ${Math.round((performance.now() - begun) / 1000)} s in all`,
  );
  if (values.keep)
    for (const [what, { place }] of own) await kept({ root, child: child.path, seed, place, what });
} finally {
  child.done();
}
process.exit(finds.size === 0 ? 0 : 1);
