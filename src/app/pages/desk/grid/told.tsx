import type { GridDraft } from "../../../../show/desk/grid/draft.ts";
import type { CellTold, RowRead } from "../../../../show/desk/grid/read.ts";
import type { Beside, RowWeighed, Taker } from "../../../../show/desk/grid/weighed.ts";
import { dirOf, RecordLink } from "../../../parts/link.tsx";
import { gridWords as words } from "../../../words/recording/grid.ts";
import { marks } from "../../../words/reader/marks.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { columnWord } from "./table/rows.tsx";

/** The key that takes what is offered first. */
const offerKey = "F8";

interface Props {
  readonly name: string;
  readonly draft: GridDraft;
  readonly read: RowRead | null;
  readonly weighed: RowWeighed | null;
  /** What is told of what holds for every row, where that is looked at. */
  readonly every: readonly CellTold[];
  readonly of: string;
  readonly onTake: (column: string, text: string) => void;
  readonly onMake: (name: string, make: boolean) => void;
}

/** What there is to say of the row with the focus: how it is read, what is wrong with it, and how it lies among the others. */
export function RowTold({ name, draft, read, weighed, every, of, onTake, onMake }: Props) {
  const told = [...every, ...(read?.troubles ?? [])];
  return (
    <section className="row-told" aria-labelledby="grid-row-told">
      <h2 className="label" id="grid-row-told">
        {name}
        {read?.of && (
          <>
            {marks.comma}
            <bdi>{inReadersWords(read.of.name)}</bdi>
          </>
        )}
      </h2>
      {read === null && every.length === 0 && <p className="quiet">{words.nothingHere}</p>}
      {read?.understood && (
        <p className="figures">
          {words.written} <bdi className="written">{read.written}</bdi>
          {marks.semicolon}
          {words.understood} <Understood text={inReadersWords(read.understood)} />
          {marks.semicolon}
          {words.inSI} <bdi>{read.si}</bdi>
        </p>
      )}
      {told.map((one, place) => (
        <Told key={`${one.column} ${place}`} told={one} strong first={place === 0} onTake={onTake} />
      ))}
      {weighed?.troubles.map((one, place) => (
        <p key={place} className="told">
          {inReadersWords(one)}
        </p>
      ))}
      {read?.notes.map((one) => (
        <Told key={one.column} told={one} first={told.length === 0} onTake={onTake} />
      ))}
      {read?.unmet && (
        <p>
          <button type="button" onClick={() => onMake(of, true)}>
            {words.make(of)}
          </button>
        </p>
      )}
      {read?.fresh && (
        <p>
          {words.willMake(of)}{" "}
          <button type="button" onClick={() => onMake(of, false)}>
            {words.makeNot(of)}
          </button>
        </p>
      )}
      {weighed && read?.troubles.length === 0 && <Weighed draft={draft} weighed={weighed} />}
    </section>
  );
}

/** Words with a figure at their head run as the words do. */
function Understood({ text }: { readonly text: string }) {
  return (
    <span className="isolated" dir={dirOf(text)}>
      {text}
    </span>
  );
}

interface ToldProps {
  readonly told: CellTold;
  readonly strong?: boolean;
  /** Its offer is what the key takes. */
  readonly first: boolean;
  readonly onTake: (column: string, text: string) => void;
}

function Told({ told: { column, message, offered }, strong = false, first, onTake }: ToldProps) {
  return (
    <p className={strong ? "told" : "told quiet"}>
      <span>
        {columnWord(column)}: {inReadersWords(message)}
      </span>
      {offered.map((text, place) => (
        <button
          type="button"
          key={text}
          aria-keyshortcuts={first && place === 0 ? offerKey : undefined}
          onClick={() => onTake(column, text)}
        >
          {words.write(text)}
          {first && place === 0 && <kbd>{offerKey}</kbd>}
        </button>
      ))}
    </p>
  );
}

function Weighed({ draft, weighed }: { readonly draft: GridDraft; readonly weighed: RowWeighed }) {
  const { against, agrees, twins, takers } = weighed;
  const rowOf = (key: number): string => words.rowIn(draft.rows.findIndex((one) => one.key === key) + 1);
  return (
    <>
      {against.map((one, place) => (
        <p key={place} className="clash">
          <Differing beside={one} rowOf={rowOf} />
        </p>
      ))}
      {against.length > 0 && <p className="quiet">{words.bothStay}</p>}
      {twins.map((one, place) => (
        <p key={place}>
          {one.row === null ? words.twinOf(inReadersWords(one.who)) : words.twinRow(rowOf(one.row))}
        </p>
      ))}
      {agrees > 0 && <p className="quiet">{words.agreesWith(agrees)}</p>}
      <Takers takers={takers} />
    </>
  );
}

function Differing({ beside, rowOf }: { readonly beside: Beside; readonly rowOf: (key: number) => string }) {
  const { id, row, figure, who, by, allowed } = beside;
  if (row !== null) return words.againstRow(rowOf(row), figure, by, allowed);
  const text = words.against(inReadersWords(who), figure, by, allowed);
  return id === null ? text : <RecordLink id={id} text={text} asOf={null} />;
}

function Takers({ takers }: { readonly takers: readonly Taker[] }) {
  const taking = takers.filter(({ leftOut }) => leftOut === null);
  const leaving = takers.filter(({ leftOut }) => leftOut !== null);
  return (
    <>
      {taking.length === 0 && leaving.length === 0 && <p className="quiet">{words.entersNone}</p>}
      <TakerRow name={words.enters} takers={taking} />
      <TakerRow name={words.leaves} takers={leaving} />
    </>
  );
}

function TakerRow({ name, takers }: { readonly name: string; readonly takers: readonly Taker[] }) {
  if (takers.length === 0) return null;
  return (
    <p>
      {name}{" "}
      {takers.map(({ id, name: called, leftOut }, place) => (
        <span key={id}>
          {place > 0 && marks.comma}
          <RecordLink
            id={id}
            text={leftOut === null ? called : words.leftOut(inReadersWords(called), inReadersWords(leftOut))}
            asOf={null}
          />
        </span>
      ))}
    </p>
  );
}
