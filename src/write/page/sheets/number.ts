import { escaped } from "../../../base/text/steering.ts";
import type { Id } from "../../../base/finding.ts";
import type { BearingLine } from "../../../show/numbers/bearing-lines.ts";
import type { EntryLine } from "../../../show/numbers/entries.ts";
import type { NumberPage } from "../../../show/numbers/number.ts";
import { link, list, mark, ofRecord, part, pieces, table, words } from "../paper.ts";
import type { Paper } from "../paper.ts";
import { bearingWords } from "../words.ts";

/** A computed number: what it says of which claim, its figure, its numbers, what it took, and where to be careful. */
export function numberHtml(paper: Paper, id: Id, number: NumberPage): string {
  const { method, cautions, entries, settings, status, why, figure } = number;
  const notComputed =
    status === "computed"
      ? ""
      : `<p class="now">There is no number: ${why === null ? escaped(status) : words(paper, why)}</p>`;
  const leftOut =
    figure?.leftOut === true
      ? `<p class="quiet">Panels that would show something withheld are left out.</p>`
      : "";
  const held = entries.withheld === 0 ? "" : `<p class="quiet">It read something withheld, too.</p>`;
  const left = entries.left.filter((one) => paper.places.has(one.id));
  return [
    notComputed,
    part("What it says of claims", list(number.bearings.map((one) => bearingHtml(paper, one))), true),
    part(
      "Figure",
      paper.figureOf(id) === ""
        ? ""
        : `<div class="drawing">${paper.figureOf(id)}</div>${captionsHtml(paper, number)}${leftOut}`,
      true,
    ),
    part(
      "Numbers",
      table(
        "Numbers",
        ["Name", "Value", "Interval", "What it is"],
        number.numbers.map(({ name, value, interval, doc }) => ({
          cells: [
            escaped(name),
            escaped(value),
            interval === null ? "" : words(paper, interval),
            words(paper, doc),
          ],
        })),
      ),
      true,
    ),
    part(
      "Cautions in these data",
      list(
        cautions.met.map((one) => `<li>${words(paper, one)}</li>`),
        "cautions",
      ),
      true,
    ),
    part(
      "Cautions of the method",
      list(
        cautions.general.map((one) => `<li>${words(paper, one)}</li>`),
        "cautions",
      ),
    ),
    method === null
      ? ""
      : part(
          "Method",
          `<p><b>${words(paper, method.title)}.</b> ${words(paper, method.doc)}</p>${list(
            method.sources.map((one) => `<li>${escaped(one)}</li>`),
            "sources",
          )}`,
        ),
    part(
      "Settings",
      table(
        "Settings",
        ["Name", "Value", "What it is"],
        settings.map(({ name, value, doc, byDefault }) => ({
          cells: [
            escaped(name),
            escaped(value) + (byDefault ? " (as the method has it)" : ""),
            words(paper, doc),
          ],
        })),
      ),
      true,
    ),
    part("What it took", entriesHtml(paper, "What it took", entries.taken) + held, true),
    part("What it left out", entriesHtml(paper, "What it left out", left), true),
  ].join("");
}

function captionsHtml(paper: Paper, { figure }: NumberPage): string {
  return (figure?.figure.panels ?? [])
    .map(({ caption }) => `<p class="quiet">${words(paper, caption)}</p>`)
    .join("");
}

function bearingHtml(paper: Paper, one: BearingLine): string {
  const says = one.says === null ? "" : `<span class="how">${bearingWords[one.says]}</span> `;
  const found = one.found.map(({ name, value }) => `${escaped(name)} ${words(paper, value)}`).join(", ");
  const asked = [
    ...(one.supportsWhen === null ? [] : [`support asks for ${escaped(one.supportsWhen)}`]),
    ...(one.disputesWhen === null ? [] : [`dispute asks for ${escaped(one.disputesWhen)}`]),
    ...(found === "" ? [] : [`found: ${found}`]),
  ].join("; ");
  return `<li${ofRecord(paper, one.claim)}>${says}${link(paper, one.claim, one.text)}${mark(paper, one.claim)} <span class="quiet">${asked}</span></li>`;
}

function entriesHtml(paper: Paper, name: string, lines: readonly EntryLine[]): string {
  const why = lines.some((one) => one.why !== null || one.beaten);
  return table(
    name,
    ["Reading", "As written", "In SI", "Source", ...(why ? ["Why"] : [])],
    lines.map((one) => ({
      cells: [
        link(paper, one.id, one.text),
        words(paper, one.written),
        escaped(one.inSI),
        one.source === null ? "" : pieces(paper, [one.source]),
        ...(why
          ? [one.why === null ? (one.beaten ? "an argument beats it" : "") : words(paper, one.why)]
          : []),
      ],
    })),
  );
}
