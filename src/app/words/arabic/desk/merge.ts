import type { MergedAlone } from "../../../../show/desk/changes/merging/told.ts";
import { apart, arabicCount } from "../../reader/figures.ts";

const sides = { mine: "هذا الجانب", theirs: "ذاك الجانب", both: "الجانبين" } as const;

/** The words of the page on which two versions of a file are merged. */
export const arabicMerge = {
  title: "نسختان تُدمجان",
  open: "ادمج النسختين",
  lead: (file: string, clashes: number) =>
    `في الملف ${apart(file)} نسختان. ${arabicCount(clashes, {
      zero: "ولا تقولان في موضع واحد شيئين.",
      one: "وتقولان في موضع واحد شيئين.",
      two: "وتقولان شيئين في كل من موضعين.",
      few: "وتقولان شيئين في كل من # مواضع.",
      many: "وتقولان شيئين في كل من # موضعًا.",
      other: "وتقولان شيئين في كل من # موضع.",
    })} ويُبقى ما هو في إحداهما وحدها.`,
  noMarks: (file: string) => `ليس في ${apart(file)} علامات تعارض: فلا شيء فيه يُدمج.`,
  toChanges: "ما تغيّر",
  looks: "كيف يُدمج",
  byRecord: "سجلًا سجلًا",
  byLines: "سطرًا سطرًا",
  onlyLines: "لا يمكن أن تُقابَل النسختان سجلًا سجلًا، فتُدمج الأسطر كما كُتبت.",
  withheld: "يسمّي الملف شيئًا تحجبه المدوّنة: فلا تُعرض أسطره هنا، ويمكن أن تُقرأ في الملف نفسه.",
  throughout: { mine: "هذا الجانب في كل موضع", theirs: "ذاك الجانب في كل موضع" },
  before: "من قبل",
  choice: { mine: "هذا", theirs: "ذاك", both: "كلاهما", own: "غيرهما" },
  ownWords: "ما يُكتب مكانهما",
  nothing: "لا شيء: أُخرج",
  nothingBefore: "لا شيء",
  alone: "ما اجتمع من نفسه",
  became: (side: MergedAlone["side"], how: MergedAlone["how"], fields: string) =>
    how === "added"
      ? `يُبقى: ليس إلا في ${sides[side]}`
      : how === "taken"
        ? `أُخرج في ${sides[side]}`
        : `${apart(fields)}: من ${sides[side]}`,
  left: (n: number) =>
    arabicCount(n, {
      zero: "لم يبق اختيار.",
      one: "بقي اختيار واحد.",
      two: "بقي اختياران.",
      few: "بقيت # اختيارات.",
      many: "بقي # اختيارًا.",
      other: "بقي # اختيار.",
    }),
  write: "اكتب الملف المدموج",
  undoable: "تزول العلامات. وهي خطوة واحدة، ويمكن التراجع عنها؛ ثم أودِع الملف.",
  tryLines: "ادمجه سطرًا سطرًا، أو أصلحه في محرّر.",
  step: (file: string) => `دمج نسختين من ${apart(file)}`,
  readOnly: "لا يمكن تغيير المدوّنة هنا، فلا يُدمج شيء.",
};
