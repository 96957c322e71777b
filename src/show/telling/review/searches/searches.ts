import { countInWords, say } from "../../../../base/text/said/said.ts";
import { searchLog } from "../../../desk/literature/search-log.ts";
import type { SearchLine, SearchLog } from "../../../desk/literature/search-log.ts";
import { dateWords } from "../../../pages/date-words.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { line, listed, paragraph, words } from "../pieces/inlines.ts";
import { flowTable } from "./flow.ts";
import { notAddingUp } from "./adding-up.ts";
import { readingsOf } from "./readings.ts";

/** How the literature was searched, with the counts that PRISMA 2020 asks for as far as the log has them. */
export function searchesSection(sight: Sight): readonly Block[] {
  const log = searchLog(sight.graph);
  const readings = readingsOf(sight);
  if (log.searches.length === 0 && !readings.recorded) return [];
  return [
    ...paragraph([opening(log), [statement, { is: "note", of: [prisma] }]]),
    ...(log.searches.length === 0 ? [] : [searchTable(log)]),
    flowTable(log, readings),
    ...notAddingUp(log, readings),
  ];
}

const statement = say`The search is reported following PRISMA 2020 where applicable.`;

const prisma = say`Page, M. J., McKenzie, J. E., Bossuyt, P. M., and others, 2021. The PRISMA 2020 statement: an updated guideline for reporting systematic reviews. BMJ 372: n71. The counts of its flow diagram are given as far as the log of the searches has them.`;

function opening({ searches, places }: SearchLog): Inlines {
  const days = searches.flatMap((one) => one.when ?? []);
  const [from, to] = [days[0], days.at(-1)];
  if (searches.length === 0) return [say`No log of the searches is recorded; what became of each work is.`];
  if (places.length === 1)
    return from === undefined
      ? [say`The literature was searched in one place.`]
      : [say`The literature was searched in one place, the last time on ${dateWords(to ?? from)}.`];
  return from === undefined
    ? [say`The literature was searched in ${countInWords(places.length)} places.`]
    : [
        say`The literature was searched in ${countInWords(places.length)} places, the last time on ${dateWords(to ?? from)}.`,
      ];
}

/** Every search as it was made, with its counts and their sums. */
function searchTable({ searches, flow }: SearchLog): Block {
  const figure = (n: number | null): Inlines => (n === null ? ["–"] : [String(n)]);
  const sum = searches.length > 1 ? [total(searches, flow)] : [];
  const someone = searches.some((one) => one.by.length > 0);
  return {
    is: "table",
    caption: [say`The searches as they were made. A dash stands where the log has no number.`],
    head: [
      say`Where`,
      say`Words searched`,
      say`When`,
      ...(someone ? [say`By`] : []),
      say`Found`,
      say`Screened`,
      say`Left out`,
      say`Kept`,
    ].map(line),
    rows: [
      ...searches.map((one): readonly Inlines[] => [
        [words(one.where, null)],
        [words(one.words, null)],
        one.when === null ? [] : [dateWords(one.when)],
        ...(someone ? [listed(one.by.map((who) => [who]))] : []),
        figure(one.found),
        figure(one.screened),
        figure(one.leftOut.reduce((all, { n }) => all + n, 0)),
        figure(one.kept),
      ]),
      ...sum.map((row) => [row[0] ?? [], [], [], ...(someone ? [[]] : []), ...row.slice(1)]),
    ],
    figures: [4, 5, 6, 7].map((column) => column - (someone ? 0 : 1)),
  };
}

function total(searches: readonly SearchLine[], flow: SearchLog["flow"]): readonly Inlines[] {
  const sum = (of: keyof Pick<SearchLine, "found" | "screened" | "kept">, n: number): Inlines => {
    const known = searches.every((one) => one[of] !== null);
    return known ? [String(n)] : [say`at least ${String(n)}`];
  };
  return [
    [{ is: "strong", of: [say`Together`] }],
    sum("found", flow.found),
    sum("screened", flow.screened),
    [String(flow.leftOut)],
    sum("kept", flow.kept),
  ];
}
