import type { SettingField } from "../../../../show/desk/workbench/settings.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { workbenchWords as words } from "../../../words/desk/workbench.ts";
import { numberName } from "../../../words/shown/numbers.ts";
import { useBench } from "./bench.ts";
import { Chosen } from "./fields/chosen.tsx";
import { Typed } from "./fields/typed.tsx";
import { understoodWords } from "./fields/understood.ts";

/** One setting, in the kind of field its declaration asks for, with how it is read. */
export function Setting({ field }: { readonly field: SettingField }) {
  const { page, set } = useBench();
  const path = ["parameters", field.name];
  const takesNumbers = field.kind === "number" || field.kind === "quantity";
  return (
    <div className="setting">
      {field.number === null && <OwnSetting field={field} />}
      {takesNumbers && (page.numbers.length > 0 || field.number !== null) && (
        <details className="narrower" open={field.number !== null || undefined}>
          <summary>{words.orNumber}</summary>
          <Chosen
            label={words.number}
            hidden
            value={field.number ?? ""}
            choices={page.numbers}
            nothing={words.noNumber}
            onChosen={(value) => set(path, value === "" ? null : { number: value })}
          />
          {field.number !== null && (
            <output className={field.understood.problem === null ? "quiet" : "problem"}>
              {understoodWords(field.understood)}
            </output>
          )}
        </details>
      )}
      <p className="quiet">
        {inReadersWords(field.doc)} {field.byDefault !== null && words.byDefault(field.byDefault)}
      </p>
    </div>
  );
}

function OwnSetting({ field }: { readonly field: SettingField }) {
  const { page, draft, set, typing } = useBench();
  const path = ["parameters", field.name];
  const along = page.form?.inputs.find((input) => input.takesAlong === field.name);
  const dimensions = page.inputs.find((input) => input.name === along?.name)?.dimensions;
  const taken = (text: string): void => set(path, text === "" ? null : text);
  if (field.kind === "choice" || dimensions !== undefined) {
    const choices = dimensions ?? field.choices.map((value) => ({ value, text: value }));
    return (
      <Chosen
        label={numberName(field.name)}
        value={field.written}
        choices={choices}
        nothing={field.byDefault ?? words.none}
        onChosen={taken}
      />
    );
  }
  return (
    <Typed
      key={`${draft.of} ${field.name}`}
      label={numberName(field.name)}
      value={field.written}
      understood={field.understood}
      offers={field.kind === "unit" ? page.units : []}
      onTaken={taken}
      onTyping={(text) => typing(`parameters.${field.name}`, text)}
    />
  );
}
