import { useSignal } from "@preact/signals";
import { address } from "../../hosts/address.ts";
import { copyPlain } from "../writing/copyPlain.ts";
import { fieldId } from "../controls/fieldView.tsx";
import type { PaneState } from "../state/paneState.ts";
import { TABLES, type SheetTable } from "../writing/tables.ts";
import { fill } from "../writing/fill.ts";
import { roofTables } from "../writing/roofTables.ts";
import { texts } from "../words/texts.ts";

/** Which tables go into the sheet, where, and the way back. */
export function FillSection({ state }: { state: PaneState }) {
  const block = useSignal<boolean | null>(null);
  const tables = useSignal<ReadonlySet<SheetTable["id"]>>(
    new Set(TABLES.filter(({ usual }) => usual).map(({ id }) => id)),
  );
  const newSheets = useSignal(true);
  const linked = state.link.value !== null;
  // A roof that stands in the sheet already is not written twice unless one asks for it.
  const withBlock = block.value ?? !linked;
  const toggle = (id: SheetTable["id"], on: boolean) => {
    const next = new Set(tables.value);
    if (on) next.add(id);
    else next.delete(id);
    tables.value = next;
  };
  const selection = state.selection.value;
  const press = async () => {
    const wrong = await fill(state, {
      block: withBlock,
      tables: (inputs) => roofTables(tables.value, inputs),
      newSheets: newSheets.value,
    });
    if (!wrong) return;
    const field = document.getElementById(fieldId(wrong));
    field?.focus();
    // What is said of it stands at the foot, and must not cover it.
    field?.scrollIntoView({ block: "center" });
  };
  return (
    <section aria-labelledby="lp-fill">
      <h2 id="lp-fill">{texts.sections.fill}</h2>
      <fieldset>
        <legend>{texts.what}</legend>
        <Check label={texts.roofBlock} on={withBlock} change={(on) => (block.value = on)} />
        {TABLES.map(({ id }) => (
          <Check key={id} label={texts.tables[id]} on={tables.value.has(id)} change={(on) => toggle(id, on)} />
        ))}
      </fieldset>
      <fieldset>
        <legend>{texts.where}</legend>
        <label class="lp-check">
          <input type="radio" name="lp-where" checked={newSheets.value} onChange={() => (newSheets.value = true)} />{" "}
          {texts.onNewSheets}
        </label>
        <label class="lp-check">
          <input type="radio" name="lp-where" checked={!newSheets.value} onChange={() => (newSheets.value = false)} />{" "}
          {texts.atSelection(selection ? address(selection.sheet, selection.row, selection.column) : "")}
        </label>
      </fieldset>
      <p class="lp-caution">{texts.cautionInSheet}</p>
      <button type="button" class="lp-main" onClick={() => void press()}>
        {texts.fill}
      </button>
      {state.host.copyPlain && (
        <button type="button" onClick={() => void copyPlain(state)}>
          {texts.copyPlain}
        </button>
      )}
    </section>
  );
}

function Check({ label, on, change }: { label: string; on: boolean; change: (on: boolean) => void }) {
  return (
    <label class="lp-check">
      <input type="checkbox" checked={on} onChange={(event) => change(event.currentTarget.checked)} /> {label}
    </label>
  );
}
