import type { FitLine, Named } from "../../../../show/judged/standpoints/named.ts";
import { misfitInWords } from "../../../../show/judged/standpoints/wording.ts";
import { Pieces } from "../../../parts/pieces.tsx";
import { PageLink } from "../../../parts/link.tsx";
import { standpointWords as words } from "../../../words/judged/standpoints.ts";

interface Props {
  readonly fits: readonly FitLine[];
  readonly asOf: number | null;
}

/** The scholars all whose positions fit. */
export function Wholly({ fits, asOf }: Props) {
  const wholly = fits.filter((one) => one.but === null);
  if (wholly.length === 0) return <span className="quiet">{words.nobody}</span>;
  return (
    <ul className="fitting">
      {wholly.map(({ id, text, positions }) => (
        <li key={id}>
          <PageLink page="scholar" id={id} text={text} asOf={asOf} />{" "}
          <span className="quiet">{words.positions(positions)}</span>
        </li>
      ))}
    </ul>
  );
}

/** The scholars all but one of whose positions fit, with the one that does not. */
export function Nearly({ fits, asOf }: Props) {
  const nearly = fits.filter((one) => one.but !== null);
  if (nearly.length === 0) return <span className="quiet">{words.nobody}</span>;
  return (
    <ul className="fitting">
      {nearly.map(({ id, text, but }) => (
        <li key={id}>
          <PageLink page="scholar" id={id} text={text} asOf={asOf} />
          {but && (
            <span className="but">
              <Pieces pieces={misfitInWords(but)} asOf={asOf} />
            </span>
          )}
        </li>
      ))}
    </ul>
  );
}

/** Both lists under their names, and those of whom it is not known. */
export function FitLists({ fits, unknown, asOf }: Props & { readonly unknown: readonly Named[] }) {
  return (
    <dl className="fit-lists">
      {fits.some((one) => one.but === null) && (
        <div>
          <dt className="label">{words.fits}</dt>
          <dd>
            <Wholly fits={fits} asOf={asOf} />
          </dd>
        </div>
      )}
      {fits.some((one) => one.but !== null) && (
        <div>
          <dt className="label">{words.fitsNearly}</dt>
          <dd>
            <Nearly fits={fits} asOf={asOf} />
          </dd>
        </div>
      )}
      {unknown.length > 0 && (
        <div>
          <dt className="label">{words.unknown}</dt>
          <dd>
            <ul className="fitting">
              {unknown.map(({ id, text }) => (
                <li key={id}>
                  <PageLink page="scholar" id={id} text={text} asOf={asOf} />
                </li>
              ))}
            </ul>
          </dd>
        </div>
      )}
    </dl>
  );
}
