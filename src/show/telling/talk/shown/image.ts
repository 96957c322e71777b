import type { Id } from "../../../../base/finding.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import { withheldIn } from "../../../withhold.ts";
import { leftOut, remark } from "./setting.ts";
import type { Setting, Told } from "./setting.ts";

/** A picture that may be published, with its credit line; of any other only that it is left out. */
export function imageTold({ model }: Setting, id: Id): Told {
  const { graph } = model;
  const record = graph.records.get(id);
  const without = leftOut(model, id);
  if (without !== null) return { parts: [without], about: [] };
  if (record?.list !== "images") return { parts: [], about: [] };
  const { file, of, publish, credit, licence } = record.values;
  const withheld = withheldIn(graph);
  if (of.some(withheld)) return { parts: [remark(say`Something here is withheld.`, "left-out")], about: [] };
  if (publish !== true)
    return { parts: [remark(say`A picture is left out: it is not for publication.`, "left-out")], about: [] };
  const line = [credit, licence].filter((one) => one !== undefined);
  const name = labelText(graph, id);
  const things = row(
    of.map((one) => labelText(graph, one)),
    "comma",
  );
  return {
    parts: [
      {
        is: "pictured",
        of: [id],
        picture: { is: "image", file, credit: credit ?? null },
        alt: record.values.short === undefined ? name : say`${record.values.short}: ${things}`,
        beside: line.length === 0 ? [] : [remark(say`${row(line, "comma")}`, "credit")],
      },
    ],
    about: [id],
  };
}
