import { apart } from "../../reader/figures.ts";

/** Words of how a source is cited, on its sheet. */
export const arabicReference = {
  title: "الإحالة",
  writing: "تُكتب الإحالة …",
  style: (name: string) => `نمط الإحالة: ${apart(name)}`,
  trouble: (said: string) => `لا يستطيع نمط الإحالة كتابتها: ${apart(said)}`,
  nothing: "لا يطبع نمط الإحالة شيئًا من هذا المصدر.",
  tooLong: "يستغرق وقتًا طويلًا",
};
