import { Fragment, useState } from "react";
import type { ReactNode } from "react";
import { Link } from "wouter";
import type { Text } from "../../../base/text/said/said.ts";
import type { Named } from "../../../show/judged/standpoints/named.ts";
import type { ExaminationLine } from "../../../show/plan/line.ts";
import { underLens, visitPath } from "../../address.ts";
import { RecordLink, dirOf } from "../../parts/link.tsx";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { visitWords } from "../../words/recording/visit.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { marks } from "../../words/reader/marks.ts";
import { Gain } from "./gain.tsx";
import { Outcomes } from "./outcomes.tsx";
import { Several } from "./several.tsx";
import { ToLook } from "./to-look.tsx";

interface Props {
  readonly line: ExaminationLine;
  readonly costsIn: string;
  readonly asOf: number | null;
}

/** The evidence that is to be looked at again, and the records that show the reason, under a word for what they are. */
interface Why {
  readonly evidence: Named | null;
  readonly word: string;
  readonly about: readonly Named[];
}

interface Placed {
  /** Its number in the list; null where the list has no order. */
  readonly place: number | null;
  readonly folded: boolean;
  /** Of its heading. */
  readonly level: 3 | 4;
  /** What suggests it; null for a recorded one. */
  readonly why: Why | null;
  /** The examination that the address is at. */
  readonly at: string | null;
  /** Takes the address to an examination, or away from all. */
  readonly goTo: (id: string | null) => void;
}

/** One examination in the list, open, or folded to its name and what it would decide. */
export function Look(props: Props & Placed) {
  const { line, place, folded, level, asOf } = props;
  if (folded) return <FoldedLook {...props} />;
  const Heading = level === 3 ? "h3" : "h4";
  return (
    <li className="look">
      <Heading tabIndex={-1} data-look={line.id}>
        <Rank place={place} />
        {line.recorded ? (
          <RecordLink id={line.id} text={inReadersWords(line.method)} asOf={asOf} />
        ) : (
          <Name text={line.method} />
        )}
      </Heading>{" "}
      <Decides line={line} />
      <LookBody {...props} />
    </li>
  );
}

/** What is folded is made only when it is opened: there may be hundreds. The address keeps the last one that was. */
function FoldedLook(props: Props & Placed) {
  const { line, place, level, why, at, goTo, asOf } = props;
  const [open, setOpen] = useState(at === line.id);
  const Heading = level === 3 ? "h3" : "h4";
  const toggled = (now: boolean): void => {
    if (now === open) return;
    setOpen(now);
    if (now) goTo(line.id);
    else if (at === line.id) goTo(null);
  };
  return (
    <li className="look">
      <details open={open} onToggle={(event) => toggled(event.currentTarget.open)}>
        <summary data-look={line.id}>
          <Heading>
            <Rank place={place} />
            <Name text={line.method} />
          </Heading>{" "}
          {why !== null && !open && (
            <span className="about">
              {why.evidence !== null && (
                <>
                  <Name text={why.evidence.text} />.{" "}
                </>
              )}
              {why.word}:{" "}
              {why.about.map((one, at) => (
                <Fragment key={one.id}>
                  {at > 0 && marks.semicolon}
                  <Name text={one.text} />
                </Fragment>
              ))}
            </span>
          )}{" "}
          <Decides line={line} />
        </summary>
        {open && why !== null && (
          <p className="about">
            {why.evidence !== null && (
              <>
                <RecordLink {...why.evidence} asOf={asOf} />.{" "}
              </>
            )}
            {why.word}: <Names names={why.about} asOf={asOf} />
          </p>
        )}
        {open && line.recorded && (
          <p className="quiet">
            <RecordLink id={line.id} text={words.sheet} asOf={asOf} />
          </p>
        )}
        {open && <LookBody {...props} />}
      </details>
    </li>
  );
}

/** What something is called, in the direction it runs in. */
function Name({ text }: { readonly text: Text }) {
  const name = inReadersWords(text);
  return <bdi dir={dirOf(name)}>{name}</bdi>;
}

function Rank({ place }: Pick<Placed, "place">) {
  return place === null ? null : (
    <>
      <span className="rank">{place}</span>{" "}
    </>
  );
}

function Names({ names, asOf }: { readonly names: readonly Named[]; readonly asOf: number | null }) {
  return names.map((one, place) => (
    <Fragment key={one.id}>
      {place > 0 && marks.comma}
      <RecordLink id={one.id} text={one.text} asOf={asOf} />
    </Fragment>
  ));
}

function Decides({ line }: { readonly line: ExaminationLine }) {
  return <span className={line.idle ? "decides idle" : "decides"}>{inReadersWords(line.decides)}</span>;
}

/** What an examination takes, its outcomes, and what it is expected to tell. */
export function LookBody({ line, costsIn, asOf }: Props) {
  return (
    <>
      <Terms line={line} asOf={asOf} />
      {line.destructive && <UsesUp line={line} asOf={asOf} />}
      {line.cautions.map(inReadersWords).map((one) => (
        <p className="quiet" key={one}>
          {one}
        </p>
      ))}
      <Outcomes examination={line.id} outcomes={line.outcomes} asOf={asOf} />
      {line.gain !== null && <Gain gain={line.gain} costsIn={costsIn} asOf={asOf} />}
      <p className="quiet">
        <Link href={underLens(visitPath({ examination: line.id, keeper: null, also: [] }), asOf)}>
          {visitWords.title}
        </Link>
      </p>
      {line.noGain !== null && line.recorded && <p className="quiet">{inReadersWords(line.noGain)}</p>}
    </>
  );
}

/** On what, at what cost, with whom. */
function Terms({ line, asOf }: { readonly line: ExaminationLine; readonly asOf: number | null }) {
  const { things, cost, recorded, destructive, keepers, permits, leadTimes } = line;
  // The columns are those of the table of outcomes below.
  const rows: readonly (readonly [name: string, column: string, value: ReactNode])[] = [
    ...(things.length > 0
      ? [[words.on, "first", <Names key="things" names={things} asOf={asOf} />] as const]
      : []),
    [words.keeper, "second", keepers.length > 0 ? <Several texts={keepers} /> : words.noKeeper],
    ...(cost !== null || recorded
      ? [[words.cost, "last", cost === null ? words.noCost : <bdi key="cost">{cost}</bdi>] as const]
      : []),
    [words.effect, "first", destructive ? <strong>{words.destructive}</strong> : words.untouched],
    ...(permits.length > 0
      ? [[words.permit, "second", <Several key="permits" texts={permits} />] as const]
      : []),
    ...(leadTimes.length > 0
      ? [[words.leadTime, "last", <Several key="ahead" texts={leadTimes} />] as const]
      : []),
  ];
  return (
    <>
      <dl className="terms">
        {rows.map(([name, column, value]) => (
          <div key={name} className={column}>
            <dt>{name}</dt>
            <dd dir="auto">{value}</dd>
          </div>
        ))}
      </dl>
      {line.notes.map((note) => (
        <p className="quiet" dir="auto" key={note}>
          {note}
        </p>
      ))}
    </>
  );
}

function UsesUp({ line, asOf }: { readonly line: ExaminationLine; readonly asOf: number | null }) {
  return (
    <div className="uses-up">
      {line.gentler.length > 0 && (
        <>
          <p className="quiet">{words.gentler}</p>
          <ul>
            {line.gentler.map((one) => (
              <li key={one.id}>
                <ToLook {...one} asOf={asOf} />
              </li>
            ))}
          </ul>
        </>
      )}
      <details>
        <summary>{words.asks}</summary>
        <ul className="asks">
          {line.asks.map(inReadersWords).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}
