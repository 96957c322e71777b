import { Link } from "wouter";
import type { Entries as Data, EntryLine } from "../../../show/numbers/entries.ts";
import { pathOf, underLens } from "../../address.ts";
import { RecordLink } from "../../parts/link.tsx";
import { numberWords } from "../../words/shown/numbers.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";

interface Props {
  readonly entries: Data;
  readonly asOf: number | null;
}

/** What a number was computed on, and what was left out and why. */
export function Entries({ entries: { taken, left, withheld }, asOf }: Props) {
  return (
    <section>
      <h2 className="label">{numberWords.inputs}</h2>
      {taken.length === 0 ? (
        <p className="quiet">{numberWords.nothingTaken}</p>
      ) : (
        <EntryTable lines={taken} asOf={asOf} label={numberWords.inputs} />
      )}
      {left.length > 0 && (
        <details>
          <summary>{numberWords.leftOutCount(left.length)}</summary>
          <EntryTable lines={left} asOf={asOf} label={numberWords.leftOutCount(left.length)} />
        </details>
      )}
      {withheld > 0 && <p className="quiet">{numberWords.withheld(withheld)}</p>}
    </section>
  );
}

interface TableProps {
  readonly lines: readonly EntryLine[];
  readonly asOf: number | null;
  readonly label: string;
}

function EntryTable({ lines, asOf, label }: TableProps) {
  const sized = lines.some((line) => line.inSI !== "");
  return (
    <table className="ledger stack" aria-label={label}>
      <thead>
        <tr>
          <th scope="col">{sized ? numberWords.measurement : numberWords.evidence}</th>
          <th scope="col">{sized ? numberWords.written : numberWords.recorded}</th>
          {sized && <th scope="col">{numberWords.inSI}</th>}
          <th scope="col">{numberWords.source}</th>
          <th scope="col">{numberWords.state}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={`${line.id} ${line.why === null ? "in" : "out"}`}>
            <th scope="row">
              <Entered line={line} asOf={asOf} />
            </th>
            <td className={sized ? "numeral" : undefined} dir="auto">
              {inReadersWords(line.written)}
            </td>
            {sized && (
              <td className="numeral">
                <bdi>{line.inSI}</bdi>
              </td>
            )}
            <td>
              {line.source !== null && line.source.to !== null && (
                <RecordLink
                  id={line.source.to}
                  text={inReadersWords(line.source.said ?? line.source.text)}
                  asOf={asOf}
                />
              )}
            </td>
            <td className="wide">{stateOf(line)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Another derivation's number leads to its own page, a measurement to its sheet. */
function Entered({ line, asOf }: { readonly line: EntryLine; readonly asOf: number | null }) {
  if (line.written !== "") return <RecordLink id={line.id} text={inReadersWords(line.text)} asOf={asOf} />;
  return (
    <Link href={underLens(pathOf("number", line.id), asOf)} dir="auto">
      {inReadersWords(line.text)}
    </Link>
  );
}

function stateOf(line: EntryLine): string {
  return line.beaten ? `${enteredAs(line)}; ${numberWords.doesNotHold}` : enteredAs(line);
}

function enteredAs({ why, input, mergedWith }: EntryLine): string {
  if (why !== null) return numberWords.leftOut(inReadersWords(why));
  const taken = input === null ? numberWords.takenIn : numberWords.takenAs(input);
  return mergedWith.length === 0
    ? taken
    : `${taken}, ${numberWords.merged(mergedWith.map(inReadersWords).join(marks.comma))}`;
}
