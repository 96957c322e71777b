import type { ArabicCatalogue } from "../../../../../base/text/said/arabic.ts";

/** What the clearance plug-in says. */
export const clearanceSaid: ArabicCatalogue = {
  Clearance: "الخلوص",
  "Asks whether a peg goes into a socket within the errors of both, dimension by dimension and all together.":
    "تسأل هل يدخل وتد في تجويف في حدود أخطائهما، بُعدًا بُعدًا ومجتمعةً.",
  "Dimensions of the part that receives; bounds are taken as what they are.":
    "أبعاد الجزء الذي يستقبل؛ والحدود تؤخذ على ما هي عليه.",
  "The same dimensions of the part that goes in.": "الأبعاد نفسها في الجزء الذي يدخل.",
  "The most room with which the parts would still be said to fit.": "أكبر خلوص يقال معه إن الجزأين متطابقان.",
  "Socket less peg in the tightest dimension, those left aside that a bound lets be of any size above where there are others; its ends are the least of the ends of all dimensions, ranges taken whole.":
    "التجويف ناقصًا الوتد في أضيق الأبعاد، مع ترك ما لا نهاية عليا له بسبب حدّ إن وُجد غيره؛ وطرفاه أقل أطراف الأبعاد كلها، والأمداء مأخوذة بكاملها.",
  "The chance that all dimensions fit, as if independent; with limits where a bound leaves a dimension open.":
    "احتمال مطابقة الأبعاد كلها كأنها مستقلة؛ مع طرفين حيث يترك حدٌّ بُعدًا بلا حسم.",

  "To fit is not to belong: how many other pegs of the class would fit as well can be told only where several joints are given, and then is.":
    "المطابقة ليست انتماءً: فكم من الأوتاد الأخرى من الصنف يطابق كذلك لا يُعرف إلا حيث تُعطى عدة وصلات، ويُذكر حينئذ.",
  "Only sizes are compared: of a square peg in a round socket compare the diagonal, and see that the shapes agree (common practice).":
    "المقادير وحدها تقارَن: ففي الوتد المربع في تجويف مستدير قارن القُطر، وتحقّق من توافق الشكلين (عُرف جارٍ).",
  "The product over several dimensions takes their errors as independent; the wider limits hold whatever their dependence.":
    "حاصل الضرب على عدة أبعاد يأخذ أخطاءها على أنها مستقلة؛ والطرفان الأوسع صحيحان كيفما كان ارتباطها.",
  "Wood that dried and clay that was fired have shrunk: the sizes compared are those of now, not those of use.":
    "الخشب الذي جفّ والطين الذي أُحرق قد انكمشا: والمقادير المقارَنة مقادير الآن لا مقادير وقت الاستعمال.",
  "Trying parts together can harm both: whether they may be is for their keeper and a conservator to say (common practice).":
    "تجربة تركيب الجزأين قد تضرّ بكليهما: والإذن بها لأمين حفظهما ولاختصاصي صيانة (عُرف جارٍ).",
  "A size known only as at least or at most so much leaves open whether its dimension fits.":
    "المقدار الذي لا يُعرف إلا أنه هذا القدر على الأقل أو على الأكثر يترك مطابقة بُعده بلا حسم.",
  "A range is read as what one part may measure, all of it equally likely; the spread of several parts says nothing of one.":
    "يُقرأ المدى على أنه ما قد يبلغه جزء واحد، وكله متساوي الاحتمال؛ وتفاوت عدة أجزاء لا يقول شيئًا في واحد منها.",
  "Dimensions of different names were paired: see that they lie against each other when the parts are joined.":
    "قُرنت أبعاد مختلفة الأسماء: تحقّق من أنها تتقابل حين يُجمع الجزآن.",
  "An error common to both sizes cancels as far as they are alike, and is taken so.":
    "الخطأ المشترك بين المقدارين يُلغى بقدر تشابههما، وهكذا أُخذ.",

  "Unexpected {0} ({1}) where parts are fitted together, expected lengths.":
    "غير متوقَّع: {0} ({1}) حيث يُركَّب جزآن؛ والمتوقَّع: أطوال.",
  sizes: "المقادير",
  "Unexpected shrinkage of all or more, expected a share below 1.":
    "غير متوقَّع: انكماش الكل أو أكثر؛ والمتوقَّع: حصة دون 1.",

  "How likely each clearance is": "مدى احتمال كل خلوص",
  "Each curve is drawn to a height of its own; shaded is where the peg fits, to the right of 0.":
    "كل منحنى مرسوم بارتفاع يخصه؛ والمظلَّل حيث يطابق الوتد، من 0 فصاعدًا.",
  "Each curve is drawn to a height of its own; shaded is where the peg fits, to the right of 0 and up to {0}, the loosest.":
    "كل منحنى مرسوم بارتفاع يخصه؛ والمظلَّل حيث يطابق الوتد، من 0 حتى {0}، وهو أوسع ما يُقبل.",
  "Points are clearances with their 95 % intervals, or the whole of a range.":
    "النقاط مقادير الخلوص بمجالات 95 %، أو المدى بكامله.",
  "A bound leaves no curve, only a side: {0}.": "الحدّ لا يدع منحنى، بل جانبًا فحسب: {0}.",
  "clearance, socket less peg": "الخلوص، التجويف ناقصًا الوتد",
  fits: "مطابق",
  "just fits": "أول المطابقة",
  loosest: "أوسع ما يُقبل",
  likelihood: "الاحتمال",
  "clearance of each dimension": "الخلوص في كل بُعد",
  "left open by a bound": "يتركه حدٌّ بلا حسم",
  "A peg in its socket": "وتد في تجويفه",
  "The peg laid into the socket, to scale": "الوتد موضوعًا في التجويف، مرسومًا بمقياس",
  "Each row is one dimension from one side of both parts: uprights are the walls of the socket, shaded is the peg, above them the clearance. Bars at the ends are 95 % intervals, or the whole of a range.":
    "كل صف بُعد واحد من جانب واحد من الجزأين: الخطوط القائمة جدران التجويف، والمظلَّل الوتد، وفوقهما الخلوص. والأعمدة في الأطراف مجالات 95 %، أو المدى بكامله.",
  "The peg reaches beyond the wall: {0}.": "الوتد يتجاوز الجدار: {0}.",
  "Dashed: known only as at least or at most so much.":
    "المتقطع: لا يُعرف إلا أنه هذا القدر على الأقل أو على الأكثر.",
  size: "المقدار",
  peg: "الوتد",
  socket: "التجويف",
  clearance: "الخلوص",
  "of any size": "بأي مقدار",

  "Whether peg and socket fit together cannot be decided.": "لا يُحسم هل يتطابق الوتد والتجويف.",
  "Peg and socket are not compatible (the chance is {0}).": "الوتد غير متوافق مع التجويف (والاحتمال {0}).",
  "Peg and socket are compatible (the chance is {0}).": "الوتد متوافق مع التجويف (والاحتمال {0}).",
  "Clearance: {0}.": "الخلوص: {0}.",
  "{0} (with errors {1} to {2})": "{0} (ومع الأخطاء من {1} إلى {2})",
  "too loose": "أوسع مما ينبغي",
  impossible: "ممتنع",
  "undecided (a chance of {0} if all of the range is equally likely)":
    "لا يُحسم (واحتماله {0} إن كان المدى كله متساوي الاحتمال)",
  "unlikely (a chance of {0})": "مستبعد (واحتماله {0})",
  "undecided (a chance of {0})": "لا يُحسم (واحتماله {0})",
  "The chance to fit is {0}.": "احتمال المطابقة {0}.",
  "The chance that all dimensions fit is {0}, whatever the dependence of their errors.":
    "احتمال مطابقة الأبعاد كلها {0}، كيفما كان ارتباط أخطائها.",
  "The chance that all dimensions fit is {0} if their errors are independent, and {1} whatever their dependence.":
    "احتمال مطابقة الأبعاد كلها {0} إن كانت أخطاؤها مستقلة، و{1} كيفما كان ارتباطها.",
  "up to {0}": "حتى {0}",
  "below {0}": "دون {0}",
  "above {0}": "فوق {0}",

  "The peg is not compatible with the socket.": "الوتد غير متوافق مع التجويف.",
  "The peg is not compatible with the socket in {0} of {1} dimensions.": {
    one: "الوتد غير متوافق مع التجويف في واحد من {1} من الأبعاد.",
    two: "الوتد غير متوافق مع التجويف في اثنين من {1} من الأبعاد.",
    few: "الوتد غير متوافق مع التجويف في {0} من {1} من الأبعاد.",
    many: "الوتد غير متوافق مع التجويف في {0} من {1} من الأبعاد.",
    other: "الوتد غير متوافق مع التجويف في {0} من {1} من الأبعاد.",
  },
  "Whether the peg goes into the socket cannot be decided.": "لا يُحسم هل يدخل الوتد في التجويف.",
  "The peg is compatible with the socket.": "الوتد متوافق مع التجويف.",
  "The peg is compatible with the socket in all {0} dimensions.": {
    two: "الوتد متوافق مع التجويف في البُعدين كليهما.",
    few: "الوتد متوافق مع التجويف في الأبعاد كلها، وهي {0}.",
    many: "الوتد متوافق مع التجويف في الأبعاد كلها، وهي {0}.",
    other: "الوتد متوافق مع التجويف في الأبعاد كلها، وهي {0}.",
  },
  "The pegs are not compatible with their sockets in {0} of {1} pairs of dimensions.": {
    one: "الأوتاد غير متوافقة مع تجاويفها في واحد من {1} من أزواج الأبعاد.",
    two: "الأوتاد غير متوافقة مع تجاويفها في اثنين من {1} من أزواج الأبعاد.",
    few: "الأوتاد غير متوافقة مع تجاويفها في {0} من {1} من أزواج الأبعاد.",
    many: "الأوتاد غير متوافقة مع تجاويفها في {0} من {1} من أزواج الأبعاد.",
    other: "الأوتاد غير متوافقة مع تجاويفها في {0} من {1} من أزواج الأبعاد.",
  },
  "The pegs are compatible with their sockets in all {0} pairs of dimensions.": {
    two: "الأوتاد متوافقة مع تجاويفها في زوجي الأبعاد كليهما.",
    few: "الأوتاد متوافقة مع تجاويفها في أزواج الأبعاد كلها، وهي {0}.",
    many: "الأوتاد متوافقة مع تجاويفها في أزواج الأبعاد كلها، وهي {0}.",
    other: "الأوتاد متوافقة مع تجاويفها في أزواج الأبعاد كلها، وهي {0}.",
  },
  "Whether the pegs go into their sockets cannot be decided.": "لا يُحسم هل تدخل الأوتاد في تجاويفها.",
  "With a peg of another of these sockets the chance would be {0} on average (1 crossing).":
    "ولو أُخذ وتد تجويف آخر من هذه لكان الاحتمال {0} في المتوسط (مبادلة واحدة).",
  "With a peg of another of these sockets the chance would be {0} on average ({1} crossings).": {
    two: "ولو أُخذ وتد تجويف آخر من هذه لكان الاحتمال {0} في المتوسط (مبادلتان).",
    few: "ولو أُخذ وتد تجويف آخر من هذه لكان الاحتمال {0} في المتوسط ({1} مبادلات).",
    many: "ولو أُخذ وتد تجويف آخر من هذه لكان الاحتمال {0} في المتوسط ({1} مبادلة).",
    other: "ولو أُخذ وتد تجويف آخر من هذه لكان الاحتمال {0} في المتوسط ({1} مبادلة).",
  },
};
