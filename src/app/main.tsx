import "./look/sheet/fonts.css";
import "./look/sheet/sheet.css";
import "./look/sheet/fields.css";
import "./look/pages.css";
import "./look/records/records.css";
import "./look/records/plug-in.css";
import "./look/records/explained.css";
import "./look/records/resting.css";
import "./look/records/reference.css";
import "./look/records/findings.css";
import "./look/search/search.css";
import "./look/search/commands.css";
import "./look/sheet/narrow.css";
import "./look/sheet/print.css";
import "./look/map/frame.css";
import "./look/map/panel.css";
import "./look/map/arguing.css";
import "./look/map/arguing-ways.css";
import "./look/map/floor.css";
import "./look/judged/numbers.css";
import "./look/artefacts/things.css";
import "./look/artefacts/drawing.css";
import "./look/artefacts/dimensions.css";
import "./look/artefacts/years.css";
import "./look/recording/images.css";
import "./look/recording/measures.css";
import "./look/scholars/list.css";
import "./look/scholars/grid.css";
import "./look/scholars/one.css";
import "./look/judged/history.css";
import "./look/judged/standpoints.css";
import "./look/judged/supposed.css";
import "./look/judged/examinations.css";
import "./look/judged/outcomes.css";
import "./look/desk/foot.css";
import "./look/desk/forms.css";
import "./look/desk/entries.css";
import "./look/desk/changes.css";
import "./look/desk/merge.css";
import "./look/desk/import.css";
import "./look/desk/entry.css";
import "./look/reading/capture.css";
import "./look/reading/literature.css";
import "./look/recording/tables.css";
import "./look/recording/visit.css";
import "./look/recording/visit-print.css";
import "./look/desk/workbench.css";
import "./look/desk/workbench-fields.css";
import "./look/recording/grid.css";
import "./look/recording/landing.css";
import "./look/reading/paper.css";
import "./look/telling/telling.css";
import "./look/telling/manuscript.css";
import "./look/reading/sheet.css";
import "./look/telling/talk.css";
import "./look/telling/talk-page.css";
import "./look/sheet/languages.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { Frame } from "./frame.tsx";
import { direction, language } from "./words/reader/language.ts";

document.documentElement.lang = language;
document.documentElement.dir = direction;
const seat = document.getElementById("app");
if (seat) {
  createRoot(seat).render(
    <StrictMode>
      <Frame />
    </StrictMode>,
  );
}
