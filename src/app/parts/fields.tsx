import { Fragment } from "react";
import type { FieldLine } from "../../show/pages/fields.ts";
import type { FieldRow } from "../../show/pages/pieces.ts";
import { inReadersWords } from "../words/reader/said.ts";
import { Pieces } from "./pieces.tsx";
import { fieldWord, languageName, methodName } from "../words/index.ts";

/** What a record says, field by field. */
export function FieldList({
  fields,
  asOf,
}: {
  readonly fields: readonly FieldLine[];
  readonly asOf: number | null;
}) {
  if (fields.length === 0) return null;
  return (
    <dl className="facts">
      {fields.map((field) => (
        <Fragment key={field.name}>
          <dt>{fieldWord(field.name)}</dt>
          <dd>
            {field.lines.map((line, place) => (
              <span className="line" key={place}>
                {line.label !== null && (
                  <span className="part">{inReadersWords(line.labelSaid ?? line.label)}: </span>
                )}
                <Pieces pieces={inWords(field.name, line)} asOf={asOf} />
              </span>
            ))}
          </dd>
        </Fragment>
      ))}
    </dl>
  );
}

/** A language by its name, a method by its title: what the files write as a code. */
function inWords(field: string, { pieces }: FieldRow): FieldRow["pieces"] {
  const word = field === "lang" ? languageName : field === "plugin" ? methodName : null;
  return word === null
    ? pieces
    : pieces.map((piece) => ({ text: word(piece.text), to: piece.to, lang: piece.lang }));
}
