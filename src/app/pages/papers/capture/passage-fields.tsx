import { useState } from "react";
import { fieldsIn } from "../../../../show/desk/forms/layout.ts";
import { enteredAt } from "../../../../show/desk/forms/filled/entered.ts";
import type { EnteredMap } from "../../../../show/desk/forms/filled/entered.ts";
import { secondHand, writtenPassage } from "../../../../show/desk/papers/capture/captured.ts";
import type { PaperData } from "../../../../show/desk/papers/page.ts";
import { captureWords as words } from "../../../words/reading/capture.ts";
import { formWords } from "../../../words/desk/forms.ts";
import { FieldIn } from "../../sheet/form/fields/field.tsx";
import { Named, Search } from "../../sheet/form/fields/search.tsx";
import { HandsProvider, useHands } from "../../sheet/form/hands.ts";
import { usePart } from "./part.ts";
import type { Taking } from "./taking.ts";

interface Props {
  readonly source: PaperData;
  readonly taking: Taking;
}

const nothing: readonly string[] = [];

/** What a new passage says: its place, its words with their translation beside them, and what else is told of it. */
export function PassageFields({ source, taking }: Props) {
  const { begun, tried, putPassage } = taking;
  const { entered, joined, kept } = begun;
  const form = writtenPassage(entered);
  const { hands, checked } = usePart({ name: "taken", form, given: nothing, tried, change: putPassage });
  const quoted = textAt(entered, "quote") !== "";
  return (
    <HandsProvider value={hands}>
      <div className="in-a-row">
        <One name="at" entered={entered} />
        <One name="lang" entered={entered} />
      </div>
      {textAt(entered, "at") === "" && <p className="quiet told">{words.unprinted}</p>}
      {!quoted && begun.passage === null && <p className="quiet told">{words.region}</p>}
      <div className="beside">
        <One name="quote" entered={entered} lang={textAt(entered, "lang")} />
        <One name="translation" entered={entered} />
      </div>
      {(joined.length > 0 || kept.length > 0) && (
        <p className="quiet told">
          {joined.length > 0 && `${words.joined(joined)} `}
          {kept.length > 0 && `${words.kept(kept)} `}
          {words.asked}
        </p>
      )}
      <One name="paraphrase" entered={entered} />
      <details>
        <summary>
          <h3 className="label">{formWords.more}</h3>
        </summary>
        <SecondHand source={source} entered={entered} change={putPassage} />
        <One name="short" entered={entered} />
        <One name="id" entered={entered} />
        {checked.proposed !== null && textAt(entered, "id") === "" && (
          <p className="quiet told">{formWords.idLeftEmpty(checked.proposed)}</p>
        )}
        <One name="note" entered={entered} />
      </details>
    </HandsProvider>
  );
}

const passageFields = fieldsIn("passages");

function One({
  name,
  entered,
  lang,
}: {
  readonly name: string;
  readonly entered: EnteredMap;
  readonly lang?: string;
}) {
  const field = passageFields[name];
  if (!field) return null;
  return (
    <FieldIn
      path={["taken", name]}
      field={field}
      value={enteredAt(entered, name)}
      lang={lang === "" ? undefined : lang}
    />
  );
}

/** The source whose words they are, where they were only read in this one. */
function SecondHand({
  source,
  entered,
  change,
}: {
  readonly source: PaperData;
  readonly entered: EnteredMap;
  readonly change: Taking["putPassage"];
}) {
  const [text, setText] = useState("");
  const { named, learn } = useHands();
  const from = enteredAt(entered, "from");
  const [first] = Array.isArray(from) ? (from as readonly string[]) : [];
  const quoted = textAt(entered, "via") === "" || first === undefined ? null : first;
  const known = quoted === null ? null : named(quoted);
  const put = (id: string | null): void => change((before) => secondHand(before, source.key, id));
  return (
    <div className="field" {...{ role: "group", "aria-labelledby": "second-hand" }}>
      <p className="head" id="second-hand">
        <span className="name">{words.second}</span>
      </p>
      <div className="body">
        {quoted === null ? (
          <Search
            from={{ from: "records", to: ["sources"] }}
            text={text}
            onType={setText}
            free={false}
            onChoose={(choice) => {
              setText("");
              learn(choice);
              put(choice.id);
            }}
            told={{ "aria-label": words.of }}
          />
        ) : (
          <p className="entry">
            <span className="chosen">{known ? <Named choice={known} /> : <bdi>{quoted}</bdi>}</span>{" "}
            <button type="button" className="plain" onClick={() => put(null)}>
              {words.itself}
            </button>
          </p>
        )}
        <p className="quiet">{words.secondHelp}</p>
      </div>
    </div>
  );
}

/** A text that was put in under a name; empty where none was. */
export function textAt(entered: EnteredMap, name: string): string {
  const value = enteredAt(entered, name);
  return typeof value === "string" ? value : "";
}
