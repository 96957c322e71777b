import type { ArtefactRecord } from "../../../../link/graph.ts";
import type { Known } from "../sheet.ts";

/**
 * The class of a thing: what is kept somewhere is an object, a site is a site, and of anything else the record does not say
 * whether it can be moved (a post-hole cannot), only that people made it.
 */
export function classOf({ values }: ArtefactRecord): Known {
  if (values["held-at"] !== undefined) return "crm:E22_Human-Made_Object";
  return isSite(values) ? "crm:E27_Site" : "crm:E24_Physical_Human-Made_Thing";
}

/** Whether a thing is ground rather than something that was made. */
export function isSite({ kind }: ArtefactRecord["values"]): boolean {
  return kind?.trim().toLowerCase() === "site";
}
