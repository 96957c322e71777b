import type { Known } from "./known.ts";

/**
 * The more general properties that each property we write implies. They are written out with it, since most readers of a file
 * follow no `rdfs:subPropertyOf`. Properties
 * of literals are left alone: `P90a` is below `P90` and `P82a` below `P82`, but a limit is no value.
 * From CIDOC CRM 7.1.3, CRMsci 3.2 and CRMinf 1.2.1.
 */
export const above: Readonly<Partial<Record<Known, readonly Known[]>>> = {
  "crm:P14_carried_out_by": ["crm:P11_had_participant", "crm:P12_occurred_in_the_presence_of"],
  "crm:P16_used_specific_object": ["crm:P12_occurred_in_the_presence_of", "crm:P15_was_influenced_by"],
  "crm:P25_moved": ["crm:P12_occurred_in_the_presence_of"],
  "crm:P31_has_modified": ["crm:P12_occurred_in_the_presence_of"],
  "crm:P39_measured": ["crm:P140_assigned_attribute_to", "crmsci:O24_measured"],
  "crm:P40_observed_dimension": ["crm:P141_assigned", "crmsci:O39_observed_dimension"],
  "crm:P50_has_current_keeper": ["crm:P49_has_former_or_current_keeper"],
  "crm:P55_has_current_location": ["crm:P53_has_former_or_current_location"],
  "crm:P92_brought_into_existence": ["crm:P12_occurred_in_the_presence_of"],
  "crm:P94_has_created": ["crm:P12_occurred_in_the_presence_of", "crm:P92_brought_into_existence"],
  "crm:P108_has_produced": [
    "crm:P12_occurred_in_the_presence_of",
    "crm:P31_has_modified",
    "crm:P92_brought_into_existence",
  ],
  "crm:P138_represents": ["crm:P67_refers_to"],
  "crminf:J16_assumed_meaning": ["crminf:J4_that"],
  "crminf:J23_interpreted_meaning_as": ["crminf:J2_concluded_that"],
  "crm:P177_assigned_property_of_type": ["crm:P2_has_type"],
};
