import type { ReactNode } from "react";
import { shippedStyles } from "../../../read/bibliography/style/shipped.ts";
import type { useAddress } from "../../address.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { tellingWords as words } from "../../words/telling/telling.ts";
import type { Choice, TellingPage } from "../../worker/planning/telling.ts";
import type { Tellable } from "./making.ts";
import { Sections } from "./sections.tsx";

interface Props {
  readonly page: TellingPage;
  readonly tellable: Tellable;
  readonly address: ReturnType<typeof useAddress>;
}

/** The widths that journals have for figures, in mm. */
const widths = ["76", "85", "90", "140", "163", "170", "190"] as const;
const shapes = ["16:9", "4:3"] as const;

/** What a kind can be asked, as far as it stands in the address. */
export function Options({ page, tellable, address }: Props) {
  const { query, toLook } = address;
  const takes = (name: string): boolean => tellable.options.includes(name);
  const put = (name: string) => (value: string) => toLook({ [name]: value === "" ? null : value }, "replace");
  const named = (choices: readonly Choice[]): readonly (readonly [string, string])[] =>
    choices.map(({ id, text }) => [id, inReadersWords(text)]);
  const styles = [...shippedStyles, ...page.ownStyles].map((name) => [name, name] as const);
  return (
    <div className="options">
      {takes("question") && (
        <Select label={words.question} value={query.get("question")} put={put("question")}>
          <option value="">{words.allQuestions}</option>
          <Choices of={named(page.questions)} />
        </Select>
      )}
      {takes("examination") && (
        <Select label={words.examination} value={examinationOf(page)} put={put("examination")}>
          <Choices of={named(page.examinations)} />
        </Select>
      )}
      {takes("talk") && page.talks.length > 0 && (
        <Select label={words.talk} value={talkOf(page, query)} put={put("talk")}>
          <Choices of={named(page.talks)} />
        </Select>
      )}
      {takes("style") && (
        <Select label={words.style} value={query.get("style")} put={put("style")}>
          <option value="">{words.corpusStyle(page.style)}</option>
          <Choices of={styles} />
        </Select>
      )}
      {takes("width") && (
        <Select label={words.width} value={query.get("width") ?? "85"} put={put("width")}>
          <Choices of={widths.map((mm) => [mm, words.widthOf(mm)])} />
        </Select>
      )}
      {takes("shape") && (
        <Select label={words.shape} value={query.get("shape")} put={put("shape")}>
          <Choices of={shapes.map((shape) => [shape, shape])} />
        </Select>
      )}
      {takes("sections") && <Sections page={page} toLook={toLook} />}
    </div>
  );
}

/** The examination that is asked for; the first where none is. */
export function examinationOf({ asked, examinations }: TellingPage): string | null {
  return (examinations.find(({ id }) => id === asked.examination) ?? examinations[0])?.id ?? null;
}

/** The talk that is asked for; the first where none is. */
function talkOf({ talks }: TellingPage, query: URLSearchParams): string | null {
  return (talks.find(({ id }) => id === query.get("talk")) ?? talks[0])?.id ?? null;
}

/** What of the address a kind is asked for. */
export function optionsIn(
  page: TellingPage,
  { options }: Tellable,
  query: URLSearchParams,
): Readonly<Record<string, string | readonly string[]>> {
  const given: Record<string, string | readonly string[]> = {};
  const chosen = {
    question: query.get("question"),
    style: query.get("style"),
    width: query.get("width"),
    shape: query.get("shape"),
    talk: talkOf(page, query),
    examination: examinationOf(page),
  };
  for (const [name, value] of Object.entries(chosen))
    if (options.includes(name) && value !== null) given[name] = value;
  if (options.includes("sections")) given["sections"] = page.sections;
  return given;
}

interface SelectProps {
  readonly label: string;
  readonly value: string | null;
  readonly put: (value: string) => void;
  readonly children: ReactNode;
}

function Select({ label, value, put, children }: SelectProps) {
  return (
    <label>
      <span>{label}</span>
      <select value={value ?? ""} onChange={(event) => put(event.target.value)}>
        {children}
      </select>
    </label>
  );
}

function Choices({ of }: { readonly of: readonly (readonly [string, string])[] }) {
  return of.map(([value, text]) => (
    <option key={value} value={value}>
      {text}
    </option>
  ));
}
