import { useState } from "react";
import type { Id } from "../../../../base/finding.ts";
import type { ListName } from "../../../../read/grammar/field.ts";
import { against, leadingTo, leadingToNew, withPremise } from "../../../../show/map/arguing/draft.ts";
import type { ArgumentDraft } from "../../../../show/map/arguing/draft.ts";
import { listsFor } from "../../../../show/map/arguing/roles.ts";
import type { InHandTold } from "../../../../show/map/arguing/told.ts";
import { Search } from "../../../pages/sheet/form/fields/search.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { arguingWords as words } from "../../../words/arguing/arguing.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { changeInHand } from "../hand.ts";
import { places, toPlace } from "../ways.ts";

/** What the parts of the argument in hand are shown with. */
export interface PartProps {
  readonly draft: ArgumentDraft;
  readonly told: InHandTold | null;
  readonly asOf: number | null;
}

/** Records that are chosen, each with its standing and the way to leave it out. */
export function Chosen({
  ids,
  told,
  asOf,
  onLeave,
}: Omit<PartProps, "draft"> & { readonly ids: readonly Id[]; readonly onLeave: (id: Id) => void }) {
  if (ids.length === 0) return null;
  return (
    <ol className="chosen-records">
      {ids.map((id) => {
        const named = told?.named[id];
        const label = named ? inReadersWords(named.label) : "";
        return (
          <li key={id}>
            <span className="sentence">
              {named ? <RecordLink id={id} text={named.label} asOf={asOf} /> : "…"}
            </span>
            <span className="does">
              {named?.standing && <StandingMark standing={named.standing} />}
              <button type="button" aria-label={words.leaveOutOne(label)} onClick={() => onLeave(id)}>
                {words.leaveOut}
              </button>
            </span>
          </li>
        );
      })}
    </ol>
  );
}

/** A field that looks for records of some lists, and takes the one that is chosen. */
export function Finder({
  lists,
  name,
  id,
  onChoose,
}: {
  readonly lists: readonly (ListName | "sources")[];
  readonly name: string;
  /** By what its field is known in the document, where it is gone to. */
  readonly id?: string;
  readonly onChoose: (id: Id, kind: string) => void;
}) {
  const [text, setText] = useState("");
  return (
    <Search
      from={{ from: "records", to: lists }}
      text={text}
      onType={setText}
      onChoose={({ id, kind }) => {
        setText("");
        onChoose(id, kind === null ? "" : typeof kind === "string" ? kind : kind.say);
      }}
      free={false}
      told={{ "aria-label": name, ...(id === undefined ? {} : { id }) }}
    />
  );
}

/** What the argument leans on. */
export function Because({ draft, told, asOf }: PartProps) {
  return (
    <section>
      <h3 className="label">{words.because}</h3>
      <Chosen
        ids={draft.because}
        told={told}
        asOf={asOf}
        onLeave={(id) => changeInHand((one) => withPremise(one, id))}
      />
      <Finder
        lists={listsFor("because")}
        name={words.premiseSearch}
        id={places.premise}
        onChoose={(id) => changeInHand((one) => (one.because.includes(id) ? one : withPremise(one, id)))}
      />
    </section>
  );
}

/** Where the argument leads: to a claim, to a new one in its words, or against something. */
export function Leads(props: PartProps) {
  const { draft, told, asOf } = props;
  const { aim } = draft;
  return (
    <>
      {(aim.to === "nothing" || aim.to === "claim" || aim.to === "new") && (
        <section>
          <h3 className="label">{words.therefore}</h3>
          {aim.to === "claim" && (
            <Chosen
              ids={[aim.id]}
              told={told}
              asOf={asOf}
              onLeave={(id) => changeInHand((one) => leadingTo(one, id))}
            />
          )}
          {aim.to === "new" && <NewClaim {...props} />}
          {aim.to === "nothing" && (
            <>
              <Finder
                lists={listsFor("therefore")}
                name={words.claimSearch}
                onChoose={(id) => changeInHand((one) => leadingTo(one, id))}
              />
              <button type="button" className="plain" aria-keyshortcuts="n" onClick={() => toNewClaim()}>
                {words.newClaim}
              </button>
            </>
          )}
        </section>
      )}
      {(aim.to === "nothing" || aim.to === "against") && (
        <section>
          <h3 className="label">{words.against}</h3>
          {aim.to === "against" && (
            <Chosen
              ids={aim.ids}
              told={told}
              asOf={asOf}
              onLeave={(id) => changeInHand((one) => against(one, id, aim.claim))}
            />
          )}
          {!(aim.to === "against" && aim.claim) && (
            <Finder
              lists={listsFor("against")}
              name={words.targetSearch}
              onChoose={(id, kind) =>
                changeInHand((one) =>
                  one.aim.to === "against" && one.aim.ids.includes(id)
                    ? one
                    : against(one, id, kind === "claim"),
                )
              }
            />
          )}
        </section>
      )}
    </>
  );
}

/** Leads the argument in hand to a claim that is made with it, and goes to where its words are typed. */
export function toNewClaim(): void {
  changeInHand((draft) => leadingToNew(draft, draft.aim.to === "new" ? draft.aim.question : null));
  toPlace(places.claim);
}

function NewClaim({ draft: { aim, because }, told }: PartProps) {
  if (aim.to !== "new") return null;
  const question = aim.question === null ? undefined : told?.named[aim.question];
  return (
    <>
      {question && <p className="quiet">{words.answersTo(inReadersWords(question.label))}</p>}
      <textarea
        id={places.claim}
        dir="auto"
        rows={2}
        aria-label={words.claimWords}
        placeholder={words.claimWords}
        value={aim.text}
        onKeyDown={(event) => {
          // A claim is one sentence: Enter goes on to what comes next.
          if (event.key !== "Enter" || event.shiftKey || event.ctrlKey || event.metaKey) return;
          if (event.nativeEvent.isComposing) return;
          event.preventDefault();
          toPlace(because.length === 0 ? places.premise : places.step);
        }}
        onChange={({ target: { value } }) =>
          changeInHand((one) => (one.aim.to === "new" ? { ...one, aim: { ...one.aim, text: value } } : one))
        }
      />
      <button
        type="button"
        className="plain"
        onClick={() => changeInHand((one) => ({ ...one, aim: { to: "nothing" } }))}
      >
        {words.leaveOut}
      </button>
    </>
  );
}
