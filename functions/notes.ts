import { lengthText } from "../src/measure/lengthText.ts";
import type { Unit } from "../src/measure/unit.ts";
import type { Note } from "../src/roof/piece.ts";

type Words = (length: (figure: string) => string, angle: (figure: string) => string) => string;

/** What people read for each note of the core. */
const WORDS: Readonly<Record<string, Words>> = {
  "corrected": (l) => `${l("by")} added by Correction`,
  "tilt over 45": (_, a) => `saw tilt over 45°: cut the complement, ${a("complement")}, from the face or edge square to it, or by hand`,
  "tilt over 60": (_, a) => `saw tilt over 60°: more than a portable saw tilts; lay the cut out on both faces, or cut the complement, ${a("complement")}`,
  "proud of hip": (l) => `stands ${l("by")} above the hip's top corner, which is dropped for the other side: back or shift the hip to end that`,
  "toe below hip": (l) => `toe of the cut hangs ${l("by")} below the hip: take a deeper hip`,
  "corner bay": (l) => `corner bay of ${l("width")} to its centre, blocked`,
  "corner bay, seat": (l) => `corner bay of ${l("width")} to its centre, blocked: a shorter jack would land on its own seat`,
  "king bay": (l) => `bay of ${l("width")} to the king common`,
  "gable pair": () => "the last pair stands at the gable, its outer face on the plate line",
  "last bay": (l) => `last bay ${l("width")}`,
  "above end plane": (l) => `top stands ${l("by")} above the end plane at the apex: bevel it there`,
  "above main plane": (l) => `top corners stand ${l("by")} above the main planes at the apex: bevel them there`,
  "kings meet": () => "meets its opposite at the centre, nothing taken off",
  "butts": (l) => `butts what stands at the apex: ${l("by")} taken off, level`,
  "ridge runs on": (l) => `runs ${l("by")} past each apex`,
  "ridge thinner than rafters": (l) => `thinner than the rafters: hips straight onto the ridge need ${l("least")}`,
  "ridge to gable": () => "ends on the gable's plate line; gable overhang is framed outside it",
  "backed": (_, a) => `top backed ${a("main")} both ways`,
  "backed, two": (_, a) => `top backed ${a("main")} to the main side, ${a("end")} to the end side`,
  "dropped": (l) => `dropped ${l("by")}, plumb`,
  "shifted": (l) => `shifted sideways: faces ${l("main")} to the main side and ${l("end")} to the end side of the corner line`,
  "jacks proud": (l, a) => `jacks of the flatter side stand ${l("by")} above its corner; or back it ${a("backMain")} main, ${a("backEnd")} end, or shift it`,
  "farthest point": (l) => `farthest point of the head ${l("by")} past its centre line`,
  "hip too shallow": (l) => `too shallow for the jacks' whole cut: take a hip at least ${l("least")} deep`,
  "fascia not level": (l) => `fascias do not meet level: an end overhang of ${l("levelEnd")} would`,
};

/** A note in words, its lengths as read on a tape or in millimetres. Small lengths are given to the sixty-fourth. */
export function noteText({ tag, figures }: Note, unit: Unit): string {
  const length = (name: string) => {
    const value = figures[name] ?? NaN;
    const text = lengthText(value, unit, Math.abs(value) < 1 ? 64 : 16);
    return unit === "mm" && Math.abs(value) < 10 ? `${Number(value.toFixed(1))} mm` : text;
  };
  const angle = (name: string) => `${Number((figures[name] ?? NaN).toFixed(2))}°`;
  return WORDS[tag]?.(length, angle) ?? tag;
}

/** All notes of a piece as one cell of text. */
export function notesText(notes: readonly Note[], unit: Unit): string {
  return notes.map((note) => noteText(note, unit)).join("; ");
}
