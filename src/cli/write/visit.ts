import { existsSync, writeFileSync } from "node:fs";
import { nearest } from "../../base/nearest.ts";
import type { Model } from "../../build.ts";
import { askedOf } from "../../plan/visit/trips.ts";
import { placesOf } from "../../plan/visit/places.ts";
import type { VisitAsked } from "../../show/desk/visit/asked.ts";
import { visitBlocks } from "../../show/desk/visit/blocks/blocks.ts";
import { visitSheet } from "../../show/desk/visit/sheet/sheet.ts";
import { withheldIn } from "../../show/withhold.ts";
import { visitMarkdown } from "../../write/visit/markdown.ts";
import { visitPage } from "../../write/visit/page.ts";
import { evaluated } from "../evaluated.ts";
import { Stop } from "../fault.ts";

/** What the user asked of a sheet. */
export interface Writing {
  readonly to?: string;
  readonly examination?: string;
  readonly keeper?: string;
  readonly also?: readonly string[];
  readonly withValues?: boolean;
  readonly over?: boolean;
}

/** Writes the sheet of a visit into a file, and prints its path. */
export async function writeVisit(folder: string, options: Writing): Promise<void> {
  const { to } = options;
  const asked = askedIn(options);
  if (to === undefined)
    throw new Stop("Missing --to, expected the file to write: variorum write visit CORPUS --to PATH");
  if (!/\.(?:html|md)$/.test(to)) throw new Stop(`Unexpected name \`${to}\`, expected one in .html or .md`);
  if (existsSync(to) && options.over !== true)
    throw new Stop(`Unexpected file \`${to}\`, expected a name that is not taken, or --over`);
  const { checked, plugins } = await evaluated(folder, { plan: true });
  const { model } = checked;
  if (!model) throw new Stop(`Unreadable corpus \`${folder}\`, expected one that variorum check can read`);
  const sheet = visitSheet(model, asked, model.plan ? { plan: model.plan, plugins } : null);
  if (!sheet) throw new Stop(unknown(model, asked));
  const blocks = visitBlocks(sheet, { withValues: options.withValues === true });
  const text = to.endsWith(".md")
    ? visitMarkdown(blocks)
    : visitPage(blocks, { asked, corpus: sheet.corpus });
  try {
    writeFileSync(to, text);
  } catch {
    throw new Stop(`Unwritable file \`${to}\`, expected one that may be written`);
  }
  process.stdout.write(`${to}\n`);
}

function askedIn({ examination, keeper, also = [] }: Writing): VisitAsked {
  if (examination === undefined && keeper === undefined)
    throw new Stop("Missing --examination or --keeper, expected one of them");
  if (examination !== undefined && keeper !== undefined)
    throw new Stop("Unexpected --examination beside --keeper, expected one of them");
  if (keeper === undefined && also.length > 0)
    throw new Stop("Unexpected --also without --keeper, expected them together");
  return { examination: examination ?? null, keeper: keeper ?? null, also };
}

function unknown({ graph }: Model, { examination, keeper }: VisitAsked): string {
  const withheld = withheldIn(graph);
  const known =
    examination === null
      ? placesOf(
          graph,
          graph.list("artefacts").map((one) => one.id),
        ).flatMap((one) => askedOf(one) ?? [])
      : graph.list("examinations").flatMap(({ id }) => (withheld(id) ? [] : id));
  const names = [...new Set(known)];
  const near = nearest(examination ?? keeper ?? "", names);
  const hint = near.length > 0 ? near : names.slice(0, 5);
  const word = examination === null ? "keeper" : "examination";
  const expected =
    hint.length > 0 ? hint.map((one) => `\`${one}\``).join(" or ") : "one that the corpus names";
  return `Unknown ${word} \`${examination ?? keeper ?? ""}\`, expected ${expected}`;
}
