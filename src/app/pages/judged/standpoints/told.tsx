import type { Way } from "../../../../show/judged/standpoints/component.ts";
import { StandingMark } from "../../../parts/standing.tsx";
import { dirOf } from "../../../parts/link.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";
import { standpointWords as words } from "../../../words/judged/standpoints.ts";

/** The fewest things that tell an alternative from its rivals. */
export function Told({ way }: { readonly way: Way }) {
  return (
    <>
      <ul className="told">
        {way.toldBy.map(({ id, text, fate }) => (
          <li key={id}>
            <StandingMark standing={fate} />
            <span className="sentence" dir={dirOf(inReadersWords(text))}>
              {inReadersWords(text)}
            </span>
          </li>
        ))}
      </ul>
      {way.ways > 1 && <p className="quiet">{words.alike(way.ways)}</p>}
    </>
  );
}
