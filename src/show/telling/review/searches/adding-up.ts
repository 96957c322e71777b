import type { Id } from "../../../../base/finding.ts";
import { count, countInWords, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { SearchLine, SearchLog } from "../../../desk/literature/search-log.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import { paragraph, listed, words } from "../pieces/inlines.ts";
import type { Readings } from "./readings.ts";

/** Where the numbers of the log do not add up, and works of which it is not told what became of them. */
export function notAddingUp(log: SearchLog, readings: Readings): readonly Block[] {
  const { searches, flow } = log;
  const complete = searches.length > 0 && flow.uncounted === 0;
  return paragraph([
    ...searches.flatMap(within),
    flow.uncounted > 0 ? [withoutNumbers(flow.uncounted)] : [],
    complete ? beside(flow.kept, readings.works) : [],
    cited(readings, "not-found", say`Sought and not found: `),
    cited(readings, "to-read", say`Still to be read: `),
    secondHand(readings),
  ]);
}

/** What of one search is neither kept nor left out, or is counted more than once. */
function within({ where, found, screened, unaccounted }: SearchLine): readonly Inlines[] {
  const place = words(where, null, true);
  const more = found !== null && screened !== null ? screened - found : 0;
  return [
    ...(more > 0 ? [[say`More records were screened than were found in one search: `, place, "."]] : []),
    ...(unaccounted !== null && unaccounted > 0
      ? [[leftOver(unaccounted), ": ", place, "."]]
      : unaccounted !== null && unaccounted < 0
        ? [[say`The records kept and left out in one search come to more than were screened: `, place, "."]]
        : []),
  ];
}

function leftOver(n: number): Said {
  return n === 1
    ? say`The log does not tell what became of one record that was screened`
    : say`The log does not tell what became of ${countInWords(n)} records that were screened`;
}

function withoutNumbers(n: number): Said {
  return n === 1
    ? say`One search lacks a number, so that the sums are at least what is printed.`
    : say`There are ${countInWords(n)} searches that lack a number, so that the sums are at least what is printed.`;
}

/** What the searches kept beside what the bibliography has. */
function beside(kept: number, works: number): Inlines {
  if (kept === works) return [];
  const less = works - kept;
  if (less === 1)
    return [
      say`The bibliography has one work more than the searches kept; the log does not say how it came in.`,
    ];
  if (less > 0)
    return [
      say`The bibliography has ${count(less)} works more than the searches kept; the log does not say how they came in.`,
    ];
  return less === -1
    ? [
        say`The searches kept one record more than the bibliography has works; the log does not say what became of it.`,
      ]
    : [
        say`The searches kept ${count(-less)} records more than the bibliography has works; the log does not say what became of them.`,
      ];
}

function cited({ by }: Readings, status: "not-found" | "to-read", lead: Said): Inlines {
  const keys = by.get(status) ?? [];
  return keys.length === 0 ? [] : [lead, ...named(keys), "."];
}

/** Works of which records were taken though nobody says that they were read. */
function secondHand({ unread, recorded }: Readings): Inlines {
  if (!recorded || unread.length === 0) return [];
  return [
    say`Records were taken of the following, though it is not recorded that they were read: `,
    ...named(unread),
    ".",
  ];
}

/** So many works a sentence names; nobody reads on in a row of hundreds. */
const mostInSentence = 40;

/** Works in a row, the first of them by name where they are many. */
function named(keys: readonly Id[]): Inlines {
  const first = keys.length <= mostInSentence ? keys : keys.slice(0, mostInSentence);
  const works = first.map((id): Inlines => [{ is: "citing", manner: "sentence", cites: [{ id }] }]);
  const others = keys.length - first.length;
  if (others === 0) return listed(works);
  return listed([
    ...works,
    [
      others === 1
        ? say`one other work of the bibliography`
        : say`${count(others)} other works of the bibliography`,
    ],
  ]);
}
