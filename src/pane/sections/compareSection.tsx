import { compare, FIGURES, type What } from "../../../functions/compare.ts";
import { useSignal } from "@preact/signals";
import { fieldText } from "../../../functions/words/problemText.ts";
import { drawComparison } from "../../drawing/views/drawComparison.ts";
import { lengthText } from "../../measure/lengthText.ts";
import { Failure, type Result } from "../../measure/result.ts";
import type { Unit } from "../../measure/unit.ts";
import type { Cell } from "../../registry/worksheetFunction.ts";
import { blockRows } from "../state/blockCells.ts";
import { Drawing } from "../controls/drawing.tsx";
import { insert } from "../writing/insert.ts";
import type { PaneState } from "../state/paneState.ts";
import { listed, layoutComparison } from "../writing/layoutComparison.ts";
import { Choice } from "../controls/choice.tsx";
import { evaluateFunction, type Table } from "../state/evaluateFunction.ts";
import { TextEntry, Wrong } from "../controls/textEntry.tsx";
import { SideBySide } from "./sideBySide.tsx";
import { TableView } from "../controls/tableView.tsx";
import { texts } from "../words/texts.ts";

const WHAT = Object.keys(FIGURES);
const isLength = (what: string): boolean => FIGURES[what as What].kind === "length";

/** One figure over several pitches and spacings, as a grid and as bars. */
export function CompareSection({ state }: { state: PaneState }) {
  const pitches = useSignal("4, 6, 8, 10");
  const spacings = useSignal<string | null>(null);
  const what = useSignal(WHAT[0]!);
  const { model, unit } = state.report.value;
  if (!model) return <p class="lp-note">{texts.notYet}</p>;
  const across = spacings.value ?? (unit === "mm" ? "400, 600" : "16, 24");
  const asked = { pitches: listed(pitches.value), spacings: listed(across), what: what.value };
  const grid = evaluateFunction(compare, [
    blockRows(state.inputs.value),
    asked.pitches.map((one) => [one]),
    [asked.spacings],
    asked.what,
  ]) as Result<Table>;
  const figure = figureOf(what.value, unit);
  return (
    <>
      <div class="lp-three">
        <TextEntry
          label={texts.pitches}
          value={pitches.value}
          reads="lp-compare-wrong"
          change={(text) => (pitches.value = text)}
        />
        <TextEntry
          label={texts.spacings}
          value={across}
          reads="lp-compare-wrong"
          change={(text) => (spacings.value = text)}
        />
        <Choice label={texts.compared} value={what.value} of={WHAT} change={(value) => (what.value = value)} />
      </div>
      <Wrong id="lp-compare-wrong" words={grid instanceof Failure ? fieldText(grid) : ""} />
      {!(grid instanceof Failure) && (
        <>
          <TableView
            name={texts.sections.compare}
            headings={grid[0]!.map((cell, j) => (j === 0 && isLength(what.value) ? what.value : String(cell)))}
            rows={grid.slice(1).map((row) => row.map((cell, j) => (j === 0 ? String(cell) : figure(cell))))}
            numbers={grid[0]!.map((_, j) => j > 0)}
          />
          <Drawing draw={(width) => drawComparison(grid, { width, figure, title: texts.chartOf(what.value) })} />
          <div class="lp-buttons">
            <button
              type="button"
              onClick={() =>
                void insert(state, {
                  title: texts.sections.compare,
                  sheet: texts.sections.compare,
                  layout: (place, on) => layoutComparison(place, on, asked, grid),
                })
              }
            >
              {texts.writeCompare}
            </button>
          </div>
          <SideBySide state={state} pitches={asked.pitches.map(String)} spacings={asked.spacings.map(String)} />
        </>
      )}
    </>
  );
}

/** A figure as people read it: a length on the tape or in whole millimeters. */
function figureOf(what: string, unit: Unit): (cell: Cell) => string {
  return (cell) =>
    typeof cell !== "number" ? String(cell) : isLength(what) ? lengthText(cell, unit) : String(Number(cell.toFixed(2)));
}
