import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import { shownUnder, withheldIn } from "../../../withhold.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Captioned, FigureDesk } from "../desk.ts";
import { joined } from "./credits.ts";

/** A picture file of the corpus with a caption; null where it may not be published, or shows something withheld. */
export function imageFigure({ model }: FigureDesk, id: Id): Captioned | null {
  const { graph } = model;
  const record = graph.records.get(id);
  if (record?.list !== "images" || record.values.publish !== true || !shownUnder(model)(id)) return null;
  const { of, file, scale, credit, licence, kind, from, "made-by": maker } = record.values;
  const withheld = withheldIn(graph);
  if (of.some(withheld)) return null;
  const title = labelText(graph, id);
  const cites = (from ?? []).flatMap(({ key }) => {
    const [source] = graph.records.get(key)?.list === "passages" ? graph.provenance(key).sources : [key];
    return source !== undefined && graph.sources.has(source) && !withheld(source) && !withheld(key)
      ? [{ id: source }]
      : [];
  });
  const told: readonly (Text | null)[] = [
    scale === undefined ? null : say`Scale of the original: ${scale}.`,
    maker === undefined ? null : say`Made by ${maker}.`,
    credit === undefined ? null : say`Credit: ${credit}.`,
    licence === undefined ? null : say`Licence: ${licence}.`,
  ];
  return {
    title,
    picture: { is: "image", file, credit: credit ?? null },
    alt: kind === undefined ? title : say`${title} (${kind}).`,
    caption: joined([
      [{ is: "strong", of: [title, "."] }],
      ...told.map((one): Inlines => (one === null ? [] : [one])),
      cites.length === 0 ? [] : [say`After `, { is: "citing", manner: "sentence", cites }, "."],
    ]),
    cautions: [],
    computation: null,
  };
}
