import type { ReactNode } from "react";
import type { Contents } from "../../show/pages/contents.ts";
import type { useAddress } from "../address.ts";
import { words } from "../words/index.ts";
import type { PageData } from "../worker/messages.ts";
import { FindingsPage } from "./findings.tsx";
import { OutlinePage } from "./outline.tsx";
import { QuestionPage } from "./question.tsx";
import { QuestionsPage } from "./questions.tsx";
import { RecordsPage } from "./records.tsx";
import { SheetPage } from "./sheet.tsx";

interface Props {
  readonly page: PageData;
  readonly contents: Contents;
  readonly address: ReturnType<typeof useAddress>;
}

/** The page that was asked for, or that there is none of that name. */
export function Page({ page, contents, address }: Props) {
  return shown({ page, contents, address }) ?? <h1>{words.notThere}</h1>;
}

function shown({ page, contents, address }: Props): ReactNode {
  const { asOf, toYear, path } = address;
  switch (page.page) {
    case "question":
      return page.data && <QuestionPage question={page.data} asOf={asOf} toYear={toYear} />;
    case "sheet":
      return page.data && <SheetPage sheet={page.data} asOf={asOf} />;
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
