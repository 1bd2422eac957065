import type { Frame, FrameSide } from "../frame/frame.ts";

/** What is written on a jack: J1 is the longest of its side; JM and JE where main and end jacks differ. */
export function jackMark({ alike }: Frame, { name }: FrameSide, index: number): string {
  return `${alike ? "J" : name === "Main" ? "JM" : "JE"}${index + 1}`;
}
