import { marks } from "../../../../words/reader/marks.ts";
import { imageWords as words } from "../../../../words/recording/images.ts";
import { begunAgain, neededFor, readingsOf, withoutReading } from "./draft.ts";
import type { Draft, PointSet } from "./draft.ts";

interface Props {
  readonly draft: Draft;
  readonly set: PointSet;
  readonly onChange: (draft: Draft) => void;
  /** Points now go to this set. */
  readonly onTurn: () => void;
}

/** How often something was pointed at: again, or one reading less. */
export function Readings({ draft, set, onChange, onTurn }: Props) {
  const readings = readingsOf(draft, set);
  if (readings.length === 0) return null;
  const isWhole = readings.at(-1)?.length === neededFor(draft, set);
  return (
    <div className="reading-list">
      <ol>
        {readings.map((points, place) =>
          points.length === 0 ? null : (
            <li key={place}>
              <span className="figures">
                {words.reading(place + 1)}{" "}
                <bdi className="quiet">
                  {points.map(({ x, y }) => `${String(x)}, ${String(y)}`).join(" · ")}
                </bdi>
              </span>
              <button type="button" onClick={() => onChange(withoutReading(draft, set, place))}>
                {words.takeAway}
                <span className="unseen">
                  {marks.comma}
                  {words.reading(place + 1)}
                  {marks.comma}
                  {words.sets[set]}
                </span>
              </button>
            </li>
          ),
        )}
      </ol>
      {isWhole && (
        <button
          type="button"
          onClick={() => {
            onTurn();
            onChange(begunAgain(draft, set));
          }}
        >
          {words.again}
          <span className="unseen">
            {marks.comma}
            {words.sets[set]}
          </span>
        </button>
      )}
    </div>
  );
}
