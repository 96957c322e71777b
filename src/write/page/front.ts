import { escaped } from "../../base/text/steering.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { yearWords } from "../../base/date/year-words.ts";
import type { Id } from "../../base/finding.ts";
import { item, link, list, mark, ofRecord, part, standing, words } from "./paper.ts";
import type { Paper } from "./paper.ts";
import { kindWords } from "./words.ts";

/** The first page: whose dispute it is, the questions with their answers, and how it is to be read. */
export function frontHtml(paper: Paper): string {
  const { title, authors, licence, withholding, questions } = paper.dispute;
  const asked = questions.map(({ id, text, answers }) => {
    const given = answers.map((one) => item(paper, one.claim, one.text));
    return `<li${ofRecord(paper, id)}><p class="answer">${link(paper, id, text)}</p>${list(given)}</li>`;
  });
  return [
    `<section class="page" id="dispute"><h1 tabindex="-1">${words(paper, title)}</h1>`,
    authors.length === 0 ? "" : `<p class="authors">${words(paper, authors.join(", "))}</p>`,
    lensHtml(paper),
    `<ol class="questions">${asked.join("\n")}</ol>`,
    part("How to read it", readingHtml()),
    part(
      "What is not in it",
      list(
        withholding.map((one) => `<li>${words(paper, one)}</li>`),
        "plain",
      ),
    ),
    licence === null ? "" : part("Licence", `<p>${escaped(licence)}</p>`),
    "</section>",
  ].join("\n");
}

/** Under what the whole page is told: a year, a supposition, a trial. */
function lensHtml(paper: Paper): string {
  const { years, supposed, isTrial } = paper.dispute;
  const last = years.at(-1) ?? null;
  const told = [
    ...(last === null
      ? []
      : [
          `As of ${escaped(inEnglish(yearWords(last)))}: it tells the dispute on what was in print by the end of that year.`,
        ]),
    ...(supposed === null
      ? []
      : [
          `It takes as found what has not been found: that “${words(paper, supposed)}” came out as supposed. What follows is a supposition, not a result.`,
        ]),
    ...(isTrial
      ? [
          "It leaves out a part of the record, or takes other readings than the record prefers; it is a trial, not a result.",
        ]
      : []),
  ];
  return told.map((one) => `<p class="lens">${one}</p>`).join("");
}

function readingHtml(): string {
  return [
    `<p>Nothing here decides the dispute: what stands follows from what was recorded, and from nothing else.</p>`,
    `<dl class="key">`,
    `<div><dt>${standing("stands")}</dt><dd>it follows from what was recorded, and what speaks against it fails</dd></div>`,
    `<div><dt>${standing("open")}</dt><dd>a contradiction decides it that nothing recorded settles</dd></div>`,
    `<div><dt>${standing("falls")}</dt><dd>an argument against it stands, or it would follow if nothing spoke against what it leans on</dd></div>`,
    `<div><dt>${standing("unsupported")}</dt><dd>nothing is put under it, or only what is itself unsupported or refused</dd></div>`,
    `</dl>`,
  ].join("\n");
}

/** Everything of one kind, by name; sources by their reference. */
export function kindHtml(paper: Paper, name: string, ids: readonly Id[]): string {
  const items = ids.flatMap((id) => {
    const sheet = paper.dispute.sheets.get(id);
    return sheet === undefined ? [] : [item(paper, id, sheet.title)];
  });
  return `<section class="page" id="${name}"><h2 tabindex="-1">${kindWords[name] ?? name}</h2>${list(items, "index")}</section>`;
}

/** What there is to say about the record itself, by level. */
export function findingsHtml(paper: Paper): string {
  const { findings } = paper.dispute;
  const levels = (["error", "warning", "note"] as const).map((level) => {
    const own = findings.filter((one) => one.level === level);
    const items = own.map(({ message, about }) => {
      const to = about.filter(({ id }) => paper.places.has(id));
      const links = to.map(({ id, text }) => `${link(paper, id, text)}${mark(paper, id)}`).join("; ");
      return `<li>${words(paper, message)}${links === "" ? "" : `<span class="about">${links}</span>`}</li>`;
    });
    return part({ error: "Errors", warning: "Warnings", note: "Notes" }[level], list(items, "findings"));
  });
  const none = findings.length === 0 ? "<p>There is nothing to say about this record.</p>" : "";
  return `<section class="page" id="findings"><h2 tabindex="-1">Findings</h2><p class="quiet now">What the rules find in the record, as it is at the end.</p>${none}${levels.join("")}</section>`;
}
