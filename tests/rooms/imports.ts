import { mask } from "./mask.ts";

/** One place where a file names another module. */
export interface Import {
  readonly specifier: string;
  readonly line: number;
  /** `url` is a worker's or asset's address: it has a direction, but makes no circle. */
  readonly kind: "import" | "url";
}

const statement = /(?<![\w$.])(?:import|export)\b[\w$*{}\s,]*?\bfrom\s*(?=['"])/g;
const bare = /(?<![\w$.])import\s*(?=['"])/g;
const call = /(?<![\w$.])(?:import|require)\s*\(\s*(?=['"`])/g;
const address = /(?<![\w$.])new\s+URL\s*\(\s*(?=['"`])/g;

/** Every import of a file, in its order: types, re-exports, `import()` and `new URL(…)` included. */
export function importsOf(source: string): readonly Import[] {
  const code = mask(source);
  const found = [statement, bare, call, address].flatMap((pattern) =>
    [...code.matchAll(pattern)].map((match) => {
      const quote = match.index + match[0].length;
      const end = code.indexOf(code[quote] ?? "", quote + 1);
      return {
        specifier: source.slice(quote + 1, end),
        line: source.slice(0, match.index).split("\n").length,
        kind: pattern === address ? ("url" as const) : ("import" as const),
      };
    }),
  );
  return found.sort((a, b) => a.line - b.line);
}

/** The path that a relative specifier means, seen from a file; null for a package. Vite's `?raw` and the like are cut. */
export function resolve(file: string, specifier: string): string | null {
  if (!specifier.startsWith(".")) return null;
  const parts = file.split("/").slice(0, -1);
  for (const part of specifier.replace(/\?.*$/, "").split("/")) {
    if (part === "..") parts.pop();
    else if (part !== ".") parts.push(part);
  }
  return parts.join("/");
}
