import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Linked } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { shownUnder } from "../../../withhold.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { words } from "../pieces/inlines.ts";

/** The published pictures of things; none that is withheld, or that shows something withheld besides. */
export function pictureBlocks(sight: Sight, things: readonly Id[]): readonly Block[] {
  const shown = shownUnder(sight.model);
  return sight.graph
    .list("images")
    .filter(
      ({ id, values }) =>
        values.publish === true &&
        shown(id) &&
        !values.of.some(sight.withheld) &&
        things.includes(values.of[0] ?? ""),
    )
    .map((image): Block => {
      const { file, credit = null } = image.values;
      return {
        is: "plate",
        picture: { is: "image", file, credit },
        caption: captionOf(sight, image),
        alt: altOf(sight, image),
      };
    });
}

function altOf({ graph }: Sight, { id, values }: Linked<"images">): Said {
  const what = labelText(graph, id);
  return values.scale === undefined ? say`A ${what}.` : say`A ${what}, at a scale of ${values.scale}.`;
}

function captionOf(sight: Sight, { id, values }: Linked<"images">): Inlines {
  const label = labelText(sight.graph, id);
  const { scale, credit, licence, "made-by": maker } = values;
  const told: readonly (Said | null)[] = [
    scale === undefined ? null : say`Scale ${scale}.`,
    maker === undefined ? null : say`Made by ${maker}.`,
    credit === undefined ? null : say`Credit: ${credit}.`,
    licence === undefined ? null : say`Licence: ${licence}.`,
  ];
  const name: Inlines =
    typeof label === "string" ? [words(label, sight.language)] : [{ ...label, first: true }];
  return [...name, ".", ...told.flatMap((one): Inlines => (one === null ? [] : [" ", one]))];
}
