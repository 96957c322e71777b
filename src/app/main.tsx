import "./look/fonts.css";
import "./look/sheet.css";
import "./look/pages.css";
import "./look/records.css";
import "./look/narrow.css";
import "./look/print.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { Frame } from "./frame.tsx";

const seat = document.getElementById("app");
if (seat) {
  createRoot(seat).render(
    <StrictMode>
      <Frame />
    </StrictMode>,
  );
}
