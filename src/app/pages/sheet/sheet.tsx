import { Fragment } from "react";
import type { RestingPage } from "../../../show/judged/resting/page.ts";
import type { Sheet } from "../../../show/pages/sheet.ts";
import type { Tie } from "../../../show/pages/ties.ts";
import type { Decider } from "../../../show/plan/deciding.ts";
import type { ExaminationLine } from "../../../show/plan/line.ts";
import { RecordLink, dirOf } from "../../parts/link.tsx";
import { ArguingOn } from "../../map/arguing/ways-row.tsx";
import { Pieces } from "../../parts/pieces.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { sheetWords, tieWords, words } from "../../words/index.ts";
import { numberName } from "../../words/shown/numbers.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { ToImage } from "../artefacts/images/to-image.tsx";
import { ToArtefact } from "../artefacts/to-artefact.tsx";
import { Deciders, OwnOutcomes } from "../examinations/deciders.tsx";
import { FieldList } from "../../parts/fields.tsx";
import { FindingList } from "../lists/findings.tsx";
import { ToGrid } from "../desk/grid/to-grid.tsx";
import { ToEntry } from "../desk/import/to-entry.tsx";
import { ToVisit } from "../desk/visit/to-visit.tsx";
import { ToNumber } from "../numbers/to-number.tsx";
import { ToPaper } from "../papers/capture/to-paper.tsx";
import { Explained } from "./explained.tsx";
import { ToForms } from "./form/to-form.tsx";
import { PassageSays } from "./passage.tsx";
import { Reference } from "./reference/reference.tsx";
import { Resting } from "./resting.tsx";
import { TakenFrom } from "./taken-from.tsx";
import { Holders } from "../judged/question/question.tsx";
import { ToQuestion } from "../judged/question/to-question.tsx";
import { ToScholar } from "../scholars/to-scholar.tsx";

/** A sheet with what a plan tells of its record; null where no plan is made yet. */
type Shown = Sheet & {
  readonly deciders: readonly Decider[] | null;
  readonly examination: ExaminationLine | null;
  readonly resting: RestingPage | null;
};

/** The sheet of one record: what it says, on what it rests, what rests on it, and why it stands or not. */
export function SheetPage({ sheet, asOf }: { readonly sheet: Shown; readonly asOf: number | null }) {
  const heads = sheetWords[sheet.kind];
  const title = inReadersWords(sheet.title);
  return (
    <article className="sheet">
      <p className="label kind">{inReadersWords(sheet.kindSaid)}</p>
      <h1 dir={dirOf(title)}>{title}</h1>
      {sheet.takenFrom !== null && <TakenFrom corpus={sheet.takenFrom} />}
      {sheet.kind === "question" && <ToQuestion id={sheet.id} asOf={asOf} />}
      {sheet.kind === "artefact" && <ToArtefact id={sheet.id} asOf={asOf} />}
      {sheet.kind === "image" && <ToImage id={sheet.id} asOf={asOf} />}
      {sheet.kind === "scholar" && <ToScholar id={sheet.id} asOf={asOf} />}
      {sheet.kind === "derivation" && <ToNumber id={sheet.id} asOf={asOf} />}
      {sheet.kind === "source" && sheet.takenFrom === null && <ToEntry id={sheet.id} asOf={asOf} />}
      {sheet.kind === "examination" && <ToVisit id={sheet.id} asOf={asOf} />}
      <ToPaper links={sheet.papers} source={sheet.kind === "source" ? sheet.id : null} asOf={asOf} />
      <ToForms kind={sheet.kind} id={sheet.id} takenFrom={sheet.takenFrom} asOf={asOf} />
      {(sheet.kind === "source" || sheet.kind === "passage") && (
        <ToGrid known={{ from: sheet.id }} asOf={asOf} />
      )}
      <ArguingOn kind={sheet.kind} id={sheet.id} />
      {sheet.standing !== null && (
        <div className="verdict">
          <StandingMark standing={sheet.standing} />
          <p className="sentence">{sheet.why && inReadersWords(sheet.why)}</p>
          {sheet.footing !== null && <p className="quiet">{words.footing[sheet.footing]}</p>}
        </div>
      )}
      {sheet.restsOn.length > 0 && (
        <p className="rests">
          {words.wouldNotStand} <Pieces pieces={sheet.restsOn} asOf={asOf} between={marks.comma} />.
        </p>
      )}
      {sheet.reference !== null && <Reference reference={sheet.reference} />}
      {sheet.fields.length > 0 && (
        <section>
          <h2 className="label">{heads?.says ?? words.whatItSays}</h2>
          {sheet.kind === "passage" ? (
            <PassageSays fields={sheet.fields} asOf={asOf} />
          ) : (
            <FieldList fields={sheet.fields} asOf={asOf} />
          )}
        </section>
      )}
      {sheet.numbers.length > 0 && (
        <section>
          <h2 className="label">{words.numbers}</h2>
          <dl className="facts figures">
            {sheet.numbers.map((number) => (
              <Fragment key={number.name}>
                <dt>{numberName(number.name)}</dt>
                <dd>
                  <bdi>{inReadersWords(number.value)}</bdi>
                </dd>
              </Fragment>
            ))}
          </dl>
        </section>
      )}
      {sheet.kind === "examination" && <OwnOutcomes id={sheet.id} line={sheet.examination} asOf={asOf} />}
      <Explained blocks={sheet.explained} asOf={asOf} />
      {sheet.resting !== null && <Resting resting={sheet.resting} asOf={asOf} />}
      {sheet.kind === "claim" && sheet.deciders?.length !== 0 && (
        <Deciders deciders={sheet.deciders} asOf={asOf} />
      )}
      <Ties
        title={heads?.below ?? words.restsOn}
        ties={sheet.below}
        from="below"
        nothing={sheet.standing === null ? null : words.nothingBelow}
        asOf={asOf}
      />
      <Ties
        title={heads?.above ?? words.above}
        ties={sheet.above}
        from="above"
        nothing={sheet.standing === null ? null : words.nothingAbove}
        asOf={asOf}
      />
      {sheet.holders.length > 0 && (
        <section>
          <h2 className="label">{words.holders}</h2>
          <Holders holders={sheet.holders} asOf={asOf} />
        </section>
      )}
      {sheet.findings.length > 0 && (
        <section>
          <h2 className="label">{words.about}</h2>
          <FindingList findings={sheet.findings} asOf={asOf} />
        </section>
      )}
      {sheet.said !== null && (
        <p className="quiet">
          {words.whereSaid}: <bdi>{sheet.said.file}</bdi>
          {marks.comma}
          {words.line} {sheet.said.line}
        </p>
      )}
    </article>
  );
}

interface TiesProps {
  readonly title: string;
  readonly ties: readonly Tie[];
  readonly from: "below" | "above";
  readonly nothing: string | null;
  readonly asOf: number | null;
}

function Ties({ title, ties, from, nothing, asOf }: TiesProps) {
  if (ties.length === 0 && nothing === null) return null;
  return (
    <section>
      <h2 className="label">{title}</h2>
      {ties.length === 0 && <p className="quiet">{nothing}</p>}
      <ul className="ties">
        {ties.map((tie, place) => (
          <li key={`${tie.how} ${tie.id}`}>
            <span className={ties[place - 1]?.how === tie.how ? "how unseen" : "how"}>
              {tieWords[tie.how][from]}
            </span>
            <span className="sentence">
              <RecordLink id={tie.id} text={tie.text} asOf={asOf} />
            </span>
            {tie.standing !== null && <StandingMark standing={tie.standing} />}
          </li>
        ))}
      </ul>
    </section>
  );
}
