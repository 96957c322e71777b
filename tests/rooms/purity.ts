import { mask } from "./mask.ts";

/** A place in pure code that would make its result depend on where or when it runs. */
export interface Impurity {
  readonly line: number;
  readonly what: string;
}

const globals = [
  "Date",
  "Intl",
  "Temporal",
  "process",
  "Buffer",
  "globalThis",
  "self",
  "window",
  "document",
  "navigator",
  "localStorage",
  "performance",
  "crypto",
  "console",
  "fetch",
  "setTimeout",
  "setInterval",
  "setImmediate",
  "queueMicrotask",
  "require",
];
const members = /\.\s*(toLocale\w+|localeCompare)\b/g;
const chance = /(?<![\w$.])Math\s*(?:\?\.|\.|\[)\s*(?:['"]\s*['"]|random)/g;
const reference = /^\s*\/\/\/\s*<reference\b.*$/gm;
const unreadable = /(?<![\w$.])import\s*\((?!\s*['"`])/g;

/** Names of globals the file uses without binding them itself, and members that ask the machine's clock, chance or locale. */
export function impurities(source: string): readonly Impurity[] {
  const code = mask(source);
  const at = (index: number, what: string): Impurity => ({
    line: source.slice(0, index).split("\n").length,
    what,
  });
  const named = globals
    .filter((name) => !binds(code, name))
    .flatMap((name) => [...code.matchAll(useOf(name))].map(({ index }) => at(index, `\`${name}\``)));
  return [
    ...named,
    ...[...code.matchAll(members)].map((match) => at(match.index, `\`${match[1] ?? ""}\``)),
    ...[...code.matchAll(chance)].map(({ index }) => at(index, "`Math.random`")),
    ...[...code.matchAll(unreadable)].map(({ index }) => at(index, "computed import")),
    ...[...source.matchAll(reference)].map(({ index }) => at(index, "reference to other types")),
  ].sort((a, b) => a.line - b.line);
}

/** A use of the name as a value or type: not a member `.name`, unless spread, and not the key `name:`. */
function useOf(name: string): RegExp {
  return new RegExp(`(?<![\\w$])(?<!(?<!\\.\\.)\\.\\s*)${name}(?![\\w$])(?!\\??\\s*:(?!:))`, "g");
}

/** Whether the file declares the name: a variable, function or class, a parameter with a type or an arrow, a part taken out. */
function binds(code: string, name: string): boolean {
  const end = "(?![\\w$])";
  return [
    `\\b(?:const|let|var|function|class)\\s+${name}${end}`,
    `\\b(?:const|let|var)\\s*[{[][^=]*(?<![\\w$.])${name}${end}[^=]*[}\\]]\\s*=`,
    `[(,]\\s*${name}\\??\\s*:`,
    `(?<![\\w$.])${name}\\s*=>`,
    `\\(\\s*(?:[\\w$]+\\s*,\\s*)*${name}(?:\\s*,\\s*[\\w$]+)*\\s*\\)\\s*=>`,
  ].some((pattern) => new RegExp(pattern).test(code));
}
