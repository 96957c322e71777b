import { choiceName } from "../../../../../read/grammar/field-words.ts";
import type { PictureTold } from "../../../../../show/artefacts/picture/asked.ts";
import type { Called, ImagePage } from "../../../../../show/artefacts/picture/page.ts";
import { imageWords as words } from "../../../../words/recording/images.ts";
import { ChoiceField, TextField, troubleAt } from "./fields.tsx";
import type { Draft } from "./draft.ts";

interface Props {
  readonly page: ImagePage;
  readonly draft: Draft;
  readonly told: PictureTold | null;
  readonly onChange: (draft: Draft) => void;
}

const units: readonly Called[] = ["mm", "cm", "m", "km", "in", "ft"].map((name) => ({ id: name, name }));
const bases: readonly Called[] = ["photograph", "drawing", "scan"].map((id) => ({
  id,
  name: choiceName(id),
}));

/** What the measurement is of, and what else stands in its record. */
export function RecordFields({ page, draft, told, onChange }: Props) {
  const set = (change: Partial<Draft>): void => onChange({ ...draft, ...change });
  return (
    <section className="recording">
      <h2 className="label">{words.record}</h2>
      <ChoiceField
        label={words.of}
        value={draft.of ?? ""}
        choices={page.things}
        none={words.choosePlease}
        onChange={(of) => set({ of: of === "" ? null : of })}
      />
      <TextField
        label={words.dimension}
        value={draft.dimension}
        offers={draft.taken === "angle" ? page.angles : page.lengths}
        trouble={troubleAt(told, "dimension")}
        onChange={(dimension) => set({ dimension })}
      />
      <TextField label={words.between} value={draft.between} onChange={(between) => set({ between })} />
      {draft.taken !== "angle" && (
        <ChoiceField
          label={words.unit}
          value={draft.unit}
          choices={units}
          onChange={(unit) => set({ unit })}
        />
      )}
      <ChoiceField
        label={words.basis}
        value={draft.basis}
        choices={bases}
        none={words.choosePlease}
        onChange={(basis) => set({ basis })}
      />
      <ChoiceField
        label={words.whose}
        value={draft.by ?? ""}
        choices={page.scholars}
        none={words.nobody}
        hint={page.hasSource && draft.by === null ? words.whoseHint : ""}
        onChange={(by) => set({ by: by === "" ? null : by })}
      />
      <TextField
        label={words.year}
        value={draft.year}
        trouble={troubleAt(told, "year")}
        hint={words.yearHint}
        onChange={(year) => set({ year })}
      />
    </section>
  );
}
