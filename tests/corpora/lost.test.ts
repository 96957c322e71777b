import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { reportSchema } from "../../src/show/report/schema.ts";

const program = fileURLToPath(new URL("../../dist/cli.js", import.meta.url));
const kiln = fileURLToPath(new URL("lost", import.meta.url));

function check(...options: readonly string[]): string {
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [program, "check", kiln, "--no-memo", ...options],
    { encoding: "utf8", env: { ...process.env, NO_COLOR: "1" } },
  );
  expect({ stderr, status }).toEqual({ stderr: "", status: 0 });
  return stdout;
}

test("--rests-on prints single losses, losses together, and the lines with their warning", () => {
  const out = check("--rests-on");
  const told = out.slice(out.indexOf("What claims rest on"), out.indexOf("4 sources"));
  const about = (claim: string): string =>
    told.split("\n\n").find((part) => part.includes(claim)) ?? "";
  expect(about("fired more than once")).toContain("No single loss ends it; two together do.");
  expect(about("fired more than once")).not.toContain("Would not stand without");
  expect(about("One potter")).toContain("Would not stand without: the flue; Greta Lund; Lund 1998.");
  expect(about("One potter")).toContain("Three lines lead to it that share nothing. Yet the loss of the flue,");
  expect(about("One potter")).toContain("the rim sherds — Lund 2003 — The same thumb is on the rims");
  expect(about("ash was raked")).toContain("or something withheld, together with");
  expect(out).not.toMatch(/orchard/i);
  expect(check()).not.toContain("What claims rest on");
});

test("--rests-on --json lists every set and every line, and nothing of them without it", () => {
  const { standings } = reportSchema.parse(JSON.parse(check("--rests-on", "--json")));
  // The thumb in the flue is in every argument; heap and rims each in one.
  expect(standings["one-potter"]).toMatchObject({
    restsOn: ["kiln/flue", "lund", "lund-1998"],
    lossSetsUpTo: 3,
    lines: { count: 3, through: [], circles: [] },
  });
  const sets = standings["one-potter"]?.lossSets ?? [];
  expect(sets.filter((set) => set.length === 2)).toHaveLength(6);
  expect(sets.filter((set) => set.length === 1)).toEqual([["kiln/flue"], ["lund"], ["lund-1998"]]);
  expect(Object.keys(standings["fired-once"] ?? {})).not.toContain("lossSets");
  const plain = reportSchema.parse(JSON.parse(check("--json")));
  for (const one of Object.values(plain.standings)) {
    expect(Object.keys(one)).not.toContain("lossSets");
    expect(Object.keys(one)).not.toContain("lines");
  }
});
