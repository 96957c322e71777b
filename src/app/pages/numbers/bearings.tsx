import { choiceName } from "../../../read/grammar/field-words.ts";
import type { BearingLine } from "../../../show/numbers/bearing-lines.ts";
import { RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { conditionParts, numberName, numberWords } from "../../words/shown/numbers.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";

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
          <p className="sentence">
            <Terms line={line} />
          </p>
          {line.strength !== "ordinary" && (
            <p className="quiet">{numberWords.strength(inReadersWords(choiceName(line.strength)))}</p>
          )}
          {line.largeP && <p className="quiet">{numberWords.largeP}</p>}
          {line.trouble !== null && <p className="quiet">{inReadersWords(line.trouble)}.</p>}
        </div>
      ))}
    </section>
  );
}

/** `Supports when p < 0.01; disputes when p > 0.50; p is 0.0017.`: each part on a line of its own. */
function Terms({ line: { supportsWhen, disputesWhen, found } }: { readonly line: BearingLine }) {
  const results = found.flatMap(({ name, value }, place) => [
    ...(place > 0 ? [marks.semicolon] : []),
    numberWords.is(numberName(name), inReadersWords(value)),
  ]);
  const parts = [
    supportsWhen === null ? [] : [numberWords.supportsWhen, ...conditionParts(supportsWhen)],
    disputesWhen === null ? [] : [numberWords.disputesWhen, ...conditionParts(disputesWhen)],
    results.length === 0 ? [] : ["", ...results],
  ].filter((pieces) => pieces.length > 0);
  return parts.map(([head = "", ...pieces], place) => (
    <span className="term" key={place}>
      {place === 0 ? capital(head) : head}
      {pieces.map((piece, at) => (
        <span className={at % 2 === 0 ? "whole" : undefined} key={at}>
          {place === 0 && at === 0 && head === "" ? capital(piece) : piece}
        </span>
      ))}
      {place < parts.length - 1 ? marks.semicolon : "."}
    </span>
  ));
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
