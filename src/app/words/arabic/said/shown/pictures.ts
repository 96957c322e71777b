import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What is said of measuring on pictures. */
export const picturesSaid: ArabicCatalogue = {
  "What is measured is {0} times as long as what the scale is set by: of its uncertainty of {1}, the scale makes {2} and pointing {3}. A longer scale would help, more readings would not.":
    "ما يُقاس أطول مما ضُبط به المقياس {0} مرة: فمن ارتيابه البالغ {1} للمقياس {2} وللإشارة {3}. وينفع مقياس أطول، ولا تنفع قراءات أكثر.",
  "A point lies in the outer tenth of the picture, where lenses bend straight lines most (common practice).":
    "تقع نقطة في العُشر الخارجي من الصورة، حيث تحني العدسات الخطوط المستقيمة أكثر ما تحنيها (عُرف مهني).",
  "The distance is {0} pixels: one pixel is {1} of it.": "المسافة {0} بكسل: والبكسل الواحد {1} منها.",
  "The arc rises by {0} pixels only: one pixel at each point changes the diameter by {1}. Take points farther apart.":
    "يرتفع القوس {0} بكسل فقط: فبكسل واحد عند كل نقطة يغيّر القطر بـ {1}. خذ نقاطًا أبعد بعضها عن بعض.",
  "Parallax: a scale nearer to the camera than what is measured, by 1 % of the distance, makes it 1 % too small; they have to lie in one plane.":
    "اختلاف المنظر: مقياس أقرب إلى آلة التصوير مما يُقاس بـ 1 % من المسافة يجعله أصغر بـ 1 %؛ فيجب أن يقعا في مستوٍ واحد.",
  "Perspective: what leans away from the picture by 10° is seen 1.5 % too short, by 20° 6 %.":
    "المنظور: ما يميل عن مستوى الصورة بـ 10° يُرى أقصر بـ 1.5 %، وبـ 20° أقصر بـ 6 %.",
  "Lenses bend lines towards the edges of a picture; the middle is safer (common practice).":
    "تحني العدسات الخطوط نحو حواف الصورة؛ والوسط أسلم (عُرف مهني).",
  "Prints and copies shrink, and are seldom at the scale they name: a scale bar printed along with the picture is safer than a ratio (common practice).":
    "تنكمش الطبعات والنسخ، ونادرًا ما تكون بالمقياس الذي تذكره: وشريط مقياس مطبوع مع الصورة أسلم من نسبة (عُرف مهني).",
  "A drawn line has a width: say in the landmarks which edge of it was taken (common practice).":
    "للخط المرسوم عرض: قل في المعالم أي حافة منه أُخذت (عُرف مهني).",
  "Unexpected `{0}`, expected so many pixels above 0, such as {1}":
    "غير متوقَّع: `{0}`؛ والمتوقَّع: عدد من البكسلات فوق 0، مثل {1}",
  "Unexpected `{0}`, expected a length above 0 that is no bound":
    "غير متوقَّع: `{0}`؛ والمتوقَّع: طول فوق 0 ليس حدًّا",
  "The scale is set by this very dimension, expected another: it would only be given back":
    "المقياس مضبوط بهذا البُعد نفسه؛ والمتوقَّع: غيره، وإلا عاد كما أُعطي",
  "Unexpected scale, expected ends that lie apart and a length that is known":
    "غير متوقَّع: هذا المقياس؛ والمتوقَّع: طرفان متباعدان وطول معروف",
  "Unexpected `{0}`, expected a ratio such as {1}": "غير متوقَّع: `{0}`؛ والمتوقَّع: نسبة مثل {1}",
  "Unexpected `{0}`, expected so many pixels to the inch, such as {1}":
    "غير متوقَّع: `{0}`؛ والمتوقَّع: عدد من البكسلات في البوصة، مثل {1}",
  "Three points that lie nearly in one line give no diameter, expected an arc that rises well above a pixel":
    "ثلاث نقاط تكاد تقع على خط واحد لا تعطي قطرًا؛ والمتوقَّع: قوس يرتفع كثيرًا عن بكسل",
  "Points that lie this near together give no figure, expected them well apart":
    "نقاط بهذا القرب لا تعطي رقمًا؛ والمتوقَّع: أن تتباعد",
  "Unexpected {0} for {1}, expected a {2}": "غير متوقَّع لـ {1}: {0}؛ والمتوقَّع: {2}",
  "1 m is {0} pixels": "المتر الواحد {0} بكسل",
  "{0}, good to {1} (1 s), as you say.": "{0}، صالح إلى {1} (1 s)، كما قلت.",
  "{0}, good to {1} (1 s): {2} from pointing at its ends ({3}), {4} from the length between them.":
    "{0}، صالح إلى {1} (1 s): {2} من الإشارة إلى طرفيه ({3})، و{4} من الطول بينهما.",
  "{0} from pointing ({1})": "{0} من الإشارة ({1})",
  "{0} from the scale, common to all that is measured by it": "{0} من المقياس، مشتركة في كل ما يُقاس به",
  "{0} readings": { two: "قراءتان", few: "{0} قراءات", many: "{0} قراءة", other: "{0} قراءة" },
  "as far as the readings lie apart": "بقدر تباعد القراءات",
  "what each point is good to": "ما تصلح له كل نقطة",
};
