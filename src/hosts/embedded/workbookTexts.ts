import type { IMutation, Workbook } from "@univerjs/core";
import { CommandType, IUniverInstanceService } from "@univerjs/core";

// Keeps our keys apart from the sheet's own, and from what every object has ("toString").
const PREFIX = "longpoint:";

/** The texts that the pane keeps in a workbook, by key. */
export function keptIn(workbook: Pick<Workbook, "getCustomMetadata">): Record<string, string> {
  const all = Object.entries(workbook.getCustomMetadata() ?? {});
  return Object.fromEntries(
    all.flatMap(([name, text]) =>
      name.startsWith(PREFIX) && typeof text === "string" ? [[name.slice(PREFIX.length), text]] : [],
    ),
  );
}

/** The same as a workbook's data holds them. */
export function keptData(kept: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(kept).map(([key, text]) => [PREFIX + key, text]));
}

/** Puts other kept texts in the place of a workbook's: what opening a file does, and its undo. */
export const ReplaceKeptMutation: IMutation<{ unitId: string; kept: Readonly<Record<string, string>> }> = {
  id: "longpoint.mutation.replace-kept",
  type: CommandType.MUTATION,
  handler(accessor, { unitId, kept }) {
    const workbook = accessor.get(IUniverInstanceService).getUnit<Workbook>(unitId);
    if (!workbook) return false;
    const others = Object.entries(workbook.getCustomMetadata() ?? {}).filter(([name]) => !name.startsWith(PREFIX));
    workbook.setCustomMetadata({ ...Object.fromEntries(others), ...keptData(kept) });
    return true;
  },
};
