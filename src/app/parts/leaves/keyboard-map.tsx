import { useId, useState } from "react";
import { searchWords as words } from "../../words/search.ts";
import { declaredActions, setSingleKeys, useSingleKeys } from "../actions.tsx";
import { Key } from "./command-list.tsx";
import { Leaf } from "./leaf.tsx";

/** All keys of this page and those that work everywhere, with a switch for those that are one letter or sign. */
export function KeyboardMap({ onShut }: { readonly onShut: () => void }) {
  const [groups] = useState(() =>
    declaredActions()
      .map((group) => ({ ...group, actions: group.actions.filter((one) => one.key !== null) }))
      .filter((group) => group.actions.length > 0),
  );
  const on = useSingleKeys();
  const why = useId();
  return (
    <Leaf title={words.keysTitle} onShut={onShut}>
      <label className="switch">
        <input
          type="checkbox"
          checked={on}
          aria-describedby={why}
          onChange={(event) => setSingleKeys(event.target.checked)}
        />
        {words.singleKeys}
      </label>
      <p className="quiet" id={why} aria-live="polite">
        {on ? words.singleKeysWhy : words.singleKeysOff}
      </p>
      {groups.map((group) => (
        <section key={group.title}>
          <h3 className="label">{group.title}</h3>
          <dl className="keys">
            {group.actions.map((action) => (
              <div key={action.name}>
                <dt>
                  <Key name={action.key} />
                </dt>
                <dd>{action.name}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </Leaf>
  );
}
