import { useEffect, useRef } from "react";
import { Link } from "wouter";
import { mapPath, useAddress, underLens } from "./address.ts";
import { useModel } from "./model/model.ts";
import { FindingsPage } from "./pages/findings.tsx";
import { Page } from "./pages/page.tsx";
import { SearchField } from "./pages/search/field.tsx";
import { Commands } from "./parts/commands.tsx";
import { useArrival } from "./parts/places/arrival.ts";
import { Supposed } from "./parts/places/supposed.tsx";
import { nameOf, titleOf } from "./parts/places/title.ts";
import { artefactWords } from "./words/artefacts.ts";
import { examinationWords } from "./words/judged/examinations.ts";
import { historyWords } from "./words/history.ts";
import { mapWords } from "./words/map.ts";
import { words } from "./words/index.ts";
import { numberWords } from "./words/numbers.ts";
import { scholarWords } from "./words/scholars.ts";
import { standpointWords } from "./words/standpoints.ts";
import { supposeWords } from "./words/suppose.ts";
import type { Change } from "./worker/messages.ts";

/** The app's frame: the title and the rooms at the side, the page, and what changed on disk below. */
export function Frame() {
  const address = useAddress();
  const { told, changes, trouble, waiting } = useModel(address.wanted, address.lens);
  const contents = told?.tell === "page" ? told.contents : null;
  const main = useRef<HTMLElement>(null);
  const supposed = told?.tell === "page" ? told.supposed : null;
  const name = told?.tell === "page" ? nameOf(told.page, address.path) : "";
  const arrival = supposed?.known ? supposeWords.arrival(name) : name;
  const title =
    told?.tell === "page"
      ? `${supposed?.known ? `${supposeWords.supposed} · ` : ""}${titleOf(told.page, told.contents, address)}`
      : told === null
        ? "Variorum"
        : words.unreadable;

  useArrival(main, address.path, waiting);
  useEffect(() => {
    if (!waiting) document.title = title;
  }, [title, waiting]);
  useEffect(() => {
    document.documentElement.lang = "en";
  }, []);

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
  const records = address.path.startsWith("/record");
  return (
    <>
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
        <p className="corpus" dir="auto">
          {contents?.title ?? "Variorum"}
        </p>
        <SearchField here={page === "search"} asOf={address.asOf} />
        <nav>
          <ul>
            {room("/", words.questions, null, page === "question" || (page === "contents" && !records))}
            {room(mapPath(address.wanted), mapWords.title, null, page === "map")}
            {room("/outline", words.outline, null, page === "outline")}
            {room("/artefacts", artefactWords.artefacts, null, page === "artefacts" || page === "artefact")}
            {room("/numbers", numberWords.numbers, null, page === "numbers" || page === "number")}
            {room("/scholars", scholarWords.scholars, null, page === "scholars" || page === "scholar")}
            {room("/standpoints", standpointWords.standpoints, null, page === "standpoints")}
            {room("/history", historyWords.history, null, page === "history")}
            {room("/examinations", examinationWords.examinations, null, page === "examinations", "e")}
            {room("/findings", words.findings, contents?.findings ?? null, page === "findings")}
            {room("/records", words.records, null, records)}
          </ul>
        </nav>
        <Commands />
        {contents !== null && contents.pending > 0 && (
          <p className="computing">{words.computing(contents.pending)}</p>
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
        {told === null && trouble === null && <p className="quiet">{words.reading}</p>}
        {told?.tell === "unreadable" && (
          <>
            <h1>{words.unreadable}</h1>
            <FindingsPage findings={told.findings} asOf={null} />
          </>
        )}
        {supposed && <Supposed told={supposed} address={address} />}
        {told?.tell === "page" && contents && <Page page={told.page} contents={contents} address={address} />}
        <Changed changes={changes} />
        <output className="unseen arrival">{waiting ? "" : arrival}</output>
      </main>
    </>
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
