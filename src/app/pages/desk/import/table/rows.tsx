import type { RowChoice } from "../../../../../show/desk/import/table/asked.ts";
import type { TablePage } from "../../../../../show/desk/import/table/told/page.ts";
import type { TwinTold } from "../../../../../show/desk/import/table/told/told.ts";
import { RecordLink } from "../../../../parts/link.tsx";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { importWords } from "../../../../words/desk/import.ts";
import { tableWords as words } from "../../../../words/recording/tables.ts";
import { fieldWord } from "../../../../words/index.ts";

/** Rows that cannot come in: where, why, and as they are written. */
export function FailedRows({ list }: { readonly list: TablePage["failures"] }) {
  if (list.all === 0) return null;
  return (
    <section>
      <h3 className="label">
        {words.failed} <span className="count">{list.all}</span>
      </h3>
      <p className="quiet">{words.failedWhy}</p>
      <ol className="brought">
        {list.shown.map(({ line, head, why, text }, place) => (
          <li key={place}>
            <p className="at-line">
              {words.line(line)}
              {head !== null && words.inColumn(head)}
            </p>
            {why.map((one, at) => (
              <p key={at}>{inReadersWords(one)}</p>
            ))}
            {text === "" ? <p className="quiet">{importWords.unshown}</p> : <pre dir="auto">{text}</pre>}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Records that come in, one in a line. */
export function FreshRows({ list }: { readonly list: TablePage["fresh"] }) {
  if (list.all === 0) return null;
  return (
    <section>
      <h3 className="label">
        {words.fresh} <span className="count">{list.all}</span>
      </h3>
      <table className="fresh-rows">
        <tbody>
          {list.shown.map(({ line, id, label, dimension, value }, place) => (
            <tr key={place}>
              <td className="at-line">{words.line(line)}</td>
              <td>
                <bdi className="sentence">{inReadersWords(label)}</bdi> <bdi className="quiet">{id}</bdi>
              </td>
              {dimension !== null && (
                <td>
                  <bdi>{dimension}</bdi>
                </td>
              )}
              {value !== null && (
                <td className="figures">
                  <bdi>{value}</bdi>
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface TwinsProps {
  readonly list: TablePage["twins"];
  readonly asOf: number | null;
  readonly choose: (row: number, choice: RowChoice) => void;
}

/** Rows whose artefact is there already, each with what can become of it. */
export function TwinRows({ list, asOf, choose }: TwinsProps) {
  if (list.all === 0) return null;
  return (
    <section>
      <h3 className="label">
        {words.twins} <span className="count">{list.all}</span>
      </h3>
      <p className="quiet">{words.twinsWhy}</p>
      <ol className="brought">
        {list.shown.map((twin) => (
          <li key={twin.row}>
            <Twin twin={twin} asOf={asOf} choose={choose} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function Twin({ twin, asOf, choose }: Omit<TwinsProps, "list"> & { readonly twin: TwinTold }) {
  const { row, line, id, name, why, does, missing, differing } = twin;
  const called = name === "" ? id : name;
  const says = missing.length + differing.length > 0;
  const way = (what: TwinTold["does"], text: string, choice: RowChoice) => (
    <label>
      <input type="radio" name={`row-${row}`} checked={does === what} onChange={() => choose(row, choice)} />
      <span>{text}</span>
    </label>
  );
  return (
    <>
      <p className="name">
        <bdi className="sentence">{called}</bdi>
        <span className="quiet">
          {words.line(line)} · {words.like}{" "}
          <RecordLink id={id} text={inReadersWords(twin.label)} asOf={asOf} />: {words.why[why]}
        </span>
      </p>
      <fieldset className="ways">
        <legend className="unseen">{words.waysOf(called)}</legend>
        {way("leave", words.leave, { do: "leave" })}
        {says && way("merge", words.merge(missing.map((one) => nameOf(one.name))), { do: "merge", take: [] })}
        {way("add", words.add, { do: "add" })}
      </fieldset>
      {!says && <p className="quiet">{words.nothingToMerge}</p>}
      {does === "merge" && says && <Merging twin={twin} choose={choose} />}
    </>
  );
}

function Merging({ twin, choose }: { readonly twin: TwinTold } & Pick<TwinsProps, "choose">) {
  const taken = twin.differing.flatMap((one) => (one.taken ? [one.name] : []));
  return (
    <dl className="merging">
      {twin.missing.map(({ name, theirs }) => (
        <div key={name}>
          <dt>{nameOf(name)}</dt>
          <dd>
            <span className="quiet">{words.missing}</span>
            <span dir="auto">{theirs}</span>
          </dd>
        </div>
      ))}
      {twin.differing.map(({ name, here, theirs, taken: isTaken }) => {
        const take = (on: boolean): void =>
          choose(twin.row, {
            do: "merge",
            take: on ? [...taken, name] : taken.filter((one) => one !== name),
          });
        return (
          <div key={name}>
            <dt>{nameOf(name)}</dt>
            <dd>
              <label>
                <input
                  type="radio"
                  name={`${twin.row}-${name}`}
                  aria-label={words.keep(nameOf(name))}
                  checked={!isTaken}
                  onChange={() => take(false)}
                />
                <span className="quiet">{words.here}</span>
                <span dir="auto">{here}</span>
              </label>
              <label>
                <input
                  type="radio"
                  name={`${twin.row}-${name}`}
                  aria-label={words.take(nameOf(name))}
                  checked={isTaken}
                  onChange={() => take(true)}
                />
                <span className="quiet">{words.theirs}</span>
                <span dir="auto">{theirs}</span>
              </label>
            </dd>
          </div>
        );
      })}
    </dl>
  );
}

/** A field in the reader's words; a number by its register. */
function nameOf(name: string): string {
  return name.startsWith("numbers.") ? words.meanings.number(name.slice("numbers.".length)) : fieldWord(name);
}
