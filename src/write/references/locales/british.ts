/**
 * The English of Britain from that of the United States: single quotation marks with points and commas outside them,
 * and the day before the month. Common practice of British publishers; every other term is the same.
 */
export function britishFrom(american: string): string {
  const date = (form: string, between: string): string =>
    `<date form="${form}">${["day", "month", "year"]
      .map((part) => datePart(part, form === "numeric", part === "year" ? "" : between))
      .join("")}</date>`;
  return american
    .replace('xml:lang="en-US"', 'xml:lang="en-GB"')
    .replace('punctuation-in-quote="true"', 'punctuation-in-quote="false"')
    .replace(/<date form="text">.*?<\/date>/s, date("text", " "))
    .replace(/<date form="numeric">.*?<\/date>/s, date("numeric", "/"))
    .replace(/(<term name="(?:open|close)(?:-inner)?-quote">)([“”‘’])/g, (_, term: string, sign: string) => {
      return `${term}${otherQuote[sign] ?? sign}`;
    });
}

const otherQuote: Readonly<Record<string, string>> = { "“": "‘", "”": "’", "‘": "“", "’": "”" };

function datePart(name: string, numeric: boolean, suffix: string): string {
  const form = numeric && name !== "year" ? ' form="numeric-leading-zeros"' : "";
  return `<date-part name="${name}"${form}${suffix === "" ? "" : ` suffix="${suffix}"`}/>`;
}
