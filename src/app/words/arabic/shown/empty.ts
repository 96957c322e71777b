import { taughtLines } from "../../shown/taught-lines.ts";

/** What an empty page teaches; the lines are in the words of the format. */
export const arabicEmpty = {
  questions: {
    text: "لا تطرح المدوّنة مسألة بعد.",
    files: "تُكتب المسألة وأجوبتها في ملف هكذا؛ وتظهر الصفحة متى حُفظ الملف:",
    lines: taughtLines.questions,
  },
  artefacts: {
    text: "ليس في المدوّنة آثار بعد.",
    files: "للشيء في الملف معرّف واسم؛ وأجزاؤه تسمّيه؛ وما قيس منه يسمّي بُعده:",
    lines: taughtLines.artefacts,
  },
  scholars: {
    text: "لا تذكر المدوّنة باحثًا بعد. للباحث اسم؛ والرأي يقول ما موقفه من دعوى، وأين قاله.",
    files: "يُكتب في الملف هكذا:",
    lines: taughtLines.scholars,
  },
  outline: {
    text: "لا شيء يُخطَّط بعد. الحجة تصل الدعوى بما شوهد أو قيس.",
    files: "يُكتب في الملف هكذا:",
    lines: taughtLines.outline,
  },
  examinations: {
    text: "لم يُسجَّل فحص بعد. يسمّي الفحص ما يُنظر فيه، وكيف، وما قد ينتج عنه؛ وما تؤيده كل نتيجة وما تعارضه هو كل ما تحتاج إليه الخطة.",
    files: "يُكتب في الملف هكذا:",
    lines: taughtLines.examinations,
  },
  records: {
    text: "لم يُسجَّل شيء بعد. الباحثون والمصادر بداية حسنة.",
    files: "السجلات في الملف قوائم تُسمّى بأنواعها:",
    lines: taughtLines.records,
  },
};
