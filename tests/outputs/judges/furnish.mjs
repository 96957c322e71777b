// Run alone, installs what judges our outputs, and the browsers of the walks, on a test machine that is ours to furnish:
// `CI` set, root, Debian. Where that fails, the tests that need them are skipped, each with its reason.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

/** Debian's packages of all judges, each once. */
const packages = [
  ...new Set(
    Object.values(JSON.parse(readFileSync(new URL("programs.json", import.meta.url), "utf8"))).flat(),
  ),
];

/** Files of tests in which something is judged. */
const judged = ["tests/outputs/", "tests/published/open-data.test.ts"];

/** Whether the tests that match the patterns, all of them where there is none, have judges that may be installed here. */
export function mayFurnish(patterns) {
  const ci = process.env.CI ?? "";
  const ours = ci !== "" && ci !== "false" && process.getuid?.() === 0 && existsSync("/etc/debian_version");
  return (
    ours &&
    (patterns.length === 0 ||
      patterns.some((one) => judged.some((file) => file.includes(one) || one.includes(file))))
  );
}

function installed(names) {
  return names.every((name) => spawnSync("dpkg", ["-s", name], { stdio: "ignore" }).status === 0);
}

function apt(...args) {
  // Where there is no network, this is found out soon.
  const patience = ["-qq", "-o", "Acquire::http::Timeout=20", "-o", "DPkg::Lock::Timeout=120"];
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  return spawnSync("apt-get", [...patience, ...args], { env, stdio: ["ignore", "ignore", 2] }).status === 0;
}

const install = (names) => apt("install", "-y", "--no-install-recommends", ...names);

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const browsers = [
    ["VARIORUM_CHROMIUM", "chromium"],
    ["VARIORUM_FIREFOX", "firefox-esr"],
  ].flatMap(([told, name]) => ((process.env[told] ?? "") === "" ? [[name]] : []));
  const lacking = [...browsers, packages].filter((names) => !installed(names));
  if (lacking.length > 0) apt("update");
  // Where one cannot be had, the others can.
  const failed = lacking.flatMap((names) => (install(names) ? [] : names.filter((one) => !install([one]))));
  if (failed.length > 0) console.error(`not installed: ${failed.join(" ")}`);
}
