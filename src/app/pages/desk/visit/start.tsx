import { Link } from "wouter";
import type { Visits } from "../../../../show/desk/visit/sheet/visits.ts";
import { underLens, visitPath } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { formWords } from "../../../words/desk/forms.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { visitWords as words } from "../../../words/recording/visit.ts";

/** The examinations and keepers that a visit can be made for. */
export function Start({ visits, asOf }: { readonly visits: Visits; readonly asOf: number | null }) {
  const { examinations, keepers } = visits;
  const canSave = useDesk().state.readOnly === null;
  if (examinations.length + keepers.length === 0)
    return (
      <>
        <p>{words.none}</p>
        {canSave && (
          <p className="crossing to-forms">
            <Link href={underLens("/new/examinations", asOf)}>{formWords.new("examination")}</Link>
          </p>
        )}
      </>
    );
  return (
    <>
      <p>{words.choose}</p>
      {examinations.length > 0 && <h2>{words.examinations}</h2>}
      <ul className="ways-in">
        {examinations.map(({ id, text }) => (
          <li key={id}>
            <ToVisit examination={id} keeper={null} asOf={asOf}>
              <span className="sentence" dir="auto">
                {inReadersWords(text)}
              </span>
            </ToVisit>
          </li>
        ))}
      </ul>
      {keepers.length > 0 && <h2>{words.keepers}</h2>}
      <ul className="ways-in">
        {keepers.map(([name, things]) => (
          <li key={name}>
            <ToVisit examination={null} keeper={name} asOf={asOf}>
              <bdi>{name}</bdi>
            </ToVisit>{" "}
            <span className="quiet">{words.things(things)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

interface Props {
  readonly examination: string | null;
  readonly keeper: string | null;
  readonly asOf: number | null;
  readonly children: React.ReactNode;
}

/** Leads to the sheet of a visit. */
function ToVisit({ examination, keeper, asOf, children }: Props) {
  return <Link href={underLens(visitPath({ examination, keeper, also: [] }), asOf)}>{children}</Link>;
}
