import { apart, arabicCount, arabicYear } from "../../reader/figures.ts";

/** Words of the scholars' room. */
export const arabicScholars = {
  scholars: "الباحثون",
  each: "كل باحث على حدة",
  matrix: "الدعاوى بحسب الباحثين",
  byClaim: "بحسب الدعوى",
  byScholar: "بحسب الباحث",
  looks: "نظرتان إلى من يقول بماذا",
  narrowLooks: "بأي ترتيب",
  noneThen: "لم يكن لأحد شيء منشور حتى تلك السنة.",
  noStance: "لم يُسجَّل رأي حتى تلك السنة.",
  later: (n: number) =>
    n === 1
      ? "باحث آخر لم يُنشر له شيء إلا بعد ذلك."
      : arabicCount(n, {
          two: "باحثان آخران لم يُنشر لهما شيء إلا بعد ذلك.",
          few: "# باحثين آخرين لم يُنشر لهم شيء إلا بعد ذلك.",
          many: "# باحثًا آخر لم يُنشر لهم شيء إلا بعد ذلك.",
          other: "# باحث آخر لم يُنشر لهم شيء إلا بعد ذلك.",
        }),
  silent: (n: number) =>
    n === 1
      ? "باحث آخر لا يقول شيئًا في هذه المسائل، فلا عمود له."
      : arabicCount(n, {
          two: "باحثان آخران لا يقولان شيئًا في هذه المسائل، فلا عمود لهما.",
          few: "# باحثين آخرين لا يقولون شيئًا في هذه المسائل، فلا أعمدة لهم.",
          many: "# باحثًا آخر لا يقولون شيئًا في هذه المسائل، فلا أعمدة لهم.",
          other: "# باحث آخر لا يقولون شيئًا في هذه المسائل، فلا أعمدة لهم.",
        }),
  without: (n: number) =>
    n === 1
      ? "دعوى أخرى لا تجيب عن مسألة، ولم يُسجَّل فيها رأي."
      : arabicCount(n, {
          two: "دعويان أخريان لا تجيبان عن مسألة، ولم يُسجَّل فيهما رأي.",
          few: "# دعاوى أخرى لا تجيب عن مسألة، ولم يُسجَّل فيها رأي.",
          many: "# دعوى أخرى لا تجيب عن مسألة، ولم يُسجَّل فيها رأي.",
          other: "# دعوى أخرى لا تجيب عن مسألة، ولم يُسجَّل فيها رأي.",
        }),
  inAll: (n: number, years: readonly [number, number] | null, changed: number) => {
    const people = arabicCount(n, {
      zero: "لا باحث",
      one: "باحث واحد",
      two: "باحثان",
      few: "# باحثين",
      many: "# باحثًا",
      other: "# باحث",
    });
    const span = years === null ? "" : `، من ${arabicYear(years[0])} إلى ${arabicYear(years[1])}`;
    const later = arabicCount(changed, {
      zero: "",
      one: " وغيّر واحد منهم موقفه بعد ذلك.",
      two: " وغيّر اثنان منهم موقفهما بعد ذلك.",
      few: " وغيّر # منهم مواقفهم بعد ذلك.",
      many: " وغيّر # منهم مواقفهم بعد ذلك.",
      other: " وغيّر # منهم مواقفهم بعد ذلك.",
    });
    return `${people}${span}.${later}`;
  },
  span: (first: number, last: number) => `من ${arabicYear(first)} إلى ${arabicYear(last)}`,
  thenHeld: (year: number | null, claim: string) =>
    `${year === null ? "" : `حتى ${arabicYear(year)}، `}ثم إثبات «${apart(claim)}»`,
  ofCell: (who: string, word: string, claim: string, years: string) =>
    `${apart(who)}: ${word} «${apart(claim)}»${years === "" ? "" : `، ${years}`}`,
  emptyCell: (who: string, claim: string) => `${apart(who)}، «${apart(claim)}»: لا شيء مسجَّل`,
  name: "الباحث",
  inPrint: "سنوات النشر",
  holdsNow: "قوله الآن",
  claimCount: "الدعاوى",
  changedCount: "ما تغيّر",
  nothingHeld: "لا شيء مسجَّل",
  undated: "بلا تاريخ",
  other: "دعاوى لا تتصل بمسألة",
  claim: "الدعوى",
  or: "أو",
  orMeans: "لا تصح مع الدعوى التي فوقها",
  whichExcludes: "، وهو لا يصح مع هذا",
  orLegend: ": لا تصح الدعوى مع التي فوقها",
  changed: "‹",
  changedMeans: "قبل الكلمة: كان للباحث موقف آخر من قبل",
  heldMeans: ": تُركت الدعوى إلى أخرى لا تصح معها",
  scholar: "باحث",
  legend: "الكلمة هي آخر موقف مسجَّل.",
  keys: "مفاتيح الأسهم للتنقل بين الخانات؛ ومفتاح الإدخال يفتح ما فيها.",
  nothingRecorded: "لا شيء مسجَّل",
  pointAt: "أشر إلى كلمة أو انتقل إليها لتقرأ منذ متى.",
  since: (year: string) => `منذ ${year}`,
  until: (year: string) => `حتى ${year}`,
  before: "من قبل:",
  knownAs: "يُكتب أيضًا",
  orcid: "ORCID",
  page: "الآراء عبر الزمن، وما تعتمد عليه",
  overTime: "الآراء عبر الزمن",
  relies: "ما يُعتمد عليه",
  noSteps: "لم تُسجَّل حجة لهذا الباحث.",
  directions: { for: "له", against: "عليه" },
  from: "من",
  comesDownTo: "ومردّه إلى",
  on: "في",
  noEvidence: "لا شيء مشاهد أو مقيس",
  more: (n: number) =>
    arabicCount(n, {
      one: "وواحد آخر",
      two: "واثنان آخران",
      few: "و# أخرى",
      many: "و# أخرى",
      other: "و# أخرى",
    }),
  looked: "المشاهد والمقيس",
  times: (n: number) =>
    n === 1 ? "مرة" : arabicCount(n, { two: "مرتين", few: "# مرات", many: "# مرة", other: "# مرة" }),
  unanswered: "حجج منشورة على ما يقول به",
  unansweredNone: "لم تُسجَّل حجة إلا وعنها جواب منه.",
  noReply: "لم يُسجَّل هنا جواب منشور",
  onlyOthers: "لم يُسجَّل هنا جواب منشور منه؛ وأجاب آخرون:",
  is: "على",
  changes: "التناقض والتغيّر",
  changesNone: "لم يُسجَّل شيء.",
  via: "قُرئ في",
};

/** How each stance is said, as a noun that follows nobody's gender or number. */
export const arabicStances = {
  holds: "إثبات",
  rejects: "رفض",
  doubts: "شك",
  "leaves-open": "توقّف",
};

/** A claim that was held and left for a rival. */
export const arabicHeld = "إثبات سابق";

/** How near somebody came to what they report. */
export const arabicNearness = {
  "first-hand": "معاينة مباشرة",
  "from likenesses": "من قوالب وصور ورسوم",
  "second-hand": "نقلًا عن غيره",
  "not said": "لم يُذكر كيف",
};
