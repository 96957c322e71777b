import type { Finding, Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Bench } from "../../../derive/choices.ts";
import { labelText } from "../../../link/names/label.ts";
import { artefactPage } from "../../artefacts/artefact.ts";
import type { ArtefactPage } from "../../artefacts/artefact.ts";
import { numberPage } from "../../numbers/number.ts";
import type { NumberPage } from "../../numbers/number.ts";
import type { FieldLine } from "../../pages/fields.ts";
import { words } from "../../pages/pieces.ts";
import type { Piece } from "../../pages/pieces.ts";
import { sheetOf } from "../../pages/sheet.ts";
import type { Sheet } from "../../pages/sheet.ts";
import type { Reported } from "../../report/report.ts";
import { scholarPage } from "../../scholars/scholar.ts";
import type { ScholarPage } from "../../scholars/scholar.ts";
import type { Plugin } from "../../../plugin.ts";
import { picturesFor } from "./open.ts";

/** A picture that goes with the page: its file below the corpus, and to whom it is owed. */
export interface OpenPicture {
  readonly id: Id;
  readonly name: Text;
  readonly file: string;
  readonly credit: string | null;
  readonly licence: string | null;
}

/** A sheet as anybody may read it, with what its kind has beside. */
export interface OpenSheet extends Sheet {
  readonly number: NumberPage | null;
  readonly artefact: ArtefactPage | null;
  readonly scholar: ScholarPage | null;
  readonly pictures: readonly OpenPicture[];
}

/** What sheets are made from. */
export interface SheetDesk {
  readonly model: Reported;
  readonly findings: readonly Finding[];
  readonly files: ReadonlyMap<string, string>;
  readonly plugins: readonly Plugin[];
  readonly memo: Bench["memo"];
}

/** Fields that are the compilers' own affair, or said by the picture itself. */
const ownAffair: readonly string[] = ["entered by", "checked by", "note", "publish", "file"];

/** The sheet of a record without what is the compilers' own; null where there is none. */
export function openSheet(desk: SheetDesk, id: Id): OpenSheet | null {
  const { model, findings, files, plugins, memo } = desk;
  const sheet = sheetOf(model, findings, files, id);
  if (sheet === null) return null;
  const open = openerOf(model);
  const artefact = artefactPage(model, id);
  return {
    ...sheet,
    title: model.graph.records.get(id)?.list === "images" ? labelText(model.graph, id) : sheet.title,
    fields: openFields(sheet.fields, open),
    restsOn: sheet.restsOn.map(open),
    number: numberPage(model, plugins, memo, id),
    artefact: artefact && {
      ...artefact,
      facts: openFields(artefact.facts, open),
      access: openFields(artefact.access, open),
    },
    scholar: scholarPage(model, findings, files, id),
    pictures: picturesShown(model, id),
  };
}

function openFields(fields: readonly FieldLine[], open: (piece: Piece) => Piece): readonly FieldLine[] {
  return fields
    .filter(({ name }) => !ownAffair.includes(name))
    .map(({ name, lines }) => ({
      name,
      lines: lines
        .filter(({ label }) => label !== "note")
        .map((row) => ({ ...row, pieces: row.pieces.map(open) })),
    }))
    .filter(({ lines }) => lines.length > 0);
}

/** Puts another word for the name of a picture that may not be published. */
function openerOf(model: Reported): (piece: Piece) => Piece {
  const published = picturesFor(model);
  return (piece) =>
    piece.to !== null && model.graph.records.get(piece.to)?.list === "images" && !published(piece.to)
      ? words(say`something withheld`)
      : piece;
}

function picturesShown(model: Reported, id: Id): readonly OpenPicture[] {
  const published = picturesFor(model);
  return model.graph.list("images").flatMap(({ id: image, values }) => {
    if (!published(image) || !model.judgement.counts(image)) return [];
    if (image !== id && !values.of.includes(id)) return [];
    const { file, credit = null, licence = null } = values;
    return [{ id: image, name: labelText(model.graph, image), file, credit, licence }];
  });
}
