import { apart } from "../../reader/figures.ts";

/** Words of the desk. */
export const arabicDesk = {
  title: "المكتب",
  undo: "تراجع",
  redo: "إعادة",
  undoStep: (step: string) => `تراجع: ${apart(step)}`,
  redoStep: (step: string) => `إعادة: ${apart(step)}`,
  done: (step: string) => `حُفظ. ${apart(step)}`,
  undone: (step: string) => `تم التراجع. ${apart(step)}`,
  redone: (step: string) => `أُعيد. ${apart(step)}`,
  nothingToUndo: "لا شيء يُتراجع عنه.",
  nothingToRedo: "لا شيء يُعاد.",
  readOnly: (why: string) => `لا يمكن تغيير شيء هنا. ${apart(why)}`,
  setAside: "أصاب المكتب ضرر، وهو يعمل من جديد. والمدوّنة نفسها كما كانت.",
  changedMeanwhile: "تغيّرت الملفات في الأثناء مرة بعد مرة. حاول مرة أخرى.",
  keepReading: "إخفاء",
  ended: "انتهى البرنامج. شغّله من جديد لتتابع.",
  fault: (message: string) => `خلل في البرنامج، لا في المدوّنة: ${apart(message)}`,
};
