import type { Named } from "../../../show/judged/standpoints/named.ts";
import type { ContestLines } from "../../../show/plan/contest.ts";
import { RecordLink } from "../../parts/link.tsx";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { ToLook } from "./to-look.tsx";

interface Props {
  readonly contest: ContestLines;
  readonly asOf: number | null;
}

/** First of all: the rivals and the answers that no recorded examination decides. */
export function Undecided({ contest, asOf }: Props) {
  const { pairs, answers } = contest;
  return (
    <section className="undecided">
      <h2>{words.none}</h2>
      {pairs.length + answers.length === 0 && <p className="quiet">{words.nothingOpen}</p>}
      {pairs.length > 0 && (
        <>
          <p className="quiet">{words.pairs}</p>
          <ul>
            {pairs.map(({ answers: [one, other], suggested }) => (
              <li key={`${one.id} ${other.id}`}>
                <span className="sentence">
                  <RecordLink {...one} asOf={asOf} /> <span className="or">{words.or}</span>{" "}
                  <RecordLink {...other} asOf={asOf} />
                </span>
                <Would suggested={suggested} asOf={asOf} />
              </li>
            ))}
          </ul>
        </>
      )}
      {answers.length > 0 && (
        <>
          <p className="quiet">{words.answers}</p>
          <ul>
            {answers.map(({ answer, suggested }) => (
              <li key={answer.id}>
                <span className="sentence">
                  <RecordLink {...answer} asOf={asOf} />
                </span>
                <Would suggested={suggested} asOf={asOf} />
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

/** The first suggested examination that would do it. */
function Would({ suggested, asOf }: { readonly suggested: readonly Named[]; readonly asOf: number | null }) {
  const [first] = suggested;
  if (!first) return null;
  return (
    <span className="would quiet">
      {words.couldBe} <ToLook {...first} asOf={asOf} />
      {suggested.length > 1 && <> {words.couldBeMore(suggested.length - 1)}</>}
    </span>
  );
}

/** The fewest or cheapest examinations that together tell the open rivals apart. */
export function SmallestSet({ contest, asOf }: Props) {
  const { rivals, told, set, setCost, nearMinimal } = contest;
  if (rivals === 0) return null;
  return (
    <section className="smallest">
      <h2>{nearMinimal ? words.nearSet : words.set}</h2>
      {set.length === 0 ? (
        <p className="quiet">{words.noSet}</p>
      ) : (
        <>
          <ul>
            {set.map(({ id, text, cost }) => (
              <li key={id}>
                <span className="sentence">
                  <ToLook id={id} text={text} asOf={asOf} />
                </span>{" "}
                <span className="quiet">
                  <bdi>{cost}</bdi>
                </span>
              </li>
            ))}
          </ul>
          <p className="quiet">
            {words.tells(told, rivals)} {set.length > 1 && setCost !== null && `${words.inAll(setCost)}.`}{" "}
            {nearMinimal && words.near}
          </p>
        </>
      )}
    </section>
  );
}
