import * as z from "zod";

/** What is asked of whoever hands a package on, for each licence that is allowed, by its name in SPDX. */
export const allowed: Readonly<Record<string, string>> = {
  MIT: "its text goes along",
  ISC: "its text goes along",
  "0BSD": "nothing",
  "BSD-2-Clause": "its text goes along",
  "BSD-3-Clause": "its text goes along, and nobody is named as one who recommends",
  "Apache-2.0": "its text and notices go along",
  "BSL-1.0": "its text goes along with the source",
  Zlib: "nobody claims to have written it",
  Unlicense: "nothing",
  "OFL-1.1": "fonts are not sold by themselves",
  "MPL-2.0": "files of it that are changed stay under it; none is",
  "CPAL-1.0": "who wrote it is named, as NOTICES does",
};

/** Licences of what only builds and tests the program, and is not handed on with it. */
export const allowedBeside: Readonly<Record<string, string>> = {
  "PSF-2.0": "its text goes along",
  "EPL-2.0": "files of it that are changed stay under it; none is",
};

/** Packages whose package.json names no licence, with the one that their licence file is, and words of it. */
export const unnamed: Readonly<Record<string, { readonly licence: string; readonly words: string }>> = {
  "png-js": { licence: "MIT", words: "Permission is hereby granted, free of charge" },
};

/** A package as the lock file has it. */
export interface Locked {
  readonly name: string;
  readonly version: string;
  /** Below `node_modules`, for another may have the same name. */
  readonly place: string;
  readonly licence: string | null;
  /** It is needed to build or to test alone. */
  readonly beside: boolean;
}

const lock = z.object({
  packages: z.record(
    z.string(),
    z.object({ version: z.string().optional(), license: z.string().optional(), dev: z.boolean().optional() }),
  ),
});

/** The packages in the text of a `package-lock.json`; `bundled` are those that the bundles are made of, whatever they are there for. */
export function lockedIn(text: string, bundled: ReadonlySet<string>): readonly Locked[] {
  return Object.entries(lock.parse(JSON.parse(text)).packages).flatMap(
    ([place, { version, license, dev }]) => {
      const name = place.split("node_modules/").at(-1) ?? "";
      if (place === "" || version === undefined) return [];
      const licence = license ?? unnamed[name]?.licence ?? null;
      return [{ name, version, place, licence, beside: dev === true && !bundled.has(name) }];
    },
  );
}

/** Whether a package may be used: one of its licences is allowed where it may be chosen, all of them where all hold. */
export function isAllowed({ licence, beside }: Pick<Locked, "licence" | "beside">): boolean {
  if (licence === null) return false;
  const may = (name: string): boolean =>
    Object.hasOwn(allowed, name) || (beside && Object.hasOwn(allowedBeside, name));
  return licence
    .replace(/[()]/g, "")
    .split(" OR ")
    .some((choice) => choice.split(" AND ").every((name) => may(name.trim())));
}
