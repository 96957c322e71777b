import { arabicDesk } from "../arabic/desk/desk.ts";
import { told } from "../reader/told.ts";

/** Words of the desk: what was done, what can be taken back, and what stands in the way. */
export const deskWords = told(
  {
    title: "Desk",
    undo: "Undo",
    redo: "Redo",
    undoStep: (step: string) => `Undo: ${step}`,
    redoStep: (step: string) => `Redo: ${step}`,
    done: (step: string) => `Saved. ${step}`,
    undone: (step: string) => `Taken back. ${step}`,
    redone: (step: string) => `Done again. ${step}`,
    nothingToUndo: "There is nothing to undo.",
    nothingToRedo: "There is nothing to redo.",
    readOnly: (why: string) => `Nothing can be changed here. ${why}`,
    setAside: "The desk of this corpus was damaged, and works again. The corpus itself is as it was.",
    changedMeanwhile: "The files were changed meanwhile, again and again. Try once more.",
    keepReading: "Dismiss",
    ended: "The program was ended. Start it again to go on.",
    fault: (message: string) => `A fault of the program, not of the corpus: ${message}`,
  },
  arabicDesk,
);
