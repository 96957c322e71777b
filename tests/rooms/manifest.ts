import { readFileSync } from "node:fs";
import * as z from "zod";

/** The text of a file, by its path from the project's root. */
export const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

const versions = z.record(z.string(), z.string());

/** What package.json says of the packages. */
export const manifest = z
  .object({ dependencies: versions, devDependencies: versions, overrides: versions.default({}) })
  .parse(JSON.parse(read("package.json")));
