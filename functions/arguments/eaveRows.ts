import type { Input } from "../../src/registry/worksheetFunction.ts";
import type { Reading } from "../../src/registry/reading.ts";
import { refuse } from "../../src/registry/refuse.ts";
import type { RoofSpec } from "../../src/roof/frame/roofSpec.ts";
import type { BlockProblem } from "./blockProblem.ts";
import { isNone, type RowReader } from "./rowReader.ts";

type EaveRow = "Tail cut" | "Fascia" | "Sub-fascia" | "Blocking" | "Spacing";

type Eaves = Pick<RoofSpec, "tailCut" | "fascia" | "subFascia" | "blocking">;

/** The rows of the tails, the boards along them and the blocks over the plates. */
export function readEaves(read: RowReader<EaveRow>): Eaves {
  const size = (row: "Fascia" | "Sub-fascia") =>
    read.has(row) && !isNone(read.cell(row)) ? read.size(row, "2x6") : null;
  const [fascia, subFascia] = [size("Fascia"), size("Sub-fascia")];
  const tailCut = read.word("Tail cut", ["plumb", "square", "level"]);
  const wrong = (row: EaveRow, kind: "level tail without fascia" | "blocking without spacing") =>
    read.kept(row, null, (_: Input, at: Reading) => refuse<BlockProblem>(at, { kind }));
  if (tailCut === "level" && !fascia && !subFascia) wrong("Tail cut", "level tail without fascia");
  const blocking = read.word("Blocking", ["none", "plate", "corner", "both"]);
  if (blocking !== "none" && !read.has("Spacing")) wrong("Blocking", "blocking without spacing");
  return { tailCut, fascia, subFascia, blocking };
}
