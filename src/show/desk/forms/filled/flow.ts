import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { isList, writtenOf } from "../../../../read/edit/written.ts";
import type { Written } from "../../../../read/edit/written.ts";
import { quoted } from "../../../../read/yaml/split.ts";
import { readYaml } from "../../../../read/yaml/text.ts";
import { valueAt } from "../../../../read/yaml/tree.ts";

/** What a text says where a file may have a value of any shape, or why it cannot be read, as the command line says it. */
export type ReadFlow = { readonly value: Written } | { readonly message: Text };

/** Texts that stand without quotes inside `{ }` and `[ ]`, whatever comes behind them. */
const bare = /^[\p{L}\p{N}][\p{L}\p{N}./_>@-]*(?: [\p{L}\p{N}.()/_><=±–-]+)*$/u;

/** A value of any shape as one line of a file: `{ of: [ring-a, ring-b], dimension: diameter }`. */
export function flowText(written: Written): string {
  if (typeof written === "string") return bare.test(written) ? written : quotedFlow(written);
  if (isList(written)) return `[${written.map(flowText).join(", ")}]`;
  const entries = Object.entries(written).map(([key, value]) => `${flowText(key)}: ${flowText(value)}`);
  return entries.length === 0 ? "{}" : `{ ${entries.join(", ")} }`;
}

/** In quotes on one line, whatever signs it has. */
function quotedFlow(text: string): string {
  return quoted(text).replace(/[\u0000-\u001f\u007f\u0085\u2028\u2029]/g, (sign) =>
    sign === "\n" ? "\\n" : `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );
}

/** Reads what stands where a file may have a value of any shape: one line, or several as they would be written below a key. */
export function readFlow(text: string): ReadFlow {
  const lines = text.trim().replace(/\r\n?/g, "\n").split("\n");
  const whole = lines.length === 1 ? `value: ${lines[0] ?? ""}` : `value:\n${indented(lines)}`;
  const { root, findings } = readYaml("form", `${whole}\n`);
  const [trouble] = findings;
  if (trouble) return { message: trouble.message };
  const node = root && valueAt(root, "value");
  // A line that does not stand below the others begins a map of its own.
  if (!node || root.entries.length > 1) return { message: say`Unexpected indentation, expected one value` };
  return { value: writtenOf(node) };
}

function indented(lines: readonly string[]): string {
  return lines.map((line) => `  ${line}`).join("\n");
}
