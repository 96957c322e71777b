import CSL from "citeproc";
import { markedFormat } from "./marks.ts";

/** The name of our own output format among those of the processor. */
export const formatName = "runs";

/**
 * Teaches the processor our output format, and mends two departures from the specification of CSL 1.0.2, once:
 * a version like `1.2` is a number, and the cites that `collapse="year"` draws together stand apart by the
 * `cite-group-delimiter` (a comma unless the style says otherwise), whatever comes after the group.
 */
export function mendProcessor(): void {
  if (CSL.Output.Formats[formatName] !== undefined) return;
  CSL.Output.Formats[formatName] = markedFormat;
  const version = CSL.NUMERIC_VARIABLES.indexOf("version");
  if (version >= 0) CSL.NUMERIC_VARIABLES.splice(version, 1);
  const before = CSL.getSpliceDelimiter;
  CSL.getSpliceDelimiter = function (lastLocator, lastCollapsed, place) {
    const given = before.call(this, lastLocator, lastCollapsed, place);
    const { collapse, cite_group_delimiter: within } = this.citation.opt;
    if (collapse !== "year" || !this.tmp.have_collapsed || Boolean(lastLocator)) return given;
    const apart = typeof within === "string" ? within : ", ";
    this.tmp.splice_delimiter = apart;
    return apart;
  };
}
