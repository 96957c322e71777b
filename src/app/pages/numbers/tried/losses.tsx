import { withoutStop } from "../../../../link/names/label.ts";
import type { LossLine, LossLines } from "../../../../show/numbers/tried/losses.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { numberName, numberWords } from "../../../words/shown/numbers.ts";
import { marks } from "../../../words/reader/marks.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly losses: LossLines;
  readonly asOf: number | null;
}

/** So many are told at once, the rest on asking. */
const FIRST = 8;

/** What the number would be without each artefact, source and survey, and which of them carry what it says. */
export function Losses({ losses, asOf }: Props) {
  const { tried, turning, without, reach, draws, untried, pending } = losses;
  const told = [...turning, ...without];
  const others = tried - told.length;
  const reached = reach
    .map(({ name, low, high }) => numberWords.runs(numberName(name), low, high))
    .join(marks.comma);
  return (
    <section className="losses">
      <h2 className="label">{numberWords.lossesTitle}</h2>
      {turning.length > 0 && <p className="sentence strong">{numberWords.hangsOnOne}</p>}
      <LossList lines={told.slice(0, FIRST)} asOf={asOf} />
      {told.length > FIRST && (
        <details>
          <summary>{numberWords.lossesMore(told.length - FIRST)}</summary>
          <LossList lines={told.slice(FIRST)} asOf={asOf} />
        </details>
      )}
      {others > 0 && (
        <p className="sentence">
          {turning.length + without.length > 0
            ? numberWords.othersLeft(others)
            : numberWords.noneTurns(others)}
        </p>
      )}
      {reached !== "" && tried > 1 && <p className="quiet">{numberWords.reach(reached)}</p>}
      {draws !== null && <p className="quiet">{numberWords.fewDraws(draws)}</p>}
      {untried > 0 && <p className="quiet">{numberWords.untried(untried)}</p>}
      {pending > 0 && <output className="quiet">{numberWords.lossesPending(pending)}</output>}
    </section>
  );
}

function LossList({ lines, asOf }: { readonly lines: readonly LossLine[]; readonly asOf: number | null }) {
  return (
    <ul>
      {lines.map((line) => (
        <li key={line.names.map(({ text }) => inReadersWords(text)).join(" ")} className="sentence">
          <LossTold line={line} asOf={asOf} />
        </li>
      ))}
    </ul>
  );
}

function LossTold({ line, asOf }: { readonly line: LossLine; readonly asOf: number | null }) {
  const numbers = line.numbers
    .map(({ name, value }) => numberWords.is(numberName(name), inReadersWords(value)))
    .join(marks.comma);
  const says = [...new Set(line.turned.map((one) => numberWords.thenSays(one.says)))].join(marks.comma);
  return (
    <>
      {numberWords.without}{" "}
      {line.names.map(({ id, text }, place) => (
        <span key={inReadersWords(text)}>
          {place > 0 && ` ${numberWords.sameAs} `}
          {id === null ? (
            <>
              {numberWords.sharing} <span dir="auto">{inReadersWords(text)}</span>
            </>
          ) : (
            <RecordLink id={id} text={inReadersWords(text)} asOf={asOf} />
          )}
        </span>
      ))}
      {line.why !== null ? (
        <>
          {" "}
          {numberWords.thenNothing}: {withoutStop(inReadersWords(line.why))}.
        </>
      ) : (
        <>
          {numbers === "" ? "" : `, ${numbers}`}: <b>{says}</b>.
        </>
      )}
    </>
  );
}
