import type { Step } from "../../../../host/desk/state.ts";
import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

/** The words of the page of what changed. */
export const arabicChanges = {
  changes: "التغييرات",
  looks: "منذ متى",
  sinceCommit: "منذ آخر إيداع",
  steps: "الخطوات التي عُملت هنا",
  commit: (subject: string, when: string) => `مقارنة بالإيداع «${apart(subject)}» في ${apart(when)}.`,
  looking: "يُبحث عن آخر إيداع …",
  comparing: "تجري المقارنة …",
  noCommit: {
    "no-program": "ليس git على هذا الجهاز، فلا إيداع يُقارن به.",
    "no-repository": "ليست المدوّنة في مستودع git، فلا إيداع يُقارن به.",
    "no-commit": "لا إيداع بعد في مستودع المدوّنة، فلا شيء يُقارن به.",
    unreadable: "تعذّرت قراءة آخر إيداع.",
  },
  instead: "والخطوات التي عُملت هنا محفوظة مع ذلك.",
  unreadable: "لا ملف corpus.yaml يُقرأ في أحد الجانبين، فلا تمكن المقارنة سجلًا سجلًا.",
  nothing: "لم يتغيّر شيء مما سُجّل.",
  same: "لم يتغيّر شيء.",
  pending: (n: number) =>
    n === 1
      ? "عدد واحد لم يُحسب بعد؛ وإلى ذلك الحين يُذكر من دونه ما يتوقف عليه من حال."
      : arabicCount(n, {
          two: "عددان لم يُحسبا بعد؛ وإلى ذلك الحين يُذكر من دونهما ما يتوقف عليهما من حال.",
          few: "# أعداد لم تُحسب بعد؛ وإلى ذلك الحين يُذكر من دونها ما يتوقف عليها من حال.",
          many: "# عددًا لم تُحسب بعد؛ وإلى ذلك الحين يُذكر من دونها ما يتوقف عليها من حال.",
          other: "# عدد لم تُحسب بعد؛ وإلى ذلك الحين يُذكر من دونها ما يتوقف عليها من حال.",
        }),
  standings: "ما تغيّر حاله",
  standing: (was: string, is: string) => `حاله من قبل: ${was}؛ وحاله الآن: ${is}`,
  how: {
    changed: "تغيّر",
    added: "أُضيف",
    taken: "أُخرج",
    unread: "تتعذّر قراءته كما هو الآن",
  },
  moved: (from: string, to: string) => `من ${apart(from)} إلى ${apart(to)}`,
  was: "كان",
  is: "والآن",
  empty: "لا شيء",
  says: (n: number) => `ما يقوله: ${fields(n)}`,
  said: (n: number) => `ما كان يقوله: ${fields(n)}`,
  files: "الملفات",
  file: {
    new: "جديد",
    gone: "زال",
    layout: "يختلف في التعليقات أو الهيئة فحسب",
    words: "يختلف في كلماته",
    unread: "تتعذّر قراءته كما هو الآن",
    unmerged: "فيه نسختان لم تُدمجا",
  },
  noSteps: "لم يُغيَّر هنا شيء بعد. كل تغيير يُعمل في البرنامج يُحفظ خطوةً، ويمكن الرجوع إلى كل منها.",
  notKept: "لم تعد نصوص هذه الخطوة محفوظة.",
  step: (kind: Step["kind"], step: string) => {
    switch (kind) {
      case "undo":
        return `تراجع: ${apart(step)}`;
      case "redo":
        return `إعادة: ${apart(step)}`;
      case "outside":
        return "تغيير من خارج البرنامج";
      default:
        return step;
    }
  },
  inFiles: (files: readonly string[]) => files.map(apart).join("، "),
  now: "المدوّنة كما هي",
  back: "ارجع إلى هنا",
  ask: "تصير الملفات كما كانت بعد هذه الخطوة. وذلك خطوة قائمة بنفسها، ويمكن التراجع عنها.",
  backTo: (step: string) => `رجوع إلى ما كان بعد: ${apart(step)}`,
  sure: "ارجع",
  keep: "اتركها كما هي",
  wentBack: "الملفات الآن كما كانت حينئذ.",
  older: (n: number) => `خطوات أقدم (${arabicFigure(n)})`,
};

function fields(n: number): string {
  return arabicCount(n, {
    one: "حقل واحد",
    two: "حقلان",
    few: "# حقول",
    many: "# حقلًا",
    other: "# حقل",
  });
}
