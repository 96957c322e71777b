import type { ReactNode } from "react";
import { Link } from "wouter";
import type { Id } from "../../base/finding.ts";
import { isRightToLeft } from "../../show/map/letters/letters.ts";
import type { MapPage } from "../../show/map/scene.ts";
import { underLens } from "../address.ts";
import { mirrored } from "../words/reader/language.ts";
import { mapWords } from "../words/shown/map.ts";
import { stepOfZoom } from "./widget/keys.ts";
import type { Stage } from "./stage/stage.ts";

interface Props {
  readonly page: MapPage;
  readonly asOf: number | null;
  /** Does something with the stage, where there is one. */
  readonly move: (how: (stage: Stage) => void) => void;
  readonly choose: (question: Id | null) => void;
  readonly foldAll: () => void;
  readonly save: () => void;
  readonly children?: ReactNode;
}

/** Share of the view that one press of an arrow moves. */
const step = 0.3;

type Move = readonly [text: string, name: string | undefined, how: (stage: Stage) => void];

/** Buttons that stand in the order of what they point at. */
function alongTheLine(pair: readonly [Move, Move]): readonly Move[] {
  return mirrored ? pair.toReversed() : pair;
}

const moves: readonly Move[] = [
  [mapWords.nearer, undefined, (stage) => stage.zoom(stepOfZoom)],
  [mapWords.farther, undefined, (stage) => stage.zoom(1 / stepOfZoom)],
  [mapWords.whole, undefined, (stage) => stage.whole()],
  ...alongTheLine([
    ["←", mapWords.toLeft, (stage) => stage.shift(-step, 0)],
    ["→", mapWords.toRight, (stage) => stage.shift(step, 0)],
  ]),
  ["↑", mapWords.toTop, (stage) => stage.shift(0, -step)],
  ["↓", mapWords.toGround, (stage) => stage.shift(0, step)],
];

/** Which question, and every way of moving about that needs no pointer and no drag. */
export function Tools({ page, asOf, move, choose, foldAll, save, children }: Props) {
  const { view, questions } = page;
  // A list runs as its first line does: one in other letters would be cut off at its start.
  const chosen = questions.find((one) => one.id === view.question);
  return (
    <div className="map-tools">
      {questions.length > 1 && !view.narrow && (
        <label>
          <span>{mapWords.question}</span>
          <select
            dir={chosen && (isRightToLeft(chosen.text) ? "rtl" : "ltr")}
            value={view.question ?? ""}
            onChange={(event) => choose(event.target.value === "" ? null : event.target.value)}
          >
            <option value="">{mapWords.everyQuestion}</option>
            {questions.map((one) => (
              <option key={one.id} value={one.id} dir="auto">
                {one.text}
              </option>
            ))}
          </select>
        </label>
      )}
      <fieldset aria-label={mapWords.view}>
        {moves.map(([text, name, how]) => (
          <button key={text} type="button" onClick={() => move(how)} aria-label={name} title={name}>
            {text}
          </button>
        ))}
      </fieldset>
      {view.unfolded.length > 0 && (
        <button type="button" onClick={foldAll}>
          {mapWords.foldAgain}
        </button>
      )}
      <span className="map-ways">
        {children}
        <button type="button" onClick={save}>
          {mapWords.save}
        </button>
        <Link href={underLens("/outline", asOf)}>{mapWords.outline}</Link>
      </span>
    </div>
  );
}
