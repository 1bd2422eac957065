import type { Host } from "../../src/hosts/host.ts";

/** A host on a fresh workbook with one empty sheet, Sheet1, and the hands of a user that the port does not have. */
export interface HostUnderTest {
  readonly host: Host;
  /** Formulas get values: the suite then also looks at results and real spills. */
  readonly calculates: boolean;
  /** As if the user typed into a cell. Text that starts with "=" is a formula; other text stays text whatever it looks like; "" empties the cell. */
  type(sheet: string, row: number, column: number, content: string | number): Promise<void>;
  /** As if the user gave a cell a number format. */
  format(sheet: string, row: number, column: number, format: string): Promise<void>;
  /** As if the user gave a sheet another name. */
  rename(sheet: string, name: string): Promise<void>;
  /** As if the user selected an area of the active sheet. */
  select(row: number, column: number, rows: number, columns: number): Promise<void>;
  /** Makes a cell show a refusal as the host's own way is, and gives the message that belongs to it. */
  refuse(sheet: string, row: number, column: number): Promise<string>;
  /** One step back, where the host's undo can be reached. */
  undo?(): Promise<void>;
  /** A column's width in pixels, where it can be read. */
  width?(sheet: string, column: number): Promise<number>;
  /** Frozen rows, where they can be read. */
  frozenRows?(sheet: string): Promise<number>;
  /** Whether a cell is bold, where it can be read. */
  bold?(sheet: string, row: number, column: number): Promise<boolean>;
  dispose?(): Promise<void>;
}
