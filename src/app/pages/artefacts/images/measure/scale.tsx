import type { PictureTold, ScaleAsked } from "../../../../../show/artefacts/picture/asked.ts";
import type { ImagePage } from "../../../../../show/artefacts/picture/page.ts";
import { formatNumber } from "../../../../../base/quantity/quantity-print.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { imageWords as words } from "../../../../words/recording/images.ts";
import { ChoiceField, Few, TextField, troubleAt } from "./fields.tsx";

interface Props {
  readonly page: ImagePage;
  readonly scale: ScaleAsked;
  readonly told: PictureTold | null;
  /** Pixels to the inch that the file says. */
  readonly perInch: number | null;
  readonly onChange: (scale: ScaleAsked) => void;
}

/** How the scale of a picture is set, and what it comes to. */
export function ScaleFields({ page, scale, told, perInch, onChange }: Props) {
  const set = (change: Partial<ScaleAsked>): void => onChange({ ...scale, ...change });
  return (
    <section className="setting-scale">
      <h2 className="label">{words.scale}</h2>
      <Few
        label={words.by}
        name="scale-way"
        value={scale.way}
        choices={words.ways}
        onChange={(way) => set({ way })}
      />
      {scale.way === "bar" && (
        <TextField
          label={words.length}
          value={scale.length}
          onChange={(length) => set({ length })}
          trouble={troubleAt(told, "length")}
          hint={
            told?.lengthRead === null || told === null
              ? words.lengthHint
              : `${words.readAs(told.lengthRead)} ${words.lengthHint}`
          }
        />
      )}
      {scale.way === "known" &&
        (page.known.length === 0 ? (
          <p className="quiet">{words.noKnown}</p>
        ) : (
          <ChoiceField
            label={words.known}
            value={scale.known ?? ""}
            onChange={(known) => set({ known: known === "" ? null : known })}
            choices={page.known}
            none={words.choosePlease}
            trouble={troubleAt(told, "known") ?? troubleAt(told, "length")}
            hint={words.knownHint}
          />
        ))}
      {scale.way === "printed" && (
        <>
          <TextField
            label={words.ratio}
            value={scale.ratio}
            onChange={(ratio) => set({ ratio })}
            trouble={troubleAt(told, "ratio")}
          />
          <TextField
            label={words.perInch}
            value={scale.perInch}
            onChange={(n) => set({ perInch: n })}
            trouble={troubleAt(told, "perInch")}
            hint={perInch === null ? words.perInchUnknown : words.perInchFrom(formatNumber(perInch))}
          />
          <TextField
            label={words.within}
            value={scale.within}
            onChange={(within) => set({ within })}
            trouble={troubleAt(told, "within")}
            hint={words.withinHint}
          />
        </>
      )}
      {told?.scale && <p className="scale-told">{inReadersWords(told.scale)}</p>}
    </section>
  );
}
