import { lengthText } from "../../src/measure/lengthText.ts";
import type { Reason } from "../../src/measure/reason.ts";
import type { Unit } from "../../src/measure/unit.ts";
import { Refusal } from "../../src/registry/refusal.ts";
import { exactText, limitText } from "./limitText.ts";

/** Why a roof block cannot be framed, worded by the row at fault. */
export function blockRefusal({ tag, figures }: Reason, unit: Unit): Refusal {
  const l = (name: string) =>
    name === "most" || name === "least"
      ? limitText(Number(figures[name]), unit, name)
      : lengthText(Number(figures[name]), unit, 16);
  const n = (name: string) => String(Number(Number(figures[name]).toFixed(3)));
  const lengths =
    figures["hipEnds"] === 2
      ? `${exactText(Number(figures["pyramid"]), unit)} for a pyramid, or ${l("least")} or more`
      : `${l("least")} or more`;
  const words: Record<string, string> = {
    "no hip": `End pitch: planes of ${n("pitch")} and ${n("otherPitch")} in 12 meet in no hip. Type pitches nearer each other.`,
    "row heel above depth": `Heel: nothing of the rafter is left to notch. Type less than ${l("most")}, the plumb depth of the rafter on its flatter side.`,
    "row seat takes the heel": `Seat: it is wider than the rafter can take. Type less than ${l("most")}, or a deeper Rafter.`,
    "no seat on the flatter side": `Seat: both sides need one height above plate, ${l("heel")}, and on the flatter side no seat is left at that height (the rafter's plumb depth there is ${l("most")}). Type a Seat of more than ${l("least")}, a deeper Rafter, or pitches nearer each other.`,
    "length too short": `Length: the hipped end${figures["hipEnds"] === 2 ? "s take" : " takes"} more than that. Type ${lengths}.`,
    "ridge too short": `Length: the ridge would be too short ${figures["hipEnds"] === 2 ? "for its king commons to stand side by side" : "between king commons and gable"}. Type ${lengths}.`,
    "spacing too narrow": `Spacing: rafters so near each other leave no room to nail. Type ${l("least")} or more, centre to centre${unit === "in" ? "; feet need their mark, as 2'" : ""}.`,
    "too many rafters": `${figures["row"]}: at a spacing of ${l("spacing")} more than ${n("rafters")} rafters would stand along a plate. Type ${l("most")} or less, or a wider Spacing.`,
    "correction below plate": `${figures["row"]}: the shortest jack would end below the plate line. Type more than ${l("least")}.`,
    "correction over a step": `${figures["row"]}: it is as much as a step or more. Type less than ${l("most")} either way: what the first jack tried was long or short by, not its length.`,
    "spacing wider than run": `Spacing: ${l("spacing")} is not less than the run of ${l("run")}, so no jack stands beside the king common. Type a smaller Spacing or a wider Span.`,
    "no ridge for the hips": `Hip head: there is no ridge for the hips to meet. Type king commons, or a roof with a Ridge longer than a pyramid's.`,
    "roof too narrow": `Span: ${l("span")} is too narrow for the hips' heads. Type a wider Span.`,
    "no jack fits": `Span: ${l("span")} is too narrow for one jack at a spacing of ${l("spacing")}. Type a wider Span or a smaller Spacing.`,
    "hip drops below plate": `Seat: the hip is dropped by ${l("drop")}, and the height above plate is only ${l("heel")}. Type a Seat of less than ${l("most")}, or a backed Hip top.`,
    "row heel under the drop": `Heel: the hip is dropped by as much or more. Type more than ${l("least")}, or a backed Hip top.`,
    "hip too shallow for the plate": `Hip: it does not reach down to the plate. Type a hip at least ${l("least")} deep.`,
  };
  return new Refusal("#VALUE!", words[tag] ?? `roof: the block cannot be framed (${tag}).`);
}
