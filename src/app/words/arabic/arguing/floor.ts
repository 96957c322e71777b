import { apart } from "../../reader/figures.ts";

/** Words of questions that somebody asks from the floor. */
export const arabicFloor = {
  title: "سؤال من القاعة",
  key: "دوّن سؤالًا",
  line: "ما سُئل عنه",
  about: (label: string) => `عن: ${apart(label)}`,
  help: "مفتاح الإدخال يحفظه، وينتظر في صفحة المسائل.",
  keep: "احفظه",
  kept: "حُفظ في صفحة المسائل.",
  cannot: (why: string) => `لا يمكن حفظ شيء هنا. ${why}`.trim(),
  list: "من القاعة، ولم تُدرج بعد",
  asQuestion: "مسألةً",
  asClaim: "دعوى",
  asArgument: "حجةً",
  asNote: "ملاحظةً عليه",
  work: (way: string, text: string) => `أدرجه ${way}: ${apart(text)}`,
  workIn: "أدرجه",
  drop: "ارمه",
  dropOne: (text: string) => `ارمِ: ${apart(text)}`,
  noteGone: "ما يدور عليه السؤال لم يعد موجودًا.",
};
