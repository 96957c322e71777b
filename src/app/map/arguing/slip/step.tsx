import { choiceName } from "../../../../read/grammar/field-words.ts";
import { kindOf } from "../../../../read/grammar/kinds.ts";
import type { ArgumentDraft } from "../../../../show/map/arguing/draft.ts";
import { arguingWords as words } from "../../../words/arguing/arguing.ts";
import { fieldWord } from "../../../words/index.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { changeInHand } from "../hand.ts";
import { places } from "../ways.ts";
import { Chosen, Finder } from "./leading.tsx";
import type { PartProps } from "./leading.tsx";

type Line = "text" | "scheme" | "strength" | "why";

function put(name: Line, value: string): void {
  changeInHand((draft) => ({ ...draft, [name]: value }));
}

/** The step in words: why the one bears on the other. */
export function Step({ draft }: PartProps) {
  const empty = draft.text.trim() === "";
  return (
    <section>
      <h3 className="label">
        <label htmlFor={places.step}>{words.step}</label>
      </h3>
      <textarea
        id={places.step}
        dir="auto"
        rows={3}
        aria-describedby={empty ? `${places.step}-empty` : undefined}
        value={draft.text}
        onChange={({ target: { value } }) => put("text", value)}
      />
      {empty && (
        <p className="quiet" id={`${places.step}-empty`}>
          {words.stepEmpty}
        </p>
      )}
    </section>
  );
}

/** What else is said of a step: its sort, how much it weighs and why, whose it is and where it is said. */
export function MoreOfStep(props: PartProps) {
  const { draft, told, asOf } = props;
  return (
    <details>
      <summary>{words.more}</summary>
      <OneOf name="scheme" field="scheme" draft={draft} />
      <OneOf name="strength" field="strength" draft={draft} />
      {draft.strength !== "" && draft.strength !== "ordinary" && (
        <label>
          {fieldWord("why-strength")}
          <textarea
            dir="auto"
            rows={2}
            value={draft.why}
            onChange={({ target: { value } }) => put("why", value)}
          />
        </label>
      )}
      <h4>{fieldWord("by")}</h4>
      <Chosen
        ids={draft.by}
        told={told}
        asOf={asOf}
        onLeave={(id) => changeInHand((one) => ({ ...one, by: one.by.filter((other) => other !== id) }))}
      />
      {draft.by.length === 0 && <p className="quiet">{words.byEmpty}</p>}
      <Finder
        lists={["scholars"]}
        name={words.search(fieldWord("by"))}
        onChoose={(id) => changeInHand((one) => ({ ...one, by: [...new Set([...one.by, id])] }))}
      />
      <h4>{fieldWord("from")}</h4>
      <From {...props} />
    </details>
  );
}

function OneOf({
  name,
  field,
  draft,
}: {
  readonly name: "scheme" | "strength";
  readonly field: string;
  readonly draft: ArgumentDraft;
}) {
  const found = kindOf("arguments").fields[field];
  const values = found?.type === "choice" ? found.of : [];
  return (
    <label>
      {fieldWord(field)}
      <select value={draft[name]} onChange={({ target: { value } }) => put(name, value)}>
        <option value="">{words.unsaid}</option>
        {values.map((one) => (
          <option key={one} value={one}>
            {inReadersWords(choiceName(one))}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Sources and passages in which the step is said, each with the place in it. */
function From({ draft, told, asOf }: PartProps) {
  const keyOf = (cited: string): string => cited.split(" ")[0] ?? "";
  const placeOf = (cited: string): string => cited.slice(keyOf(cited).length + 1);
  const putAt = (at: number, value: string | null): void =>
    changeInHand((one) => ({
      ...one,
      from: value === null ? one.from.toSpliced(at, 1) : one.from.toSpliced(at, 1, value),
    }));
  return (
    <>
      {draft.from.map((cited, at) => {
        const key = keyOf(cited);
        const label = inReadersWords(told?.named[key]?.label ?? "");
        return (
          <div className="cited" key={`${at} ${key}`}>
            <Chosen ids={[key]} told={told} asOf={asOf} onLeave={() => putAt(at, null)} />
            <input
              type="text"
              aria-label={words.place(label)}
              placeholder={fieldWord("at")}
              value={placeOf(cited)}
              onChange={({ target: { value } }) => putAt(at, value === "" ? key : `${key} ${value}`)}
            />
          </div>
        );
      })}
      <Finder
        lists={["sources", "passages"]}
        name={words.search(fieldWord("from"))}
        onChoose={(id) => changeInHand((one) => ({ ...one, from: [...one.from, id] }))}
      />
    </>
  );
}
