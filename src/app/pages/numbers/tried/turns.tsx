import { withoutStop } from "../../../../link/names/label.ts";
import type { TurnLine, Turns as Data } from "../../../../show/numbers/tried/turns.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { numberName, numberWords } from "../../../words/shown/numbers.ts";
import { marks } from "../../../words/reader/marks.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly turns: Data;
  readonly asOf: number | null;
}

/** Which other choice of readings would turn what the number says, and which would not. */
export function Turns({ turns: { tried, beaten, pending }, asOf }: Props) {
  const turning = tried.filter((line) => line.turned.length > 0);
  const whole = tried.filter((line) => line.throughout);
  const singly = tried.filter((line) => !line.throughout);
  const told = [...whole, ...singly.filter((line) => line.turned.length > 0)];
  const idle = singly.length - (told.length - whole.length);
  return (
    <section className="turns">
      <h2 className="label">{numberWords.turnsTitle}</h2>
      {turning.length > 0 && <p className="sentence strong">{numberWords.hangs}</p>}
      {turning.length === 0 && tried.length > 0 && (
        <p className="sentence">{numberWords.holdsAnyway(tried.length)}</p>
      )}
      {tried.length === 0 && pending === 0 && <p className="sentence">{numberWords.noChoice}</p>}
      <ul>
        {told.map((line) => (
          <li key={`${line.throughout} ${inReadersWords(line.text)}`} className="sentence">
            <Turn line={line} asOf={asOf} />
          </li>
        ))}
      </ul>
      {idle > 0 && (turning.length > 0 || whole.length > 0) && (
        <p className="quiet">{numberWords.singly(idle)}</p>
      )}
      {beaten.length > 0 && (
        <p className="quiet">
          {beaten.length === 1 ? numberWords.beaten : numberWords.beatenMore}{" "}
          {beaten.map(({ id, text }, place) => (
            <span key={id}>
              {place > 0 && marks.semicolon}
              <RecordLink id={id} text={inReadersWords(text)} asOf={asOf} />
            </span>
          ))}
          .
        </p>
      )}
      {pending > 0 && <output className="quiet">{numberWords.notTried(pending)}</output>}
    </section>
  );
}

function Turn({ line, asOf }: { readonly line: TurnLine; readonly asOf: number | null }) {
  const numbers = line.numbers
    .map(({ name, value }) => numberWords.is(numberName(name), inReadersWords(value)))
    .join(marks.comma);
  const says = [...new Set(line.turned.map((one) => numberWords.thenSays(one.says)))].join(marks.comma);
  const outcome = line.turned.length > 0 ? says : numberWords.sameAsNow;
  return (
    <>
      {line.id === null ? (
        <>
          {numberWords.withReading} <span dir="auto">{inReadersWords(line.text)}</span> {numberWords.instead}
        </>
      ) : (
        <>
          {line.throughout ? numberWords.withReadingsOf : numberWords.withReading}{" "}
          <RecordLink id={line.id} text={inReadersWords(line.text)} asOf={asOf} />{" "}
          {line.throughout ? numberWords.throughout : numberWords.instead}
        </>
      )}
      {line.why === null ? (
        <>
          {numbers === "" ? "" : `, ${numbers}`}: {line.turned.length > 0 ? <b>{outcome}</b> : outcome}.
        </>
      ) : (
        <>
          {" "}
          {numberWords.thenNothing}: {withoutStop(inReadersWords(line.why))}.
        </>
      )}
    </>
  );
}
