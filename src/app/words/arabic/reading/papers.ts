import { apart, arabicCount, arabicFigure as figure } from "../../reader/figures.ts";

const places = (n: number): string =>
  arabicCount(n, { one: "موضع واحد", two: "موضعان", few: "# مواضع", many: "# موضعًا", other: "# موضع" });

/** Words of the page on which a paper is read. */
export const arabicPapers = {
  room: "القراءات",
  paper: "الورقة",
  papers: "أوراق هذا المصدر",
  beside: "بجانب الورقة",
  division: "الفاصل بين الورقة وما بجانبها",
  hidePaper: "أخفِ الورقة",
  showPaper: "أظهر الورقة",
  opening: "تُفتح الورقة …",
  pictures: (n: number) =>
    arabicCount(n, {
      one: "صورة واحدة",
      two: "صورتا صفحتين",
      few: "# صور صفحات",
      many: "# صورة لصفحات",
      other: "# صورة لصفحات",
    }),

  page: "الصفحة",
  pageOf: (page: string, place: number, count: number) =>
    page === ""
      ? `الصفحة ${figure(place)} من ${figure(count)} في الملف`
      : `الصفحة ${apart(page)}، وهي ${figure(place)} من ${figure(count)} في الملف`,
  inFile: (place: number, count: number) => `${figure(place)} من ${figure(count)}`,
  toPage: "اذهب إلى صفحة",
  noPage: "لا صفحة بهذا الرقم.",
  larger: "أكبر",
  smaller: "أصغر",
  fit: "بعرض النافذة",
  size: "الحجم",

  search: "ابحث في هذه الورقة",
  next: "الموضع التالي",
  before: "الموضع السابق",
  hit: (place: number, count: number) => `${figure(place)} من ${figure(count)}`,
  hits: places,
  manyHits: (count: number) => `الأولى: ${places(count)}`,
  noHits: "في لا موضع",
  soFar: (done: number, count: number) => `قُرئت ${figure(done)} من ${figure(count)} من الصفحات`,

  take: "خذ هذا النص",
  takeRegion: "خذ هذا الجزء من الصفحة",
  takeHint: "حدّد نصًّا في الورقة ثم اضغط c.",
  scanHint: "لا نص في هذه الورقة. اضغط r أو اسحب فوق الصفحة، ثم اضغط c.",
  readOnlyHint: "لا يمكن أخذ شيء منها: هذه المدوّنة للقراءة فحسب.",
  select: "حدّد نصًّا بالمفاتيح",
  selecting: "تنقلك مفاتيح الأسهم بين الكلمات، ومع Shift تزيد التحديد؛ وc يأخذها، وEscape يترك.",
  region: "حدّد جزءًا من الصفحة",
  leaveRegion: "اترك هذا الجزء من الصفحة",
  regionAt: (x: number, y: number, w: number, h: number) =>
    `جزء من الصفحة: على بُعد ${figure(x)} % من اليسار و${figure(y)} % من الأعلى، عرضه ${figure(w)} % وارتفاعه ${figure(h)} %. تحرّكه مفاتيح الأسهم، ومع Shift تغيّر حجمه؛ وc يأخذه، وEscape يتركه.`,
  mark: (number: number, at: string) => `المقطع ${figure(number)}، ${apart(at)}`,
  notFound: (at: string) => `لم يعد نص ${apart(at)} موجودًا في هذا الملف.`,

  none: "لا ورقة لهذا المصدر بعد.",
  noneHere: (name: string) => `مكانها في مجلد المدوّنة ${apart(name)}: ضعها هناك، أو أدخلها هنا.`,
  bring: "أدخل ورقة",
  drop: "أفلت هنا ملف PDF أو صور صفحات، أو",
  choose: "اختر ملفات",
  bringing: "يجري الإدخال …",
  brought: (file: string) => `أُدخلت باسم ${apart(file)}.`,
  notBrought: (name: string, why: string) => `لم يُدخل ${apart(name)}. ${why}`,
  noPaper: "ليس ملف PDF ولا صورة (PNG أو JPEG أو WebP أو GIF).",

  refused: {
    gone: "لم يعد الملف موجودًا.",
    locked: "هذا الملف مقفل بكلمة مرور. احفظه من دونها بالبرنامج الذي فتحه من قبل، ثم أدخله.",
    long: "في هذا الملف أكثر من 10000 صفحة: قسّمه على عدة ملفات، ثم أدخلها.",
    broken: "تعذّرت قراءة الملف: إما أنه تالف، أو ليس كما يقول اسمه.",
  },
};
