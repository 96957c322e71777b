import type { CslItem } from "../../read/bibliography/csl.ts";
import { plainOf } from "./runs.ts";
import type { Run, Runs } from "./runs.ts";

/** The same runs in which the addresses that an item has itself, its DOI and its page on the web, lead there. */
export function linked(runs: Runs, item: CslItem): Runs {
  const text = plainOf(runs);
  const places: (readonly [start: number, end: number, href: string])[] = [];
  for (const [said, href] of addressesOf(item)) {
    const start = text.indexOf(said);
    const end = start + said.length;
    if (start < 0 || places.some((one) => start < one[1] && one[0] < end)) continue;
    places.push([start, end, href]);
  }
  return places.reduce((done, [start, end, href]) => within(done, start, end, href), runs);
}

/** What may stand in the text, longer forms first, and where it leads: only to the web. */
function addressesOf({ DOI, URL: url }: CslItem): readonly (readonly [string, string])[] {
  const bare = (DOI ?? "").replace(/^(?:https?:\/\/(?:dx\.)?doi\.org\/|doi:)\s*/i, "");
  const doi = `https://doi.org/${bare}`;
  const dois = [doi, `http://doi.org/${bare}`, bare].map((said) => [said, doi] as const);
  return [
    ...(url !== undefined && /^https?:\/\/\S+$/i.test(url) ? [[url, url] as const] : []),
    ...(/^10\.\d[^\s]*\/\S+$/.test(bare) ? dois : []),
  ];
}

function within(runs: Runs, start: number, end: number, href: string): Runs {
  let at = 0;
  return runs.flatMap((run): readonly Run[] => {
    const [from, to] = [at, at + run.text.length];
    at = to;
    const [first, last] = [Math.max(from, start), Math.min(to, end)];
    if (first >= last) return [run];
    const part = (begin: number, stop: number): Run => ({
      ...run,
      text: run.text.slice(begin - from, stop - from),
    });
    return [part(from, first), { ...part(first, last), href }, part(last, to)].filter(
      (one) => one.text !== "",
    );
  });
}
