import { expect, test } from "vitest";
import * as z from "zod";
import { manifest, read } from "./manifest.ts";

const names = z.array(z.string());

/** `NOTICES` line by line: `name version? — licence`; a name that ends in `/*` stands for its whole scope. */
const notices = read("NOTICES")
  .split("\n")
  .map((line) => /^(@?[\w./*-]+) +— +(.+?)(?:;.*)?$/.exec(line))
  .filter((match) => match !== null)
  .map(([, name = "", licence = ""]) => ({ name, licence }));

function noticeOf(name: string): string | undefined {
  return notices.find((notice) =>
    notice.name.endsWith("/*") ? name.startsWith(notice.name.slice(0, -1)) : notice.name === name,
  )?.licence;
}

function licenceOf(name: string): string {
  return z.object({ license: z.string() }).parse(JSON.parse(read(`node_modules/${name}/package.json`)))
    .license;
}

test("every version is exact", () => {
  const all = { ...manifest.dependencies, ...manifest.devDependencies, ...manifest.overrides };
  expect(Object.entries(all).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});

test("the lock file holds hashes, and no address of a registry", () => {
  const lock = read("package-lock.json");
  expect(lock).toContain('"integrity": "sha512-');
  expect(lock).not.toMatch(/"resolved"|registry|\.tgz/);
});

test("the notices name each package that is bundled or depended on, with its licence", () => {
  const bundled = ["dist/packages.json", "dist/app/packages.json"].flatMap((list) =>
    names.parse(JSON.parse(read(list))),
  );
  expect(bundled).toContain("yaml");
  expect(bundled).toContain("react");
  const shipped = [...new Set([...bundled, ...Object.keys(manifest.dependencies)])];
  // The licence of a whole scope may join several: each package has one of them, or all.
  const missing = shipped.filter((name) => noticeOf(name)?.includes(licenceOf(name)) !== true);
  expect(missing).toEqual([]);
});

test("the notices name no package that is not installed", () => {
  const stale = notices.filter(({ name }) => name.includes("/") || name in manifest.dependencies);
  expect(stale.length).toBeGreaterThan(5);
  for (const { name } of notices) if (!name.endsWith("/*")) expect(licenceOf(name)).not.toBe("");
});
