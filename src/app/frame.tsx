import { useLayoutEffect, useRef } from "react";
import { Link } from "wouter";
import { mapPath, useAddress, underLens } from "./address.ts";
import { DeskProvider, useDeskOf } from "./desk/desk.tsx";
import { FloorLine } from "./desk/floor/floor-line.tsx";
import { DeskFoot } from "./desk/foot.tsx";
import { InHand } from "./map/arguing/slip/in-hand.tsx";
import { useModel } from "./model/model.ts";
import { MergePage } from "./pages/desk/changes/merge.tsx";
import { OpeningPage } from "./pages/judged/question/incipit.tsx";
import { FindingsPage } from "./pages/lists/findings.tsx";
import { Page } from "./pages/page.tsx";
import { SearchField } from "./pages/search/field.tsx";
import { Commands } from "./parts/commands.tsx";
import { LanguageChoice } from "./parts/leaves/language.tsx";
import { useArrival } from "./parts/places/arrival.ts";
import { Supposed } from "./parts/places/supposed.tsx";
import { nameOf, titleOf } from "./parts/places/title.ts";
import { artefactWords } from "./words/shown/artefacts.ts";
import { examinationWords } from "./words/judged/examinations.ts";
import { historyWords } from "./words/judged/history.ts";
import { mapWords } from "./words/shown/map.ts";
import { changesWords } from "./words/desk/changes.ts";
import { deskWords } from "./words/desk/desk.ts";
import { words } from "./words/index.ts";
import { literatureWords } from "./words/reading/literature.ts";
import { openingWords } from "./words/shown/opening.ts";
import { numberWords } from "./words/shown/numbers.ts";
import { scholarWords } from "./words/shown/scholars.ts";
import { standpointWords } from "./words/judged/standpoints.ts";
import { tellingWords } from "./words/telling/telling.ts";
import { supposeWords } from "./words/judged/suppose.ts";
import type { Change } from "./worker/messages.ts";

/** The app's frame: the title and the rooms at the side, the page, and what changed on disk below. */
export function Frame() {
  const address = useAddress();
  const asking = useModel(address.wanted, address.lens);
  const { told, changes, trouble, waiting, incipit, opening } = asking;
  const isOpening = told === null || (waiting && opening !== null);
  const [desk, said, dismiss] = useDeskOf(asking.desk, asking);
  const contents = told?.tell === "page" ? told.contents : null;
  const main = useRef<HTMLElement>(null);
  const supposed = told?.tell === "page" ? told.supposed : null;
  const name = told?.tell === "page" ? nameOf(told.page) : "";
  const arrival = supposed?.known ? supposeWords.arrival(name) : name;
  const title =
    told?.tell === "page"
      ? `${supposed?.known ? `${supposeWords.supposed} · ` : ""}${titleOf(told.page, told.contents, address)}`
      : told === null
        ? "Variorum"
        : words.unreadable;

  useArrival(main, address.path, waiting);
  useLayoutEffect(() => {
    if (!waiting) document.title = title;
  }, [title, waiting]);

  const room = (path: string, name: string, count: number | null, here: boolean, key?: string) => (
    <li>
      <Link
        href={underLens(path, address.asOf)}
        aria-current={here ? "page" : undefined}
        aria-keyshortcuts={key}
      >
        <span>{name}</span>
        {count !== null && <span className="count">{count}</span>}
      </Link>
    </li>
  );
  const { page } = address.wanted;
  const literature = /^\/(?:literature|import|entry|paper)/.test(address.path);
  const records = /^\/(?:record|new|edit)/.test(address.path);
  return (
    <DeskProvider value={desk}>
      <a
        className="skip"
        href="#page"
        onClick={(event) => {
          // Not by the address: back would have to be pressed twice.
          event.preventDefault();
          main.current?.focus();
        }}
      >
        {words.skip}
      </a>
      <header className="side">
        <p className="corpus">
          <bdi>{contents?.title ?? incipit?.title ?? "Variorum"}</bdi>
        </p>
        <SearchField here={page === "search"} asOf={address.asOf} />
        <nav>
          <ul>
            {room("/", words.questions, null, page === "question" || (page === "contents" && !records))}
            {room(mapPath(address.wanted), mapWords.title, null, page === "map")}
            {room("/outline", words.outline, null, page === "outline")}
            {room(
              "/artefacts",
              artefactWords.artefacts,
              null,
              page === "artefacts" || page === "artefact" || page === "image",
            )}
            {room("/literature", literatureWords.title, null, literature)}
            {room(
              "/numbers",
              numberWords.numbers,
              null,
              page === "numbers" || page === "number" || page === "workbench",
            )}
            {room("/scholars", scholarWords.scholars, null, page === "scholars" || page === "scholar")}
            {room("/standpoints", standpointWords.standpoints, null, page === "standpoints")}
            {room("/history", historyWords.history, null, page === "history")}
            {room("/examinations", examinationWords.examinations, null, page === "examinations", "e")}
            {room("/findings", words.findings, contents?.findings ?? null, page === "findings")}
            {room("/records", words.records, null, records)}
            {room("/changes", changesWords.changes, null, page === "changes")}
            {room(
              "/write",
              tellingWords.title,
              null,
              page === "telling" || page === "talks" || page === "talk",
            )}
          </ul>
        </nav>
        <Commands />
        <FloorLine />
        <LanguageChoice />
        {told?.tell === "page" && !told.whole && (
          <p className="computing">
            {contents?.findings === null ? openingWords.looking : words.lookingAgain}
          </p>
        )}
        {contents !== null && contents.pending > 0 && (
          <p className="computing">{words.computing(contents.pending)}</p>
        )}
        {asking.desk !== null && asking.desk.readOnly !== null && (
          <p className="computing">{deskWords.readOnly(asking.desk.readOnly)}</p>
        )}
        {asking.desk?.troubles && (
          <p className="computing">{`${deskWords.setAside} ${asking.desk.troubles.join("; ")}.`}</p>
        )}
      </header>
      <main
        id="page"
        ref={main}
        tabIndex={-1}
        aria-busy={waiting}
        data-shown={waiting ? undefined : address.path}
      >
        {trouble !== null && (
          <p className="trouble" role="alert">
            {trouble}
          </p>
        )}
        {isOpening && trouble === null && (
          <OpeningPage incipit={incipit} opening={opening} address={address} />
        )}
        {told?.tell === "unreadable" && told.merge && <MergePage page={told.merge} address={address} />}
        {told?.tell === "unreadable" && !told.merge && (
          <>
            <h1>{words.unreadable}</h1>
            <FindingsPage findings={told.findings} asOf={null} />
          </>
        )}
        {supposed && <Supposed told={supposed} address={address} />}
        {!isOpening && told.tell === "page" && contents && (
          <Page page={told.page} contents={contents} address={address} />
        )}
        <Changed changes={changes} />
        <output className="unseen arrival">{waiting ? "" : arrival}</output>
        <InHand corpus={contents} onMap={page === "map"} asOf={address.asOf} />
        <DeskFoot desk={desk} said={said} dismiss={dismiss} />
      </main>
    </DeskProvider>
  );
}

/** What an edit on disk changed in the standings, said aloud and kept in sight. */
function Changed({ changes }: { readonly changes: readonly Change[] }) {
  return (
    <output className="changed" aria-live="polite">
      {changes.length > 0 && (
        <>
          <p className="label">{words.changed}</p>
          <ul>
            {changes.map((one) => (
              <li key={one.text} dir="auto">
                {words.was(one.text, one.was, one.is)}
              </li>
            ))}
          </ul>
        </>
      )}
    </output>
  );
}
