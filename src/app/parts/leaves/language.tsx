import { searchWords as words } from "../../words/search.ts";
import { choices, choose, language, languageNames } from "../../words/reader/language.ts";
import { useActions } from "../actions.tsx";

/** The languages of the interface, each by its own name; nothing where there is no choice. */
export function LanguageChoice() {
  const others = choices().filter((one) => one !== language);
  useActions(
    words.language,
    others.map((one) => ({ name: languageNames[one], key: null, run: () => choose(one) })),
    "everywhere",
  );
  if (others.length === 0) return null;
  return (
    <fieldset className="languages" aria-label={words.language}>
      {choices().map((one) => (
        <button
          key={one}
          type="button"
          lang={one}
          aria-pressed={one === language}
          onClick={() => one !== language && choose(one)}
        >
          {languageNames[one]}
        </button>
      ))}
    </fieldset>
  );
}
