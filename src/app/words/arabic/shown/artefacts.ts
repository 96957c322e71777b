import { apart, arabicCount, arabicFigure } from "../../reader/figures.ts";

const times = (n: number): string => arabicFigure(n >= 10 ? Math.round(n) : Number(n.toFixed(1)));

/** Words of the pages of artefacts and of their drawings. */
export const arabicArtefacts = {
  artefacts: "الآثار",
  artefact: "أثر",
  help: "الأشياء وأجزاؤها. علّم اثنين فأكثر مما له شكل لتُرسم جنبًا إلى جنب بمقياس واحد.",
  filter: "تصفية بالاسم أو الرقم أو النوع",
  none: "لا شيء يوافق هذه الكلمات.",
  measured: (n: number) =>
    n === 1
      ? "قياس واحد"
      : arabicCount(n, { two: "قياسان", few: "# قياسات", many: "# قياسًا", other: "# قياس" }),
  seen: (n: number) =>
    n === 1
      ? "مشاهدة واحدة"
      : arabicCount(n, { two: "مشاهدتان", few: "# مشاهدات", many: "# مشاهدة", other: "# مشاهدة" }),
  parts: (n: number) =>
    n === 1 ? "جزء واحد" : arabicCount(n, { two: "جزآن", few: "# أجزاء", many: "# جزءًا", other: "# جزء" }),
  mark: (name: string) => `ارسم ${apart(name)}`,
  marked: (n: number) =>
    n === 1
      ? "واحد معلَّم؛ علّم آخر ليُرسما جنبًا إلى جنب."
      : arabicCount(n, {
          two: "اثنان معلَّمان.",
          few: "# معلَّمة.",
          many: "# معلَّمًا.",
          other: "# معلَّم.",
        }),
  drawThem: "ارسمها جنبًا إلى جنب",
  clear: "أزل العلامات كلها",
  sideBySide: "جنبًا إلى جنب بمقياس واحد",
  partOf: "جزء من",
  itsParts: "الأجزاء",
  itsPage: "الأبعاد والتاريخ والرسم",
  whatItIs: "ما هو",
  placeWithheld: "مكان العثور عليه محجوب.",
  access: "من يأذن بالاطلاع عليه",
  caution:
    "انظر أولًا بما يتركه على حاله. فاللمس والنقل وأخذ العيّنات يستلزم إذن أمين الحفظ، ورضا من يملكه أو يعنيه؛ والمقدَّم ما تطلبه القواعد المحلية والممارسة المرخَّصة.",
  drawing: "مرسوم بمقياس",
  dimensions: "الأبعاد",
  noDimensions: "لم يُقس منه شيء.",
  ofParts: "أبعاد أجزائه",
  figure: "الرقم كما كُتب",
  si: "بالوحدات الدولية، ± انحراف معياري",
  state: "الحال والأساس",
  source: "المصدر",
  year: "السنة",
  use: "الاشتقاق",
  alone: "يأخذه",
  inMean: "يأخذه في متوسط",
  leftOut: (why: string | null) => (why === null ? "يتركه" : `يتركه: ${apart(why)}`),
  taken: (si: string, readings: number) =>
    readings === 1
      ? `يأخذ الاشتقاق ${apart(si)}.`
      : arabicCount(readings, {
          two: `يأخذ الاشتقاق ${apart(si)}، وهو متوسط قراءتين.`,
          few: `يأخذ الاشتقاق ${apart(si)}، وهو متوسط # قراءات.`,
          many: `يأخذ الاشتقاق ${apart(si)}، وهو متوسط # قراءة.`,
          other: `يأخذ الاشتقاق ${apart(si)}، وهو متوسط # قراءة.`,
        }),
  takenNone: "لا يأخذ الاشتقاق شيئًا منها.",
  how: (how: string) => `أُخذ بـ: ${apart(how)}`,
  copies: (whose: string) => `نقلًا عن ${apart(whose)}`,
  of: (n: number) => `من ${arabicFigure(n)}`,
  inConflict: (n: number) =>
    n === 1
      ? "واحد متعارض"
      : arabicCount(n, { two: "اثنان متعارضان", few: "# متعارضة", many: "# متعارضًا", other: "# متعارض" }),
  conflict: "متعارض",
  clash: (who: readonly [string, string], by: string, more: number | null) =>
    `${who[0] === who[1] ? `قراءتان من ${apart(who[0])}` : `${apart(who[0])} و${apart(who[1])}`}: الفرق ${apart(by)}${more === null ? "، ولا يُسمح بفرق" : `، وهو ${times(more)} أمثال ما يسمح به عدم اليقين`}.`,
  shouldEqual: (sum: string, expected: string) => `ينبغي أن يساوي ${apart(sum)}، ${apart(expected)}، و`,
  tieAgrees: (bounded: boolean) => (bounded ? "يوافقه بقدر ما يدل عليه حدّ." : "يوافقه."),
  tieDiffers: (by: string, more: boolean, allowed: number | null) =>
    `${more ? "يزيد" : "ينقص"} عنه ${apart(by)}${allowed === null ? "، ولا يُسمح بفرق" : `، وهو ${times(allowed)} أمثال ما يسمح به عدم اليقين`}.`,
  moreClashes: (n: number) =>
    n === 1
      ? "زوج آخر مختلف."
      : arabicCount(n, {
          two: "زوجان آخران مختلفان.",
          few: "# أزواج أخرى مختلفة.",
          many: "# زوجًا آخر مختلفًا.",
          other: "# زوج آخر مختلف.",
        }),
  observations: "ما شوهد فيه",
  noObservations: "لم يُشاهَد فيه شيء ولم يُبحث عن شيء.",
  presence: { true: "حاضر", false: "غائب", unclear: "غير واضح", "not-reported": "مسكوت عنه" },
  trace: "العلامة",
  observation: "المشاهدة",
  by: "عند",
  on: "في",
  history: "التاريخ",
  historyHelp: "فوق الخط: متى شوهد أو قيس وعند من؛ وتحته: ما جرى له.",
  historyPicture: "تاريخه على خط السنين؛ والشيء نفسه بالكلمات أدناه.",
  befell: (names: string) => `(${apart(names)})`,
  looked: (measured: number, seen: number) =>
    [
      arabicCount(measured, {
        zero: "",
        one: "قيس بُعد واحد",
        two: "قيس بُعدان",
        few: "قيست # أبعاد",
        many: "قيس # بُعدًا",
        other: "قيس # بُعد",
      }),
      arabicCount(seen, {
        zero: "",
        one: "شوهد شيء واحد",
        two: "شوهد شيئان",
        few: "شوهدت # أشياء",
        many: "شوهد # شيئًا",
        other: "شوهد # شيء",
      }),
    ]
      .filter((one) => one !== "")
      .join("، "),
  via: "قُرئ في",
  from: (bases: readonly string[]) => bases.map((one) => `عن ${apart(one)}`).join(" و"),
  after: (what: string, when: string) => `بعد «${apart(what)}»، ${when}`,
  kinds: {
    excavation: "تنقيب",
    conservation: "صيانة",
    restoration: "ترميم",
    move: "نقل",
    sampling: "أخذ عيّنة",
    loss: "فقد",
  },
  states: {
    complete: "كامل",
    preserved: "باقٍ، بهذا القدر على الأقل",
    reconstructed: "مستكمَل",
  },
  images: "صوره",
  hanging: "ما لا يقوم من دونه",
  noHanging: "لا جواب عن مسألة يتوقف عليه وحده.",
  through: "عبر",
  scale: (scale: string) => `${scale} في الطباعة وفي الملف المحفوظ.`,
  thin: "الخطوط الرفيعة على بُعد انحراف معياري واحد نقصًا وزيادة.",
  brokenEdges: "الحواف المسننة حدود دنيا: كان الشيء يمتد بعدها.",
  suppliedEdges: "الحواف المتقطعة مستكملة، أو حدود عليا.",
  rows: "السجل لا يحدد للأجزاء مواضع؛ فهي مصفوفة جنبًا إلى جنب.",
  profileNote: "عروض القطاع على أبعاد متساوية من الحافة إلى القاعدة.",
  undrawn: (name: string, lacks: string) => `${apart(name)} غير مرسوم: لا قياس يعطي ${apart(lacks)}.`,
  secondBar: "شريط مقياس ثانٍ بوحدة",
  unitIs: (name: string, size: string, source: string) =>
    `‏1 ${apart(name)} يساوي ${apart(size)} (${apart(source)}).`,
  unitAssumed: "لم يُنشر لها مدى؛ وفُرض 1 %.",
  unitTooLong: (name: string) => `${apart(name)} واحدة أطول من هذه الورقة بهذا المقياس.`,
  combed: "الشرطات عند طرفه انحراف معياري واحد في الاتجاهين.",
  meanOf: (n: number) => `متوسط ${arabicFigure(n)}`,
  form: { circle: "دائرة", rectangle: "مستطيل", profile: "قطاع" },
  save: "احفظ SVG",
  saveName: "رسم",
};
