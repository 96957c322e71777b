import { Fragment } from "react";
import { Link } from "wouter";
import type { Looks } from "../../../../show/numbers/looks.ts";
import { pathOf, underLens } from "../../../address.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { numberWords } from "../../../words/shown/numbers.ts";
import { marks } from "../../../words/reader/marks.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly looks: Looks;
  readonly asOf: number | null;
}

/** How often the same claim was tested, by what else, and what p is worth after all of it. */
export function LooksTold({ looks: { claim, times, adjusted, others }, asOf }: Props) {
  return (
    <p className="quiet">
      {numberWords.looks(times)} “<RecordLink id={claim.id} text={claim.text} asOf={asOf} />”
      {others.length > 0 && (
        <>
          , {numberWords.looksBeside}{" "}
          {others.map(({ id, text }, place) => (
            <Fragment key={id}>
              {place > 0 && marks.semicolon}
              <Link href={underLens(pathOf("number", id), asOf)} dir="auto">
                {inReadersWords(text)}
              </Link>
            </Fragment>
          ))}
        </>
      )}
      {adjusted === null ? "." : `; ${numberWords.looksTogether(adjusted, others.length)}.`}
    </p>
  );
}
