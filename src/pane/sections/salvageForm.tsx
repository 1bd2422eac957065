import { useSignal } from "@preact/signals";
import { Refusal } from "../../registry/refusal.ts";
import { blockRows } from "../state/blockCells.ts";
import { insert } from "../writing/insert.ts";
import type { PaneState } from "../state/paneState.ts";
import { spillingTable } from "../writing/layoutFill.ts";
import { evaluateFunction, type Table } from "../state/evaluateFunction.ts";
import { Choice } from "../controls/choice.tsx";
import { TableView } from "../controls/tableView.tsx";
import { tableTexts } from "../writing/tableTexts.ts";
import { texts } from "../words/texts.ts";
import { typedHere } from "../state/typedHere.ts";

/** What a wrongly cut jack can still become. */
export function SalvageForm({ state }: { state: PaneState }) {
  const side = useSignal("Main");
  const hand = useSignal("left");
  const longPoint = useSignal("");
  const { model, unit } = state.report.value;
  const sides = model?.frame.alike ? ["Both"] : ["Main", "End"];
  const chosen = sides.includes(side.value) ? side.value : sides[0]!;
  // A bare number is in the roof's unit, as it is in a cell.
  const length = /^(\d+\.?\d*|\.\d+)$/.test(longPoint.value.trim()) ? Number(longPoint.value) : longPoint.value.trim();
  const found =
    length === ""
      ? null
      : (evaluateFunction("SALVAGE", [blockRows(state.inputs.value), chosen, hand.value, length]) as Table | Refusal);
  const quoted = typeof length === "number" ? String(length) : `"${length.replaceAll('"', '""')}"`;
  return (
    <>
      <h3>{texts.salvage}</h3>
      <p class="lp-note">{texts.salvageLead}</p>
      <div class="lp-three">
        <Choice label={texts.side} value={chosen} of={sides} change={(value) => (side.value = value)} />
        <Choice label={texts.hand} value={hand.value} of={["left", "right"]} change={(value) => (hand.value = value)} />
        <label>
          {texts.cutAt}
          <input
            type="text"
            autocomplete="off"
            maxLength={100}
            value={longPoint.value}
            aria-invalid={found instanceof Refusal}
            aria-describedby="lp-salvage-wrong"
            onInput={(event) => (longPoint.value = event.currentTarget.value)}
          />
        </label>
      </div>
      <p id="lp-salvage-wrong" class="lp-wrong" hidden={!(found instanceof Refusal)}>
        {found instanceof Refusal ? typedHere(found.message) : ""}
      </p>
      {found && !(found instanceof Refusal) && (
        <>
          <TableView
            name={texts.salvage}
            {...tableTexts(found, unit, ["Piece", "Hand", "How", "Long point", "Needed"])}
          />
          <div class="lp-buttons">
            <button
              type="button"
              onClick={() =>
                void insert(
                  state,
                  spillingTable(
                    { title: texts.salvage, sheet: texts.salvageSheet },
                    ({ block }) => `=RAFTER.SALVAGE(${block},"${chosen}","${hand.value}",${quoted})`,
                    found,
                    [],
                  ),
                )
              }
            >
              {texts.writeSalvage}
            </button>
          </div>
        </>
      )}
    </>
  );
}
