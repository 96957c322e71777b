import { coded, row, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { Asked, Refusal } from "../kind.ts";

/** Widths of columns and pages that journals ask for, in mm. */
export const widths = ["76", "85", "90", "140", "163", "170", "190"] as const;
/** What a figure can be written as. */
export const fileFormats = ["svg", "pdf", "png"] as const;
const resolutions = ["300", "600", "1200"] as const;

/** A format of a figure by its ending. */
export type FileFormat = (typeof fileFormats)[number];

/** How the figures are to be written. */
export interface Order {
  readonly width: number;
  readonly formats: readonly FileFormat[];
  readonly dpi: number;
}

/** The order in what was asked for; `format` is by the name of the file. */
export function orderIn(asked: Asked, format: string): Order | Refusal {
  const width = chosen(asked["width"], widths, "85");
  const dpi = chosen(asked["dpi"], resolutions, "600");
  const formats = listIn(asked["format"]);
  const unknown = formats.find((one) => !isFormat(one));
  if (width === null)
    return { refused: say`Unknown width \`${String(asked["width"])}\`, expected ${oneOf(widths)} mm` };
  if (dpi === null)
    return { refused: say`Unknown resolution \`${String(asked["dpi"])}\`, expected ${oneOf(resolutions)}` };
  if (unknown !== undefined)
    return { refused: say`Unknown format \`${unknown}\`, expected ${oneOf(fileFormats)}` };
  const given = formats.length > 0 ? formats : [format];
  return {
    width: Number(width),
    dpi: Number(dpi),
    formats: fileFormats.filter((one) => given.includes(one)),
  };
}

const isFormat = (text: string): text is FileFormat => (fileFormats as readonly string[]).includes(text);
const oneOf = (all: readonly string[]): Said => say`${row(all.map(coded), "or")}`;

function chosen(given: Asked[string] | undefined, all: readonly string[], usual: string): string | null {
  if (given === undefined || given === false) return usual;
  return all.find((one) => one === given) ?? null;
}

/** What was asked for as a list. */
export function listIn(given: Asked[string] | undefined): readonly string[] {
  if (typeof given === "string") return given.split(/[\s,]+/).filter((one) => one !== "");
  return Array.isArray(given) ? given.filter((one): one is string => typeof one === "string") : [];
}
