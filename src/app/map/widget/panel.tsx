import type { CSSProperties, Ref } from "react";
import type { BoxState, PlacedBox, Setting } from "../../../show/map/scene.ts";
import type { Whole } from "../../../show/map/whole.ts";
import { RecordLink, dirOf } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { aboutBox } from "../arguing/boxes.ts";
import { Ways } from "../arguing/ways-row.tsx";
import { mapWords } from "../../words/shown/map.ts";
import { fullest } from "./said.ts";

interface Props {
  readonly box: PlacedBox;
  readonly state: BoxState | null;
  /** The record's own words, whole. */
  readonly whole: Whole | null;
  readonly asOf: number | null;
  readonly place: Ref<HTMLElement>;
  readonly does: {
    readonly leave: () => void;
    /** Null where the box is in focus, or shown alone, already. */
    readonly focus: (() => void) | null;
    readonly only: (() => void) | null;
    readonly fold: (() => void) | null;
    readonly unfolded: boolean;
    /** Takes the focus to the map. */
    readonly enter: () => void;
    readonly close: () => void;
  };
}

/** Where the panel begins, until the stage has put it over its box. */
const hidden: CSSProperties = { visibility: "hidden" };

/** The whole text of a box in place, over its neighbours, with the ways that lead on from it. */
export function Panel({ box, state, whole, asOf, place, does }: Props) {
  const [record] = box.records;
  const about = aboutBox(box);
  const several = box.look.as === "pile" && box.records.length > 1;
  const own = fullest(box);
  const text = whole?.text ?? own;
  const label = box.look.as === "beam" || box.look.as === "pile" || box.look.as === "number";
  /** A button may go with what it does; so the focus goes to the map first. */
  const press = (act: () => void) => (): void => {
    does.enter();
    act();
  };
  return (
    <section className="map-panel" ref={place} style={hidden} aria-label={box.title}>
      {label && own !== text && (
        <p className="said" dir={dirOf(own)}>
          {own}
        </p>
      )}
      <p className="sentence" dir="auto" lang={whole?.lang ?? undefined}>
        {text}
      </p>
      {state?.later && <p className="said">{mapWords.notYet}</p>}
      {state && !state.later && (state.standing !== null || state.said !== "") && (
        <p className="said">
          {state.standing !== null && <StandingMark standing={state.standing} bare={state.said !== ""} />}
          <span dir="auto">{state.said}</span>
        </p>
      )}
      <Held box={box} asOf={asOf} onLeave={does.leave} />
      <p className="ways">
        {record !== undefined && (
          <span onClickCapture={does.leave}>
            <RecordLink id={record} text={mapWords.sheet} asOf={asOf} />
          </span>
        )}
        {does.focus && (
          <button type="button" onClick={press(does.focus)}>
            {mapWords.focus}
          </button>
        )}
        {does.only && (
          <button type="button" onClick={press(does.only)}>
            {mapWords.only}
          </button>
        )}
        {does.fold && (
          <button type="button" onClick={press(does.fold)}>
            {does.unfolded ? mapWords.fold : mapWords.unfold}
          </button>
        )}
        <button type="button" onClick={does.close}>
          {mapWords.close}
        </button>
      </p>
      {about && !several && (
        <p className="ways arguing-ways">
          <Ways about={about} />
        </p>
      )}
    </section>
  );
}

/** The labels of a pile and the parts of a thing, each leading to its sheet. */
function Held({
  box,
  asOf,
  onLeave,
}: {
  readonly box: PlacedBox;
  readonly asOf: number | null;
  readonly onLeave: () => void;
}) {
  const { look } = box;
  const about = aboutBox(box);
  const text = (setting: Setting): string => setting.lines.join(" ");
  const held =
    look.as === "pile" && box.records.length > 1
      ? look.labels.map((label) => ({ id: label.id, text: label.value, under: label.under }))
      : look.as === "thing"
        ? look.parts.map((part) => ({ id: part.id, text: text(part.name), under: "" }))
        : [];
  if (held.length === 0) return null;
  return (
    <ul className="held" onClickCapture={onLeave}>
      {held.map((one) => (
        <li key={one.id}>
          <RecordLink id={one.id} text={one.text} asOf={asOf} />
          {one.under !== "" && <span className="quiet">{one.under}</span>}
          {about && look.as === "pile" && (
            <span className="arguing-ways">
              <Ways about={{ ...about, id: one.id }} label={one.text} />
            </span>
          )}
        </li>
      ))}
    </ul>
  );
}
