import { escaped } from "../../../base/text/steering.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { yearWords } from "../../../base/date/year-words.ts";
import type { Point, Track } from "../../../show/scholars/line.ts";
import type { ScholarPage } from "../../../show/scholars/scholar.ts";
import { item, link, list, mark, ofRecord, part, pieces, words } from "../paper.ts";
import type { Paper } from "../paper.ts";

/** What a scholar holds, disputes or doubts and since when, in their own words where these are recorded. */
export function scholarHtml(paper: Paper, scholar: ScholarPage): string {
  const tracks = scholar.line.tracks.filter(({ claim }) => paper.places.has(claim));
  return [
    part(
      "Positions",
      list(
        tracks.map((one) => trackHtml(paper, one)),
        "positions",
      ),
    ),
    part("Arguments", list(scholar.steps.map(({ argument }) => item(paper, argument.id, argument.text)))),
    part(
      "Objections without a recorded reply",
      list(scholar.unanswered.map(({ argument }) => item(paper, argument.id, argument.text))),
      true,
    ),
  ].join("");
}

function trackHtml(paper: Paper, { claim, text, points }: Track): string {
  const taken = points.map((one) => pointHtml(paper, one)).join("");
  return `<li${ofRecord(paper, claim)}>${link(paper, claim, text)}${mark(paper, claim)}<ul>${taken}</ul></li>`;
}

function pointHtml(paper: Paper, point: Point): string {
  const { stance, year, words: own, lang, certainty, from, position } = point;
  const said =
    own === null
      ? ""
      : ` <q dir="auto"${lang === null ? "" : ` lang="${escaped(lang)}"`}>${escaped(own)}</q>`;
  const when = year === null ? "" : `, ${escaped(inEnglish(yearWords(year)))}`;
  const sure = certainty === null ? "" : ` (${words(paper, certainty)})`;
  const where =
    from.length === 0
      ? ""
      : ` <span class="quiet">${from.map((one) => pieces(paper, one)).join("; ")}</span>`;
  return `<li${ofRecord(paper, position)}>${escaped(stance)}${when}${sure}${said}${where}</li>`;
}
