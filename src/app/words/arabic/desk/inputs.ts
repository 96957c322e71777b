/** What the inputs of the methods are called, by their names in a file. */
export const arabicInputs: Readonly<Record<string, string>> = {
  values: "القيم",
  larger: "الأكبر",
  smaller: "الأصغر",
  gaps: "المسافات",
  other: "صف آخر",
  scale: "المعامل",
  socket: "التجويف",
  peg: "الوتد",
  reported: "المذكور",
  known: "المعلوم",
  occasions: "مواضع السكوت",
  first: "الجانب الأول",
  second: "الجانب الثاني",
  of: "المؤرَّخ",
};
