/** What the library writes by itself, and what is to stand there. */
export interface Settling {
  /** The day it is written, YYYY-MM-DD. */
  readonly today: string;
  /** The language of our own words, by BCP 47. */
  readonly language: string;
}

/**
 * A part of a presentation as it is to be: one date, the language of the talk, no name of a shape used twice on a slide,
 * and tables that are told to those who do not see them.
 */
export function settledPart(path: string, xml: string, { today, language }: Settling): string {
  if (path === "docProps/core.xml")
    return xml.replace(/(<dcterms:(?:created|modified)[^>]*>)[^<]*/gu, `$1${today}T00:00:00Z`);
  if (!path.startsWith("ppt/")) return xml;
  let next = 0;
  return xml
    .replaceAll(' altLang="en-US"', "")
    .replaceAll('lang="en-US"', `lang="${language}"`)
    .replace(/<p:cNvPr id="\d+"/gu, () => `<p:cNvPr id="${(next += 1)}"`)
    .replace(/(<p:graphicFrame><p:nvGraphicFramePr><p:cNvPr id="\d+" name="([^"]*)")/gu, '$1 descr="$2"');
}
