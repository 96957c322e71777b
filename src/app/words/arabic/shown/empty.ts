import { taughtLines } from "../../shown/taught-lines.ts";

/** What an empty page teaches; the lines are in the words of the format. */
export const arabicEmpty = {
  questions: {
    text: "لا تطرح المدوّنة مسألة بعد. تُكتب المسألة وأجوبتها هكذا في أي ملف YAML من المجلد؛ وتظهر الصفحة متى حُفظ الملف.",
    lines: taughtLines.questions,
  },
  artefacts: {
    text: "ليس في المدوّنة آثار بعد. للشيء معرّف واسم؛ وأجزاؤه تسمّيه؛ وما قيس منه يسمّي بُعده:",
    lines: taughtLines.artefacts,
  },
  scholars: {
    text: "لا تذكر المدوّنة باحثًا بعد. للباحث اسم؛ والرأي يقول ما موقفه من دعوى، وأين قاله:",
    lines: taughtLines.scholars,
  },
  outline: {
    text: "لا شيء يُخطَّط بعد. الحجة تصل الدعوى بما شوهد أو قيس:",
    lines: taughtLines.outline,
  },
  examinations: {
    text: "لم يُسجَّل فحص بعد. يسمّي الفحص ما يُنظر فيه، وكيف، وما قد ينتج عنه؛ وما تؤيده كل نتيجة وما تعارضه هو كل ما تحتاج إليه الخطة:",
    lines: taughtLines.examinations,
  },
  records: {
    text: "لم يُسجَّل شيء بعد. السجلات قوائم تُسمّى بأنواعها؛ والباحثون والمصادر بداية حسنة:",
    lines: taughtLines.records,
  },
};
