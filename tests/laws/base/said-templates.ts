import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseSync } from "vite";
import { keyOf } from "../../../src/base/text/said/said.ts";

/** One `say` template of the sources: its key, where it stands, and which hole the first count is made in. */
export interface Template {
  readonly key: string;
  readonly file: string;
  readonly holes: number;
  readonly countAt: number | null;
}

interface Node {
  readonly type: string;
  readonly [name: string]: unknown;
}

const root = fileURLToPath(new URL("../../../", import.meta.url));

/** Every `say` template of the sources and the plug-ins, however deep it is nested. */
export function templatesOf(): readonly Template[] {
  return ["src", "plugins"].flatMap((top) =>
    readdirSync(`${root}${top}`, { recursive: true, encoding: "utf8" })
      .filter((path) => /\.tsx?$/.test(path) && !path.endsWith(".d.ts"))
      .flatMap((path) => templatesIn(`${top}/${path}`, readFileSync(`${root}${top}/${path}`, "utf8"))),
  );
}

/** The templates of one file. */
export function templatesIn(file: string, text: string): readonly Template[] {
  if (!text.includes("say`")) return [];
  const found: Template[] = [];
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) return value.forEach(walk);
    if (!isNode(value)) return;
    const template = templateOf(file, value);
    if (template) found.push(template);
    Object.values(value).forEach(walk);
  };
  walk(parseSync(file, text).program as unknown);
  return found;
}

function templateOf(file: string, node: Node): Template | null {
  if (node.type !== "TaggedTemplateExpression" || nameOf(node["tag"]) !== "say") return null;
  const { quasis, expressions } = node["quasi"] as {
    readonly quasis: readonly { readonly value: { readonly cooked: string } }[];
    readonly expressions: readonly Node[];
  };
  const countAt = expressions.findIndex(
    (one) => one.type === "CallExpression" && (nameOf(one["callee"]) ?? "").startsWith("count"),
  );
  return {
    key: keyOf(quasis.map(({ value }) => value.cooked)),
    file,
    holes: expressions.length,
    countAt: countAt === -1 ? null : countAt,
  };
}

const nameOf = (value: unknown): string | null =>
  isNode(value) && value.type === "Identifier" ? String(value["name"]) : null;

function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && "type" in value;
}
