import { ROWS, type Row } from "../../functions/roofBlock.ts";
import type { Area } from "../hosts/host.ts";
import { EMPTY_INPUTS, type Inputs } from "./fields.ts";

/** What the pane keeps in the workbook. */
export interface Remembered {
  readonly inputs: Inputs;
  /** Where the block stands that the fields follow. */
  readonly link: Area | null;
  readonly measured: Readonly<Record<string, string>>;
  readonly kerf: string;
}

/** Reads what was kept; null for anything else, whoever wrote it there. */
export function readRemembered(text: string): Remembered | null {
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isObject(kept)) return null;
  const { inputs, link, measured, kerf = "" } = kept;
  // A row that a later version adds is empty in what an earlier one kept.
  if (!isTexts(inputs) || !Object.keys(inputs).every((row) => ROWS.includes(row as Row))) return null;
  if (link !== null && !isArea(link)) return null;
  if (!isTexts(measured) || typeof kerf !== "string") return null;
  return { inputs: { ...EMPTY_INPUTS, ...inputs }, link, measured, kerf };
}

function isObject(data: unknown): data is Readonly<Record<string, unknown>> {
  return typeof data === "object" && data !== null && !Array.isArray(data);
}

function isTexts(data: unknown): data is Readonly<Record<string, string>> {
  return isObject(data) && Object.values(data).every((value) => typeof value === "string");
}

function isArea(data: unknown): data is Area {
  return isObject(data) && typeof data["sheet"] === "string" && ["row", "column", "rows", "columns"].every((name) => Number.isSafeInteger(data[name]) && (data[name] as number) >= 0);
}
