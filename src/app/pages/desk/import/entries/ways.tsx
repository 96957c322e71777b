import type { Choice } from "../../../../../read/bibliography/incoming/plan.ts";
import type { EntryTold, FieldTold, TwinTold } from "../../../../../show/desk/import/told.ts";
import { RecordLink } from "../../../../parts/link.tsx";
import { importWords as words } from "../../../../words/desk/import.ts";
import { marks } from "../../../../words/reader/marks.ts";

interface Props {
  readonly entry: EntryTold;
  readonly choose: (place: number, choice: Choice) => void;
  readonly asOf: number | null;
}

/** How many sources an entry is said to be like. */
const most = 3;

/** What an entry is like and why, and the ways that are open: leave what is there, merge, or add another. */
export function Ways({ entry, choose, asOf }: Props) {
  const { place, twins, does, merge, label } = entry;
  const inCorpus = twins.some((one) => one.of === "corpus");
  const says = merge !== null && merge.missing.length + merge.differing.length > 0;
  const way = (what: EntryTold["does"], text: string, choice: Choice) => (
    <label>
      <input
        type="radio"
        name={`way-${place}`}
        checked={does === what}
        onChange={() => choose(place, choice)}
      />
      <span>{text}</span>
    </label>
  );
  return (
    <>
      <ul className="twins">
        {twins.slice(0, most).map((twin) => (
          <Twin key={`${twin.of} ${twin.key} ${twin.line}`} twin={twin} asOf={asOf} />
        ))}
      </ul>
      <fieldset className="ways">
        <legend className="unseen">{words.waysOf(label)}</legend>
        {way("leave", inCorpus ? words.leave : words.leaveFile, { do: "leave" })}
        {says && way("merge", words.merge(merge.missing.map((one) => one.name)), { do: "merge", take: [] })}
        {way("add", words.add(does === "add" ? entry.key : null), { do: "add" })}
      </fieldset>
      {merge !== null && !says && <p className="quiet">{words.nothingToMerge}</p>}
      {does === "merge" && merge !== null && (
        <dl className="merging">
          {merge.missing.map((field) => (
            <div key={field.name}>
              <dt>{field.name}</dt>
              <dd>
                <span className="quiet">{words.missing}</span>
                <span dir="auto">{field.theirs}</span>
              </dd>
            </div>
          ))}
          {merge.differing.map((field) => (
            <Differing
              key={field.name}
              field={field}
              name={`field-${place}-${field.name}`}
              take={(taken) => {
                const others = merge.differing
                  .filter((one) => one.taken && one !== field)
                  .map((one) => one.name);
                choose(place, { do: "merge", take: taken ? [...others, field.name] : others });
              }}
            />
          ))}
        </dl>
      )}
    </>
  );
}

function Twin({ twin, asOf }: { readonly twin: TwinTold; readonly asOf: number | null }) {
  const { of, key, label, title, file, line, why } = twin;
  const shown = title === "" || label.startsWith(title) ? label : `${label}, ${title}`;
  const reasons = why.includes("same") ? [words.why.same] : why.map((one) => words.why[one]);
  return (
    <li>
      {words.like[of]}{" "}
      {of === "corpus" ? (
        <RecordLink id={key} text={shown} asOf={asOf} />
      ) : (
        <>
          <bdi>{shown}</bdi> <span className="quiet">{words.line(file, line)}</span>
        </>
      )}
      : {reasons.join(marks.comma)}
    </li>
  );
}

/** A field that says something else in the corpus: one of the two is chosen. */
function Differing({
  field,
  name,
  take,
}: {
  readonly field: FieldTold;
  readonly name: string;
  readonly take: (taken: boolean) => void;
}) {
  const choice = (taken: boolean, word: string, label: string, text: string) => (
    <label>
      <input
        type="radio"
        name={name}
        checked={field.taken === taken}
        aria-label={`${label}: ${text}`}
        onChange={() => take(taken)}
      />
      <span className="quiet">{word}</span>
      <span dir="auto">{text}</span>
    </label>
  );
  return (
    <div>
      <dt>{field.name}</dt>
      <dd>
        {choice(false, words.here, words.keep(field.name), field.here ?? "")}
        {choice(true, words.theirs, words.take(field.name), field.theirs)}
      </dd>
    </div>
  );
}
