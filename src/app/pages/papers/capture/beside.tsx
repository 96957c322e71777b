import { captureWords as words } from "../../../words/reading/capture.ts";

interface Props {
  readonly quote: string;
  readonly lang: string | null;
  readonly translation: string | null;
}

/** The words of a passage as they are printed, with their translation beside them, each in its own direction. */
export function Beside({ quote, lang, translation }: Props) {
  return (
    <div className={translation === null ? "quoted" : "quoted beside"}>
      <blockquote className="sentence" dir="auto" lang={lang ?? undefined}>
        {quote}
      </blockquote>
      {translation !== null && (
        <div className="translation">
          <span className="unseen">{words.translation}</span>
          <p className="sentence" dir="auto">
            {translation}
          </p>
        </div>
      )}
    </div>
  );
}
