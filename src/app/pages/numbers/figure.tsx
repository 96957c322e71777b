import { useEffect, useRef, useState } from "react";
import type { Text } from "../../../base/text/said/said.ts";
import { worded } from "../../../base/text/said/worded.ts";
import type { Panel } from "../../../plugin.ts";
import type { ShownFigure } from "../../../show/numbers/figure.ts";
import { tablesOf } from "../../../show/numbers/panel-table.ts";
import { printed, numberWords } from "../../words/shown/numbers.ts";
import { apart } from "../../words/reader/figures.ts";
import { mirrored } from "../../words/reader/language.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { Drawn } from "./drawn.tsx";
import { saveFigure } from "./save.ts";

/** A figure: each panel drawn with its caption, all of it as tables too, and a button that saves it. */
export function Figure({
  shown: { figure: said, leftOut },
  id,
}: {
  readonly shown: ShownFigure;
  readonly id: string;
}) {
  const figure = worded(said, inDrawing);
  return (
    <div className="plate">
      {figure.panels.map((panel) => (
        <figure key={panel.title}>
          <Drawn title={`${figure.title}: ${panel.title}`} panel={panel} />
          <figcaption>{printed(panel.caption)}</figcaption>
        </figure>
      ))}
      {leftOut && <p className="quiet">{numberWords.panelsWithheld}</p>}
      {figure.panels.length > 0 && (
        <>
          <SaveButton onSave={() => saveFigure(figure, id)} />
          <details>
            <summary>
              <h2>{numberWords.asTable}</h2>
            </summary>
            {said.panels.map((panel, place) => (
              <Tables key={place} panel={panel} />
            ))}
          </details>
        </>
      )}
    </div>
  );
}

/** A drawing runs from left to right in any language: words that run the other way are kept together in it. */
function inDrawing(text: Text): string {
  return mirrored ? apart(inReadersWords(text)) : inReadersWords(text);
}

function SaveButton({ onSave }: { readonly onSave: () => Promise<void> }) {
  const [saved, setSaved] = useState(false);
  const here = useRef(true);
  useEffect(() => {
    here.current = true;
    return () => {
      here.current = false;
    };
  }, []);
  const save = (): void =>
    void onSave().then(() => {
      if (here.current) setSaved(true);
    });
  return (
    <p className="save">
      <button type="button" onClick={save}>
        {numberWords.save}
      </button>
      <output className="quiet">{saved && numberWords.saved}</output>
    </p>
  );
}

function Tables({ panel }: { readonly panel: Panel }) {
  return (
    <>
      <h3>{inReadersWords(panel.title)}</h3>
      {worded(tablesOf(panel), inReadersWords).map((table, place) => (
        <table className="ledger" key={`${table.title} ${place}`}>
          <caption>
            {table.title}
            {table.of !== null && ` (${numberWords.thinned(table.rows.length, table.of)})`}
          </caption>
          <thead>
            <tr>
              {table.head.map((head, at) => (
                <th scope="col" key={at}>
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {table.rows.map((row, at) => (
              <tr key={at}>
                {row.map((cell, column) => (
                  <td key={column} className="numeral" dir="auto">
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </>
  );
}
