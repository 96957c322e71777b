import { useLayoutEffect, useMemo, useRef, useState } from "react";
import { Link } from "wouter";
import { leavesOf } from "../../../../show/telling/talk/layout/layout.ts";
import type { Leaf } from "../../../../show/telling/talk/layout/leaf.ts";
import type { Shape } from "../../../../show/telling/talk/layout/room.ts";
import type { Slides } from "../../../../show/telling/talk/slides.ts";
import { pathOf, underLens } from "../../../address.ts";
import type { useAddress } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import type { TalkPage as Data } from "../../../worker/planning/talk.ts";
import { mirrored } from "../../../words/reader/language.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { talkWords as words } from "../../../words/telling/talk.ts";
import { NotesWindow } from "./notes.tsx";
import { toSlide, useShowing } from "./showing.ts";
import { Slide } from "./slide.tsx";
import { Stage } from "./stage.tsx";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** A talk: its slides as the corpus now has them, and the ways to present it. */
export function TalkPage({ page, address }: Props) {
  const { slides, pending } = page;
  if (slides === null)
    return (
      <>
        <h1>{words.notThere}</h1>
        <p>
          <Link href={underLens("/talks", address.asOf)}>{words.all}</Link>
        </p>
      </>
    );
  return <Talk key={page.id} slides={slides} pending={pending} address={address} />;
}

/** How many minutes a talk has where nobody says otherwise. */
const usualMinutes = 15;

function Talk({
  slides,
  pending,
  address,
}: Pick<Props, "address"> & { readonly slides: Slides; readonly pending: number }) {
  const { query, asOf, toLook } = address;
  const shape: Shape = query.get("shape") === "4:3" ? "4:3" : "16:9";
  const minutes = Math.min(600, Math.max(1, Math.round(Number(query.get("minutes")) || usualMinutes)));
  const [showing, change] = useShowing(slides.id);
  const [presents, setPresents] = useState(false);
  const pressed = useRef<HTMLElement | null>(null);
  const canSave = useDesk().state.readOnly === null;
  const leaves = useMemo(
    () => leavesOf(slides, { shape, told: inReadersWords, fonts: "bundled", mirrored }),
    [slides, shape],
  );
  useLayoutEffect(() => {
    if (!presents) pressed.current?.focus();
  }, [presents]);
  const openNotes = (): void => {
    const path = underLens(`${pathOf("talk", slides.id)}?notes&shape=${shape}&minutes=${minutes}`, asOf);
    window.open(path, `notes-${slides.id}`, "popup,width=1000,height=720");
  };
  const present = (at: number): void => {
    pressed.current = document.activeElement instanceof HTMLElement ? document.activeElement : null;
    change(toSlide(at, leaves.length));
    setPresents(true);
  };
  if (query.has("notes"))
    return <NotesWindow leaves={leaves} shape={shape} minutes={minutes} showing={showing} change={change} />;
  return (
    <article className="talk-page">
      <h1 dir="auto">{slides.title}</h1>
      {pending > 0 && <p className="computing">{words.computing}</p>}
      <div className="ways">
        <button type="button" className="first" onClick={() => present(0)}>
          {words.present}
        </button>
        <button type="button" onClick={openNotes}>
          {words.notes}
        </button>
        <label>
          {words.shape}{" "}
          <select
            value={shape}
            onChange={(event) => toLook({ shape: event.target.value === "4:3" ? "4:3" : null }, "replace")}
          >
            <option value="16:9">{words.wide}</option>
            <option value="4:3">{words.upright}</option>
          </select>
        </label>
        <label>
          {words.minutes}{" "}
          <input
            type="number"
            min="1"
            max="600"
            value={minutes}
            onChange={(event) => toLook({ minutes: event.target.value }, "replace")}
          />
        </label>
        {canSave && <Link href={underLens(pathOf("edit", slides.id), asOf)}>{words.edit}</Link>}
        <Link href={underLens("/talks", asOf)}>{words.all}</Link>
      </div>
      <p className="quiet">{words.keys}</p>
      <Rows leaves={leaves} shape={shape} present={present} />
      {presents && (
        <Stage
          leaves={leaves}
          shape={shape}
          showing={showing}
          change={change}
          openNotes={openNotes}
          end={() => setPresents(false)}
        />
      )}
    </article>
  );
}

function Rows({
  leaves,
  shape,
  present,
}: {
  readonly leaves: readonly Leaf[];
  readonly shape: Shape;
  readonly present: (at: number) => void;
}) {
  return (
    <ol className="leaves">
      {leaves.map((leaf, at) => (
        <li key={at}>
          <Slide leaf={leaf} shape={shape} name={`row-${at}`} />
          <div>
            <p>
              <button type="button" onClick={() => present(at)}>
                {words.presentFrom(at + 1)}
              </button>
            </p>
            {leaf.notes !== null && leaf.nth === 0 && (
              <p className="note" dir="auto">
                {leaf.notes}
              </p>
            )}
          </div>
        </li>
      ))}
    </ol>
  );
}
