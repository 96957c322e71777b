import { useEffect, useRef, useState } from "react";
import type { Panel } from "../../../plugin.ts";
import type { ShownFigure } from "../../../show/numbers/figure.ts";
import { tablesOf } from "../../../show/numbers/panel-table.ts";
import { printed, numberWords } from "../../words/numbers.ts";
import { Drawn } from "./drawn.tsx";
import { saveFigure } from "./save.ts";

/** A figure: each panel drawn with its caption, all of it as tables too, and a button that saves it. */
export function Figure({
  shown: { figure, leftOut },
  id,
}: {
  readonly shown: ShownFigure;
  readonly id: string;
}) {
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
            {figure.panels.map((panel) => (
              <Tables key={panel.title} panel={panel} />
            ))}
          </details>
        </>
      )}
    </div>
  );
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
      <h3>{panel.title}</h3>
      {tablesOf(panel).map((table, place) => (
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
