const small = [
  "no",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** A count inside a sentence: in words up to twelve, in figures beyond. */
export function counted(n: number): string {
  return small[n] ?? String(n);
}

/** A count that begins a sentence. */
export function countedFirst(n: number): string {
  const word = counted(n);
  return word.charAt(0).toUpperCase() + word.slice(1);
}
