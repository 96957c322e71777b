import { useLayoutEffect, useRef, useState } from "react";
import { Link } from "wouter";
import type { ArtefactsPage as Artefacts } from "../../../show/artefacts/artefacts.ts";
import { fitting } from "../../../show/artefacts/tree.ts";
import type { Thing } from "../../../show/artefacts/tree.ts";
import { pathOf, underLens } from "../../address.ts";
import { Empty } from "../../parts/empty.tsx";
import { useSome } from "../../parts/leaves/some.tsx";
import { artefactWords as words } from "../../words/shown/artefacts.ts";
import { empty } from "../../words/shown/empty.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { ToGrid } from "../desk/grid/to-grid.tsx";
import { DrawingFigure } from "./drawing.tsx";

interface Props {
  readonly page: Artefacts;
  readonly draw: readonly string[];
  readonly unit: string | null;
  readonly asOf: number | null;
  readonly toLook: (changes: Readonly<Record<string, string | null>>) => void;
}

/** The tree of things; those marked are drawn side by side at one scale. */
export function ArtefactsPage({ page, draw, unit, asOf, toLook }: Props) {
  const [looked, setLooked] = useState("");
  const [marked, setMarked] = useState<readonly string[]>(draw);
  const comparison = useRef<HTMLHeadingElement>(null);
  const drawn = draw.join(",");
  const arrived = useRef(drawn);
  // The address changes before the drawing is there.
  useLayoutEffect(() => {
    if (arrived.current === drawn || page.drawing === null) return;
    arrived.current = drawn;
    comparison.current?.focus();
    comparison.current?.scrollIntoView();
  }, [drawn, page.drawing]);
  const things = fitting(page.things, looked);
  const mark = (id: string, on: boolean): void =>
    setMarked(on ? [...marked, id] : marked.filter((one) => one !== id));
  return (
    <div className="artefacts">
      <h1>{words.artefacts}</h1>
      <ToGrid asOf={asOf} />
      {page.drawing !== null && (
        <section>
          <h2 className="label" ref={comparison} tabIndex={-1}>
            {words.sideBySide}
          </h2>
          <DrawingFigure drawing={page.drawing} unit={unit} toLook={toLook} name="side-by-side" />
        </section>
      )}
      {page.things.length === 0 ? (
        <Empty {...empty.artefacts} make={["artefacts"]} />
      ) : (
        <>
          <p className="quiet help">{words.help}</p>
          <label className="filter">
            {words.filter}
            <input type="search" value={looked} onChange={(event) => setLooked(event.target.value)} />
          </label>
        </>
      )}
      {page.things.length > 0 && things.length === 0 && <p>{words.none}</p>}
      <Things things={things} marked={marked} mark={mark} asOf={asOf} open={looked.trim() !== ""} />
      {marked.length > 0 && marked.join(",") !== drawn && (
        <output className="marked">
          <span>{words.marked(marked.length)}</span>
          {marked.length > 1 && (
            <Link href={underLens(`/artefacts?draw=${marked.map(encodeURIComponent).join(",")}`, asOf)}>
              {words.drawThem}
            </Link>
          )}
          <button type="button" onClick={() => setMarked([])}>
            {words.clear}
          </button>
        </output>
      )}
    </div>
  );
}

interface ThingsProps {
  readonly things: readonly Thing[];
  readonly marked: readonly string[];
  readonly mark: (id: string, on: boolean) => void;
  readonly asOf: number | null;
  readonly open: boolean;
}

function Things({ things, ...rest }: ThingsProps) {
  const [some, more] = useSome(things);
  return (
    <>
      <ul className="things">
        {some.map((thing) => (
          <li key={thing.id}>
            <ThingLine thing={thing} {...rest} />
            {thing.parts.length > 0 && (
              <Parts key={String(rest.open)} things={thing.parts} {...rest} many={more !== null} />
            )}
          </li>
        ))}
      </ul>
      {more}
    </>
  );
}

/** The parts of a thing; in a long list those of a fold that was never opened are not made. */
function Parts({ many, ...rest }: ThingsProps & { readonly many: boolean }) {
  const [opened, setOpened] = useState(rest.open);
  return (
    <details open={rest.open} onToggle={(event) => setOpened(opened || event.currentTarget.open)}>
      <summary>{words.parts(rest.things.length)}</summary>
      {(opened || !many) && <Things {...rest} />}
    </details>
  );
}

function ThingLine({ thing, marked, mark, asOf }: Omit<ThingsProps, "things"> & { readonly thing: Thing }) {
  const said = [
    thing.kind,
    ...thing.numbers.map(({ register, number }) => `${inReadersWords(register)}: ${number}`),
    thing.keeper,
    thing.measured > 0 ? words.measured(thing.measured) : null,
    thing.seen > 0 ? words.seen(thing.seen) : null,
  ].filter((one) => one !== null);
  return (
    <div className="thing">
      {thing.shaped ? (
        <label className="mark-it">
          <input
            type="checkbox"
            checked={marked.includes(thing.id)}
            aria-label={words.mark(inReadersWords(thing.name))}
            onChange={(event) => mark(thing.id, event.target.checked)}
          />
        </label>
      ) : (
        <span className="mark-it" />
      )}
      <div>
        <Link href={underLens(pathOf("artefact", thing.id), asOf)} className="sentence" dir="auto">
          {inReadersWords(thing.name)}
        </Link>
        <p className="quiet said">
          {said.map((one, place) => (
            <span key={place} dir="auto">
              {one}
            </span>
          ))}
        </p>
      </div>
    </div>
  );
}
