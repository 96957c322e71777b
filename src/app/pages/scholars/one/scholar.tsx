import type { ReactNode } from "react";
import type { ScholarPage as Scholar } from "../../../../show/scholars/scholar.ts";
import type { useAddress } from "../../../address.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { YearRod } from "../../../parts/year-rod.tsx";
import { words as shared } from "../../../words/index.ts";
import { scholarWords as words } from "../../../words/shown/scholars.ts";
import { marks } from "../../../words/reader/marks.ts";
import { FindingList } from "../../lists/findings.tsx";
import { yearsText } from "../table.tsx";
import { DatedTracks } from "./dated.tsx";
import { LookedAt, Objections, Steps } from "./relies.tsx";

/** One scholar: positions over time, what they rely on, what is open between them and others. */
export function ScholarPage({
  page,
  address,
}: {
  readonly page: Scholar;
  readonly address: ReturnType<typeof useAddress>;
}) {
  const { asOf, toYear } = address;
  return (
    <article className="scholar">
      <p className="label kind">{words.scholar}</p>
      <h1 dir="auto">{page.name}</h1>
      <p className="lead">
        {words.inPrint} {yearsText(page.years)}
      </p>
      <p className="crossing">
        <RecordLink id={page.id} text={shared.recordSheet} asOf={asOf} />
      </p>
      <dl className="names">
        {page.knownAs.length > 0 && (
          <>
            <dt>{words.knownAs}</dt>
            <dd>
              {page.knownAs.map((name, place) => (
                <span key={name}>
                  {place > 0 && marks.semicolon}
                  <bdi>{name}</bdi>
                </span>
              ))}
            </dd>
          </>
        )}
        {page.orcid !== null && (
          <>
            <dt>{words.orcid}</dt>
            <dd className="figure">{page.orcid}</dd>
          </>
        )}
      </dl>
      {page.note !== null && (
        <p className="sentence" dir="auto">
          {page.note}
        </p>
      )}
      <YearRod years={page.printYears} asOf={asOf} toYear={toYear} />
      <Section title={words.overTime}>
        {page.line.tracks.length === 0 ? (
          <p className="quiet">{words.noStance}</p>
        ) : (
          <DatedTracks line={page.line} asOf={asOf} />
        )}
      </Section>
      <Section title={words.relies}>
        {page.steps.length === 0 ? (
          <p className="quiet">{words.noSteps}</p>
        ) : (
          <Steps steps={page.steps} asOf={asOf} />
        )}
      </Section>
      {page.looked.length > 0 && (
        <Section title={words.looked}>
          <LookedAt looked={page.looked} asOf={asOf} />
        </Section>
      )}
      <Section title={words.unanswered}>
        {page.unanswered.length === 0 ? (
          <p className="quiet">{words.unansweredNone}</p>
        ) : (
          <Objections list={page.unanswered} asOf={asOf} />
        )}
      </Section>
      <Section title={words.changes}>
        {page.changes.length === 0 ? (
          <p className="quiet">{words.changesNone}</p>
        ) : (
          <FindingList findings={page.changes} asOf={asOf} />
        )}
      </Section>
    </article>
  );
}

function Section({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <section>
      <h2 className="label">{title}</h2>
      {children}
    </section>
  );
}
