import { useState } from "react";
import type { Turned } from "../../../../show/map/arguing/told.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useActions } from "../../../parts/actions.tsx";
import { arguingWords as words } from "../../../words/arguing/arguing.ts";
import { useDeskKeeps, useInHand } from "../hand.ts";
import { Slip } from "./slip.tsx";
import { TurnedList } from "./turned.tsx";

interface Props {
  /** Another whenever the corpus or the lens is. */
  readonly corpus: unknown;
  readonly onMap: boolean;
  readonly asOf: number | null;
}

/** The argument in hand, which goes along from page to page until it is saved or put away; then what it changed. */
export function InHand({ corpus, onMap, asOf }: Props) {
  const hand = useInHand();
  const { readOnly } = useDesk().state;
  const [done, setDone] = useState<readonly Turned[] | null>(null);
  useDeskKeeps(readOnly === null);
  // On the map this key leaves the box that is taken.
  const shuts = done !== null && !hand && !onMap;
  useActions(
    words.title,
    shuts ? [{ name: words.close, key: "Escape", run: () => setDone(null) }] : [],
    "everywhere",
  );
  if (hand)
    return (
      <Slip
        key={hand.name}
        draft={hand.draft}
        corpus={corpus}
        onMap={onMap}
        asOf={asOf}
        onSaved={(turned) => setDone(turned)}
      />
    );
  if (done === null) return null;
  return (
    <section className="in-hand done" aria-label={words.title} aria-live="polite">
      <h2 className="label">{done.length === 0 ? words.changedNothing : words.changed}</h2>
      <TurnedList turned={done} asOf={asOf} />
      <p className="saves">
        <button type="button" onClick={() => setDone(null)}>
          {words.close}
        </button>
      </p>
    </section>
  );
}
