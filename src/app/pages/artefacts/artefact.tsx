import { Fragment } from "react";
import { Link } from "wouter";
import { portable } from "../../../read/source-file.ts";
import type { ArtefactPage as Artefact, Named } from "../../../show/artefacts/artefact.ts";
import type { FieldLine } from "../../../show/pages/fields.ts";
import { recordPath, underLens } from "../../address.ts";
import { PageLink, RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { artefactWords as words } from "../../words/shown/artefacts.ts";
import { words as shared } from "../../words/index.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { FieldList } from "../../parts/fields.tsx";
import { ToGrid } from "../desk/grid/to-grid.tsx";
import { TakenFrom } from "../sheet/taken-from.tsx";
import { ToForms } from "../sheet/form/to-form.tsx";
import { DimensionTables } from "./dimensions.tsx";
import { DrawingFigure } from "./drawing.tsx";
import { History } from "./history.tsx";
import { Pictures } from "./images/pictures.tsx";
import { Observations } from "./observations.tsx";

interface Props {
  readonly page: Artefact;
  readonly unit: string | null;
  readonly asOf: number | null;
  readonly toLook: (changes: Readonly<Record<string, string | null>>) => void;
}

/** The page of one thing: what it is, its dimensions and drawing, what was seen on it, its history, and what hangs on it. */
export function ArtefactPage({ page, unit, asOf, toLook }: Props) {
  return (
    <article className="artefact" key={page.id}>
      <p className="label kind">
        {page.kind ?? words.artefact}
        {page.wholes.length > 0 && (
          <>
            {marks.comma}
            {words.partOf} <Names things={page.wholes} asOf={asOf} />
          </>
        )}
      </p>
      <h1 dir="auto">{inReadersWords(page.name)}</h1>
      {page.takenFrom !== null && <TakenFrom corpus={page.takenFrom} />}
      <p className="crossing">
        <Link href={underLens(recordPath(page.id), asOf)}>{shared.recordSheet}</Link>
      </p>
      <ToForms kind="artefact" id={page.id} takenFrom={page.takenFrom} asOf={asOf} />
      <ToGrid known={{ of: page.id }} asOf={asOf} />
      <Facts title={words.whatItIs} fields={page.facts} asOf={asOf}>
        {page.placeWithheld && <p className="quiet">{words.placeWithheld}</p>}
      </Facts>
      {page.parts.length > 0 && (
        <section>
          <h2 className="label">{words.itsParts}</h2>
          <p className="part-names">
            <Names things={page.parts} asOf={asOf} />
          </p>
        </section>
      )}
      <Facts title={words.access} fields={page.access} asOf={asOf} whole>
        <p className="quiet">{words.caution}</p>
      </Facts>
      {page.drawing !== null && (
        <section>
          <h2 className="label">{words.drawing}</h2>
          <DrawingFigure
            drawing={page.drawing}
            unit={unit}
            toLook={toLook}
            name={portable(page.id.replaceAll("/", "-"))}
          />
        </section>
      )}
      <DimensionTables measured={page.dimensions} own={page.id} asOf={asOf} />
      <Observations observed={page.observed} asOf={asOf} />
      <History events={page.events} looks={page.looks} asOf={asOf} />
      <Pictures pictures={page.images} thing={page.id} asOf={asOf} />
      <section>
        <h2 className="label">{words.hanging}</h2>
        {page.hanging.length === 0 && <p className="quiet">{words.noHanging}</p>}
        <ul className="hanging">
          {page.hanging.map((one) => (
            <li key={one.claim}>
              <span className="sentence">
                <RecordLink id={one.claim} text={one.text} asOf={asOf} />
                {one.part !== null && (
                  <span className="quiet">
                    {" "}
                    {words.through} <Names things={[one.part]} asOf={asOf} />
                  </span>
                )}
              </span>
              <StandingMark standing={one.standing} />
            </li>
          ))}
        </ul>
      </section>
    </article>
  );
}

function Names({ things, asOf }: { readonly things: readonly Named[]; readonly asOf: number | null }) {
  return things.map((thing, place) => (
    <Fragment key={thing.id}>
      {place > 0 && marks.comma}
      <PageLink page="artefact" id={thing.id} text={thing.name} asOf={asOf} />
    </Fragment>
  ));
}

interface FactsProps {
  readonly title: string;
  readonly fields: readonly FieldLine[];
  readonly asOf: number | null;
  /** The one field is the section itself: its parts stand as rows. */
  readonly whole?: boolean;
  readonly children?: React.ReactNode;
}

function Facts({ title, fields, asOf, whole = false, children }: FactsProps) {
  const rows = whole
    ? fields.flatMap((field) =>
        field.lines.map((line) => ({
          name: line.label ?? field.name,
          lines: [{ label: null, pieces: line.pieces }],
        })),
      )
    : fields;
  return (
    <section>
      <h2 className="label">{title}</h2>
      <FieldList fields={rows} asOf={asOf} />
      {children}
    </section>
  );
}
