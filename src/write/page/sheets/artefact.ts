import { escaped } from "../../../base/text/steering.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Id } from "../../../base/finding.ts";
import type { ArtefactPage } from "../../../show/artefacts/artefact.ts";
import type { Dimension } from "../../../show/artefacts/dimensions.ts";
import type { OpenPicture } from "../../../show/telling/page/sheet.ts";
import { item, list, ofRecord, link, mark, part, pieces, table, words } from "../paper.ts";
import type { Paper } from "../paper.ts";

/** What is known of a thing beside its facts: its dimensions by source, what was seen on it, what befell it, its parts. */
export function artefactHtml(paper: Paper, artefact: ArtefactPage): string {
  const dimensions = artefact.dimensions.flatMap(({ thing, name, dimensions: own }) =>
    own.flatMap((one) => rowsOf(paper, one, thing === artefact.id ? "" : ` (${words(paper, name)})`)),
  );
  const events = artefact.events.map(
    ({ when, what, from }) =>
      `<li><span class="how">${words(paper, when)}</span> ${words(paper, what)}${from.length === 0 ? "" : ` <span class="quiet">${pieces(paper, from)}</span>`}</li>`,
  );
  const seen = artefact.observed.filter(({ id }) => paper.places.has(id));
  return [
    artefact.placeWithheld ? `<p class="quiet">Where it was found is withheld.</p>` : "",
    part("Part of", list(artefact.wholes.map(({ id, name }) => item(paper, id, name)))),
    part(
      "Parts",
      list(
        artefact.parts.map(({ id, name }) => item(paper, id, name)),
        "parts",
      ),
    ),
    part(
      "Dimensions",
      table("Dimensions", ["Dimension", "As written", "In SI", "After", "Measured in", "Beside"], dimensions),
    ),
    part(
      "Seen on it",
      list(
        seen.map(
          (one) =>
            `<li${ofRecord(paper, one.id)}>${link(paper, one.id, one.text)}${mark(paper, one.id)} <span class="quiet">${presence[one.present]}${words(paper, one.by)}</span></li>`,
        ),
      ),
    ),
    part("What befell it", list(events, "events"), true),
  ].join("");
}

const presence = {
  true: "",
  false: "looked for and not there, ",
  unclear: "looked for, cannot be told, ",
  "not-reported": "passed over in silence, ",
} as const;

function rowsOf(
  paper: Paper,
  { name, between, readings }: Dimension,
  of: string,
): readonly { readonly of: string; readonly cells: readonly string[] }[] {
  return readings.map((one) => {
    const state = one.state === "complete" ? "" : `, ${one.state}`;
    const apart = one.clashing ? "differs from another by more than its uncertainty" : "";
    const left = one.leftOut === null ? "" : words(paper, one.leftOut);
    return {
      of: ofRecord(paper, one.id),
      cells: [
        link(paper, one.id, between === null ? name : `${name}, ${between}`) + of,
        escaped(one.figure + state),
        escaped(one.si),
        words(paper, one.by),
        one.year === null ? "" : words(paper, one.year),
        [apart, left].filter((said) => said !== "").join("; "),
      ],
    };
  });
}

/** Published pictures with credit and licence: each stands once in the page, on its own sheet, and other sheets lead there. */
export function picturesHtml(paper: Paper, sheet: Id, pictures: readonly OpenPicture[]): string {
  const shown = pictures.filter(({ id }) => paper.places.has(id));
  const own = shown.find(({ id }) => id === sheet);
  if (own === undefined) return list(shown.map(({ id, name }) => item(paper, id, name)));
  const { id, name, credit, licence } = own;
  const taken = paper.pictures.get(id);
  if (taken === undefined) return "";
  const owed = [credit, licence].flatMap((one) => (one === null ? [] : [words(paper, one)])).join(", ");
  const { address, width, height } = taken;
  return `<figure><img src="${address}" width="${width}" height="${height}" alt="${escaped(inEnglish(name))}"><figcaption>${words(paper, name)}${owed === "" ? "" : `. ${owed}`}</figcaption></figure>`;
}
