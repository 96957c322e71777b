import { Link } from "wouter";
import type { MapPage } from "../../show/map/scene.ts";
import { underLens } from "../address.ts";
import { StandingMark } from "../parts/standing.tsx";
import { mapWords } from "../words/shown/map.ts";
import { fullest } from "./widget/said.ts";

/** On a narrow screen, before anything is in focus: the outline is the page, and each answer opens in section. */
export function NarrowStart({ page, asOf }: { readonly page: MapPage; readonly asOf: number | null }) {
  const answers = page.scene.boxes.filter((box) => box.look.as === "answer");
  return (
    <>
      <p className="lead">{mapWords.narrow}</p>
      <p className="map-outline">
        <Link href={underLens("/outline", asOf)}>{mapWords.outline}</Link>
      </p>
      <h2 className="label">{mapWords.narrowAnswers}</h2>
      <ul className="map-answers">
        {answers.map((box) => {
          const standing = page.states[box.id]?.standing ?? null;
          const focus = encodeURIComponent(box.records[0] ?? box.id);
          return (
            <li key={box.id}>
              <Link className="sentence" dir="auto" href={underLens(`/map?focus=${focus}&narrow=1`, asOf)}>
                {fullest(box)}
              </Link>
              {standing !== null && <StandingMark standing={standing} />}
            </li>
          );
        })}
      </ul>
    </>
  );
}
