import { Link } from "wouter";
import type { Decider } from "../../../show/plan/deciding.ts";
import type { ExaminationLine } from "../../../show/plan/line.ts";
import { useAddress, underLens } from "../../address.ts";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { Outcomes } from "./outcomes.tsx";
import { ToLook, lookPath } from "./to-look.tsx";

/** As many are named on another page; the page of examinations has them all. */
const named = 4;

/** What would decide a question or a claim; where no plan is made yet, the way to one. */
export function Deciders({
  deciders,
  asOf,
}: {
  readonly deciders: readonly Decider[] | null;
  readonly asOf: number | null;
}) {
  const { lens } = useAddress();
  const further = (deciders?.length ?? 0) - named;
  return (
    <section className="deciders">
      <h2 className="label">{words.deciders}</h2>
      {deciders !== null && lens.suppose !== undefined && (
        <p className="quiet">{words.decidersOfTheRecord}</p>
      )}
      {deciders?.length === 0 && <p className="quiet">{words.noDecider}</p>}
      {deciders && deciders.length > 0 && (
        <ul>
          {deciders.slice(0, named).map(({ id, text, decides, cost, destructive }) => (
            <li key={id}>
              <span className="sentence">
                <ToLook id={id} text={text} asOf={asOf} />
              </span>{" "}
              <span className="quiet">{words.canDecide(inReadersWords(decides), cost, destructive)}</span>
            </li>
          ))}
        </ul>
      )}
      {(deciders === null || further > 0) && (
        <p>
          <Link className="quiet" href={underLens("/examinations", asOf)}>
            {deciders === null ? words.toPage : words.more(further)}
          </Link>
        </p>
      )}
    </section>
  );
}

/** On the sheet of an examination: what each outcome would change, and the way to its place in the list. */
export function OwnOutcomes({
  id,
  line,
  asOf,
}: {
  readonly id: string;
  readonly line: ExaminationLine | null;
  readonly asOf: number | null;
}) {
  return (
    <section className="examinations">
      <h2 className="label">{words.wouldCome}</h2>
      {line && <p className="decides">{inReadersWords(line.decides)}</p>}
      {line && <Outcomes examination={id} outcomes={line.outcomes} asOf={asOf} />}
      <p>
        <Link className="quiet" href={underLens(lookPath(id), asOf)}>
          {line ? words.toList : words.toPage}
        </Link>
      </p>
    </section>
  );
}
