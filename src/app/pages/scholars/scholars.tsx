import type { ScholarsPage as Scholars } from "../../../show/scholars/scholars.ts";
import type { useAddress } from "../../address.ts";
import { YearRod } from "../../parts/year-rod.tsx";
import { Empty } from "../../parts/empty.tsx";
import { Looks } from "../../parts/places/looks.tsx";
import { empty } from "../../words/shown/empty.ts";
import { openingWords } from "../../words/shown/opening.ts";
import { scholarWords as words } from "../../words/shown/scholars.ts";
import { MatrixGrid } from "./grid/matrix.tsx";
import { MatrixLists } from "./lists.tsx";
import { useNarrow } from "../../parts/narrow.ts";
import { ScholarTable } from "./table.tsx";

interface Props {
  readonly page: Scholars;
  readonly address: ReturnType<typeof useAddress>;
}

/** Everybody who takes part: each with what they hold, or what everybody makes of every claim. */
export function ScholarsPage({ page, address }: Props) {
  const { asOf, toYear, query, toLook } = address;
  const narrow = useNarrow();
  const look = query.get("look");
  const looks = [
    ["/scholars", words.each, look === null],
    ["/scholars?look=claims", words.matrix, look !== null],
  ] as const;
  return (
    <>
      <h1>{words.scholars}</h1>
      {page.scholars.length > 0 && <p className="lead">{summary(page)}</p>}
      <YearRod years={page.years} asOf={asOf} toYear={toYear} />
      {page.scholars.length > 0 && <Looks label={words.looks} looks={looks} asOf={asOf} />}
      {page.scholars.length === 0 &&
        (asOf === null ? (
          <Empty {...empty.scholars} make={["scholars", "positions"]} />
        ) : (
          <p>{words.noneThen}</p>
        ))}
      {page.scholars.length > 0 && look === null && <ScholarTable scholars={page.scholars} asOf={asOf} />}
      {page.scholars.length > 0 && look !== null && (
        <Claims page={page} asOf={asOf} narrow={narrow} byScholar={look === "scholars"} toLook={toLook} />
      )}
      {page.later > 0 && <p className="quiet apart">{words.later(page.later)}</p>}
    </>
  );
}

function Claims({
  page,
  asOf,
  narrow,
  byScholar,
  toLook,
}: {
  readonly page: Scholars;
  readonly asOf: number | null;
  readonly narrow: boolean;
  readonly byScholar: boolean;
  readonly toLook: Props["address"]["toLook"];
}) {
  const { matrix, scholars } = page;
  const told = matrix.groups.length;
  const own = new Map(scholars.map((one) => [one.id, one]));
  const columns = matrix.columns.flatMap((id) => own.get(id) ?? []);
  const silent = scholars.filter((one) => one.claims > 0).length - columns.length;
  return (
    <>
      {columns.length === 0 && <p className="quiet">{words.noStance}</p>}
      {columns.length > 0 &&
        (narrow ? (
          <MatrixLists matrix={matrix} columns={columns} byScholar={byScholar} asOf={asOf} />
        ) : (
          <MatrixGrid matrix={matrix} columns={columns} asOf={asOf} />
        ))}
      {silent > 0 && <p className="quiet apart">{words.silent(silent)}</p>}
      {matrix.more > 0 && (
        <p className="quiet more">
          {openingWords.shown(told, told + matrix.more)}{" "}
          <button type="button" onClick={() => toLook({ questions: String(2 * told) }, "replace")}>
            {openingWords.more(Math.min(told, matrix.more))}
          </button>
        </p>
      )}
      {matrix.without > 0 && <p className="quiet apart">{words.without(matrix.without)}</p>}
    </>
  );
}

function summary({ scholars }: Scholars): string {
  const years = scholars.flatMap((one) => (one.years ? [one.years.first, one.years.last] : []));
  return words.inAll(
    scholars.length,
    years.length > 0 ? [Math.min(...years), Math.max(...years)] : null,
    scholars.filter((one) => one.changed > 0).length,
  );
}
