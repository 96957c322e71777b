import { plugins } from "../../../plugins/index.ts";
import { nearest } from "../../base/nearest.ts";
import { writtenOut } from "../../base/text/steering.ts";
import type { SourceFile } from "../../build.ts";
import { CannotWrite } from "../../host/edit-files.ts";
import { allow } from "../../host/permissions.ts";
import { pluginFilesIn } from "../../read/source-file.ts";
import type { PluginFile } from "../../read/source-file.ts";
import { Stop } from "../fault.ts";

/** How many lines of a plug-in are shown before it is allowed. */
const shownLines = 12;

/** Allows a plug-in of the corpus as its file is now, and says on standard error what was allowed. */
export function allowPlugin(folder: string, files: readonly SourceFile[], name: string): void {
  const found = pluginFilesIn(files);
  const file = found.find((one) => one.name === name);
  if (!file) throw new Stop(unknown(name, found));
  if (plugins.some((one) => one.id === name))
    throw new Stop(`Unexpected name \`${name}\`, which is a plug-in of the program's own, expected another`);
  try {
    allow(folder, file);
  } catch (error) {
    if (error instanceof CannotWrite) throw new Stop(error.message);
    throw error;
  }
  process.stderr.write(`${allowedText(file).join("\n")}\n`);
}

function unknown(name: string, found: readonly PluginFile[]): string {
  const names = found.map((one) => one.name);
  const near = nearest(name, names);
  const expected =
    names.length === 0
      ? "a corpus with a file in `plugins/`"
      : (near.length > 0 ? near : names).map((one) => `\`${one}\``).join(" or ");
  return `Unknown plug-in \`${name}\`, expected ${expected}`;
}

/** What was allowed: the name, the file with its hash and size, and how it begins. */
function allowedText({ name, file, hash, text }: PluginFile): readonly string[] {
  const lines = text.replace(/\r?\n$/, "").split(/\r?\n/);
  const bytes = new TextEncoder().encode(text).length;
  const more = lines.length - shownLines;
  return [
    `Allowed from now on, as long as the file stays as it is: the plug-in ${name}`,
    `  file     ${file}, ${bytes} bytes, ${lines.length} ${lines.length === 1 ? "line" : "lines"}`,
    `  SHA-256  ${hash}`,
    "  It runs in a sandbox, without network, files or clock. It begins:",
    ...lines.slice(0, shownLines).map((line) => `  | ${beginning(line)}`),
    ...(more > 0 ? [`  | … and ${more} more`] : []),
  ];
}

function beginning(line: string): string {
  return line.length > 120
    ? `${writtenOut(line.slice(0, 120))} … and ${line.length - 120} signs more`
    : writtenOut(line);
}
