/** Takes the focus to the next heading of the page, or to the one before: a way past long tables without a pointer. */
export function toHeading(way: "next" | "before"): void {
  const from = document.activeElement ?? document.body;
  const stops = [...document.querySelectorAll<HTMLElement>("main :is(h1, h2, h3)")]
    // Those that are for listening alone are a pixel high.
    .filter((heading) => heading.checkVisibility() && heading.getBoundingClientRect().height > 1)
    .map((heading) => heading.closest<HTMLElement>("summary") ?? heading);
  const isAfter = (stop: HTMLElement): boolean =>
    stop !== from && (from.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  const isBefore = (stop: HTMLElement): boolean =>
    stop !== from && (from.compareDocumentPosition(stop) & Node.DOCUMENT_POSITION_PRECEDING) !== 0;
  // Whoever arrives at a page is at its title already.
  const stop =
    way === "next" ? stops.find((one) => one.tagName !== "H1" && isAfter(one)) : stops.findLast(isBefore);
  if (!stop) return;
  if (stop.tagName !== "SUMMARY") stop.tabIndex = -1;
  stop.focus();
  stop.scrollIntoView({ block: "start" });
}
