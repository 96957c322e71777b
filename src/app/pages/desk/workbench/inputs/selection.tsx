import type { Written } from "../../../../../read/edit/written.ts";
import type { InputField } from "../../../../../show/desk/workbench/input.ts";
import { workbenchWords as words } from "../../../../words/desk/workbench.ts";
import { useBench } from "../bench.ts";
import { Chosen } from "../fields/chosen.tsx";
import { Several } from "../fields/several.tsx";
import { Ticks } from "../fields/ticks.tsx";
import { asTyped, mapOf, textsOf } from "../fields/written.ts";

interface Props {
  readonly field: InputField;
}

/** A selection by things and a dimension or a kind of trace, and what narrows it. */
export function Selection({ field }: Props) {
  const { draft, set } = useBench();
  const given = mapOf(mapOf(draft.values["inputs"])[field.name]);
  const put = (word: string, value: Written | null): void => set(["inputs", field.name, word], value);
  const of = textsOf(given["of"]);
  const presences =
    field.kind === "observations" || field.observed ? ["true", "false", "unclear", "not-reported"] : [];
  return (
    <div className="selection">
      <div>
        <Several
          label={field.kind === "observations" && of.length === 0 ? words.anyThing : words.things}
          values={of}
          choices={field.things}
          onChange={(values) => put("of", asTyped(values))}
        />
        {of.length > 0 && (
          <label className="tick">
            <input
              type="checkbox"
              checked={given["parts"] !== "false"}
              onChange={(event) => put("parts", event.target.checked ? null : "false")}
            />
            {words.withParts}
          </label>
        )}
      </div>
      <div>
        {field.kind === "measurements" && (
          <Chosen
            label={words.dimension}
            value={textsOf(given["dimension"])[0] ?? ""}
            choices={named(field.dimensions, textsOf(given["dimension"])[0])}
            nothing={words.anyDimension}
            onChosen={(value) => put("dimension", value === "" ? null : value)}
          />
        )}
        {(field.kind === "observations" || field.takesObservations) && (
          <Chosen
            label={words.feature}
            value={textsOf(given["feature"])[0] ?? ""}
            choices={named(field.features, textsOf(given["feature"])[0])}
            nothing={words.anyFeature}
            onChosen={(value) => put("feature", value === "" ? null : value)}
          />
        )}
      </div>
      <Ticks
        label={words.presence}
        values={textsOf(given["present"])}
        choices={presences}
        named={words.presences}
        onChange={(values) => put("present", asTyped(values))}
      />
      <Narrower field={field} />
    </div>
  );
}

/** The spelling that stands in the draft keeps its place, whatever the corpus calls it. */
function named(choices: InputField["dimensions"], written: string | undefined): InputField["dimensions"] {
  if (written === undefined || choices.some((one) => one.value === written)) return choices;
  return [...choices, { value: written, text: written }];
}

function Narrower({ field }: Props) {
  const { draft, set } = useBench();
  const given = mapOf(mapOf(draft.values["inputs"])[field.name]);
  const put = (word: string, value: Written | null): void => set(["inputs", field.name, word], value);
  const { bases, states, people, sources, spread } = field.narrowing;
  const several = (word: string, label: string, choices: typeof people, ordered = false) => (
    <Several
      label={label}
      values={textsOf(given[word])}
      choices={choices}
      ordered={ordered}
      onChange={(values) => put(word, asTyped(values))}
    />
  );
  const narrowed = ["basis", "state", "by", "from", "prefer"].some((word) => given[word] !== undefined);
  if (bases.length + states.length + people.length + sources.length === 0 && !narrowed) return null;
  return (
    <details className="narrower" open={narrowed || undefined}>
      <summary>{words.narrow}</summary>
      <div>
        {field.kind === "measurements" && !field.observed && several("prefer", words.prefer, sources, true)}
        {several("from", words.from, sources)}
        {several("by", words.by, people)}
        <Ticks
          label={words.basis}
          values={textsOf(given["basis"])}
          choices={bases}
          onChange={(values) => put("basis", asTyped(values))}
        />
        {states.length + textsOf(given["state"]).length > 1 && (
          <Ticks
            label={words.state}
            values={textsOf(given["state"])}
            choices={states}
            onChange={(values) => put("state", asTyped(values))}
          />
        )}
        {(spread || given["spread"] !== undefined) && (
          <label className="tick">
            <input
              type="checkbox"
              checked={given["spread"] === "true"}
              onChange={(event) => put("spread", event.target.checked ? "true" : null)}
            />
            {words.spread}
          </label>
        )}
      </div>
    </details>
  );
}
