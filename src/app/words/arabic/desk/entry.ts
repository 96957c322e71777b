import { apart } from "../../reader/figures.ts";

/** Words of the form in which an entry of a bibliography is changed. */
export const arabicEntry = {
  change: "تغيير",
  thisSource: "هذا المصدر",
  title: (label: string) => `تغيير: ${apart(label)}`,
  lead: (file: string, key: string) =>
    `حقول ${apart(key)} في ${apart(file)} كما كُتبت. والحقل الذي يُترك فارغًا يُزال.`,
  readOnly: (why: string) => `لا يمكن حفظ شيء في هذه المدوّنة: ${apart(why)}`,
  fields: "الحقول",
  add: "أضف حقلًا",
  name: "اسم الحقل",
  value: (name: string) => (name === "" ? "نص الحقل الجديد" : `نص ${apart(name)}`),
  asWritten: "كما هو في الملف: رقم أو اختصار أو قائمة",
  stale: "تغيّر المدخل في موضع آخر بعد أن فُتح هنا. ولم يُكتب شيء.",
  again: "افتحه كما هو الآن",
  gone: "لم يعد المدخل موجودًا.",
  nothing: "لم يتغيّر شيء.",
  save: "حفظ",
  saving: "يُحفظ …",
  step: (label: string) => `تغيير في المراجع: ${apart(label)}`,
};
