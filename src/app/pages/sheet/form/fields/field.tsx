import type { ReactNode } from "react";
import type { Field } from "../../../../../read/grammar/field.ts";
import type { Step } from "../../../../../read/yaml/tree.ts";
import { isEnteredList } from "../../../../../show/desk/forms/filled/entered.ts";
import type { Entered } from "../../../../../show/desk/forms/filled/entered.ts";
import { helpFor, isLong } from "../../../../../show/desk/forms/layout.ts";
import { formWords as words } from "../../../../words/desk/forms.ts";
import { useHands } from "../hands.ts";
import { Chosen, Texts } from "./entries.tsx";
import { Frame, useTold } from "./frame.tsx";
import { Group, Items, Pairs } from "./nested.tsx";
import type { OneWithin } from "./nested.tsx";
import { Search } from "./search.tsx";
import { Line, OneOf, Sentences } from "./text.tsx";
import { choiceName } from "../../../../../read/grammar/field-words.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";

interface Props {
  readonly path: readonly Step[];
  readonly field: Field;
  readonly value: Entered | null;
  readonly help?: ReactNode;
  /** The language of the text, where the record says it. */
  readonly lang?: string | undefined;
}

/** A field of a form, filled in as its type in the grammar's table asks for. */
export function FieldIn({ path, field, value, help, lang }: Props) {
  const text = typeof value === "string" ? value : "";
  const list = value !== null && isEnteredList(value) ? value : [];
  const texts = list.map((one) => (typeof one === "string" ? one : ""));
  const one = text === "" ? [] : [text];
  const { list: kind } = useHands();
  const name = String(path.at(-1));
  switch (field.type) {
    case "ref":
    case "refs": {
      const several = field.type === "refs";
      const to = { from: "records", to: field.to } as const;
      return (
        <Chosen
          path={path}
          field={field}
          values={several ? texts : one}
          several={several}
          to={to}
          cited={false}
        />
      );
    }
    case "citation":
    case "citations": {
      const several = field.type === "citations";
      const to = { from: "records", to: ["sources", "passages"] } as const;
      return (
        <Chosen path={path} field={field} values={several ? texts : one} several={several} to={to} cited />
      );
    }
    case "texts":
    case "quantities":
      return <Texts path={path} field={field} values={texts} help={helpFor(kind, name, field)} />;
    case "group":
      return <Group path={path} field={field} fields={field.fields} value={value ?? {}} one={fieldIn} />;
    case "items":
      return <Items path={path} field={field} fields={field.fields} values={list} one={fieldIn} />;
    case "textMap":
    case "numberMap":
    case "probability":
      return <Pairs path={path} field={field} value={value ?? ""} />;
    default:
      return <Single path={path} field={field} value={text} help={help} lang={lang} />;
  }
}

const fieldIn: OneWithin = (path, field, value) => <FieldIn path={path} field={field} value={value} />;

/** A field of one text. */
function Single({ path, field, value, help, lang }: Props & { readonly value: string }) {
  const { list, put, learn } = useHands();
  const told = useTold(path);
  const name = String(path.at(-1));
  const own = { path, value, told, required: field.required === true };
  const helped = helpFor(list, name, field);
  const control =
    field.type === "choice" ? (
      <OneOf {...own} of={field.of.map((one) => [one, wordFor(name, one)])} />
    ) : field.type === "flag" ? (
      <OneOf
        {...own}
        of={[
          ["true", words.yes],
          ["false", words.no],
        ]}
      />
    ) : helped ? (
      <Search
        from={helped}
        text={value}
        onType={(text) => put(path, text)}
        free
        onChoose={(choice) => {
          learn(choice);
          put(path, choice.id);
        }}
        told={told}
      />
    ) : isLong(list, name, field) ? (
      <Sentences {...own} lang={lang} code={field.type === "json"} />
    ) : (
      <Line {...own} figures={!["text", "date", "year"].includes(field.type)} />
    );
  const more = field.type === "json" ? words.inFile : help;
  return (
    <Frame path={path} field={field} help={more}>
      {control}
    </Frame>
  );
}

function wordFor(name: string, value: string): string {
  return name === "present" ? (words.present[value] ?? value) : inReadersWords(choiceName(value));
}
