import { count, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import { examinationsPage } from "../../../plan/page.ts";
import type { Suggested } from "../../../plan/page.ts";
import { suggestions } from "../../../plan/wording.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { heading, listed, paragraph } from "../pieces/inlines.ts";
import { examinationBlocks } from "./examination.ts";

/** What to examine next in the order of what it would decide, and what the record itself suggests besides. */
export function nextSection(sight: Sight): readonly Block[] {
  const { model, plugins } = sight;
  const { plan } = examinationsPage(model, plugins, model.plan);
  if (plan === null) return [];
  const bears = (claims: readonly { readonly id: string }[]): boolean =>
    claims.some(({ id }) => sight.listed(id));
  const recorded = plan.recorded.filter(
    ({ outcomes }) =>
      sight.groups.length === 0 ||
      outcomes.every(({ claims }) => claims.length === 0) ||
      outcomes.some(({ claims }) => bears(claims)),
  );
  const suggested = plan.suggested.flatMap((one) => suggestedBlocks(one));
  if (recorded.length === 0 && suggested.length === 0) return [];
  return [
    ...(recorded.length === 0 ? [] : paragraph([[order], [nothingBooked]])),
    ...recorded.flatMap((one) => examinationBlocks(sight, one)),
    ...(suggested.length === 0
      ? []
      : [
          heading(2, [say`What the record itself suggests`]),
          ...paragraph([[say`Nobody has planned these looks or costed them.`]]),
          ...suggested,
        ]),
  ];
}

const order: Said = say`The examinations stand in the order of how many answers each can decide, then of how many claims it can change; of equals, what uses nothing up comes first, then what costs less.`;

const nothingBooked: Said = say`A consent that is named here is the beginning of the asking; local rules and licensed people decide what may be done.`;

/** Most things named of one suggestion. */
const mostNamed = 6;

function suggestedBlocks({ kind, lines }: Suggested): readonly Block[] {
  const things = [...new Map(lines.flatMap((one) => one.things).map((thing) => [thing.id, thing])).values()];
  if (things.length === 0) return [];
  const named = things.slice(0, mostNamed);
  const more = things.length - named.length;
  const all = listed([
    ...named.map(({ text }): Inlines => [text]),
    ...(more > 0 ? [[say`${count(more)} more`]] : []),
  ]);
  const { title, because } = suggestions[kind];
  return paragraph([[{ is: "emphasis", of: [title, "."] }], [because], [say`So it is with: `, ...all, "."]]);
}
