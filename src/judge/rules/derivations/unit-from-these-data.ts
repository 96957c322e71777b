import { say } from "../../../base/text/said/said.ts";
import { perDerivation, wasRefused } from "./per-derivation.ts";

export const unitFromTheseData = perDerivation(
  "unit-from-these-data",
  "warning",
  say`A unit is tested on the data it was found in.`,
  say`Such a test would always succeed. Test the unit on other things, or search these data for a unit instead and take the number of that search.`,
  (derived, { graph }) =>
    derived.reason === "unit-from-these-data" ? [{ message: wasRefused(graph, derived) }] : [],
);
