// npm run audit: for people, not for the tests, since it asks npm's registry what it knows of the packages. It prints
// their licences, the faults that are known of them, and which have later versions. Ends with 1 where a licence is not
// allowed or a fault is known, with 2 where the registry gave no answer, so that nothing is known of faults.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

// Node 20 reads no TypeScript; Vite turns it into modules on the way.
const root = fileURLToPath(new URL("../..", import.meta.url));
const module = await imported("licences.ts");
const { faultsIn } = await imported("faults.ts");
process.chdir(root);

const licences = tellLicences();
const faults = tellFaults();
tellLater();
process.exitCode = !licences || faults === false ? 1 : faults === null ? 2 : 0;

async function imported(name) {
  const file = fileURLToPath(new URL(name, import.meta.url));
  return (await runnerImport(file, { root, configFile: false, logLevel: "silent" })).module;
}

function tellLicences() {
  const lists = ["dist/packages.json", "dist/app/packages.json"].filter((one) => existsSync(one));
  const bundled = new Set(lists.flatMap((one) => JSON.parse(readFileSync(one, "utf8"))));
  const packages = module.lockedIn(readFileSync("package-lock.json", "utf8"), bundled);
  console.log("Licences of the packages that are handed on, and of those that build and test alone");
  if (lists.length < 2) console.log("There is no build: what is bundled is counted where it is needed for.");
  const named = [...new Set(packages.map(({ licence }) => licence ?? "none named"))].sort();
  for (const name of named) {
    const its = packages.filter(({ licence }) => (licence ?? "none named") === name);
    const beside = its.filter((one) => one.beside).length;
    const of = module.allowed[name] ?? module.allowedBeside[name];
    const counts = `${String(its.length - beside).padStart(4)} ${String(beside).padStart(4)}`;
    console.log(`${counts}  ${name}${of === undefined ? "" : `: ${of}`}`);
  }
  const refused = packages.filter((one) => !module.isAllowed(one));
  for (const { name, version, licence } of refused)
    console.log(`Not allowed: ${name} ${version}, ${licence ?? "which names no licence"}`);
  console.log(refused.length === 0 ? "Each is allowed (tests/audit/licences.ts).\n" : "");
  return refused.length === 0;
}

/** True where no fault is known, false where one is, null where nobody could be asked. */
function tellFaults() {
  const known = faultsIn(asked(["audit", "--json"]));
  console.log("Faults that the registry knows of");
  if (known === null)
    console.log(
      "Not looked up: the registry gave no answer. Is there a network, and does it let such questions through?\n",
    );
  else console.log(known.length === 0 ? "None.\n" : `${known.join("\n")}\n`);
  return known && known.length === 0;
}

function tellLater() {
  const answer = asked(["outdated", "--json"]);
  console.log("Packages with later versions");
  if (answer === null || "error" in answer) return console.log("Not looked up: the registry gave no answer.");
  const all = Object.entries(answer);
  for (const [name, { current, latest }] of all) console.log(`${name} ${current}, latest ${latest}`);
  if (all.length === 0) console.log("None.");
}

/** What npm answers as JSON; null where that is none. It does not wait for a network that is not there. */
function asked(args) {
  const npm = process.env.npm_execpath;
  const [program, before] = npm === undefined ? ["npm", []] : [process.execPath, [npm]];
  const patience = ["--fetch-retries=0", "--fetch-timeout=20000"];
  const { stdout } = spawnSync(program, [...before, ...args, ...patience], {
    encoding: "utf8",
    timeout: 120_000,
    shell: npm === undefined && process.platform === "win32",
    maxBuffer: 64 * 1024 * 1024,
  });
  try {
    return JSON.parse(stdout === "" ? "{}" : stdout);
  } catch {
    return null;
  }
}
