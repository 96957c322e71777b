import type { Id } from "../../../../base/finding.ts";
import { yearWords } from "../../../../base/date/year-words.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { byYear } from "../../../../base/order.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import { datedLine } from "../../../scholars/line.ts";
import type { Point, Track } from "../../../scholars/line.ts";
import { scholarLines } from "../../../scholars/scholars.ts";
import { takenIn } from "../../../scholars/taken.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { asideFor } from "../pieces/cites.ts";
import { claimInside, listed, words } from "../pieces/inlines.ts";
import { familyOf, stanceOn, stanceVerb, tookThese } from "./stances.ts";
import { translationNote } from "./translated.ts";

/** Who holds, rejects and doubts what, since when and in what words: for each scholar, in order of print. */
export function positionsSection(sight: Sight): readonly Block[] {
  const { model, graph } = sight;
  const all = takenIn(graph, model.judgement);
  const taken = all.filter(({ claim }) => sight.listed(claim));
  return scholarLines(model, all).lines.flatMap(({ id, name }) => {
    const own = taken.filter((one) => one.scholar === id);
    if (own.length === 0) return [];
    const stated = statedBy(sight, datedLine(model, own, null).tracks);
    const years = [...new Set(stated.map(({ point }) => point.year))];
    const head: Inlines = typeof name === "string" ? [words(name, null), "."] : [name, "."];
    return years.flatMap((year, place) =>
      inYear(
        sight,
        { id, head: place === 0 ? [{ is: "strong", of: head }, " "] : [] },
        stated.filter(({ point }) => point.year === year),
      ),
    );
  });
}

/** One position as it was taken: on what claim, and what it took the place of. */
interface Stated {
  readonly claim: Id;
  readonly point: Point;
  readonly changed: boolean;
  /** Rival claims that were held before. */
  readonly instead: readonly Id[];
}

/** All positions of a scholar in the order of years. */
function statedBy(sight: Sight, tracks: readonly Track[]): readonly Stated[] {
  const all = tracks.flatMap(({ claim, points }) => {
    const left = tracks.filter((one) => one.left?.claim === claim && sight.listed(one.claim));
    return points.map((point, place): Stated => {
      const before = points[place - 1];
      return {
        claim,
        point,
        changed: before !== undefined && before.stance !== point.stance,
        instead: place === 0 ? left.map((one) => one.claim) : [],
      };
    });
  });
  const told = all.filter(({ point }) => !sight.withheld(point.position));
  return told.toSorted((a, b) => byYear("last")(a.point.year, b.point.year));
}

/** As many positions of a year are one sentence; more are a list. */
const mostInSentence = 2;

/** What a scholar said in one year; in a sentence a verb that goes on is not said again. `head` stands before it. */
function inYear(
  sight: Sight,
  { id, head }: { readonly id: Id; readonly head: Inlines },
  stated: readonly Stated[],
): readonly Block[] {
  const year = stated[0]?.point.year ?? null;
  const many = stated.length > mostInSentence;
  let verb = "";
  const clauses = stated.map((one): Inlines => {
    const { point, changed } = one;
    const said: Inlines = [
      ...(changed ? [say`changed position and `] : []),
      stanceVerb(point.stance, year === null ? "now" : "then", false),
      ...(point.stance === "holds" && point.certainty !== null ? asIt(point.certainty) : []),
    ];
    const key = said
      .map((piece) => (typeof piece === "string" || "say" in piece ? inEnglish(piece) : ""))
      .join("");
    const goesOn = key === verb && !many;
    verb = key;
    return [...(goesOn ? [] : said), ...clause(sight, one)];
  });
  const dated: Inlines = year === null ? [] : [say`In ${yearWords(year)} `];
  const lead: Inlines = [...head, ...dated, ...familyOf(sight, id)];
  if (many)
    return [
      { is: "paragraph", of: [...lead, tookThese] },
      { is: "list", ordered: false, items: clauses.map((one) => [...one, "."]) },
    ];
  const all = clauses.flatMap((one, place): Inlines => (place === 0 ? one : ["; ", ...one]));
  return [{ is: "paragraph", of: [...lead, " ", ...all, "."] }];
}

function clause(sight: Sight, { claim, point, instead }: Stated): Inlines {
  const { stance, certainty, position } = point;
  return [
    ...stanceOn(sight, stance, claim),
    ...(instead.length === 0
      ? []
      : [say`, and no longer `, ...listed(instead.map((one) => claimInside(sight, one)))]),
    ...(stance === "holds" || certainty === null ? [] : calledIt(certainty)),
    ...inOwnWords(sight, point),
    ...asideFor(sight, position),
  ];
}

const certainties: Readonly<Record<string, readonly [as: Said, called: Said]>> = {
  certain: [say`as certain `, say`, calling this certain`],
  probable: [say`as probable `, say`, calling this probable`],
  possible: [say`as possible `, say`, calling this possible`],
  unlikely: [say`as unlikely `, say`, calling this unlikely`],
};

function asIt(certainty: string): Inlines {
  const [as] = certainties[certainty] ?? [];
  return as === undefined ? [] : [as];
}

function calledIt(certainty: string): Inlines {
  const [, called] = certainties[certainty] ?? [];
  return called === undefined ? [] : [called];
}

/** The scholar's own words with their language, and what they mean where the corpus has them translated. */
function inOwnWords(sight: Sight, { words: own, lang, position }: Point): Inlines {
  if (own === null) return [];
  const quoted = own.trim().replace(/(?<!\.)\.$/u, "");
  return [say`, in the words `, words(quoted, lang, true), ...translationNote(sight, position)];
}
