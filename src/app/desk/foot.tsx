import { deskWords } from "../words/desk/desk.ts";
import type { Desk, Said } from "./desk.tsx";

/** What was last done at the desk, with the way back from it; said aloud. */
export function DeskFoot({
  desk,
  said,
  dismiss,
}: {
  readonly desk: Desk;
  readonly said: Said | null;
  readonly dismiss: () => void;
}) {
  // Another window may have made a step meanwhile: the button takes back what is named beside it, or is not there.
  const isLast = desk.state.undo !== null && desk.state.undo === said?.step;
  return (
    <div className="desk-foot" role={said?.trouble ? "alert" : "status"}>
      {said && (
        <p>
          <span dir="auto">{said.text}</span>
          {isLast && !said.trouble && (
            <button type="button" onClick={() => void desk.undo()}>
              {deskWords.undo}
            </button>
          )}
          <button type="button" onClick={dismiss}>
            {deskWords.keepReading}
          </button>
        </p>
      )}
    </div>
  );
}
