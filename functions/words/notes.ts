import type { Unit } from "../../src/measure/unit.ts";
import type { Note } from "../../src/roof/frame/note.ts";
import { limitText } from "./limitText.ts";
import { smallLength } from "../arguments/smallLength.ts";

/** What people read for each note of the core, its lengths as read on a tape or in millimeters. */
export const NOTE_WORDS: { readonly [K in Note["kind"]]: (note: Note<K>, unit: Unit) => string } = {
  corrected: ({ by }, unit) => `Correction ${smallLength(by, unit)} already added`,
  "tilt over 45": () => `saw tilt over 45°: lay out both faces, cut from both, or use a saw that reaches`,
  "tilt over 60": () => `saw tilt over 60°, past portable saws: lay out both faces, cut from both, finish by hand`,
  "tail tilt over 45": () => `tail's saw tilt over 45°: lay out both faces, cut from both, or use a saw that reaches`,
  "tail tilt over 60": () =>
    `tail's saw tilt over 60°, past portable saws: lay out both faces, cut from both, finish by hand`,
  "proud of hip": ({ by }, unit) => `stands ${smallLength(by, unit)} proud of the hip`,
  "toe below hip": ({ by }, unit) => `toe of the cut hangs ${smallLength(by, unit)} below the hip`,
  "corner bay": ({ width }, unit) => `${smallLength(width, unit)} left at the corner: block it`,
  "corner bay, seat": ({ width }, unit) =>
    `${smallLength(width, unit)} left at the corner: block it; a shorter jack would land on its seat`,
  "corner bay blocked": ({ width, long }, unit) =>
    `${smallLength(width, unit)} left at the corner: its block, ${smallLength(long, unit)} on the outer face, is in the list`,
  "king bay": ({ width }, unit) => `bay to the king common ${smallLength(width, unit)}`,
  "odd bay": ({ width }, unit) => `bay ${smallLength(width, unit)}`,
  "apex bay": ({ width }, unit) => `bay over the apex ${smallLength(width, unit)}`,
  "last bay": ({ width }, unit) => `last bay ${smallLength(width, unit)}`,
  "gable pair": () => "last pair stands at the gable, outer face on its plate line",
  "at gable": () => "at the gable, outer face on its plate line",
  "above end plane": ({ by }, unit) => `top stands ${smallLength(by, unit)} above the end slope: plane it off`,
  "above main plane": ({ by }, unit) =>
    `top corners stand ${smallLength(by, unit)} above the main slopes: plane them off`,
  "kings meet": () => "meets its opposite: no ridge deduction",
  butts: ({ by }, unit) => `butts the ridge end; ${smallLength(by, unit)} (level) already deducted`,
  "ridge runs on": ({ by }, unit) => `runs ${smallLength(by, unit)} past each apex`,
  "ridge thinner than rafters": ({ least }, unit) =>
    `thinner than the rafters: hips on the ridge need ${limitText(least, unit, "least")}`,
  "ridge to gable": () => "ends on the gable's plate line; frame a gable overhang outside it",
  backed: ({ main }) => `backed ${angle(main)} both ways`,
  "backed, two": ({ main, end }) => `backed ${angle(main)} main, ${angle(end)} end`,
  dropped: ({ by }, unit) => `dropped ${smallLength(by, unit)}, plumb`,
  shifted: ({ main, end }, unit) =>
    `shifted: faces ${smallLength(main, unit)} to the main side, ${smallLength(end, unit)} to the end side of the corner line`,
  "jacks proud": ({ by, backMain, backEnd }, unit) =>
    `jacks of the flatter side stand ${smallLength(by, unit)} proud of the hip: back it ${angle(backMain)} main and ${angle(backEnd)} end, or shift it`,
  "farthest point": ({ by }, unit) => `farthest point of the head ${smallLength(by, unit)} past its center line`,
  "hip too shallow": ({ least }, unit) =>
    `too shallow for the jacks' whole cut: take a hip at least ${limitText(least, unit, "least")} deep`,
  "short overhang": ({ overhang }, unit) =>
    `overhang only ${smallLength(overhang, unit)}: ${unit === "mm" ? "meters need their m" : "feet need their mark"}`,
  "fascia not level": ({ levelEnd }, unit) =>
    `fascias not level: an end overhang of ${smallLength(levelEnd, unit)} would be`,
  "wing fascia not level": ({ wing, level }, unit) =>
    `fascias do not meet on it: an Overhang of ${smallLength(level, unit)} for wing ${wing} would do`,
  "runs on to ridge": () => "runs on past the crossing to the main ridge; the shorter valley bears on it",
  "proud past crossing": ({ by }, unit) =>
    `past the crossing its corner on the wing's side stands ${smallLength(by, unit)} above the main roof: plane it off, or set the whole valley that much lower`,
  "butts long valley": () => "butts the side of the longer valley at the crossing",
  "toe below long valley": ({ by }, unit) =>
    `its toe hangs up to ${smallLength(by, unit)} below the longer valley on the main roof's side`,
  "valley to corner of ridges": () => "fits the corner of the two ridges",
  "valley to broken hip": () => "head fits between the wing's ridge and the broken hip",
  "valley too shallow": ({ least }, unit) =>
    `too shallow for the whole cut of what stands on it: take a valley at least ${limitText(least, unit, "least")} deep`,
  "broken hip stands on ridge": () =>
    "stops on the wing's ridge; only that ridge and the valley carry its foot: have a designer size the support",
  "ridge butts main ridge": () => "butts the main ridge",
  "ridge pointed into valleys": () => "inner end cut to a point between the two valleys",
  "ridge past crossing": ({ by }, unit) =>
    `runs ${smallLength(by, unit)} past the crossing, square end: valley and broken hip bear on its face`,
  "valley board": ({ setBack, bevel, lower, upper }, unit) =>
    `lies flat on the main roof's sheathing; square outer edge ${smallLength(setBack, unit)} inside the valley line, or bevel it ${angle(bevel)} on the line; lower end ${angle(lower)} across the flat, along the plate line; upper end ${angle(upper)}, along the wing's ridge`,
  "seat on valley board": ({ wing, tilt }) =>
    `seat level on its side, saw tilted ${angle(tilt)}: it sits on the valley board of wing ${wing}, longer toward the main eave`,
  wedge: () => "a wedge: its seat runs out at the ridge",
  "ridge on sheathing": ({ cut }) => `inner end cut ${angle(cut)} from square: it lies on the main roof's sheathing`,
  "through mouth": ({ wing }) => `goes through the mouth of wing ${wing}: no tail`,
  moved: ({ by }, unit) => `moved up to ${smallLength(by, unit)} along the plate, so that it meets one board`,
  "crossing bay": ({ wing, width }, unit) =>
    `${smallLength(width, unit)} left at the crossing of wing ${wing}: block it`,
  "inner corner": ({ wing }) => `inner corner of wing ${wing}, under its valley`,
  "over inner corner": ({ wing }) =>
    `stands over the inner corner of wing ${wing}: cut its foot to the valley and a level seat over the plate`,
  "tail in place": () => "leave its tail long: cut it in place, to the line of the tails on both sides",
  "level hip tail": ({ plumb }, unit) => `tail ${smallLength(plumb, unit)} plumb, then level for the soffit`,
  "eave board lower": ({ by }, unit) =>
    `outer top edge ${smallLength(by, unit)} below the tops of the tails, in line with the sheathing`,
  "inside corner": () => "inside corner: mitered the other way",
  "valley bays": () => "none in the bays beside a valley: block those",
  "eave corners in place": () => "cut its corners in place",
  "joined over tails": () => "longer than every board: join it over tails",
  "block top": ({ height, bevel }, unit) =>
    `over the plate, ${smallLength(height, unit)} high on the outer face, top beveled ${angle(bevel)}; less where the eave is vented`,
  "block open": ({ by }, unit) => `leaves ${smallLength(by, unit)} open under the sheathing`,
  "tail on valley": ({ wing, long, short, tilt }, unit) =>
    `tail cut on the valley of wing ${wing}: ${smallLength(long, unit)} and ${smallLength(short, unit)} along the top, tilt ${angle(tilt)}, longer away from the inner corner`,
};

const angle = (degrees: number) => `${Number(degrees.toFixed(2))}°`;

/** A note in words. */
export function noteText<K extends Note["kind"]>(note: Note<K>, unit: Unit): string {
  return NOTE_WORDS[note.kind as K](note, unit);
}

/** All notes of a piece as one cell of text. */
export function notesText(notes: readonly Note[], unit: Unit): string {
  return notes.map((note) => noteText(note, unit)).join("; ");
}
