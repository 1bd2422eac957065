import { salvage } from "../../../functions/salvage.ts";
import { useSignal } from "@preact/signals";
import { argumentText } from "../../registry/formulaText.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import { Failure, type Result } from "../../measure/result.ts";
import { blockRows } from "../state/blockCells.ts";
import { insert } from "../writing/insert.ts";
import type { PaneState } from "../state/paneState.ts";
import { spillingTable } from "../writing/layoutFill.ts";
import { evaluateFunction, type Table } from "../state/evaluateFunction.ts";
import { Choice } from "../controls/choice.tsx";
import { TextEntry, Wrong } from "../controls/textEntry.tsx";
import { TableView } from "../controls/tableView.tsx";
import { tableTexts } from "../controls/tableTexts.ts";
import { texts } from "../words/texts.ts";
import { jacksAlike } from "../../roof/frame/piece.ts";
import { typedCell } from "../state/typedCell.ts";

/** What a wrongly cut jack can still become. */
export function SalvageForm({ state }: { state: PaneState }) {
  const side = useSignal("Main");
  const hand = useSignal("left");
  const longPoint = useSignal("");
  const { model, unit } = state.report.value;
  const sides = model && jacksAlike(model.pieces) ? ["Both"] : ["Main", "End"];
  const chosen = sides.includes(side.value) ? side.value : sides[0]!;
  const length = typedCell(longPoint.value);
  const found =
    length === ""
      ? null
      : (evaluateFunction(salvage, [blockRows(state.inputs.value), chosen, hand.value, length]) as Result<Table>);
  const wrong = found instanceof Failure ? fieldText(found) : "";
  const args = [chosen, hand.value, length].map(argumentText).join(",");
  return (
    <>
      <h3>{texts.salvage}</h3>
      <p class="lp-note">{texts.salvageLead}</p>
      <div class="lp-three">
        <Choice label={texts.side} value={chosen} of={sides} change={(value) => (side.value = value)} />
        <Choice label={texts.hand} value={hand.value} of={["left", "right"]} change={(value) => (hand.value = value)} />
        <TextEntry
          label={texts.cutAt}
          value={longPoint.value}
          wrong={wrong !== ""}
          reads="lp-salvage-wrong"
          change={(text) => (longPoint.value = text)}
        />
      </div>
      <Wrong id="lp-salvage-wrong" words={wrong} />
      {found && !(found instanceof Failure) && (
        <>
          <TableView
            name={texts.salvage}
            {...tableTexts(salvage.columns, found, unit, ["Piece", "Hand", "How", "Long point", "Needed"])}
          />
          <div class="lp-buttons">
            <button
              type="button"
              onClick={() =>
                void insert(
                  state,
                  spillingTable(
                    { title: texts.salvage, sheet: texts.salvageSheet },
                    {
                      formula: ({ block }) => `=RAFTER.SALVAGE(${block},${args})`,
                      columns: salvage.columns,
                      now: found,
                      onTape: [],
                    },
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
