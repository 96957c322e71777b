import type { ReactNode } from "react";
import { Link } from "wouter";
import { kindOf } from "../../read/grammar/kinds.ts";
import type { ListName } from "../../read/grammar/field.ts";
import { useDesk } from "../desk/desk.tsx";
import { formWords } from "../words/desk/forms.ts";

interface Props {
  readonly text: string;
  /** How it would be written, said over the lines. */
  readonly files?: string;
  readonly lines: string;
  /** The lists of which a record would fill the page. */
  readonly make?: readonly ListName[];
  /** Other ways to fill it. */
  readonly children?: ReactNode;
}

/** What is not there yet: the forms in which it is made, and the lines in a file that would make it. */
export function Empty({ text, files, lines, make = [], children }: Props) {
  const canSave = useDesk().state.readOnly === null;
  return (
    <div className="empty">
      <p className="sentence">{text}</p>
      {canSave && make.length > 0 && (
        <p className="crossing to-forms">
          {make.map((list) => (
            <Link key={list} href={`/new/${list}`}>
              {formWords.new(kindOf(list).singular)}
            </Link>
          ))}
        </p>
      )}
      {children}
      {files !== undefined && <p className="quiet">{files}</p>}
      <pre dir="ltr">
        <code>{lines}</code>
      </pre>
    </div>
  );
}
