import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { faultsIn } from "../audit/faults.ts";

/**
 * What `npm audit --json` (npm 11.19.1) said of this project when it asked a registry of our own, which answered with one
 * invented fault as the manual of that command tells the "Bulk Advisory Endpoint" to (docs.npmjs.com/cli/v11/commands/npm-audit).
 */
const recorded = {
  auditReportVersion: 2,
  vulnerabilities: {
    pdfkit: {
      name: "pdfkit",
      severity: "high",
      isDirect: true,
      via: ["png-js"],
      effects: ["svg-to-pdfkit"],
      range: "",
      nodes: ["node_modules/pdfkit"],
      fixAvailable: false,
    },
    "png-js": {
      name: "png-js",
      severity: "high",
      isDirect: false,
      via: [
        {
          source: 900001,
          name: "png-js",
          dependency: "png-js",
          title: "A picture without an end is read for ever",
          url: "https://advisories.example/900001",
          severity: "high",
          cwe: ["CWE-835"],
          cvss: { score: 7.5, vectorString: "CVSS:3.1/AV:N/AC:L/PR:N/UI:N/S:U/C:N/I:N/A:H" },
          range: "<99.0.0",
        },
      ],
      effects: ["pdfkit"],
      range: "",
      nodes: ["node_modules/png-js"],
      fixAvailable: false,
    },
  },
  metadata: {
    vulnerabilities: { info: 0, low: 0, moderate: 0, high: 2, critical: 0, total: 2 },
    dependencies: { prod: 412, dev: 200, optional: 98, peer: 0, peerOptional: 0, total: 623 },
  },
};
const told =
  "high: pdfkit: by png-js\nhigh: png-js: A picture without an end is read for ever, in <99.0.0, https://advisories.example/900001\n";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "variorum-audit-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the audit with a program in the place of npm, which says this of faults, and that nothing is outdated. */
function audited(said: string): { readonly status: number | null; readonly stdout: string } {
  const npm = join(folder, "npm.mjs");
  writeFileSync(npm, `process.stdout.write(process.argv[2] === "audit" ? ${JSON.stringify(said)} : "{}");\n`);
  const program = fileURLToPath(new URL("../audit/run.mjs", import.meta.url));
  const env = { ...process.env, npm_execpath: npm };
  return spawnSync(process.execPath, [program], { env, encoding: "utf8" });
}

test.each([
  ["a fault that is known", JSON.stringify(recorded), 1, told],
  ["no fault", JSON.stringify({ metadata: { vulnerabilities: { total: 0 } } }), 0, "None.\n"],
  // As npm says it where the registry does not answer.
  ["no answer", JSON.stringify({ message: "", error: { summary: "", detail: "" } }), 2, "Not looked up:"],
])("what is known of the packages is printed, and told by how it ends: %s", (_, said, status, printed) => {
  const { status: ended, stdout } = audited(said);
  expect(stdout).toContain(`Faults that the registry knows of\n${printed}`);
  expect(ended).toBe(status);
});

test("what a registry says steers no terminal, and a number of faults without names is not none", () => {
  const [line = ""] =
    faultsIn({
      metadata: { vulnerabilities: { total: 1 } },
      vulnerabilities: {
        a: {
          name: "a",
          severity: "low",
          range: "<1",
          via: [{ title: "\u001b[2Jx\ny", url: "u", range: "*" }],
        },
      },
    }) ?? [];
  expect(line).toBe("low: a <1: [2Jx y, u");
  expect(faultsIn({ metadata: { vulnerabilities: { total: 3 } } })).toEqual(["3 that are not named"]);
  for (const none of [null, {}, { metadata: {} }, { vulnerabilities: {} }, "x"])
    expect(faultsIn(none)).toBeNull();
});
