import { CaseFileError, isFields, type Case, type Fields } from "./case.ts";

/**
 * The cases of a file in one of the published schemas, told by the shape of each case: a numeric case names its
 * method, a framework has arguments and attacks, a claim graph has a theory.
 */
export function casesOf(text: string): readonly Case[] {
  const file = parsed(text);
  const cases = Array.isArray(file) ? file : isFields(file) ? file["cases"] : undefined;
  if (!Array.isArray(cases)) throw new CaseFileError('No list of cases, expected { "cases": [ … ] }');
  if (cases.length === 0) throw new CaseFileError("An empty list of cases, expected at least one");
  return cases.map(caseOf);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    const reason = (error as Error).message.replace(/\p{Cc}|\uFFFD/gu, "?");
    throw new CaseFileError(`Not JSON (${reason}), expected a case file`);
  }
}

function caseOf(value: unknown, place: number): Case {
  const fields: Fields = isFields(value) ? value : {};
  const id = typeof fields["id"] === "string" ? fields["id"] : `case ${place + 1}`;
  const sets = { tolerance: { exact: true }, unordered: true };
  if (isFields(fields["theory"])) {
    // The numbers of trees and of attacks among them are the oracle's own construction, which the product has none of.
    const {
      nArguments: _trees,
      nAttacks: _attacks,
      ...expected
    } = isFields(fields["expected"]) ? fields["expected"] : {};
    return { id, method: "claim-graph", input: fields["theory"], expected, ...sets };
  }
  if (Array.isArray(fields["arguments"]) && Array.isArray(fields["attacks"])) {
    const {
      id: _id,
      description: _text,
      bruteForceChecked: _how,
      arguments: names,
      attacks,
      ...expected
    } = fields;
    return { id, method: "framework", input: { arguments: names, attacks }, expected, ...sets };
  }
  const { method, input, expected, tolerance } = fields;
  const described = typeof method === "string" ? method : "";
  return { id, method: described, input, expected, tolerance: isFields(tolerance) ? tolerance : {} };
}
