import type { ReactNode } from "react";
import type { Contents } from "../../show/pages/contents.ts";
import type { useAddress } from "../address.ts";
import { late } from "../model/late.tsx";
import { words } from "../words/index.ts";
import type { PageData } from "../worker/messages.ts";
import { ArtefactPage } from "./artefacts/artefact.tsx";
import { ArtefactsPage } from "./artefacts/list.tsx";
import { ChangesPage } from "./desk/changes/changes.tsx";
import { EntryPage } from "./desk/import/entry.tsx";
import { ImportPage } from "./desk/import/import.tsx";
import { LiteraturePage } from "./desk/literature/literature.tsx";
import { MergePage } from "./desk/changes/merge.tsx";
import { ExaminationsPage } from "./examinations/examinations.tsx";
import { FindingsPage } from "./lists/findings.tsx";
import { HistoryPage } from "./judged/history/history.tsx";
import { NumbersPage } from "./numbers/list.tsx";
import { NumberPage } from "./numbers/number.tsx";
import { OutlinePage } from "./lists/outline.tsx";
import { QuestionPage } from "./judged/question/question.tsx";
import { QuestionsPage } from "./judged/question/questions.tsx";
import { RecordsPage } from "./lists/records.tsx";
import { ScholarPage } from "./scholars/one/scholar.tsx";
import { ScholarsPage } from "./scholars/scholars.tsx";
import { SearchPage } from "./search/search.tsx";
import { ToMend } from "./sheet/form/to-form.tsx";
import { SheetPage } from "./sheet/sheet.tsx";
import { WorkbenchPage } from "./desk/workbench/workbench.tsx";
import { StandpointsPage } from "./judged/standpoints/standpoints.tsx";

const MapPage = late("map", async () => (await import("../map/map-page.tsx")).MapPage);
const ImagePage = late("image", async () => (await import("./artefacts/images/image.tsx")).ImagePage);
const VisitPage = late("visit", async () => (await import("./desk/visit/visit.tsx")).VisitPage);
const GridPage = late("grid", async () => (await import("./desk/grid/grid-page.tsx")).GridPage);
const PaperPage = late("paper", async () => (await import("./papers/paper-page.tsx")).PaperPage);
const TellingPage = late("telling", async () => (await import("./telling/telling-page.tsx")).TellingPage);
const TalkPage = late("talk", async () => (await import("./telling/talk/talk-page.tsx")).TalkPage);
const TalksPage = late("talks", async () => (await import("./telling/talk/talks-page.tsx")).TalksPage);
const FormPage = late("form", async () => (await import("./sheet/form/form-page.tsx")).FormPage);

interface Props {
  readonly page: PageData;
  readonly contents: Contents;
  readonly address: ReturnType<typeof useAddress>;
}

/** The page that was asked for, or that there is none of that name. */
export function Page({ page, contents, address }: Props) {
  return (
    shown({ page, contents, address }) ?? (
      <>
        <h1>{words.notThere}</h1>
        <ToMend wanted={address.wanted} />
      </>
    )
  );
}

function shown({ page, contents, address }: Props): ReactNode {
  const { asOf, toYear } = address;
  switch (page.page) {
    case "question":
      return page.data && <QuestionPage question={page.data} asOf={asOf} toYear={toYear} />;
    case "sheet":
      return page.data && <SheetPage sheet={page.data} asOf={asOf} />;
    case "map":
      return <MapPage page={page.data} address={address} />;
    case "literature":
      return <LiteraturePage page={page.data} address={address} />;
    case "outline":
      return <OutlinePage lines={page.data} address={address} />;
    case "artefacts":
      return (
        <ArtefactsPage
          page={page.data}
          draw={address.wanted.page === "artefacts" ? address.wanted.draw : []}
          unit={address.query.get("unit")}
          asOf={asOf}
          toLook={address.toLook}
        />
      );
    case "artefact":
      return (
        page.data && (
          <ArtefactPage
            page={page.data}
            unit={address.query.get("unit")}
            asOf={asOf}
            toLook={address.toLook}
          />
        )
      );
    case "image":
      return page.data && <ImagePage page={page.data} address={address} />;
    case "numbers":
      return <NumbersPage groups={page.data} asOf={asOf} />;
    case "number":
      return page.data && <NumberPage number={page.data} asOf={asOf} />;
    case "workbench":
      return <WorkbenchPage page={page.data} asOf={asOf} />;
    case "scholars":
      return <ScholarsPage page={page.data} address={address} />;
    case "scholar":
      return page.data && <ScholarPage page={page.data} address={address} />;
    case "history":
      return <HistoryPage page={page.data} address={address} />;
    case "standpoints":
      return <StandpointsPage page={page.data} address={address} />;
    case "examinations":
      return <ExaminationsPage page={page.data} address={address} />;
    case "visit":
      return <VisitPage page={page.data} address={address} />;
    case "talks":
      return <TalksPage page={page.data} address={address} />;
    case "talk":
      return <TalkPage page={page.data} address={address} />;
    case "findings":
      return (
        <>
          <h1>{words.findings}</h1>
          <FindingsPage findings={page.data} asOf={asOf} />
        </>
      );
    case "telling":
      return <TellingPage page={page.data} address={address} />;
    case "changes":
      return <ChangesPage page={page.data} address={address} />;
    case "form":
      return page.data && <FormPage page={page.data} />;
    case "paper":
      return page.data && <PaperPage data={page.data} address={address} />;
    case "merge":
      return page.data && <MergePage page={page.data} address={address} />;
    case "entry":
      return page.data && <EntryPage page={page.data} asOf={asOf} />;
    case "grid":
      return <GridPage page={page.data} />;
    case "import":
      return <ImportPage page={page.data} asOf={asOf} />;
    case "search":
      return <SearchPage index={page.data} address={address} />;
    case "records":
      return <RecordsPage index={page.data} address={address} />;
    case "contents":
      return <QuestionsPage contents={contents} asOf={asOf} />;
  }
}
