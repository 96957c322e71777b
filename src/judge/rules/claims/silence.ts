import { labelOf } from "../../../link/label.ts";
import type { Rule } from "../rule.ts";
import { tell } from "../tell.ts";

/** Arguments from silence, with what is known of the silent one's habit of reporting. */
export const silenceAsEvidence: Rule = {
  id: "silence-as-evidence",
  level: "note",
  title: "An argument reasons from silence.",
  doc: "Not reporting says little by itself: an author who never reports such traces says nothing by not reporting them here. The finding counts how often the silent source reports the feature elsewhere, beside how often others saw it. Without a derivation of silence the argument does not work.",
  find: ({ graph, derivations, judgement }) => {
    const observations = graph.list("observations").filter((one) => judgement.counts(one.id));
    const findings = judgement.compiled.arguments.flatMap((argument) => {
      if (!argument.silent) return [];
      const silent = argument.because.flatMap((id) => {
        const premise = graph.records.get(id);
        return premise?.list === "observations" && premise.values.present === "not-reported" ? [premise] : [];
      });
      const features = new Set(
        silent.flatMap((one) =>
          one.values.feature === undefined ? [] : graph.featureName(one.values.feature),
        ),
      );
      const sources = new Set(silent.flatMap((one) => graph.provenance(one.id).sources));
      const seen = observations.filter(
        (one) =>
          (one.values.present ?? "true") === "true" &&
          one.values.feature !== undefined &&
          features.has(graph.featureName(one.values.feature)),
      );
      const reported = seen.filter((one) => graph.provenance(one.id).sources.some((key) => sources.has(key)));
      const weights = [...derivations.byId.values()].filter((one) => {
        const record = graph.records.get(one.id);
        const bears = one.bearings.some(
          (bearing) => bearing.claim === (argument.therefore ?? argument.against[0]),
        );
        return record?.list === "derivations" && record.values.plugin === "silence" && bears;
      });
      const rate =
        seen.length === 0
          ? "nobody is on record as having seen such a trace"
          : `the silent source reports ${reported.length} of ${seen.length} such traces on record`;
      const ratio = weights.flatMap((one) => one.numbers["likelihood-ratio"]?.value ?? [])[0];
      const worth =
        ratio === undefined
          ? "its weight is not computed"
          : `it is worth a likelihood ratio of ${ratio.toPrecision(3)}`;
      const message = `${labelOf(graph, argument.id)} leans on what was passed over: ${rate}, and ${worth}.`;
      return [tell(graph, "silence-as-evidence", "note", [argument.from], message, { path: ["because"] })];
    });
    return { findings };
  },
};
