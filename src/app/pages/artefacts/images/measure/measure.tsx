import { useMemo, useState } from "react";
import type { ImagePage } from "../../../../../show/artefacts/picture/page.ts";
import { useDesk } from "../../../../desk/desk.tsx";
import { imageWords as words } from "../../../../words/recording/images.ts";
import type { PictureShown } from "../picture-file.ts";
import { Marks } from "../stage/marks.tsx";
import { Stage } from "../stage/stage.tsx";
import type { Size } from "../stage/view.ts";
import { usePictureTold } from "./asking.ts";
import {
  asTaken,
  askedOf,
  neededFor,
  readingsOf,
  withMoved,
  withPoint,
  withoutLast,
  withoutReading,
} from "./draft.ts";
import type { Draft, PointSet } from "./draft.ts";
import { Few, TextField, troubleAt } from "./fields.tsx";
import { freshDraft } from "./fresh.ts";
import { useKept } from "./keeping.ts";
import { Cautions, Compared, Outcome } from "./outcome.tsx";
import { Readings } from "./readings.tsx";
import { RecordFields } from "./recording.tsx";
import { SaveMeasurement } from "./save.tsx";
import { ScaleFields } from "./scale.tsx";

interface Props {
  readonly page: ImagePage;
  readonly shown: PictureShown;
  readonly size: Size;
  readonly name: string;
  readonly drawn: boolean;
  readonly asOf: number | null;
}

/** Measuring on a picture: the picture with its points, and beside it the scale, the figure and how it is recorded. */
export function Measure({ page, shown, size, name, drawn, asOf }: Props) {
  const { readOnly } = useDesk().state;
  const { perInch } = shown.said;
  const fresh = useMemo(() => freshDraft(page, perInch), [page, perInch]);
  const { draft, put, restored } = useKept(page.id, fresh, readOnly === null);
  const [set, turn] = useState<PointSet>(draft.scale.readings.length > 0 ? "figure" : "scale");
  const [all, showAll] = useState(false);
  const told = usePictureTold(askedOf(draft, { id: page.id, ...size }), page);
  const pointsNow = draft.scale.way === "printed" || draft.taken === "angle" ? "figure" : set;
  return (
    <div className="measuring-page">
      <Stage
        url={shown.url}
        name={name}
        size={size}
        drawn={drawn}
        told={nextWords(draft, pointsNow)}
        tools={{
          onSet: (point) => put(withPoint(draft, pointsNow, point)),
          onBack: () => put(withoutLast(draft, pointsNow)),
          marks: (view) =>
            (["scale", "figure"] as const).map((one) =>
              one === "scale" && (draft.scale.way === "printed" || draft.taken === "angle") ? null : (
                <Marks
                  key={one}
                  set={one}
                  readings={readingsOf(draft, one)}
                  all={all}
                  round={one === "figure" && draft.taken === "diameter"}
                  view={view}
                  size={size}
                  onMove={(at, to) => put(withMoved(draft, one, at, to))}
                  onTake={(reading) => put(withoutReading(draft, one, reading))}
                />
              ),
            ),
        }}
      />
      <div className="measures">
        {restored && <p className="quiet">{words.restored}</p>}
        {draft.scale.way !== "printed" && draft.taken !== "angle" && (
          <Few label={words.pointsGo} name="point-set" value={set} choices={words.sets} onChange={turn} />
        )}
        {draft.taken !== "angle" && (
          <ScaleFields
            page={page}
            scale={draft.scale}
            told={told}
            perInch={perInch}
            onChange={(scale) => put({ ...draft, scale })}
          />
        )}
        {draft.taken !== "angle" && draft.scale.way !== "printed" && (
          <Readings draft={draft} set="scale" onChange={put} onTurn={() => turn("scale")} />
        )}
        <section>
          <h2 className="label">{words.what}</h2>
          <Few
            label={words.what}
            hidden
            name="taken"
            value={draft.taken}
            choices={words.takes}
            onChange={(taken) => put(asTaken(draft, taken))}
          />
          <Readings draft={draft} set="figure" onChange={put} onTurn={() => turn("figure")} />
          <p className="quiet">{words.againHint}</p>
          <label className="tick">
            <input type="checkbox" checked={all} onChange={(event) => showAll(event.target.checked)} />{" "}
            {words.showAll}
          </label>
          <TextField
            label={words.halfWidth}
            value={draft.halfWidth}
            trouble={troubleAt(told, "halfWidth")}
            hint={words.halfWidthHint}
            onChange={(halfWidth) => put({ ...draft, halfWidth })}
          />
        </section>
        <Outcome told={told} taken={draft.taken} />
        <RecordFields page={page} draft={draft} told={told} onChange={put} />
        <Compared
          lines={told?.compared ?? []}
          isAsked={(told?.figure ?? null) !== null && draft.of !== null && draft.dimension.trim() !== ""}
          asOf={asOf}
        />
        <SaveMeasurement
          record={told?.record ?? null}
          asOf={asOf}
          onSaved={() => put({ ...draft, readings: [] })}
          onClear={() => put(null)}
        />
        <Cautions told={told} />
      </div>
    </div>
  );
}

/** Which point comes next. */
function nextWords(draft: Draft, set: PointSet): string {
  const needed = neededFor(draft, set);
  const readings = readingsOf(draft, set);
  const last = readings.at(-1);
  return last !== undefined && last.length < needed
    ? words.next(words.sets[set], last.length + 1, needed, readings.length)
    : words.next(words.sets[set], 1, needed, readings.length + 1);
}
