import { escaped } from "../../../base/text/steering.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { yearWords } from "../../../base/date/year-words.ts";
import { explainedTitles } from "../../../show/pages/explained.ts";
import type { ExplainedBlock } from "../../../show/pages/explained.ts";
import type { FieldLine } from "../../../show/pages/fields.ts";
import type { Tie } from "../../../show/pages/ties.ts";
import type { Holder } from "../../../show/pages/question.ts";
import type { OpenSheet } from "../../../show/telling/page/sheet.ts";
import { fieldName } from "../../../read/grammar/field-words.ts";
import { artefactHtml, picturesHtml } from "./artefact.ts";
import { numberHtml } from "./number.ts";
import { anchorOf, isolated, item, link, list, mark, ofRecord, part, pieces, words } from "../paper.ts";
import type { Paper } from "../paper.ts";
import { scholarHtml } from "./scholar.ts";
import { footingWords, roleWords, saysWords, tieWords } from "../words.ts";

/** The sheet of one record: what it is, how it stands and why, what it says, what it rests on and what rests on it. */
export function sheetHtml(paper: Paper, sheet: OpenSheet): string {
  const { id, footing, number, artefact, scholar } = sheet;
  const reference = paper.references.get(id);
  const fields = artefact === null ? sheet.fields : [...artefact.facts, ...artefact.access];
  return [
    `<section class="page" id="${escaped(anchorOf(id))}"${ofRecord(paper, id)}>`,
    `<p class="kind">${words(paper, sheet.kindSaid)}</p><h2 tabindex="-1">${words(paper, sheet.title)}</h2>`,
    reference === undefined ? "" : `<p class="reference" dir="auto">${reference}</p>`,
    saidHtml(paper, sheet),
    footing === null || footing === "observed" ? "" : `<p class="quiet">${footingWords[footing] ?? ""}</p>`,
    part(
      "Who holds it",
      list(
        sheet.holders.map((one) => holderHtml(paper, one)),
        "holders",
      ),
    ),
    number === null ? "" : numberHtml(paper, id, number),
    explainedHtml(paper, sheet.explained),
    part(saysWords[sheet.kind] ?? "What it says", fieldsHtml(paper, fields)),
    artefact === null ? "" : artefactHtml(paper, artefact),
    scholar === null ? "" : scholarHtml(paper, scholar),
    part("Pictures", picturesHtml(paper, id, sheet.pictures)),
    part(
      "It would not stand without",
      list(sheet.restsOn.map((one) => `<li>${pieces(paper, [one])}</li>`)),
      true,
    ),
    part("What it rests on", tiesHtml(paper, sheet, "below")),
    part(aboveTitle(sheet, paper), tiesHtml(paper, sheet, "above")),
    part(
      "Findings about it",
      list(
        sheet.findings.map((one) => `<li>${words(paper, one.message)}</li>`),
        "findings",
      ),
      true,
    ),
    "</section>",
  ]
    .filter((one) => one !== "")
    .join("\n");
}

/** The standing and why it is so, in the year that is looked at. */
function saidHtml(paper: Paper, { id }: OpenSheet): string {
  const said = paper.dispute.courses.get(id)?.said ?? [];
  const line = mark(paper, id);
  const place = paper.places.get(id);
  if (line === "" && said.every((one) => one === "")) return "";
  return `<p class="why">${line} <span dir="ltr" data-w="${place ?? ""}">${escaped(isolated(said.at(-1) ?? ""))}</span></p>`;
}

/** Who holds an answer, from when until when; what is of a later year is hidden in an earlier one. */
export function holderHtml(paper: Paper, { scholar, name, since, until }: Holder): string {
  const year = (one: number): string => escaped(inEnglish(yearWords(one)));
  const from = since === null ? "" : `, since ${year(since)}`;
  const to = until === null ? "" : `<span data-since="${until}">, until ${year(until)}</span>`;
  const at = since === null ? ofRecord(paper, scholar) : ` data-since="${since}"`;
  return `<li${at}>${link(paper, scholar, name)}${from}${to}</li>`;
}

function explainedHtml(paper: Paper, blocks: readonly ExplainedBlock[]): string {
  return blocks
    .map(({ kind, lead, lines }, at) => {
      const again = blocks[at - 1]?.kind === kind;
      const title = again ? "" : `<h3>${words(paper, explainedTitles[kind])}</h3>`;
      const items = lines.map((one) => {
        const role = roleWords[one.role] === "" ? "" : `<span class="how">${roleWords[one.role]}</span> `;
        const said = one.said === null ? "" : ` <span class="quiet">${words(paper, one.said)}</span>`;
        return `<li class="in-${Math.min(4, one.depth)}">${role}${pieces(paper, one.pieces)}${said}</li>`;
      });
      const led = lead === null ? "" : `<p>${words(paper, lead)}</p>`;
      return `<section class="now">${title}${led}${list(items, "reasons")}</section>`;
    })
    .join("\n");
}

/** Fields with their names. */
export function fieldsHtml(paper: Paper, fields: readonly FieldLine[]): string {
  if (fields.length === 0) return "";
  const rows = fields.map(({ name, lines }) => {
    const values = lines.map(({ label, labelSaid, pieces: said }) => {
      const called = label === null ? "" : `<span class="how">${words(paper, labelSaid ?? label)}</span> `;
      return `<dd>${called}${pieces(paper, said)}</dd>`;
    });
    return `<div><dt>${words(paper, fieldName(name))}</dt>${values.join("")}</div>`;
  });
  return `<dl>${rows.join("\n")}</dl>`;
}

/** Ties that a part of the sheet of its own tells already, by what the sheet is of. */
function toldBeside({ number, artefact, scholar }: OpenSheet): readonly Tie["how"][] {
  if (artefact !== null) return ["seen or measured", "part", "whole"];
  if (number !== null) return ["computed on"];
  return scholar === null ? [] : ["position"];
}

function tiesHtml(paper: Paper, sheet: OpenSheet, side: "below" | "above"): string {
  const told = side === "above" && sheet.number !== null ? [] : toldBeside(sheet);
  const kinds: readonly (string | undefined)[] = sheet.scholar === null ? [] : ["position", "argument"];
  const shown = sheet[side].filter(
    ({ id, how }) =>
      paper.places.has(id) && !told.includes(how) && !kinds.includes(paper.dispute.sheets.get(id)?.kind),
  );
  const called = ({ how }: Tie): string =>
    how === "says" && side === "above" ? "" : tieWords[how][side === "below" ? 0 : 1];
  return list(shown.map((one) => item(paper, one.id, one.text, called(one))));
}

/** What stands above a scholar, a source or a passage is recorded of it, and does not rest on it. */
function aboveTitle({ kind, artefact, scholar, id }: OpenSheet, { dispute }: Paper): string {
  if (scholar !== null) return "What else is recorded of them";
  if (kind === "passage" || dispute.sources.some((one) => one.id === id)) return "What is recorded from it";
  return artefact === null ? "What rests on it" : "What else is tied to it";
}
