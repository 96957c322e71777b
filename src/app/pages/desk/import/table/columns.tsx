import type { Meaning } from "../../../../../show/desk/grid/columns/meaning.ts";
import type { TablePage } from "../../../../../show/desk/import/table/told/page.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { tableWords as words } from "../../../../words/recording/tables.ts";
import { MeaningOf } from "./meaning.tsx";

interface Props {
  readonly page: TablePage;
  readonly onMean: (column: number, meaning: Meaning) => void;
}

/** The columns of a table, one in a row: its head, what it is taken for and why, and its first cells. */
export function Columns({ page, onMean }: Props) {
  return (
    <section>
      <h3 className="label">{words.columns}</h3>
      <p className="quiet">{words.columnsWhy}</p>
      <table className="matching">
        <thead>
          <tr>
            <th scope="col">{words.column}</th>
            <th scope="col">{words.isA}</th>
            <th scope="col">{words.first}</th>
          </tr>
        </thead>
        <tbody>
          {page.columns.map((column, place) => (
            <tr key={place}>
              <th scope="row">
                <bdi>{column.head === "" ? words.noHead : column.head}</bdi>
              </th>
              <td>
                <MeaningOf
                  column={column}
                  options={page.options}
                  onMean={(meaning) => onMean(place, meaning)}
                />
                <span className="quiet">
                  {column.unsure && <strong>{words.unsure}: </strong>}
                  {inReadersWords(column.why)}
                </span>
              </td>
              <td className="cells">
                {column.cells.map((cell, at) => (
                  <bdi key={at}>{cell === "" ? "·" : cell}</bdi>
                ))}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {page.wide && <p>{words.wide}</p>}
    </section>
  );
}
