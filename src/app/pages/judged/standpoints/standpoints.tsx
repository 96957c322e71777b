import type { StandpointsPage as Data } from "../../../../show/judged/standpoints/page.ts";
import {
  acceptedInWords,
  countInWords,
  settledInWords,
} from "../../../../show/judged/standpoints/wording.ts";
import type { useAddress } from "../../../address.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { useSome } from "../../../parts/leaves/some.tsx";
import { YearRod } from "../../../parts/year-rod.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";
import { standpointWords as words } from "../../../words/judged/standpoints.ts";
import { FitLists } from "./fits.tsx";
import { Part } from "./part.tsx";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** So many parts are laid out before the others are asked for: each may be a table of many columns. */
const firstParts = 25;

/** What is open, in parts that are decided one without the other, and every coherent way to decide each. */
export function StandpointsPage({ page, address }: Props) {
  const { asOf, toYear } = address;
  const [parts, more] = useSome(page.components, firstParts);
  return (
    <>
      <h1>{words.title}</h1>
      <p className="lead">{inReadersWords(countInWords(page))}</p>
      <YearRod years={page.years} asOf={asOf} toYear={toYear} />
      {page.components.length > 0 && <p className="quiet explained">{words.what}</p>}
      {parts.map((one, place) => (
        <Part key={place} part={one} place={place} asOf={asOf} />
      ))}
      {more}
      {page.joint.length > 0 && <Joint page={page} asOf={asOf} />}
      {page.scholars > 0 && <Whole page={page} asOf={asOf} />}
      <Settled page={page} asOf={asOf} />
    </>
  );
}

/** Claims that no single part decides. */
function Joint({ page, asOf }: { readonly page: Data; readonly asOf: number | null }) {
  const [joint, more] = useSome(page.joint);
  return (
    <section className="part">
      <h2>{words.joint}</h2>
      <table className="ways accepted">
        <thead>
          <tr>
            <th scope="col">{words.claim}</th>
            <th scope="col">{words.holds}</th>
            <th scope="col">{words.hangsOn}</th>
          </tr>
        </thead>
        <tbody>
          {joint.map(({ id, text, holds, on }) => (
            <tr key={id}>
              <th scope="row" className="sentence">
                <RecordLink id={id} text={text} asOf={asOf} />
              </th>
              <td>{inReadersWords(acceptedInWords[holds])}</td>
              <td>{words.parts(on.map((place) => place + 1))}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {more}
    </section>
  );
}

/** Scholars who could take one standpoint as it is, or but for one position. */
function Whole({ page, asOf }: { readonly page: Data; readonly asOf: number | null }) {
  const { fits, unknown } = page;
  return (
    <section className="part">
      <h2>{words.scholars}</h2>
      {fits.length + unknown.length === 0 && <p className="quiet">{words.scholarsNone}</p>}
      <FitLists fits={fits} unknown={unknown} asOf={asOf} />
    </section>
  );
}

/** The claims that no choice touches, folded. */
function Settled({ page, asOf }: { readonly page: Data; readonly asOf: number | null }) {
  const settled = page.settled.filter((one) => one.claims.length > 0);
  if (settled.length === 0) return null;
  return (
    <section className="part">
      <h2>{words.settled}</h2>
      {settled.map(({ standing, claims }) => (
        <details key={standing}>
          <summary>
            <StandingMark standing={standing} bare /> {inReadersWords(settledInWords({ standing, claims }))}
          </summary>
          <SettledList claims={claims} asOf={asOf} />
        </details>
      ))}
    </section>
  );
}

function SettledList({
  claims,
  asOf,
}: {
  readonly claims: Data["settled"][number]["claims"];
  readonly asOf: number | null;
}) {
  const [some, more] = useSome(claims);
  return (
    <>
      <ul className="settled">
        {some.map((claim) => (
          <li key={claim.id} className="sentence">
            <RecordLink {...claim} asOf={asOf} />
          </li>
        ))}
      </ul>
      {more}
    </>
  );
}
