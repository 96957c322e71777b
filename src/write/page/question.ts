import { escaped } from "../../base/text/steering.ts";
import type { Id } from "../../base/finding.ts";
import type { OutlineLine } from "../../show/pages/outline/outline.ts";
import type { OpenQuestion } from "../../show/telling/page/dispute.ts";
import { filmSvg } from "./film.ts";
import { anchorOf, isolated, link, list, mark, ofRecord, part, words } from "./paper.ts";
import type { Paper } from "./paper.ts";
import { holderHtml } from "./sheets/sheet.ts";
import { branchWords } from "./words.ts";

/** A question: its answers as they stand, with who holds them; its map; and what the answers rest on, as an outline. */
export function questionHtml(paper: Paper, question: OpenQuestion): string {
  const { id, text, answers, film, outline, exclusive } = question;
  const given = answers.map(({ claim, text: answer, holders }) => {
    const why = paper.dispute.courses.get(claim)?.said.at(-1) ?? "";
    const held = list(
      holders.map((one) => holderHtml(paper, one)),
      "holders",
    );
    return `<li${ofRecord(paper, claim)}><p class="answer">${link(paper, claim, answer)}</p><p class="why">${mark(paper, claim)} <span dir="ltr" data-w="${paper.places.get(claim) ?? ""}">${escaped(isolated(why))}</span></p>${held}</li>`;
  });
  const seen = new Set<Id>();
  const branches = list(
    outline.map((one) => branchHtml(paper, one, seen)),
    "outline",
  );
  const map = film === null ? "" : filmSvg(paper, film, `Map of the question: ${text}`);
  return [
    `<section class="page" id="${escaped(anchorOf(id))}"${ofRecord(paper, id)}>`,
    `<p class="kind">question</p><h2 tabindex="-1">${words(paper, text)}</h2>`,
    exclusive && answers.length > 1 ? `<p class="quiet">At most one of the answers is right.</p>` : "",
    answers.length === 0
      ? `<p>It has no answer yet.</p>`
      : `<ol class="answers">${given.join("\n")}</ol><p class="not-yet">Nothing in print answers it yet.</p>`,
    map === ""
      ? ""
      : `<section class="on-map"><h3>Map</h3><div class="map" data-x="${middleOf(film)}" role="region" tabindex="0" aria-label="Map, to be moved sideways">${map}</div></section>`,
    part("What the answers rest on", branches),
    "</section>",
  ].join("\n");
}

/** How far along the map its first answer has its middle, in px. */
function middleOf(film: OpenQuestion["film"]): number {
  const box = film?.scene.boxes.find(({ look }) => look.as === "answer");
  return box === undefined ? 0 : Math.round(box.x + box.width / 2);
}

/** A branch with what lies under it; a record that stands further up is not unfolded again. */
function branchHtml(paper: Paper, line: OutlineLine, seen: Set<Id>): string {
  const again = line.again || seen.has(line.id);
  seen.add(line.id);
  const how = branchWords[line.role];
  const role = how === "" ? "" : `<span class="how">${how}</span> `;
  const under = again ? [] : line.under.filter(({ to }) => paper.places.has(to));
  const name = `${role}${link(paper, line.to, line.text)}${mark(paper, line.id)}`;
  const told = again && line.under.length > 0 ? ` <span class="quiet">see above</span>` : "";
  const inside = under.map((one) => branchHtml(paper, one, seen));
  return `<li${ofRecord(paper, line.to)}>${name}${told}${inside.length === 0 ? "" : `<ul>${inside.join("\n")}</ul>`}</li>`;
}
