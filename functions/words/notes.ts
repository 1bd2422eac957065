import type { Unit } from "../../src/measure/unit.ts";
import type { Note } from "../../src/roof/frame/piece.ts";
import { limitText } from "./limitText.ts";
import { smallLength } from "../arguments/smallLength.ts";

type Words = (length: (figure: string) => string, angle: (figure: string) => string, unit: Unit) => string;

/** What people read for each note of the core. */
const WORDS: Readonly<Record<string, Words>> = {
  corrected: (l) => `Correction ${l("by")} is in the lengths`,
  "tilt over 45": (_, a) => `saw tilt over 45°: cut ${a("complement")} from the square face, or by hand`,
  "tilt over 60": (_, a) =>
    `saw tilt over 60°, past portable saws: lay out both faces, or cut ${a("complement")} from the square face`,
  "tail tilt over 45": (_, a) => `tail's saw tilt over 45°: cut ${a("complement")} from the square face, or by hand`,
  "tail tilt over 60": (_, a) =>
    `tail's saw tilt over 60°, past portable saws: lay out both faces, or cut ${a("complement")} from the square face`,
  "proud of hip": (l) => `stands ${l("by")} above the hip's top corner`,
  "toe below hip": (l) => `toe of the cut hangs ${l("by")} below the hip`,
  "corner bay": (l) => `corner bay ${l("width")}, blocked`,
  "corner bay, seat": (l) => `corner bay ${l("width")}, blocked: a shorter jack would land on its seat`,
  "king bay": (l) => `bay to the king common ${l("width")}`,
  "odd bay": (l) => `bay ${l("width")}`,
  "apex bay": (l) => `bay over the apex ${l("width")}`,
  "last bay": (l) => `last bay ${l("width")}`,
  "gable pair": () => "last pair at the gable, outer face on its plate line",
  "at gable": () => "at the gable, outer face on its plate line",
  "above end plane": (l) => `stands ${l("by")} above the end plane at the apex: bevel`,
  "above main plane": (l) => `top corners stand ${l("by")} above the main planes at the apex: bevel`,
  "kings meet": () => "meets its opposite, nothing taken off",
  butts: (l) => `butts the apex: ${l("by")}, level, is off its lengths`,
  "ridge runs on": (l) => `runs ${l("by")} past each apex`,
  "ridge thinner than rafters": (l) => `thinner than the rafters: hips on the ridge need ${l("least")}`,
  "ridge to gable": () => "ends on the gable's plate line; gable overhang is framed outside it",
  backed: (_, a) => `backed ${a("main")} both ways`,
  "backed, two": (_, a) => `backed ${a("main")} main, ${a("end")} end`,
  dropped: (l) => `dropped ${l("by")}, plumb`,
  shifted: (l) => `shifted: faces ${l("main")} to the main side, ${l("end")} to the end side of the corner line`,
  "jacks proud": (l, a) =>
    `flatter side's jacks stand ${l("by")} above its corner: back it ${a("backMain")} main, ${a("backEnd")} end, or shift it`,
  "farthest point": (l) => `farthest point of the head ${l("by")} past its centre line`,
  "hip too shallow": (l) => `too shallow for the jacks' whole cut: take a hip at least ${l("least")} deep`,
  "short overhang": (l, _, unit) =>
    `overhang only ${l("overhang")}: ${unit === "mm" ? "metres need their m" : "feet need their mark"}`,
  "fascia not level": (l) => `fascias not level: an end overhang of ${l("levelEnd")} would be`,
};

/** A note in words, its lengths as read on a tape or in millimetres. */
export function noteText({ tag, figures }: Note, unit: Unit): string {
  const length = (name: string) =>
    name === "least" ? limitText(figures[name] ?? NaN, unit, name) : smallLength(figures[name] ?? NaN, unit);
  const angle = (name: string) => `${Number((figures[name] ?? NaN).toFixed(2))}°`;
  return WORDS[tag]?.(length, angle, unit) ?? tag;
}

/** All notes of a piece as one cell of text. */
export function notesText(notes: readonly Note[], unit: Unit): string {
  return notes.map((note) => noteText(note, unit)).join("; ");
}
