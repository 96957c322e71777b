import type { Cell, Matrix, Row } from "../../../show/scholars/matrix.ts";
import type { ScholarLine } from "../../../show/scholars/scholars.ts";
import { PageLink, RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { Looks } from "../../parts/places/looks.tsx";
import { scholarWords as words } from "../../words/shown/scholars.ts";
import { cellWord, cellYears } from "./stance.ts";

interface Props {
  readonly matrix: Matrix;
  readonly columns: readonly ScholarLine[];
  readonly asOf: number | null;
}

/** The matrix where there is no room for one: by claim or by scholar, in words. */
export function MatrixLists({ byScholar, ...matrix }: Props & { readonly byScholar: boolean }) {
  const orders = [
    ["/scholars?look=claims", words.byClaim, !byScholar],
    ["/scholars?look=scholars", words.byScholar, byScholar],
  ] as const;
  return (
    <>
      <Looks label={words.narrowLooks} looks={orders} asOf={matrix.asOf} />
      {byScholar ? <ByScholar {...matrix} /> : <ByClaim {...matrix} />}
    </>
  );
}

function ByClaim({ matrix, columns, asOf }: Props) {
  return matrix.groups.map((group) => (
    <section key={group.question?.id ?? ""}>
      <h2 className="label" dir="auto">
        {group.question?.text ?? words.other}
      </h2>
      <ul className="makings">
        {group.rows.map((row) => (
          <li key={row.claim}>
            <ClaimHead row={row} asOf={asOf} />
            <ul>
              {row.cells.map((cell, place) => {
                const who = columns[place];
                return (
                  cell &&
                  who && (
                    <li key={who.id}>
                      <PageLink page="scholar" id={who.id} text={who.name} asOf={asOf} />{" "}
                      <Making cell={cell} />
                    </li>
                  )
                );
              })}
            </ul>
          </li>
        ))}
      </ul>
    </section>
  ));
}

function ClaimHead({ row, asOf }: { readonly row: Row; readonly asOf: number | null }) {
  return (
    <p className="claim-head">
      {row.rival && <span className="quiet">{words.or} </span>}
      <span className="sentence">
        <RecordLink id={row.claim} text={row.text} asOf={asOf} />
      </span>
      <StandingMark standing={row.standing} />
    </p>
  );
}

function ByScholar({ matrix, columns, asOf }: Props) {
  const all = matrix.groups.flatMap((group) => group.rows);
  // An answer to two questions is told once.
  const rows = all.filter((row, place) => all.findIndex((one) => one.claim === row.claim) === place);
  return columns.map((who, place) => (
    <section key={who.id}>
      <h2 className="sentence who">
        <PageLink page="scholar" id={who.id} text={who.name} asOf={asOf} />
      </h2>
      <ul className="makings flat">
        {rows.map((row) => {
          const cell = row.cells[place];
          return (
            cell && (
              <li key={row.claim}>
                <Making cell={cell} />{" "}
                <span className="sentence">
                  <RecordLink id={row.claim} text={row.short} asOf={asOf} />
                </span>
              </li>
            )
          );
        })}
      </ul>
    </section>
  ));
}

function Making({ cell }: { readonly cell: Cell }) {
  return (
    <>
      <b className={`stance ${cell.left === null ? cell.stance : "left"}`}>{cellWord(cell)}</b>{" "}
      <span className="quiet">{cellYears(cell)}</span>
    </>
  );
}
