import type { Piece } from "../../../show/pages/pieces.ts";
import type { NumberPage } from "../../../show/numbers/number.ts";
import { RecordLink } from "../../parts/link.tsx";
import { numberName, numberWords } from "../../words/shown/numbers.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";

interface Props {
  readonly number: NumberPage;
  readonly asOf: number | null;
}

/** How a number was computed: the method with its sources, the settings used, and the unit with where it comes from. */
export function Method({ number: { method, settings, unit }, asOf }: Props) {
  if (method === null) return null;
  return (
    <section className="method">
      <h2 className="label">{numberWords.settings}</h2>
      <p>
        <b>{inReadersWords(method.title)}.</b> {inReadersWords(method.doc)}
      </p>
      {method.guest !== null && (
        <p className="hash quiet">
          {numberWords.allow.allowed} {method.guest}
        </p>
      )}
      <dl>
        {settings.map((line) => (
          <div key={line.name}>
            <dt>{numberName(line.name)}</dt>
            <dd>
              <span dir="auto">{line.value}</span>{" "}
              <span className="quiet">
                {line.byDefault ? `(${numberWords.byDefault}) ` : ""}
                {inReadersWords(line.doc)}
              </span>
            </dd>
          </div>
        ))}
        {unit !== null && (
          <div>
            <dt>{numberWords.unit}</dt>
            <dd>
              {unit.name}, {unit.size}
              <Links word={numberWords.unitFrom} pieces={unit.from} asOf={asOf} />
              {unit.source !== null && `; ${unit.source}`}
              <Links word={numberWords.foundIn} pieces={unit.foundIn} asOf={asOf} />
            </dd>
          </div>
        )}
      </dl>
      <h3 className="quiet">{numberWords.methodSources}</h3>
      <ul>
        {method.sources.map((source) => (
          <li key={source}>{source}</li>
        ))}
      </ul>
    </section>
  );
}

interface LinksProps {
  readonly word: string;
  readonly pieces: readonly Piece[];
  readonly asOf: number | null;
}

function Links({ word, pieces, asOf }: LinksProps) {
  if (pieces.length === 0) return null;
  return (
    <>
      ; {word}{" "}
      {pieces.map((piece, place) => (
        <span key={piece.text}>
          {place > 0 && marks.comma}
          {piece.to === null ? (
            inReadersWords(piece.said ?? piece.text)
          ) : (
            <RecordLink id={piece.to} text={inReadersWords(piece.said ?? piece.text)} asOf={asOf} />
          )}
        </span>
      ))}
    </>
  );
}
