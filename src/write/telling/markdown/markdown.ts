import { inEnglish } from "../../../base/text/said/english.ts";
import type { DrawnPlates } from "../drawn.ts";
import type { Made } from "../made.ts";
import { plainWords } from "../set/set-text.ts";
import type { SetBlock, SetHeading, SetInlines, SetText } from "../set/set-text.ts";
import { begun, escaped } from "./escape.ts";
import { cellOf, lineOf } from "./line.ts";
import { tableText } from "./table.ts";

/**
 * A text in CommonMark with the tables and notes that most readers of Markdown know (pandoc's `pipe_tables` and `footnotes`);
 * its figures are files beside it.
 */
export function markdownOf(set: SetText, name: string, drawn: DrawnPlates): readonly Made[] {
  const folder = `${name}-figures`;
  const figures = set.blocks.flatMap((block): readonly Made[] => {
    const one = block.is === "plate" ? drawn.get(block.number) : undefined;
    if (block.is !== "plate" || !one) return [];
    const content = one.svg ?? one.raster?.bytes;
    return content === undefined ? [] : [{ path: `${folder}/${fileOf(block.number, drawn)}`, content }];
  });
  const text = [
    `# ${escaped(inEnglish(set.title)).trim()}`,
    ...(set.authors.length > 0 ? [begun(escaped(set.authors.join(", ")))] : []),
    ...set.blocks.flatMap((block, place) => {
      const text = blockText(block, folder, drawn);
      return isListed(block) && isListed(set.blocks[place - 1]) ? ["<!-- -->", text] : [text];
    }),
    ...set.notes.map((note, place) => `[^${place + 1}]: ${lineOf(note)}`),
  ];
  return [{ path: `${name}.md`, content: `${text.filter((one) => one !== "").join("\n\n")}\n` }, ...figures];
}

function fileOf(number: number, drawn: DrawnPlates): string {
  const { svg = null, raster = null } = drawn.get(number) ?? {};
  if (svg !== null) return `figure-${number}.svg`;
  return `figure-${number}.${raster?.type === "jpeg" ? "jpg" : "png"}`;
}

function blockText(block: SetBlock, folder: string, drawn: DrawnPlates): string {
  switch (block.is) {
    case "heading":
      return `${block.apart ? "---\n\n" : ""}${"#".repeat(block.level + 1)} ${placed(block.anchor)}${cellOf(block.of)}`;
    case "paragraph":
      return lineOf(block.of);
    case "quotation":
      return `> ${lineOf(block.of)}`;
    case "caution":
      return `**Caution:** ${cellOf(block.of)}`;
    case "list":
      return block.items
        .map((item, place) => `${block.ordered ? `${place + 1}.` : "-"} ${lineOf(item)}`)
        .join("\n");
    case "terms":
      return block.rows
        .map(([term, value]) => `- ${strong([...term, { is: "text", text: ":" }])} ${cellOf(value)}`)
        .join("\n");
    case "table":
      return `${placed(block.anchor)}**Table ${block.number}.** ${cellOf(block.caption)}\n\n${tableText(block)}`;
    case "plate": {
      const caption = `${placed(block.anchor)}**Figure ${block.number}.** ${cellOf(block.caption)}`;
      const alt = escaped(inEnglish(block.alt)).trim();
      if (!drawn.has(block.number)) return `${caption} (${alt})`;
      // In one paragraph with its caption, so that what it shows is not printed as one.
      return `![${alt}](<${folder.replace(/[<>\\]/g, "")}/${fileOf(block.number, drawn)}>)\\\n${caption}`;
    }
    case "contents":
      return contentsText(block.entries);
    case "references":
      return block.entries.map((one) => lineOf([{ is: "runs", runs: one.runs }])).join("\n\n");
    case "computations":
      return block.entries
        .map(
          ({ anchor, title, method, key }) =>
            `- ${placed(anchor)}**${escaped(inEnglish(title)).trim()}**, ${escaped(method)}, \`${key}\``,
        )
        .join("\n");
    case "room":
      return Array.from({ length: block.lines }, () => "\\_".repeat(64)).join("\n\n");
  }
}

/** What is written as a list: two of them, one after the other, would be read as one. */
const isListed = (block: SetBlock | undefined): boolean =>
  block !== undefined && ["list", "terms", "contents", "computations"].includes(block.is);

const strong = (of: SetInlines): string => cellOf([{ is: "strong", of }]);

/** Where links lead to: an element, since Markdown has no sign of its own for it. */
const placed = (anchor: string): string => `<span id="${anchor}"></span>`;

function contentsText(entries: readonly SetHeading[]): string {
  let depth = 0;
  return entries
    .map(({ level, of, anchor }) => {
      depth = Math.min(level, depth + 1);
      return `${"  ".repeat(depth - 1)}- [${escaped(plainWords(of, inEnglish)).trim()}](#${anchor})`;
    })
    .join("\n");
}
