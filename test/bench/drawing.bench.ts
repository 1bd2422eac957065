import { Failure } from "../../src/measure/result.ts";
import { drawFrame3d } from "../../src/drawing/views/drawFrame3d.ts";
import { drawJack } from "../../src/drawing/views/drawJack.ts";
import { drawPlan } from "../../src/drawing/views/drawPlan.ts";
import type { DrawingOptions } from "../../src/drawing/canvas/canvas.ts";
import { jackTable } from "../../functions/jackTable.ts";
import { members } from "../../functions/members.ts";
import { readRoof } from "../../functions/arguments/roofModel.ts";
import { lengthText } from "../../src/measure/lengthText.ts";
import { call } from "../../src/registry/call.ts";
import type { Row } from "./row.ts";

/** What one keystroke may take: a frame of a screen at 60 Hz. */
const FRAME = 16;
const ROUNDS = 60;

/** A hall of 24 by 36 feet whose span grows by a sixty-fourth with every keystroke, so that nothing is kept from the last one. */
const block = (round: number) => [
  ["Span", 288 + round / 64],
  ["Length", 432],
  ["Pitch", 6],
  ["Overhang", 16],
];

/** The time of a keystroke in the pane: block read and framed, plan and jack drawn, both tables made; and 3-D frame alone. */
export async function bench(): Promise<Row[]> {
  const options: DrawingOptions = { width: 400, length: (value) => lengthText(value, "in") };
  const framed = (round: number) => {
    const model = readRoof("roof", block(round));
    if (model instanceof Failure) throw new Error("The roof of the benchmark is refused.");
    return model;
  };
  const keystroke = (round: number): number => {
    const { frame, pieces } = framed(round);
    const jack = pieces.find(({ member }) => member === "jack")!;
    const table = [jackTable, members].map((definition) => call(definition, [block(round)]));
    if (!table.every(Array.isArray)) throw new Error("A table of the benchmark is refused.");
    return drawPlan(frame, pieces, options).length + drawJack(jack, "left", options).length;
  };
  const round3d = (round: number): number => {
    const { frame, pieces } = framed(round);
    return drawFrame3d(frame, pieces, options).length;
  };
  return [row("keystroke: plan, jack and both tables", keystroke), row("3-D frame", round3d)];
}

function row(name: string, work: (round: number) => number): Row {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const start = performance.now();
    if (!(work(round) > 1000)) throw new Error("Nothing was drawn.");
    times.push(performance.now() - start);
  }
  // The first rounds are the compiler's. The middle of the rest is what a user meets.
  const settled = times.slice(ROUNDS / 3).sort((a, b) => a - b);
  const middle = settled[Math.floor(settled.length / 2)]!;
  return {
    name,
    ratio: middle / FRAME,
    what: `time over ${FRAME} ms; median ${middle.toFixed(2)} ms, first ${times[0]!.toFixed(1)} ms, worst of the last ${settled.length} ${settled.at(-1)!.toFixed(2)} ms`,
    most: 1,
  };
}
