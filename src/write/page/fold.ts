/**
 * A function `fold` for the page's script: words as they are compared in search, after the program's own folding (without
 * case, marks and punctuation, one form for each letter, Arabic digits as 0 to 9), parted by single spaces.
 */
export const foldScript = String.raw`
const alike = { ß: "ss", æ: "ae", œ: "oe", ø: "o", ł: "l", đ: "d", ð: "d", þ: "th", ı: "i", ς: "σ", ٱ: "ا", ى: "ي", ی: "ي", ې: "ي", ک: "ك", ة: "ه", ە: "ه", ـ: "" };
const fold = (text) => text.toLowerCase().normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().normalize("NFD")
  .replace(/['’ʼ]s(?![\p{L}\p{N}])/gu, " ")
  .replace(/[ßæœøłđðþıςٱىیېکةەـ]/gu, (letter) => alike[letter])
  .replace(/[٠-٩۰-۹]/g, (digit) => String(digit.charCodeAt(0) & 15))
  .replace(/[^\p{L}\p{N}]+/gu, " ").trim();
`;
