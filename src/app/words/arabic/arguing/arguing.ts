import { apart, arabicCount } from "../../reader/figures.ts";

interface InHandState {
  readonly premises: number;
  readonly aim: "nothing" | "claim" | "new" | "against";
  readonly worded: boolean;
  readonly answers: boolean;
  readonly said: boolean;
}

const chosen = (n: number): string =>
  n === 0
    ? "لم تُختر مقدمة."
    : arabicCount(n, {
        one: "اختيرت مقدمة واحدة.",
        two: "اختيرت مقدمتان.",
        few: "اختيرت # مقدمات.",
        many: "اختيرت # مقدمة.",
        other: "اختيرت # مقدمة.",
      });

/** Words of the argument in hand: how it is begun, what it still lacks, and what would change with it. */
export const arabicArguing = {
  title: "حجة قيد البناء",
  changing: "تغيير حجة",
  state: ({ premises, aim, worded, answers, said }: InHandState): string => {
    if (aim === "nothing")
      return premises === 0
        ? "اختر ما تستند إليه (p)، ثم ما تفضي إليه (t) أو ما هي عليه (x)."
        : `${chosen(premises)} والآن النتيجة (t)، أو دعوى جديدة (n)، أو ما هي عليه (x).`;
    if (aim === "new" && !worded) return `${chosen(premises)} والآن ألفاظ الدعوى الجديدة.`;
    if (premises === 0)
      return answers
        ? "جواب لا شيء تحته بعد. والآن ما يستند إليه (p)، أو احفظه كما هو."
        : aim === "against"
          ? "اختير ما هي عليه. والآن ما تستند إليه (p)."
          : "اختيرت النتيجة. والآن ما تستند إليه (p).";
    return said
      ? `${chosen(premises)} ويمكن حفظها (Ctrl+Enter).`
      : `${chosen(premises)} والآن الخطوة بالألفاظ (w): لِمَ يدل هذا على ذاك.`;
  },

  argueFrom: "احتجّ به",
  argueFor: "احتجّ له",
  argueAgainst: "احتجّ عليه",
  anotherAnswer: "احتجّ لجواب آخر",
  changePremises: "غيّر مقدماتها",
  asPremise: "خذه مقدمة",
  notPremise: "أخرجه من المقدمات",
  asConclusion: "خذه نتيجة",
  notConclusion: "ليس هو النتيجة",
  asTarget: "اجعلها عليه",
  notTarget: "ليست عليه",
  newClaim: "إلى دعوى جديدة",
  toStep: "إلى ألفاظ الخطوة",
  ofOne: (way: string, label: string) => `${way}: ${apart(label)}`,

  because: "لأن",
  therefore: "إذن",
  against: "على",
  premiseSearch: "ابحث عن مقدمة",
  claimSearch: "ابحث عن النتيجة",
  targetSearch: "ابحث عما هي عليه",
  claimWords: "ألفاظ الدعوى الجديدة",
  answersTo: (question: string) => `تصير جوابًا عن: ${apart(question)}`,
  leaveOut: "أخرج",
  leaveOutOne: (label: string) => `أخرج: ${apart(label)}`,
  step: "الخطوة بالألفاظ",
  stepEmpty: "إن تُركت فارغة لم يعلم القارئ لِمَ يدل هذا على ذاك.",
  more: "نوعها ووزنها ولمن هي ومن أين",
  unsaid: "لم يُقل",
  search: (label: string) => `ابحث: ${apart(label)}`,
  byEmpty: "بلا اسم تكون من نظر المدوّنة نفسها، أو لأصحاب مصدرها.",
  place: (label: string) => `الموضع فيه: ${apart(label)}`,

  wouldChange: "ما الذي يتغيّر",
  itself: "الحجة نفسها",
  becomes: "ثم",
  nothingElse: "لا يتغيّر حال شيء آخر.",
  notTried: "يُقال متى كانت لها مقدمة وما تفضي إليه.",
  changed: "حُفظت. وما تغيّر",
  changedNothing: "حُفظت. ولم يتغيّر حال شيء آخر.",
  save: "احفظ",
  away: "نحِّها",
  awayWhy: "تبقى مسودّة، وتوجد في صفحة المسائل.",
  drop: "ارمها",
  open: "افتح",
  fold: "اطوِ",
  close: "إغلاق",
  readOnly: (why: string) => `يمكن تجريبها هنا لا حفظها. ${why}`.trim(),
  gone: "ما تغيّره غُيّر أو أُخرج في أثناء ذلك. خذه من جديد.",

  drafts: "حجج بُدئت ولم تُحفظ",
  draftOf: (n: number, aim: string) =>
    `${arabicCount(n, {
      zero: "بلا مقدمات",
      one: "مقدمة واحدة",
      two: "مقدمتان",
      few: "# مقدمات",
      many: "# مقدمة",
      other: "# مقدمة",
    })}${aim === "" ? "" : `: ${apart(aim)}`}`,
  goOn: "تابعها",
  throwAwayOne: (label: string) => `ارمِ: ${apart(label)}`,
  drawn: "اسحب من الحافة العليا لصندوق إلى نتيجة فوقه، ومن جانبه إلى ما يُحتجّ عليه.",
};
