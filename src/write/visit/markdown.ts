import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Block, Field, FieldRow } from "../../show/desk/visit/blocks/block.ts";
import { begun, escaped } from "../telling/markdown/escape.ts";

/** A visit sheet as Markdown (CommonMark), to be printed or written into with any editor; earlier values are not in it. */
export function visitMarkdown(blocks: readonly Block[]): string {
  return `${blocks.map(inMarkdown).join("\n\n")}\n`;
}

const blank = "\\_".repeat(16);

function inMarkdown(block: Block): string {
  switch (block.is) {
    case "title":
      return `# ${plain(block.text)}\n\n${plain(block.lead)}`;
    case "heading":
      return `${block.apart ? "---\n\n" : ""}${"#".repeat(block.level)} ${plain(block.text)}`;
    case "text":
      return block.strong ? `**${plain(block.text)}**` : plain(block.text);
    case "terms":
      return block.rows.map(([name, value]) => `- ${plain(name)}: ${plain(value)}`).join("\n");
    case "list":
      return block.items.map((one) => `- ${plain(one)}`).join("\n");
    case "row":
      return rowText(block.row);
    case "room":
      return Array.from({ length: block.lines }, () => blank.repeat(4)).join("\n\n");
  }
}

function rowText({ name, says, fields }: FieldRow): string {
  const readings = fields.filter((one) => one.is === "figure");
  const others = fields.filter((one) => one.is !== "figure");
  return [
    `### ${plain(name)}`,
    ...(says.length > 0 ? [says.map(plain).join("; ")] : []),
    [
      ...(readings.length > 0
        ? [`- readings: ${readings.map(() => "\\_\\_\\_\\_\\_\\_\\_\\_").join("  ")}`]
        : []),
      ...others.map((one) => `- ${plain(one.label)}: ${lineOf(one)}`),
    ].join("\n"),
  ].join("\n\n");
}

/** A line to write on, or the choices with room for a tick. */
function lineOf({ is, choices, value }: Field): string {
  if (is === "choice") return choices.map((one) => `[ ] ${plain(one.text)}`).join("  ");
  return value === "" ? blank : plain(value);
}

/** Words as they are: what Markdown would read as its own signs is kept from it. */
function plain(text: Text): string {
  return begun(escaped(inEnglish(text)).trim());
}
