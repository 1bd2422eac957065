import { cautions } from "../../../functions/cautions.ts";
import { fieldText } from "../../../functions/words/problemText.ts";
import { Failure, type Result } from "../../measure/result.ts";
import { blockRows } from "../state/blockCells.ts";
import type { PaneState } from "../state/paneState.ts";
import { evaluateFunction, type Table } from "../state/evaluateFunction.ts";
import { TableView } from "../controls/tableView.tsx";
import { texts } from "../words/texts.ts";

/** What nobody may overlook, and on request every figure of this roof beside the published one. */
export function CautionList() {
  return (
    <ul>
      {texts.cautions.map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ul>
  );
}

/** The roof's figures beside the published ones. */
export function CautionTable({ state }: { state: PaneState }) {
  if (!state.report.value.model) return <p class="lp-note">{texts.notYet}</p>;
  const table = evaluateFunction(cautions, [blockRows(state.inputs.value)]) as Result<Table>;
  if (table instanceof Failure) return <p class="lp-wrong">{fieldText(table)}</p>;
  const [headings, ...rows] = table;
  return <TableView name={texts.figures} headings={headings!.map(String)} rows={rows.map((row) => row.map(String))} />;
}
