import { Link } from "wouter";
import type { FieldChange } from "../../../../show/desk/changes/fields.ts";
import type { Changes, RecordChange } from "../../../../show/desk/changes/told.ts";
import type { FieldRow } from "../../../../show/pages/pieces.ts";
import { mergePath, underLens } from "../../../address.ts";
import { Pieces } from "../../../parts/pieces.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingTurn } from "../../../parts/standing.tsx";
import { changesWords as words } from "../../../words/desk/changes.ts";
import { mergeWords } from "../../../words/desk/merge.ts";
import { kindName } from "../../../words/desk/kinds.ts";
import { fieldWord } from "../../../words/index.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly told: Changes;
  readonly pending: number;
  readonly asOf: number | null;
}

/** What so few records say is read at once. */
const few = 3;

const order = ["changed", "added", "taken", "unread"] as const;

/** What differs between two times of the corpus: standings first, then records, then files without any. */
export function ChangesTold({ told: { records, standings, files }, pending, asOf }: Props) {
  const none = records.length === 0 && standings.length === 0;
  return (
    <>
      {none && <p className="apart">{files.length === 0 ? words.same : words.nothing}</p>}
      {pending > 0 && (
        <p className="quiet apart">
          <output>{words.pending(pending)}</output>
        </p>
      )}
      {standings.length > 0 && (
        <section>
          <h2 className="label">{words.standings}</h2>
          <ul className="record-changes">
            {standings.map((one) => (
              <li key={one.id}>
                <span className="sentence">
                  <RecordLink id={one.id} text={one.text} asOf={asOf} />
                </span>
                <StandingTurn was={one.was} is={one.is} said={words.standing(one.was, one.is)} />
              </li>
            ))}
          </ul>
        </section>
      )}
      {order.map((how) => {
        const those = records.filter((one) => one.how === how);
        return (
          those.length > 0 && (
            <section key={how}>
              <h2 className="label">
                {words.how[how]} <span className="count">{those.length}</span>
              </h2>
              <ul className="record-changes">
                {those.map((one, place) => (
                  <Changed key={place} change={one} asOf={asOf} open={those.length <= few} />
                ))}
              </ul>
            </section>
          )
        );
      })}
      {files.length > 0 && (
        <section>
          <h2 className="label">{words.files}</h2>
          <ul className="record-changes files">
            {files.map(({ file, how }) => (
              <li key={file}>
                <span className="file">{file}</span> <span className="quiet">{words.file[how]}</span>{" "}
                {how === "unmerged" && <Link href={underLens(mergePath(file), asOf)}>{mergeWords.open}</Link>}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Changed({
  change,
  asOf,
  open,
}: {
  readonly change: RecordChange;
  readonly asOf: number | null;
  readonly open: boolean;
}) {
  const { id, kind, text, how, from, file, fields } = change;
  const [side, count] =
    how === "taken" ? (["before", words.said] as const) : (["after", words.says] as const);
  return (
    <li>
      <p className="what">
        <span className="kind">{kindName(kind)}</span>
        <span className="sentence">
          {id === null ? <span dir="auto">{text}</span> : <RecordLink id={id} text={text} asOf={asOf} />}
        </span>
        <span className="file quiet">{from === null ? file : words.moved(from, file)}</span>
      </p>
      {how === "changed" && <FieldTable fields={fields} />}
      {(how === "added" || how === "taken") && fields.length > 0 && (
        <details open={open}>
          <summary>{count(fields.length)}</summary>
          <dl className="record-says">
            {fields.map((field) => (
              <div key={field.name}>
                <dt>{fieldWord(field.name)}</dt>
                <dd>
                  <Rows rows={field[side]} />
                </dd>
              </div>
            ))}
          </dl>
        </details>
      )}
    </li>
  );
}

/** Fields as they were and as they are, each reading under its word. */
function FieldTable({ fields }: { readonly fields: readonly FieldChange[] }) {
  return (
    <dl className="record-readings">
      {fields.map((field) => (
        <div key={field.name}>
          <dt>{fieldWord(field.name)}</dt>
          <dd className="was">
            <span className="word">{words.was}</span>
            <Rows rows={field.before} />
          </dd>
          <dd>
            <span className="word">{words.is}</span>
            <Rows rows={field.after} />
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** What a field says, line by line; names in it lead nowhere, since what they name may be gone. */
function Rows({ rows }: { readonly rows: readonly FieldRow[] }) {
  if (rows.length === 0) return <span className="quiet">{words.empty}</span>;
  return (
    <span className="rows">
      {rows.map((row, place) => (
        <span className="line" key={place}>
          {row.label !== null && <span className="part">{inReadersWords(row.labelSaid ?? row.label)}: </span>}
          <Pieces pieces={row.pieces.map((piece) => ({ ...piece, to: null }))} asOf={null} />
        </span>
      ))}
    </span>
  );
}
