import type { Piece } from "../../../show/pages/pieces.ts";
import type { RestingPage } from "../../../show/judged/resting/page.ts";
import { Pieces } from "../../parts/pieces.tsx";
import { inReadersWords } from "../../words/reader/said.ts";
import { marks } from "../../words/reader/marks.ts";
import { restingWords } from "../../words/sheet/resting.ts";

interface Props {
  readonly resting: RestingPage;
  readonly asOf: number | null;
}

/** Sets of losses beyond these are folded. */
const shownOpen = 6;

/** What a claim would fall without, several things together, and how many lines lead to it. */
export function Resting({ resting, asOf }: Props) {
  const { together } = resting;
  return (
    <>
      <section className="resting">
        <h2 className="label">{restingWords.title}</h2>
        {resting.gist !== null && <p className="sentence">{inReadersWords(resting.gist)}</p>}
        {together.length > 0 && <p className="sentence">{restingWords.together}</p>}
        <Sets sets={together.slice(0, shownOpen)} asOf={asOf} />
        {together.length > shownOpen && (
          <details>
            <summary>{restingWords.more(together.length - shownOpen)}</summary>
            <Sets sets={together.slice(shownOpen)} asOf={asOf} />
          </details>
        )}
        {resting.note !== null && (
          <p className="quiet">
            {inReadersWords(resting.note)} {resting.further && restingWords.further}
          </p>
        )}
      </section>
      <Lines resting={resting} asOf={asOf} />
    </>
  );
}

function Sets({ sets, asOf }: { readonly sets: RestingPage["together"]; readonly asOf: number | null }) {
  if (sets.length === 0) return null;
  return (
    <ul className="losses">
      {sets.map((pieces, place) => (
        <li key={place}>
          <Pieces pieces={pieces} asOf={asOf} />
        </li>
      ))}
    </ul>
  );
}

function Lines({ resting, asOf }: Props) {
  const { paths, yet, circles, sameAuthor } = resting;
  return (
    <section className="resting">
      <h2 className="label">{restingWords.lines}</h2>
      <p className="sentence">
        <Pieces pieces={resting.lines} asOf={asOf} />
        {yet !== null && " "}
        {yet !== null && <Pieces pieces={yet} asOf={asOf} />}
      </p>
      {yet !== null && <p className="quiet">{restingWords.caution}</p>}
      {paths.length > 1 && (
        <ol className="leading">
          {paths.map((path, place) => (
            <li key={place}>
              <Path path={path} asOf={asOf} />
            </li>
          ))}
        </ol>
      )}
      {circles.map((circle, place) => (
        <p key={place} className="quiet">
          {restingWords.circle} <Pieces pieces={circle} asOf={asOf} between={marks.comma} />
        </p>
      ))}
      {sameAuthor.map(([one, other, scholar], place) => (
        <p key={place} className="quiet">
          {restingWords.author(inReadersWords(scholar.said ?? scholar.text))}{" "}
          <Pieces pieces={[one, other]} asOf={asOf} between={marks.comma} />. {restingWords.ask}
        </p>
      ))}
    </section>
  );
}

/** A line from the thing or the report up, one step after the other. */
function Path({ path, asOf }: { readonly path: readonly Piece[]; readonly asOf: number | null }) {
  return (
    <ul className="chain">
      {path.map((piece, place) => (
        <li key={place}>
          <Pieces pieces={[piece]} asOf={asOf} />
        </li>
      ))}
    </ul>
  );
}
