import { row, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Block, Inlines } from "../blocks/block.ts";
import type { Sight } from "../review/desk.ts";
import { heading, line, paragraph } from "../review/pieces/inlines.ts";
import type { Applied } from "./applied.ts";

type Terms = readonly (readonly [name: Inlines, value: Inlines])[];

/** The object, who is asked, what is to be done, when, and who asks. */
export function objectBlocks({ graph }: Sight, { look, things, examination }: Applied): readonly Block[] {
  const authors = graph.settings.authors.map((one) =>
    one.orcid === undefined ? one.name : say`${one.name} (ORCID ${one.orcid})`,
  );
  const told: readonly (readonly [Text, readonly Text[]])[] = [
    [say`Object`, things.map((one) => named(one))],
    [say`Kept at`, [...new Set(things.flatMap((one) => one.heldAt ?? []))]],
    [say`Keeper`, look.keepers],
    [say`Examination`, [look.method]],
    [
      say`Uses something up`,
      [examination.destructive ? say`yes: see amounts, risks and conditions` : say`no`],
    ],
    [say`Permission`, look.permits],
    [say`Cost`, look.cost === null ? [] : [look.cost]],
    [say`Asked ahead by`, look.leadTimes],
    [say`Applicants`, authors],
  ];
  const rows: Terms = told.flatMap(([name, texts]) =>
    texts.length === 0 ? [] : [[[name], texts.length === 1 ? texts : [say`${row(texts, "comma")}`]] as const],
  );
  return [
    { is: "terms", rows: [...rows, ...["Dates proposed", "Date and signature"].map(toFill)] },
    ...look.notes.flatMap((note) => paragraph([[say`The keeper says: `, note]])),
  ];
}

function toFill(name: string): readonly [Inlines, Inlines] {
  return [[name === "Dates proposed" ? say`Dates proposed` : say`Date and signature`], [blank]];
}

const blank = "\u2026".repeat(20);

/** A thing by name and its numbers: `silver bowl, inventory 12, excavation K-17`. */
function named({ text, numbers }: Applied["things"][number]): Text {
  const told = numbers.map(([register, number]) => `${register} ${number}`);
  return say`${row([text, ...told], "comma")}`;
}

/** What is taken and what may go wrong: for what uses something up, what a keeper will ask, each with room for the answer. */
export function conditionBlocks({ look, examination }: Applied): readonly Block[] {
  const gentler = look.gentler.map((one) => one.text);
  return [
    ...(examination.destructive
      ? [
          { is: "caution" as const, of: line(say`This examination uses something up.`) },
          ...(gentler.length > 0
            ? paragraph([
                [
                  say`Ways that use nothing up come first: ${row(gentler, "comma")}. What they showed, or why they cannot answer the question, is to be said here before anything is taken.`,
                ],
              ])
            : []),
          ...look.asks.flatMap((one): readonly Block[] => [heading(2, [one]), { is: "room", lines: 2 }]),
        ]
      : paragraph([line(say`Nothing is taken from the object and nothing is put on it.`)])),
    ...paragraph([line(say`How the object is handled, lit and supported, and what stops the work:`)]),
    { is: "room", lines: 3 },
    ...look.cautions.map((one): Block => ({ is: "caution", of: [one] })),
    {
      is: "caution",
      of: line(
        say`Nothing here is leave to do anything: the keeper's rules, the law of the place and licensed people decide.`,
      ),
    },
  ];
}
