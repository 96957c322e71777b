import { inReadersWords } from "../../../words/reader/said.ts";
import { workbenchWords as words } from "../../../words/desk/workbench.ts";
import { useBench } from "./bench.ts";
import { marks } from "../../../words/reader/marks.ts";

/** The methods a number can be made with, or the one that was picked. */
export function Methods() {
  const { page, draft, put } = useBench();
  const { form, methods, notAllowed } = page;
  if (form !== null)
    return (
      <section>
        <h2 className="label">{words.method}</h2>
        <p className="doc">
          <b>{inReadersWords(form.title)}.</b> {inReadersWords(form.doc)}
        </p>
        {draft.of === null && (
          <p>
            <button type="button" onClick={() => put({ ...draft, values: { ...draft.values, plugin: "" } })}>
              {words.another}
            </button>
          </p>
        )}
      </section>
    );
  const unusable = draft.values["plugin"];
  if (draft.of !== null && typeof unusable === "string") {
    return (
      <section>
        <h2 className="label">{words.method}</h2>
        <p className="doc">{words.noMethod(unusable)}</p>
      </section>
    );
  }
  const pick = (plugin: string): void => {
    const { inputs: _, parameters: __, ...kept } = draft.values;
    put({ ...draft, values: { ...kept, plugin } });
  };
  return (
    <section>
      <h2 className="label">{words.method}</h2>
      <ul className="methods">
        {methods.map((one) => (
          <li key={one.id}>
            <h3>
              <button type="button" onClick={() => pick(one.id)}>
                {inReadersWords(one.title)}
              </button>
            </h3>
            <div>
              <p>
                {inReadersWords(one.doc)}
                {one.guest && <span className="quiet"> ({words.ofCorpus})</span>}
              </p>
              <p className="quiet">
                {words.needs}{" "}
                {one.needs.map((need) => inReadersWords(need).replace(/\.$/, "")).join(marks.semicolon)}.
              </p>
            </div>
          </li>
        ))}
      </ul>
      {notAllowed.length > 0 && <p className="quiet">{words.notAllowed(notAllowed.join(marks.comma))}</p>}
    </section>
  );
}
