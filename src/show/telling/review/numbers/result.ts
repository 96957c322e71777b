import { inEnglish } from "../../../../base/text/said/english.ts";
import { paragraph as inOne } from "../../../../base/text/said/paragraph.ts";
import { count, first, say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import type { Derived } from "../../../../derive/derived/derived.ts";
import { notComputedWords } from "../../../../judge/explain/sentence.ts";
import type { DerivationRecord } from "../../../../link/graph.ts";
import type { Plugin } from "../../../../plugin.ts";
import { bearingLines } from "../../../numbers/bearing-lines.ts";
import type { BearingLine } from "../../../numbers/bearing-lines.ts";
import { entriesOf } from "../../../numbers/entries.ts";
import { figureOf } from "../../../numbers/figure.ts";
import { looksAt } from "../../../numbers/looks.ts";
import { cautionsOf, sentenceOf } from "../../../numbers/number.ts";
import { titleOf } from "../../../numbers/value.ts";
import { whyWords } from "../../../numbers/why.ts";
import { shownFindings } from "../../../withhold.ts";
import { beatenSaid } from "../../figures/captions/beaten.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import { numberAnchor } from "../answers/result.ts";
import type { Sight } from "../desk.ts";
import { claimInside, heading, paragraph, sentences, words } from "../pieces/inlines.ts";
import { plainNames, printed } from "../pieces/printed.ts";

/** One computed number: what came of it and what it says, its figure, and what is to be careful about in these data. */
export function resultBlocks(
  sight: Sight,
  record: DerivationRecord,
  plugin: Plugin | undefined,
): readonly Block[] {
  const { graph, model } = sight;
  const derived = model.derivations.byId.get(record.id);
  if (derived === undefined) return [];
  const title = record.values.short ?? titleOf(graph, record);
  const told = sentenceOf(graph, derived, plugin);
  const { text } = record.values;
  const bearings = bearingLines(graph, model.judgement, record, derived, plugin).filter(({ claim }) =>
    sight.listed(claim),
  );
  return [
    heading(
      3,
      [typeof title === "string" ? words(upper(title), sight.language) : first(title)],
      numberAnchor(record.id),
    ),
    ...paragraph([
      text === undefined || text === title ? [] : [words(ended(text), sight.language)],
      ...(told === null ? noNumber(sight, derived) : [[printed(derived, told)]]),
      takenAndLeft(sight, derived),
      ...bearings.flatMap((one) => bearingSentence(sight, derived, one)),
      ...looked(sight, record, derived),
    ]),
    ...plate(sight, derived, plugin),
    ...careful(sight, record, derived, plugin),
  ];
}

const upper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const ended = (text: string): string => (/[.!?…。]$/u.test(text.trim()) ? text.trim() : `${text.trim()}.`);

function noNumber({ graph }: Sight, derived: Derived): readonly Inlines[] {
  const told = whyWords(graph, derived);
  // What names an input by its name in the file tells the compiler of the corpus something, and the reader nothing.
  const plain = told === null || inEnglish(told).includes("`") ? null : told;
  const why = plain === null ? null : typeof plain === "string" ? upper(plain) : first(plain);
  return [
    [first(notComputedWords(derived.status, say`the number`))],
    why === null ? [] : /[.!?]$/u.test(inEnglish(why)) ? [why] : [why, "."],
  ];
}

/** How many readings entered, and how many were left out for what reasons. */
function takenAndLeft({ graph, model }: Sight, derived: Derived): Inlines {
  const { left } = entriesOf(graph, model.judgement, derived);
  const reasons = new Map<string, { readonly why: Text; n: number }>();
  for (const { why } of left) {
    if (why === null) continue;
    const known = reasons.get(inEnglish(why)) ?? { why, n: 0 };
    known.n++;
    reasons.set(inEnglish(why), known);
  }
  if (reasons.size === 0) return [];
  const told = [...reasons.values()].flatMap(({ why, n }, place): Inlines => [
    ...(place === 0 ? [] : ["; "]),
    say`${why} (${String(n)})`,
  ]);
  return [say`Left out, with how many of each: `, ...told, "."];
}

const says: Readonly<Record<NonNullable<BearingLine["says"]>, Said>> = {
  supports: say`It supports the claim `,
  disputes: say`It speaks against the claim `,
  inconclusive: say`It neither supports nor disputes the claim `,
};

/** What a number says of a claim, and what it was asked. */
function bearingSentence(sight: Sight, { status }: Derived, one: BearingLine): readonly Inlines[] {
  if (one.says === null || status !== "computed") return [];
  const asked = [
    ...(one.supportsWhen === null ? [] : [say`support asks for ${plainNames(one.supportsWhen)}`]),
    ...(one.disputesWhen === null ? [] : [say`dispute asks for ${plainNames(one.disputesWhen)}`]),
  ].flatMap((text, place): Inlines => (place === 0 ? [text] : ["; ", text]));
  const large: Inlines = one.largeP
    ? [say`A large p was asked to support it, which it never does: it may come of too few data.`]
    : [];
  return [
    [
      says[one.says],
      ...claimInside(sight, one.claim),
      ...(asked.length === 0 ? [] : [" (", ...asked, ")"]),
      ".",
    ],
    large,
  ];
}

/** How often one claim was tested, where it was more than once. */
function looked({ model, plugins }: Sight, record: DerivationRecord, derived: Derived): readonly Inlines[] {
  // Where the method tells so itself, twice would be two numbers for one thing.
  if (Object.hasOwn(derived.numbers, "p-adjusted")) return [];
  return looksAt(model, plugins, record).map(({ times, adjusted }): Inlines =>
    adjusted === null
      ? [say`The claim was tested ${count(times)} times by this method.`]
      : [
          say`The claim was tested ${count(times)} times by this method; for all these looks together `,
          printed(derived, say`${"p"} = ${adjusted}`),
          " (Holm 1979).",
        ],
  );
}

function plate({ graph }: Sight, derived: Derived, plugin: Plugin | undefined): readonly Block[] {
  const drawn = figureOf(graph, derived, plugin);
  if (drawn === null || drawn.figure.panels.length === 0) return [];
  const { figure, leftOut } = drawn;
  const captions = inOne(figure.panels.map((panel) => panel.caption));
  const note: Inlines = leftOut ? [" ", say`Panels that would show something withheld are left out.`] : [];
  return [
    {
      is: "plate",
      picture: { is: "computed", derivation: derived.id, figure },
      caption: [figure.title, ". ", printed(derived, captions), ...note],
      alt: captions,
    },
  ];
}

const depends: readonly string[] = ["verdict-depends-on-disputed-measurement", "verdict-depends-on-one"];

/** What was met in these data, and what would turn the verdict. */
function careful(
  sight: Sight,
  { id }: DerivationRecord,
  derived: Derived,
  plugin: Plugin | undefined,
): readonly Block[] {
  const met = cautionsOf(derived, plugin).met.map((text): Inlines => [text]);
  const turns = shownFindings(sight.graph, sight.findings)
    .filter(({ rule, about }) => depends.includes(rule) && about[0] === id)
    .map(({ message }): Inlines => [message]);
  const beaten = beatenSaid(sight.model, derived);
  const all = [...met, ...turns, beaten === null ? [] : [beaten]].filter((one) => one.length > 0);
  return all.length === 0 ? [] : [{ is: "caution", of: sentences(all) }];
}
