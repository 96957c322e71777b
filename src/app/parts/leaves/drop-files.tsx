import { useRef, useState } from "react";
import type { ReactNode, Ref } from "react";

interface Props {
  /** `drop`, or what the style of a page calls it. */
  readonly look?: string;
  /** What stands before the button, on the button, and what the field is called. */
  readonly words: { readonly drop: string; readonly choose: string; readonly label: string };
  /** Endings of file names, with their points. */
  readonly accept: string;
  readonly several?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
  readonly button?: Ref<HTMLButtonElement>;
  readonly children?: ReactNode;
}

/** A place on which files are dropped, with a button by which they are chosen; where one is wanted the first is taken. */
export function DropFiles(props: Props) {
  const { look = "drop", words, accept, several = false, onFiles, button, children } = props;
  const field = useRef<HTMLInputElement>(null);
  const [over, setOver] = useState(false);
  const take = (files: FileList | null): void => {
    const given = [...(files ?? [])];
    onFiles(several ? given : given.slice(0, 1));
  };
  return (
    <div
      className={over ? `${look} over` : look}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer.files);
      }}
    >
      <span>{words.drop}</span>{" "}
      <button type="button" ref={button} onClick={() => field.current?.click()}>
        {words.choose}
      </button>
      <input
        ref={field}
        type="file"
        multiple={several}
        accept={accept}
        aria-label={words.label}
        className="unseen"
        tabIndex={-1}
        onChange={(event) => {
          take(event.target.files);
          event.target.value = "";
        }}
      />
      {children}
    </div>
  );
}
