import { useEffect, useMemo, useRef } from "react";
import { useLocation } from "wouter";
import type { Id } from "../../base/finding.ts";
import { mirrored as turned } from "../../show/map/layout/film/mirror.ts";
import type { MapPage as Scene } from "../../show/map/scene.ts";
import type { WholeWords } from "../../show/map/whole.ts";
import { recordPath, underLens } from "../address.ts";
import type { useAddress } from "../address.ts";
import { useActions } from "../parts/actions.tsx";
import { Empty } from "../parts/empty.tsx";
import { useNarrow } from "../parts/narrow.ts";
import { YearRod } from "../parts/year-rod.tsx";
import { mirrored } from "../words/reader/language.ts";
import { mapWords } from "../words/shown/map.ts";
import { yearIn } from "../words/index.ts";
import { withTurned } from "./arguing/boxes.ts";
import { useTurned } from "./arguing/hand.ts";
import { Drawing } from "./widget/drawing.tsx";
import type { MapDoes } from "./widget/does.ts";
import { NarrowStart } from "./narrow.tsx";
import { Replay } from "./replay.tsx";
import { saveMap } from "./save.ts";
import type { Stage } from "./stage/stage.ts";
import { Tools } from "./tools.tsx";

type Shown = Scene & WholeWords;

interface Props {
  readonly page: Shown;
  readonly address: ReturnType<typeof useAddress>;
}

/** The map's page: the question, the year, ways to move, the section itself, and what the year changed. */
export function MapPage({ page: given, address }: Props) {
  const tried = useTurned();
  const placed = useMemo(() => (mirrored ? { ...given, scene: turned(given.scene) } : given), [given]);
  const page = useMemo(() => withTurned(placed, tried), [placed, tried]);
  const { asOf, toYear, toLook, query } = address;
  const { view, scene, questions } = page;
  const stageRef = useRef<Stage | null>(null);
  const move = (how: (stage: Stage) => void): void => {
    if (stageRef.current) how(stageRef.current);
  };
  const does = useDoes(page, address);
  useFit(page, address);
  const narrow = useNarrow();
  const question = questions.find((one) => one.id === view.question) ?? null;
  const heading = question?.text ?? mapWords.title;
  const save = (): void => saveMap(given, heading);
  useActions(mapWords.title, () =>
    questions.length === 0 ? [] : [{ name: mapWords.save, key: null, run: save }],
  );
  if (questions.length === 0)
    return (
      <>
        <h1>{mapWords.title}</h1>
        <Empty {...mapWords.noQuestion} make={["questions"]} />
      </>
    );
  if (narrow && view.focus === null)
    return (
      <>
        <h1 dir="auto">{heading}</h1>
        <NarrowStart page={page} asOf={asOf} />
      </>
    );
  const replay = <Replay years={page.years} asOf={asOf} toYear={toYear} />;
  return (
    <div className="map-page">
      <div className="map-upper">
        <h1 dir="auto">{heading}</h1>
        <div className="map-years">
          <YearRod years={page.years} asOf={asOf} toYear={toYear} />
          {!narrow && replay}
        </div>
        <Tools
          page={page}
          asOf={asOf}
          move={move}
          choose={(next) => toLook({ question: next, open: null, focus: null, only: null, at: null })}
          foldAll={() => toLook({ open: null })}
          save={save}
        >
          {narrow && replay}
        </Tools>
        {narrow && <Focus page={page} does={does} />}
        {page.foldedByItself !== null && <p className="quiet map-note">{page.foldedByItself}</p>}
        <Drawing
          page={page}
          frame={[view.question, view.only || view.narrow ? view.focus : null].join("\n")}
          at={query.get("at")}
          asOf={asOf}
          name={mapWords.name(question?.text ?? null)}
          stageRef={stageRef}
          does={does}
        >
          {asOf !== null && <Changes page={page} year={asOf} />}
          {!narrow && <Focus page={page} does={does} />}
          {scene.routes.length === 0 && (
            <div className="map-changes">
              <Empty {...mapWords.noArgument} />
            </div>
          )}
          <Boxes page={page} />
        </Drawing>
      </div>
    </div>
  );
}

/** What the map's gestures and keys do to the address. */
function useDoes({ view }: Shown, { asOf, toLook }: Props["address"]): MapDoes {
  const [, go] = useLocation();
  const leave = (at: Id): void => toLook({ at }, "replace");
  return {
    leave,
    open: (record, at) => {
      leave(at);
      go(underLens(recordPath(record), asOf));
    },
    focus: (record) => toLook({ focus: record, only: null }),
    only: (record) => toLook({ focus: record, only: "1", open: null }),
    fold: (id) => {
      const open = view.unfolded.includes(id)
        ? view.unfolded.filter((one) => one !== id)
        : [...view.unfolded, id];
      toLook({ open: open.length === 0 ? null : open.join(" ") });
    },
  };
}

/** A narrow screen shows the focus alone in one column, a wide one the section to the sides. */
function useFit({ view }: Shown, { toLook }: Props["address"]): void {
  const narrow = useNarrow();
  const wanted = narrow && view.focus !== null;
  useEffect(() => {
    if (view.narrow !== wanted) toLook({ narrow: wanted ? "1" : null }, "replace");
  }, [view.narrow, wanted, toLook]);
}

/** What is in focus, and the ways out of it. */
function Focus({ page, does }: { readonly page: Shown; readonly does: MapDoes }) {
  const { focus, only } = page.view;
  if (focus === null) return null;
  const title = page.focus ?? focus;
  return (
    <p className="map-focus">
      <span dir="auto">{only ? mapWords.alone(title) : mapWords.inFocus(title)}</span>
      <button type="button" onClick={() => (only ? does.focus(focus) : does.only(focus))}>
        {only ? mapWords.withRest : mapWords.only}
      </button>
      <button type="button" onClick={() => does.focus(null)}>
        {mapWords.everything}
      </button>
    </p>
  );
}

/** What changed with the last step in time, in words; said aloud when it changes. */
function Changes({ page, year }: { readonly page: Shown; readonly year: number }) {
  return (
    <section className="map-changes" aria-live="polite">
      <h2 className="label">{mapWords.changedIn(yearIn(year))}</h2>
      {page.changes.length === 0 ? (
        <p className="quiet">{mapWords.changedNothing(yearIn(year))}</p>
      ) : (
        <ul>
          {page.changes.map((change) => (
            <li key={change} className="sentence">
              {change}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** The boxes as a list with their places, for those who read the page instead of moving about the map. */
function Boxes({ page }: { readonly page: Shown }) {
  const boxes = page.scene.boxes
    .filter((box) => box.look.as !== "mark")
    .toSorted((one, other) => one.y - other.y || one.x - other.x);
  return (
    <ul className="unseen" aria-label={mapWords.boxes}>
      {boxes.map((box) => (
        <li
          key={box.id}
          dir="auto"
          data-box={box.id}
          data-place={[box.x, box.y, box.width, box.height].join(" ")}
        >
          {`${box.title} ${page.states[box.id]?.standing ?? ""}`.trim()}
        </li>
      ))}
    </ul>
  );
}
