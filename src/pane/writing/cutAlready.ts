import { changes } from "../../roof/tables/changes.ts";
import type { Inputs } from "../state/fields.ts";
import { report } from "../state/report.ts";
import { texts } from "../words/texts.ts";

/** What a change of the roof means for pieces that are cut already, in words; nothing where either roof cannot be framed, or no piece is another. */
export function cutAlready(before: Inputs, after: Inputs): string[] {
  const [old, now] = [before, after].map((inputs) => report(inputs).model);
  if (!old || !now || old.frame.spec.unit !== now.frame.spec.unit) return [];
  const all = (model: typeof old) => [...model.pieces, ...model.eaves];
  const found = changes(all(old), all(now), now.frame.spec.unit).changes;
  const sum = (own: typeof found) => own.reduce((total, { needed }) => total + needed, 0);
  const [anew, used] = [found.filter(({ from }) => !from), found.filter(({ from }) => from)];
  const shorter = used.filter(({ off, offTail }) => off > 0 || offTail > 0);
  if (anew.length + shorter.length === 0) return [];
  return [texts.ask.cutAlready({ serve: sum(used) - sum(shorter), shorten: sum(shorter), anew: sum(anew) })];
}
