import type { ReactNode } from "react";
import { Link } from "wouter";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { quoted } from "../../../base/text/said/rows.ts";
import { withoutStop } from "../../../link/names/label.ts";
import type { ClaimTurn, NumberTurn, OutcomeLine } from "../../../show/plan/outcome.ts";
import { pathOf, supposingPath, underLens } from "../../address.ts";
import { PageLink, RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { numberName } from "../../words/shown/numbers.ts";

interface Props {
  readonly examination: string;
  readonly outcomes: readonly OutcomeLine[];
  readonly asOf: number | null;
}

/** As many claims of an outcome are listed; the others are folded. */
const listed = 6;

/** The outcomes of an examination, each with what would follow from it and the way to look at all under it. */
export function Outcomes({ examination, outcomes, asOf }: Props) {
  const probable = outcomes.some((one) => one.probability !== null);
  return (
    <table className="outcomes">
      <thead>
        <tr>
          <th scope="col">{words.outcome}</th>
          <th scope="col">{words.wouldChange}</th>
          {probable && <th scope="col">{words.probability}</th>}
        </tr>
      </thead>
      <tbody>
        {outcomes.map((one) => (
          <tr key={one.id}>
            <th scope="row">
              <span className="sentence" dir="auto">
                {inReadersWords(one.text)}
              </span>
              <Suppose examination={examination} outcome={one} asOf={asOf} />
            </th>
            <td>
              <Follows outcome={one} asOf={asOf} />
            </td>
            {probable && (
              <td className="numeral">
                {one.probability !== null && <span className="narrowly">{words.probability} </span>}
                {one.probability !== null && <bdi>{inReadersWords(one.probability)}</bdi>}
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The way to the whole app as it would be: to the question whose answers change, else to the claim, else to all questions. */
function Suppose({
  examination,
  outcome,
  asOf,
}: {
  readonly examination: string;
  readonly outcome: OutcomeLine;
  readonly asOf: number | null;
}) {
  const { lands, id, text } = outcome;
  const path = lands === null ? "/" : pathOf(lands.page, lands.id);
  return (
    <Link
      className="suppose"
      href={underLens(supposingPath(path, { examination, outcome: id }), asOf)}
      aria-label={words.supposeOf(inReadersWords(text))}
    >
      {words.suppose}
    </Link>
  );
}

function Follows({ outcome, asOf }: { readonly outcome: OutcomeLine; readonly asOf: number | null }) {
  const { claims, others, numbers, pending } = outcome;
  const further = claims.slice(listed);
  return (
    <>
      {claims.length === 0 && others === 0 && numbers.length === 0 && pending.length === 0 && (
        <p className="quiet">{words.changesNothing}</p>
      )}
      <Turns claims={claims.slice(0, listed)} asOf={asOf} />
      {further.length > 0 && (
        <details>
          <summary>{words.moreClaims(further.length)}</summary>
          <Turns claims={further} asOf={asOf} />
        </details>
      )}
      {numbers.map((one) => (
        <NumberChange key={one.id} turn={one} asOf={asOf} />
      ))}
      {pending.map((one) => (
        <p className="quiet" key={one.id}>
          <PageLink page="number" id={one.id} text={one.text} asOf={asOf} />: {words.stillComputed}
        </p>
      ))}
      {others > 0 && (
        <p className="quiet">
          {claims.length === 0 && `${words.noClaim} `}
          {words.others(others)}
        </p>
      )}
    </>
  );
}

function Turns({ claims, asOf }: { readonly claims: readonly ClaimTurn[]; readonly asOf: number | null }) {
  if (claims.length === 0) return null;
  return (
    <ul className="turning">
      {claims.map(({ id, text, was, is }) => (
        <li key={id}>
          <span className="sentence">
            <RecordLink id={id} text={text} asOf={asOf} />
          </span>
          <span className="turn">
            <span className="unseen">{words.change(was, is)}</span>
            <span aria-hidden="true">
              <StandingMark standing={was} />
              <span className="to">→</span>
              <StandingMark standing={is} />
            </span>
          </span>
        </li>
      ))}
    </ul>
  );
}

/** A number's value, kept together in a line that runs the other way; or that there is none. */
function valueOr(value: Text | null): ReactNode {
  return value === null ? words.noNumber : <bdi>{inReadersWords(value)}</bdi>;
}

function NumberChange({ turn, asOf }: { readonly turn: NumberTurn; readonly asOf: number | null }) {
  const { id, text, values, why, says } = turn;
  return (
    <p className="number-turn">
      <PageLink page="number" id={id} text={text} asOf={asOf} />
      {values.map((one) => (
        <span className="value" key={one.name}>
          {numberName(one.name)} {valueOr(one.was)} → {valueOr(one.is)}
        </span>
      ))}
      {why !== null && <span className="quiet">{withoutStop(inReadersWords(why))}</span>}
      {says.map(({ claim, was, is }) => (
        <span className="quiet" key={claim.id}>
          {words.bears(was, is)} {inReadersWords(say`${quoted(claim.text)}`)}
        </span>
      ))}
    </p>
  );
}
