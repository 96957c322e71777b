import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What stands on the sheet of a visit, and what is said of what was filled in. */
export const visitSaid: ArabicCatalogue = {
  "Visit to {0}": "زيارة {0}",
  "Before the visit": "قبل الزيارة",
  On: "موضوعه",
  Keeper: "الحافظ",
  Permission: "الإذن",
  "Ask ahead": "يُطلب قبل الموعد بمدة",
  Cost: "الكلفة",
  "It uses something up.": "يستهلك شيئًا.",
  "Ways that use nothing up come first: {0}.": "تُقدَّم الطرق التي لا تستهلك شيئًا: {0}.",
  "A keeper will ask:": "سيسأل الحافظ:",
  "Nothing here is leave to do anything: the keeper's rules, the law of the place and licensed people decide.":
    "ليس في هذه الورقة إذن بشيء: فالحكم لقواعد الحافظ وقانون البلد وأصحاب الترخيص.",

  "On the day": "يوم الزيارة",
  "Who, when, with what": "من، ومتى، وبأي أداة",
  "who looks and measures": "من يعاين ويقيس",
  day: "اليوم",
  "what is looked at": "ما يُعايَن",
  "the thing itself": "الأصل نفسه",
  "a cast": "قالب منه",
  "a replica": "نسخة عنه",
  "a scan": "مسح له",
  "a photograph": "صورة له",
  "a drawing": "رسم له",
  "read to the nearest": "تُقرأ إلى أقرب",
  "entry of the bibliography for this visit, if there is one": "مدخل هذه الزيارة في المراجع، إن وُجد",
  "The things, and their condition": "الآثار وحالتها",

  "To measure": "ما يُقاس",
  "Three readings at least of each, the instrument taken off and set again between them; every reading as it comes, none left out (common practice).":
    "ثلاث قراءات على الأقل لكل بُعد، تُرفع الأداة بينها وتوضع من جديد؛ وتُكتب كل قراءة كما جاءت، ولا تُترك واحدة (عرف شائع).",
  "The instrument is held against a known length before and after: what is wrong with every reading alike, their scatter does not show (common practice).":
    "تُقارَن الأداة بطول معروف قبل القياس وبعده: فما تخطئ فيه كل القراءات معًا لا يُظهره تفرّقها (عرف شائع).",
  "Earlier values stay hidden until the new readings are in, so that they do not lead the eye.":
    "تبقى القيم السابقة مخفية حتى تُكتب القراءات الجديدة، كي لا تقود العين.",
  "Recorded before, and worth doing again while the thing lies there:":
    "مسجَّل من قبل، ويحسن أن يُعاد والأثر حاضر:",
  "reading {0}": "القراءة {0}",
  unit: "الوحدة",
  "instrument, where another": "الأداة، إن كانت غيرها",
  "between: {0}": "بين: {0}",
  "taken: {0}": "يُؤخذ هكذا: {0}",
  "measured before with: {0}": "قيس من قبل بـ: {0}",
  "preserved: broken there, so at least this": "الباقي: مكسور هناك، فهو هذا على الأقل",

  "To look for": "ما يُبحث عنه",
  "That something was looked for and is not there is worth as much as that it is.":
    "أن يُبحث عن شيء فلا يوجد يساوي في قيمته أن يوجد.",
  "{0}, on {1}": "{0}، في {1}",
  "seen or not": "شوهد أم لا",
  "not looked for": "لم يُبحث عنه",
  "in a sentence: where, how much, in which light": "في جملة: أين، وكم، وفي أي ضوء",

  "Pictures to take": "صور تُلتقط",
  "the whole, square on, with a scale and the inventory number": "كله، من أمامه، مع مقياس ورقم الجرد",
  "{0}: close, in raking light, with a scale; also where it was looked for and is not there":
    "{0}: عن قرب، في ضوء مائل، مع مقياس؛ وكذلك حيث بُحث عنه فلم يوجد",
  "{0}: its landmarks, with a scale in their plane": "{0}: نقطتا القياس، مع مقياس في مستواهما",
  "file of the picture": "ملف الصورة",
  "scale in it": "المقياس فيها",
  "Whatever else is seen": "كل ما شوهد غير ذلك",

  "After the visit: what it decides": "بعد الزيارة: ما تحسمه",
  "To be read when all is measured and looked for, so that nothing leads the eye.":
    "يُقرأ بعد أن يُقاس كل شيء ويُبحث عنه، كي لا يقود العين شيء.",
  "What was found": "ما وُجد",
  outcome: "النتيجة",
  "none of them yet": "لا شيء منها بعد",
  "No claim would stand differently.": "لا تتغير حال دعوى.",
  "Still to be computed for it: {0}.": "ما زال يُحسب له: {0}.",
  "{0}: now {1}, then {2}.": "{0}: حالها الآن {1}، ثم {2}.",
  "Earlier values": "القيم السابقة",
  "Not to be looked at before the new readings are in.": "لا يُنظر فيها قبل أن تُكتب القراءات الجديدة.",

  "Visit of {0}.": "زيارة يوم {0}.",
  "Visit of {0}: {1}": "زيارة يوم {0}: {1}",
  "Earlier values were looked at before all readings were taken.":
    "نُظر في القيم السابقة قبل أن تُؤخذ القراءات كلها.",
  "What others had seen was looked at before.": "نُظر من قبل في ما رآه آخرون.",
  "As the examination has it, from before the look.": "كما هو في الفحص، من قبل المعاينة.",

  "Missing scholar, expected who looked and measured": "ناقص: الباحث؛ والمتوقَّع: من عاين وقاس",
  "Unknown scholar `{0}`, expected {1}": "باحث غير معروف: `{0}`؛ والمتوقَّع: {1}",
  "a scholar of the corpus": "باحث من المدوّنة",
  "Missing day, expected one such as {0}": "ناقص: اليوم؛ والمتوقَّع: يوم مثل {0}",
  "Unexpected day `{0}`, expected one such as {1}": "غير متوقَّع: اليوم `{0}`؛ والمتوقَّع: يوم مثل {1}",
  "Unknown source `{0}`, expected the key of an entry of the bibliography, or nothing":
    "مصدر غير معروف: `{0}`؛ والمتوقَّع: مفتاح مدخل في المراجع، أو لا شيء",
  "Unknown thing in a row of the sheet, expected one that the corpus has":
    "أثر غير معروف في سطر من الورقة؛ والمتوقَّع: أثر في المدوّنة",
  "Unexpected `{0}`, expected a value above 0": "غير متوقَّع: `{0}`؛ والمتوقَّع: قيمة فوق 0",
  "Unexpected {0} `{1}` beside `{2}`, expected readings of one kind":
    "غير متوقَّع: {0} `{1}` بجانب `{2}`؛ والمتوقَّع: قراءات من نوع واحد",
  "Unexpected `{0}`, expected a step above 0 such as {1}": "غير متوقَّع: `{0}`؛ والمتوقَّع: درجة فوق 0 مثل {1}",
  "Unexpected reading `{0}` among several, expected plain values in one unit: a bound, a range or what has its own ± stands alone":
    "غير متوقَّع: القراءة `{0}` بين عدة قراءات؛ والمتوقَّع: قيم بوحدة واحدة: فالحد والمدى وما له ± خاص به تقف وحدها",
  "Unexpected angles more than half a turn apart, expected those on both sides of north counted on: {0}, {1}":
    "غير متوقَّع: زوايا بينها أكثر من نصف دورة؛ والمتوقَّع: أن يُواصَل العدّ على جانبي الشمال: {0}، {1}",
  "Unexpected counts that differ, expected the same: count again":
    "غير متوقَّع: أعداد تختلف؛ والمتوقَّع: عدد واحد: أعِد العدّ",

  "Unexpected file, expected a visit sheet that was filled in and saved":
    "ملف غير متوقَّع؛ والمتوقَّع: ورقة زيارة مُلئت وحُفظت",
  "Unexpected version of a visit sheet, expected {0}": "نسخة غير متوقَّعة من ورقة زيارة؛ والمتوقَّع: {0}",
  "Unexpected content of a visit sheet, expected it as it was saved":
    "محتوى غير متوقَّع في ورقة زيارة؛ والمتوقَّع: كما حُفظت",
};
