import { useId } from "react";
import type { FeatureRow } from "../../../../../show/desk/visit/sheet/features.ts";
import { nothingLooked } from "../../../../../show/desk/visit/filled/filled.ts";
import type { LookedFields } from "../../../../../show/desk/visit/filled/filled.ts";
import { marks } from "../../../../words/reader/marks.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { visitWords as words } from "../../../../words/recording/visit.ts";
import { Earlier } from "./earlier.tsx";
import { Line } from "./field.tsx";

interface Props {
  readonly row: FeatureRow;
  readonly fields: LookedFields | undefined;
  readonly already: boolean;
  readonly change: (fields: LookedFields) => void;
  readonly asOf: number | null;
}

const answers: readonly LookedFields["present"][] = ["", "true", "false", "unclear"];

/** One feature: seen, not there, or not to be told; and what others saw, once that is said. */
export function LookFor({ row, fields = nothingLooked, already, change, asOf }: Props) {
  const name = useId();
  const put = (more: Partial<LookedFields>): void => change({ ...fields, ...more });
  return (
    <li className="row">
      <fieldset>
        <legend>
          <h3>
            <bdi>{row.feature}</bdi>{" "}
            <span className="quiet">
              {words.onThings(row.of.map((one) => inReadersWords(one.text)).join(marks.comma))}
            </span>
          </h3>
        </legend>
        <div className="sights">
          {answers.map((one) => (
            <label key={one}>
              <input
                type="radio"
                name={name}
                checked={fields.present === one}
                onChange={() => put({ present: one })}
              />
              {words.seen[one]}
            </label>
          ))}
        </div>
      </fieldset>
      <Line label={words.sentence} value={fields.text} onChange={(text) => put({ text })} />
      {already && <p className="sums">{words.already}</p>}
      <Earlier
        old={row.old}
        title={words.oldSight}
        show={words.showSight}
        shown={fields.present !== "" || fields.seen}
        onShow={() => put({ seen: true })}
        asOf={asOf}
      />
    </li>
  );
}
