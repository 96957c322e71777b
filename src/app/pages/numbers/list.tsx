import { Fragment } from "react";
import { Link } from "wouter";
import { withoutStop } from "../../../link/names/label.ts";
import type { NumberGroup, NumberRow } from "../../../show/numbers/numbers.ts";
import { pathOf, underLens } from "../../address.ts";
import { Empty } from "../../parts/empty.tsx";
import { useSome } from "../../parts/leaves/some.tsx";
import { RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { numberName, numberWords } from "../../words/shown/numbers.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { ToWorkbench } from "../desk/workbench/to-workbench.tsx";

interface Props {
  readonly groups: readonly NumberGroup[];
  readonly asOf: number | null;
}

/** Every computed number, by the claims they bear on. */
export function NumbersPage({ groups, asOf }: Props) {
  const [some, more] = useSome(groups);
  return (
    <>
      <h1>{numberWords.numbers}</h1>
      <ToWorkbench of={null} asOf={asOf} />
      {groups.length === 0 && <Empty {...numberWords.empty} />}
      {some.map((group) => (
        <section className="number-group" key={group.claim?.id ?? ""}>
          <div className="claim">
            <h2 className="sentence">
              {group.claim === null ? (
                numberWords.noClaim
              ) : (
                <RecordLink id={group.claim.id} text={group.claim.text} asOf={asOf} />
              )}
            </h2>
            {group.claim !== null && group.claim.standing !== null && (
              <StandingMark standing={group.claim.standing} />
            )}
          </div>
          <ul>
            {group.rows.map((row) => (
              <Row key={row.id} row={row} asOf={asOf} />
            ))}
          </ul>
        </section>
      ))}
      {more}
    </>
  );
}

function Row({ row, asOf }: { readonly row: NumberRow; readonly asOf: number | null }) {
  return (
    <li>
      <div className="what">
        <Link className="sentence" href={underLens(pathOf("number", row.id), asOf)} dir="auto">
          {inReadersWords(row.text)}
        </Link>
        <p className="quiet">{inReadersWords(row.method)}</p>
      </div>
      {row.status === "computed" ? (
        <dl className="came-out">
          {row.main.map((line) => (
            <Fragment key={line.name}>
              <dt>{numberName(line.name)}</dt>
              <dd>
                <bdi>
                  <b>{line.value}</b>
                  {line.interval !== null && (
                    <span className="quiet"> ({inReadersWords(line.interval)})</span>
                  )}
                </bdi>
              </dd>
            </Fragment>
          ))}
        </dl>
      ) : (
        <p className="quiet">
          {numberWords.status[row.status]}
          {row.why !== null && `: ${withoutStop(inReadersWords(row.why))}`}
        </p>
      )}
      <p className="says">{row.says !== null && numberWords.says[row.says]}</p>
    </li>
  );
}
