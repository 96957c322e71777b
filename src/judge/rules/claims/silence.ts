import type { Json } from "../../../base/json.ts";
import { say } from "../../../base/text/said/said.ts";
import { selectObservations } from "../../../derive/recorded/observations.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Rule } from "../rule.ts";
import { tell } from "../tell.ts";

/** Arguments from silence, with what is known of the silent one's habit of reporting. */
export const silenceAsEvidence: Rule = {
  id: "silence-as-evidence",
  level: "note",
  title: say`An argument reasons from silence.`,
  doc: say`Not reporting says little by itself: an author who never reports such traces says nothing by not reporting them here. The finding counts how often the silent source reports the feature elsewhere, beside how often others saw it. Without a derivation of silence the argument does not work.`,
  find: ({ graph, derivations, judgement }) => {
    const sight = { graph, counts: judgement.counts, choices: [] };
    const findings = judgement.compiled.arguments.flatMap((argument) => {
      if (!argument.silent) return [];
      const silent = argument.because.flatMap((id) => {
        const premise = graph.records.get(id);
        return premise?.list === "observations" && premise.values.present === "not-reported" ? [premise] : [];
      });
      const feature = silent.flatMap((one) => one.values.feature ?? []);
      const from = [...new Set(silent.flatMap((one) => graph.provenance(one.id).sources))];
      const traces = (asked: { readonly [key: string]: Json }): number =>
        selectObservations({ feature, present: "true", ...asked }, sight).observed.length;
      const [seen, reported] = feature.length === 0 ? [0, 0] : [traces({}), traces({ from })];
      const weights = [...derivations.byId.values()].filter((one) => {
        const record = graph.records.get(one.id);
        const bears = one.bearings.some(
          (bearing) => bearing.claim === (argument.therefore ?? argument.against[0]),
        );
        return record?.list === "derivations" && record.values.plugin === "silence" && bears;
      });
      const rate =
        seen === 0
          ? say`nobody is on record as having seen such a trace`
          : say`the silent source reports ${String(reported)} of ${String(seen)} such traces on record`;
      const ratio = weights.flatMap((one) => one.numbers["likelihood-ratio"]?.value ?? [])[0];
      const worth =
        ratio === undefined
          ? say`its weight is not computed`
          : say`it is worth a likelihood ratio of ${ratio.toPrecision(3)}`;
      const message = say`${labelText(graph, argument.id)} leans on what was passed over: ${rate}, and ${worth}.`;
      return [tell(graph, "silence-as-evidence", "note", [argument.from], message, { path: ["because"] })];
    });
    return { findings };
  },
};
