// The whole test: build, types, lint, format, then the tests. `npm test -- PATTERN` runs the matching test files
// alone. The last line is `N passed, N failed, N skipped`; each check before the tests counts as one.
import { spawn, spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { startVitest } from "vitest/node";
import { bringUpToDate } from "../src/cli/stale.mjs";
import { mayFurnish } from "./outputs/judges/furnish.mjs";

const root = fileURLToPath(new URL("../", import.meta.url));
const patterns = process.argv.slice(2);
const count = { passed: 0, failed: 0, skipped: 0 };
const failures = [];
const stdio = ["ignore", "inherit", "inherit"];
process.chdir(root);

// The other programs that our outputs are judged by, installed while the checks run.
const furnished = mayFurnish(patterns) ? running("tests/outputs/judges/furnish.mjs", []) : null;
check("build", () => bringUpToDate() === 0);
if (patterns.length === 0) {
  // Longer than all the others together, on the second core.
  const format = beside("prettier", "prettier", ["--check", "--log-level=warn", "."]);
  for (const program of ["core", "node", "app", "worker"]) {
    check(`types: ${program}`, () => runs("typescript", "tsc", ["-p", `src/tsconfig.${program}.json`]));
  }
  check("types: tests", () => runs("typescript", "tsc", ["-p", "tests/tsconfig.json"]));
  check("lint", () => runs("oxlint", "oxlint", ["--deny-warnings"]));
  const isFormatted = await format;
  check("format", () => isFormatted);
}
await furnished;
await runTests();

if (patterns.length > 0) console.log("Types, lint and format were not checked, since a pattern was given.");
for (const failure of failures) console.log(`failed: ${failure}`);
const summary = `${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`;
process.stdout.write(summary, () => process.exit(count.failed === 0 ? 0 : 1));

function check(name, passes) {
  const begun = performance.now();
  const passed = passes();
  console.log(
    `${passed ? "ok    " : "FAILED"} ${name} (${((performance.now() - begun) / 1000).toFixed(1)} s)`,
  );
  if (passed) count.passed++;
  else fail(name);
}

function fail(name) {
  count.failed++;
  failures.push(name);
}

/** The file of a package's own program, which is run through Node, so that no shell and no system's file endings matter. */
function programOf(name, program) {
  const manifest = createRequire(import.meta.url).resolve(`${name}/package.json`);
  const { bin } = createRequire(import.meta.url)(manifest);
  return join(dirname(manifest), typeof bin === "string" ? bin : bin[program]);
}

function runs(name, program, args) {
  return spawnSync(process.execPath, [programOf(name, program), ...args], { stdio }).status === 0;
}

/** Runs a program while others run; whether it ended well. */
function beside(name, program, args) {
  return running(programOf(name, program), args);
}

function running(path, args) {
  const child = spawn(process.execPath, [path, ...args], { stdio });
  return new Promise((resolve) => child.on("close", (status) => resolve(status === 0)));
}

async function runTests() {
  const vitest = await startVitest("test", patterns, { run: true, watch: false });
  const modules = vitest.state.getTestModules();
  tellSlowest(modules);
  if (modules.length === 0) fail(`tests: no file matches ${patterns.join(" ") || "tests/**/*.test.ts"}`);
  for (const module of modules) {
    const file = module.moduleId.slice(root.length);
    for (const { message } of broken(module)) fail(`${file}: ${message}`);
    for (const test of module.children.allTests()) record(test, `${file} > ${test.fullName}`);
  }
  for (const error of vitest.state.getUnhandledErrors())
    fail(`an error outside every test: ${error.message}`);
  await vitest.close();
}

/** Where the time goes: the ten files that took longest, what they import and set up among it. */
function tellSlowest(modules) {
  const taken = modules.map((module) => {
    const { collectDuration, duration, prepareDuration, setupDuration } = module.diagnostic();
    return [collectDuration + duration + prepareDuration + setupDuration, module.moduleId.slice(root.length)];
  });
  const slowest = taken.sort(([one], [other]) => other - one).slice(0, 10);
  console.log("The ten slowest files of tests:");
  for (const [ms, file] of slowest) console.log(`${(ms / 1000).toFixed(1).padStart(7)} s  ${file}`);
}

/** Errors that belong to no test: a file that cannot be loaded, a hook of a group that threw. */
function broken(module) {
  return [module, ...module.children.allSuites()].flatMap((group) => group.errors());
}

function record(test, name) {
  const { state, note } = test.result();
  if (state === "passed") count.passed++;
  else if (state === "skipped" && note) {
    count.skipped++;
    console.log(`skipped: ${name}: ${note}`);
  } else fail(state === "skipped" ? `${name}: skipped without a reason` : name);
}
