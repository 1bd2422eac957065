import { lengthText } from "../../src/measure/lengthText.ts";
import type { Joined } from "../arguments/cuttingInput.ts";
import type { CutOrder } from "../arguments/cutOrder.ts";

/** More places than that have no room in a note. */
const MOST = 8;

/** Where pieces longer than every board are joined, in words, for the boards of a size; empty where none is. */
export function joinNote({ joined, unit }: Pick<CutOrder, "joined" | "unit">, size: string): string {
  return joined
    .filter((one) => one.size === size)
    .map((one) => joinText(one, unit))
    .join("; ");
}

/** Where one of them is joined. */
export function joinText({ name, over, joints, among = false }: Joined, unit: CutOrder["unit"]): string {
  const where = joints
    .slice(0, MOST)
    .map((at) => lengthText(at, unit))
    .join(", ");
  const places = `${over === null ? "" : `over ${over} `}at ${where}${joints.length > MOST ? " and so on" : ""}`;
  // Of several ridges one may be longer, and others whole.
  return `${over === "rafters" ? (among ? `ridge ${name}` : "ridge") : name} longer than every board: in ${joints.length + 1} parts, joined ${places} from its first end; hold the joints as the local code says`;
}
