import type { WantedLine } from "../../../show/numbers/wanted.ts";
import { RecordLink } from "../../parts/link.tsx";
import { numberWords } from "../../words/shown/numbers.ts";
import { inReadersWords } from "../../words/reader/said.ts";

interface Props {
  readonly lines: readonly WantedLine[];
  readonly asOf: number | null;
}

const FIRST = 8;

/** What nobody measured yet and would enter the number; a long list is folded after its first lines. */
export function Wanted({ lines, asOf }: Props) {
  if (lines.length === 0) return null;
  const rest = lines.slice(FIRST);
  return (
    <section className="wanted">
      <h2 className="label">{numberWords.wanted}</h2>
      <p className="quiet">{numberWords.wantedCount(lines.length)}</p>
      <WantedList lines={lines.slice(0, FIRST)} asOf={asOf} />
      {rest.length > 0 && (
        <details>
          <summary>{numberWords.wantedMore(rest.length)}</summary>
          <WantedList lines={rest} asOf={asOf} />
        </details>
      )}
    </section>
  );
}

function WantedList({ lines, asOf }: Props) {
  return (
    <ul>
      {lines.map(({ thing, dimension, counterpart, follows }) => (
        <li key={`${thing.id} ${dimension}`} className="sentence">
          <span dir="auto">{dimension}</span> {numberWords.of}{" "}
          <RecordLink id={thing.id} text={inReadersWords(thing.text)} asOf={asOf} />
          {counterpart !== null && (
            <>
              , {numberWords.besideIt(dimension)}{" "}
              <RecordLink id={counterpart.id} text={inReadersWords(counterpart.text)} asOf={asOf} />
            </>
          )}
          {follows !== null && (
            <span className="quiet figures" dir="auto">
              {numberWords.follows(inReadersWords(follows.from), follows.size)}
            </span>
          )}
        </li>
      ))}
    </ul>
  );
}
