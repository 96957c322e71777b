import { useEffect, useRef } from "react";
import { Link } from "wouter";
import { useAddress, withYear } from "./address.ts";
import { useModel } from "./model.ts";
import { FindingsPage } from "./pages/findings.tsx";
import { OutlinePage } from "./pages/outline.tsx";
import { QuestionPage } from "./pages/question.tsx";
import { QuestionsPage } from "./pages/questions.tsx";
import { RecordsPage } from "./pages/records.tsx";
import { SheetPage } from "./pages/sheet.tsx";
import { words } from "./words.ts";
import type { Change, PageData } from "./worker/messages.ts";
import type { Contents } from "../show/pages/contents.ts";

/** The app's frame: the title and the rooms at the side, the page, and what changed on disk below. */
export function Frame() {
  const address = useAddress();
  const { told, changes, trouble } = useModel(address.wanted, address.lens);
  const contents = told?.tell === "page" ? told.contents : null;
  const main = useRef<HTMLElement>(null);
  const arrived = useRef(address.path);

  useEffect(() => {
    if (arrived.current === address.path) return;
    arrived.current = address.path;
    main.current?.focus();
    window.scrollTo(0, 0);
  }, [address.path]);
  useEffect(() => {
    document.title = contents ? `${contents.title} · Variorum` : "Variorum";
    document.documentElement.lang = "en";
  }, [contents]);

  const room = (path: string, name: string, count: number | null, here: boolean) => (
    <li>
      <Link href={withYear(path, address.asOf)} aria-current={here ? "page" : undefined}>
        <span>{name}</span>
        {count !== null && <span className="count">{count}</span>}
      </Link>
    </li>
  );
  const { page } = address.wanted;
  const records = address.path.startsWith("/record");
  return (
    <>
      <a className="skip" href="#page" onClick={() => main.current?.focus()}>
        {words.skip}
      </a>
      <header className="side">
        <p className="corpus" dir="auto">
          {contents?.title ?? "Variorum"}
        </p>
        <nav>
          <ul>
            {room("/", words.questions, null, page === "question" || (page === "contents" && !records))}
            {room("/outline", words.outline, null, page === "outline")}
            {room("/records", words.records, null, records)}
            {room("/findings", words.findings, contents?.findings ?? null, page === "findings")}
          </ul>
        </nav>
      </header>
      <main id="page" ref={main} tabIndex={-1}>
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
        {told?.tell === "page" && contents && (
          <Page
            page={told.page}
            contents={contents}
            path={address.path}
            asOf={address.asOf}
            toYear={address.toYear}
          />
        )}
        {contents !== null && contents.pending > 0 && (
          <p className="quiet">{words.computing(contents.pending)}</p>
        )}
        <Changed changes={changes} />
      </main>
    </>
  );
}

interface PageProps {
  readonly page: PageData;
  readonly contents: Contents;
  readonly path: string;
  readonly asOf: number | null;
  readonly toYear: (year: number | null) => void;
}

function Page({ page, contents, path, asOf, toYear }: PageProps) {
  switch (page.page) {
    case "question":
      return page.data ? (
        <QuestionPage question={page.data} asOf={asOf} toYear={toYear} />
      ) : (
        <h1>{words.notThere}</h1>
      );
    case "sheet":
      return page.data ? <SheetPage sheet={page.data} asOf={asOf} /> : <h1>{words.notThere}</h1>;
    case "outline":
      return <OutlinePage lines={page.data} asOf={asOf} />;
    case "findings":
      return (
        <>
          <h1>{words.findings}</h1>
          <FindingsPage findings={page.data} asOf={asOf} />
        </>
      );
    case "contents":
      return path.startsWith("/records") ? (
        <RecordsPage contents={contents} asOf={asOf} />
      ) : (
        <QuestionsPage contents={contents} asOf={asOf} />
      );
  }
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
