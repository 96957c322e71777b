import type { BearingLine } from "../../../show/numbers/bearing-lines.ts";
import { RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { numberWords } from "../../words/numbers.ts";

interface Props {
  readonly bearings: readonly BearingLine[];
  readonly asOf: number | null;
}

/** What a number says of each claim, what it was asked, and what came out. */
export function Bearings({ bearings, asOf }: Props) {
  return (
    <section>
      <h2 className="unseen">{numberWords.bearsOn}</h2>
      {bearings.length === 0 && <p className="quiet">{numberWords.bearsOnNothing}</p>}
      {bearings.map((line) => (
        <div className="bearing" key={line.claim}>
          <p className="label">{numberWords.heading[line.says ?? "none"]}</p>
          <p className="claim">
            <RecordLink id={line.claim} text={line.text} asOf={asOf} />
          </p>
          {line.standing !== null && <StandingMark standing={line.standing} />}
          <p className="sentence">{termsOf(line)}</p>
          {line.strength !== "ordinary" && <p className="quiet">{numberWords.strength(line.strength)}</p>}
          {line.largeP && <p className="quiet">{numberWords.largeP}</p>}
          {line.trouble !== null && <p className="quiet">{line.trouble}.</p>}
        </div>
      ))}
    </section>
  );
}

/** `Supports when p < 0.01; disputes when p > 0.50; p is 0.0017.` */
function termsOf(line: BearingLine): string {
  const parts = [
    ...(line.supportsWhen === null ? [] : [numberWords.supportsWhen(line.supportsWhen)]),
    ...(line.disputesWhen === null ? [] : [numberWords.disputesWhen(line.disputesWhen)]),
    ...line.found.map(({ name, value }) => numberWords.is(name, value)),
  ];
  const text = parts.join("; ");
  return text === "" ? "" : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
