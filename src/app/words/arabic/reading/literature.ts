import type { Odd, takenKinds } from "../../../../show/desk/literature/reading-list.ts";
import type { Flow, SearchLine } from "../../../../show/desk/literature/search-log.ts";
import type { ArabicForms } from "../../../../base/text/said/arabic.ts";
import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

const sources: ArabicForms = {
  one: "مصدر واحد",
  two: "مصدران",
  few: "# مصادر",
  many: "# مصدرًا",
  other: "# مصدر",
};
const records: ArabicForms = {
  one: "سجل واحد",
  two: "سجلان",
  few: "# سجلات",
  many: "# سجلًا",
  other: "# سجل",
};
const taken: Readonly<Record<(typeof takenKinds)[number], ArabicForms>> = {
  passages: { one: "موضع واحد", two: "موضعان", few: "# مواضع", many: "# موضعًا", other: "# موضع" },
  positions: { one: "رأي واحد", two: "رأيان", few: "# آراء", many: "# رأيًا", other: "# رأي" },
  observations: {
    one: "مشاهدة واحدة",
    two: "مشاهدتان",
    few: "# مشاهدات",
    many: "# مشاهدة",
    other: "# مشاهدة",
  },
  measurements: { one: "قياس واحد", two: "قياسان", few: "# قياسات", many: "# قياسًا", other: "# قياس" },
};
const odd: Readonly<Record<Odd, string>> = {
  "taken-unread": "أُخذت منه سجلات مباشرةً، ولم يُذكر أنه قُرئ.",
  "taken-from-nothing": "أُخذت منه سجلات، مع القول إنه لا شيء فيه.",
  "read-for-nothing": "قُرئ ولم يؤخذ منه شيء بعد.",
};

/** Words of the room of the literature. */
export const arabicLiterature = {
  title: "المنشورات",
  looks: "وجهان للنظر في المنشورات",
  list: "قائمة القراءة",
  log: "عمليات البحث",
  none: "ليس للمدوّنة مراجع بعد.",
  counts: (n: number) => arabicCount(n, sources),
  unlisted: "ليس في القائمة",
  statusOf: (label: string) => `ما صار إليه ${apart(label)}`,
  choose: (label: string) => `اختر ${apart(label)}`,
  show: "أظهر",
  all: "الكل",
  onlyOdd: "ما لا يتفق بعضه مع بعض",
  filter: "ضيّق بكلمات",
  order: "الترتيب",
  byYear: "بحسب السنة",
  byAuthor: "بحسب المؤلف",
  byStatus: "بحسب الحال",
  nothingSo: "لا شيء في القائمة كذلك.",
  keys: "حين يكون مربع المصدر موضع التركيز: السهمان إلى أعلى وأسفل للانتقال، T للقراءة لاحقًا، R قُرئ، N لا شيء فيه، F لم يوجد، والمسافة لاختياره لتغيير عدة مصادر معًا.",
  chosen: (n: number) => `${arabicCount(n, sources)} تحت الاختيار؛ اجعل الحال`,
  setTo: "اجعل",
  unchoose: "ألغ الاختيار",
  taken: (kind: (typeof takenKinds)[number], n: number) => arabicCount(n, taken[kind]),
  secondHand: (n: number) => `${arabicCount(n, records)} عن طريق مصدر آخر`,
  odd: (one: Odd) => odd[one],
  paper: "اقرأ",
  bringPaper: "أدخل نصه",
  more: (n: number) => `أظهر ${arabicCount(n, sources)} أخرى`,
  step: (n: number, status: string) => `${arabicCount(n, sources)}: ${status}`,
  noSearches: "لم يُسجَّل بحث بعد. يذكر البحث أين جرى وبأي كلمات، وكم وُجد، ولماذا تُرك بعضه.",
  logOne: "سجّل بحثًا",
  where: "أين",
  found: "وُجد",
  screened: "نُظر فيه",
  kept: "أُبقي",
  leftOut: "تُرك",
  notCounted: "لم يُعدّ",
  by: (who: string) => `أجراه ${apart(who)}`,
  change: "تغيير",
  changeOf: (where: string) => `غيّر البحث في ${apart(where)}`,
  unaccounted: ({ unaccounted }: SearchLine) =>
    (unaccounted ?? 0) > 0
      ? `مما نُظر فيه لم يُبقَ ولم يُترك: ${arabicFigure(unaccounted ?? 0)}.`
      : `ما أُبقي وتُرك يزيد على ما نُظر فيه: ${arabicFigure(-(unaccounted ?? 0))}.`,
  together: "كل عمليات البحث معًا",
  atLeast: (n: number) => `ينقص العدّ في بعض عمليات البحث (${arabicFigure(n)})؛ فالمجاميع حد أدنى.`,
  twice: "المصدر الذي وجده بحثان معدود في كل منهما.",
  reasons: "ما تُرك، ولماذا",
  flow: ({ found, screened, kept, leftOut }: Flow) =>
    `وُجد ${arabicFigure(found)}، ونُظر في ${arabicFigure(screened)}، وتُرك ${arabicFigure(leftOut)}، وأُبقي ${arabicFigure(kept)}.`,
};
