// Builds dist/ beside the old one and puts it in its place at the end: a build that fails leaves the old one,
// and a program that runs from it is not pulled away half-way. Everything it says goes to standard error.
import { mkdirSync, renameSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
const dist = join(root, "dist");
const stage = join(root, "node_modules", ".cache", `variorum-${process.pid}`);

const begun = new Date();
// Whatever called it, the tests for one, has its own idea of this.
process.env["NODE_ENV"] = "production";
const vite = await import("vite").catch(() => {
  console.error("Missing the packages that build Variorum, expected a full `npm install` in its folder.");
  process.exit(3);
});
rmSync(stage, { recursive: true, force: true });
mkdirSync(stage, { recursive: true });
try {
  const builder = await vite.createBuilder({
    configFile: join(root, "vite.config.ts"),
    environments: {
      client: { build: { outDir: join(stage, "dist", "app") } },
      node: { build: { outDir: join(stage, "dist") } },
    },
  });
  await builder.buildApp();
  // The stamp bears the time the build began, so that what was saved meanwhile counts as newer.
  const stamp = join(stage, "dist", "built");
  writeFileSync(stamp, "");
  utimesSync(stamp, begun, begun);
  putInPlace();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  console.error("The build failed; an earlier one, if there was any, is still in dist/.");
  process.exitCode = 3;
} finally {
  rmSync(stage, { recursive: true, force: true });
}

function putInPlace() {
  for (let attempt = 1; ; attempt++) {
    try {
      renameSync(dist, join(stage, `old-${attempt}`));
    } catch (error) {
      if (error.code !== "ENOENT") throw error;
    }
    try {
      renameSync(join(stage, "dist"), dist);
      return;
    } catch (error) {
      // Another build may have put its own there between the two steps.
      if (attempt === 5) throw error;
    }
  }
}
