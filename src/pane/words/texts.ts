import type { Row } from "../../../functions/arguments/roofBlock.ts";
import { blockTexts } from "./blockTexts.ts";
import { eaveHelp, orderHelp } from "./helpTexts.ts";
import { listed } from "./listed.ts";
import { slowSheetTexts } from "./slowSheetTexts.ts";

const many = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;

/** Every word that the pane shows or writes, in one place for whoever translates it. Rows and headings of the tables are the functions' own. */
export const texts = {
  title: "Longpoint",
  sections: {
    roof: "Roof",
    schedule: "Jacks",
    fill: "Fill the sheet",
    check: "Check a cut",
    compare: "Compare",
    order: "Lumber order and cutting plan",
    cards: "Cut cards",
    cautions: "Cautions",
  },

  empty: (words: string) => `default: ${words}`,
  follows: (words: string) => `worked out: ${words}`,
  missing: {
    Span: "Nothing is typed. Type the width of the building across the plates, such as 24'.",
    Length: "Nothing is typed. Type the length of the building along the plates, such as 36'.",
    Pitch: "Nothing is typed. Type the rise in 12, such as 6.",
  },
  missingInWing: {
    Wall: "Choose front or back.",
    "From left corner":
      "Nothing is typed. Type how far it stands from the wall's left corner, such as 8', or flush left.",
    "Out from wall": "Nothing is typed. Type how far it stands out, such as 10'.",
    Span: "Nothing is typed. Type its width across the plates, such as 12'.",
    Ends: "Choose hip or gable.",
  },
  choices: { in: "feet and inches", mm: "millimeters" } as Readonly<Record<string, string>>,
  noRidge: "no ridge board",
  noLongValley: "none: the valleys end alike",
  pieces: (count: number) => many(count, "piece", "pieces"),
  boardsUnderstood: (count: number, first: string, last: string) =>
    count === 1 ? first : `${count} lengths, ${first} to ${last}`,
  startAgain: "Reset",
  usual: (words: string) => (words === "" ? "choose" : `default: ${words}`),
  none: "none",

  help: {
    Span: "Across the building, from the outer edge of one plate to the outer edge of the other. Type 24', 24' 6, 24-6 or 7320 mm.",
    Length:
      "Along the building, outer edge to outer edge of the end plates. At least twice the level run of the hipped end.",
    Pitch: "Rise of the main sides over a run of 12. Type 6, 6/12, 26.57° or 50%.",
    "End pitch":
      "Rise of the hipped ends over 12, where it is not the pitch of the main sides. Leave it empty for the same.",
    Spacing: "Center to center of commons and jacks, level, along the plate.",
    Overhang: "Level, from the plate's outer edge to the plumb cut of the tail, on the main sides. 0 for none.",
    Rafter: "Commons and jacks. Nominal, such as 2x8, or as measured: 1.5 x 7.25 or 38 x 184.",
    Hip: "Usually one size deeper than the rafters, so that the whole cut of a jack bears on it.",
    Valley: "Under the line where a wing's roof meets the main roof. Leave it empty for the hip's size.",
    Ridge: "Usually one size deeper than the rafters. Type none where the commons meet without a ridge.",
    Seat: "Level width of the cut that sits on the plate. The wider it is, the less height is left above the plate.",
    "Set out from":
      "Where the spacing starts along the plate: at the king common, so that the jacks follow it to the corner, or at the corner.",
    Ends: "The left end and the right end, as you face the front.",
    "Hip top":
      "Dropped: left square and lowered until its top corners touch the roof. Backed: beveled both ways. Shifted: moved sideways where the pitches differ.",
    "Hip head": "What the hips meet at the top: the king commons, or the ridge itself.",
    "End overhang":
      "Level, at the hipped ends. Leave it empty and the fascia runs level around the corner. Type none for no overhang.",
    Heel: "Plumb, over the plate's outer edge, from its top to the top of the rafter. Type it in place of Seat, and leave Seat empty.",
    Correction:
      "What the test jack was short (+) or long (-). Added to the long point of every main jack. Check a cut, below, works it out.",
    "End correction": "The same for the jacks of the ends.",
    ...eaveHelp,
    ...orderHelp,
    Boards: "Lengths on hand: 8', 12', 16' or 8' to 20' by 2'; 4.8 m or 2.4 m to 7.2 m by 0.6 m.",
    Unit: "The unit of bare numbers and of every table. Changing it turns what is typed here into the other unit.",
  } satisfies Record<Row, string>,

  wing: (letter: string) => `Wing ${letter}`,
  addWing: "Add a wing",
  removeWing: (letter: string) => `Remove wing ${letter}`,
  wingAdded: (letter: string) => `Wing ${letter} added. Type where it stands.`,
  wingRemoved: (letter: string) => `Wing ${letter} removed.`,
  place: (row: string, wing?: string) => (wing === undefined ? row : `Wing ${wing}, ${row}`),
  helpInWing: {
    Wall: "The long wall that it stands on. The plan has the front at the bottom.",
    "From left corner":
      "Level, from the wall's left corner to the wing's nearer side, facing that wall from outside. Or flush left, flush right: its side runs on from the end wall.",
    "Out from wall": "Level, from the outer edge of the main plate to the outer edge of the wing's end plate.",
    Span: "Across the wing, outer edge to outer edge of its plates.",
    Ends: "The wing's outer end.",
    Pitch: "Rise of the wing's sides over 12. Leave it empty for the main roof's.",
    "End pitch": "Rise of its hipped end over 12. Leave it empty for the pitch of its sides.",
    Overhang:
      "Level, of the wing's sides. Leave it empty and the fascia runs level with the main roof's. Type none for no overhang.",
    "End overhang": "Level, at the wing's outer end. Leave it empty for a level fascia. Type none for no overhang.",
    Ridge: "The wing's ridge board. Leave it empty for the main ridge's size.",
    "Long valley":
      "The valley that runs on to the main ridge; the other butts its side. Facing the wall, left or right. Leave it empty and the one farther from the ridge's end runs on.",
    "Wing framing": "Framed in: on valley rafters. Laid over: on the sheathed main roof.",
    Sheathing: "Thickness of the main roof's sheathing under a wing that is laid over.",
  },

  scheduleCaption: "Jacks to cut, longest first",
  scrolls: (name: string) => `${name}, scrolls sideways`,
  notYet: "Shows here once every field above can be read.",
  jackCount: (jacks: number, kinds: number) =>
    `${many(jacks, "jack", "jacks")} of ${many(kinds, "length", "lengths")}.`,

  otherMembers: "Other members:",

  roofBlock: "Roof block",
  roofSheet: "Roof",
  /** What the sheet of a table is called where it stands alone. */
  sheets: {
    schedule: "Jacks",
    members: "Members",
    marks: "Plate marks",
    takeoff: "Take-off",
    sheathing: "Sheathing",
    settings: "Saw settings",
    pieces: "Piece list",
    cautions: "Cautions",
    order: "Lumber order",
    cutting: "Cutting plan",
  },
  /** Beside a bare number in the block. */
  units: { pitch: "in 12", Waste: "percent", Spares: "pieces" },
  tables: {
    schedule: "Jack schedule",
    members: "All members",
    marks: "Plate marks",
    takeoff: "Take-off",
    sheathing: "Sheathing",
    settings: "Saw settings",
    pieces: "Piece list",
    cautions: "Cautions",
    order: "Lumber order",
    cutting: "Cutting plan",
  },
  together: (titles: readonly string[]) =>
    titles.length <= 3 ? titles.join(", ") : `${titles[0]} and ${titles.length - 1} more`,
  onTape: (heading: string) => `${heading}, on tape`,
  cautionInSheet:
    "Geometry only: no strength is proved. Take sizes, spans, ties and bracing from the local code and a licensed designer. Check the first cut against the building.",
  what: "What to write",
  where: "Where",
  onNewSheets: "on new sheets",
  atSelection: (cell: string) => `at the selected cell, ${cell}`,
  fill: "Fill the sheet",
  ...slowSheetTexts,
  nothingChosen: "Choose at least one thing to write.",
  fixFirst: (row: string) => `Nothing was written. Fix ${row} first.`,
  fixGeneral: (words: string) => `Nothing was written. ${words}`,
  notNow: (table: string, why: string) => `${table} cannot be made of this roof: ${why}`,
  written: (title: string, places: readonly string[]) => `${title} written to ${listed(places, 12)}.`,
  notNamed: (title: string, why: string) =>
    `${title} is written to the sheet, but the workbook took no name for the block, so its tables show #NAME?: undo this fill and try again. ${why}`,
  takeBack: (title: string) => `Undo this fill: ${title}`,
  takenBack: (title: string) => `Undone: ${title}.`,
  notTakenBack: (cells: readonly string[]) =>
    `Nothing was undone: ${listed(cells)} ${cells.length === 1 ? "was" : "were"} edited since.`,

  ...blockTexts,

  side: "Side",
  hand: "Hand",

  checkLead:
    "Brace hip and commons straight first. Hook the tape on the plate's outer top edge, at the seat. Pull it straight to where the long point will be. Type what it reads.",
  checkColumns: ["Piece", "Measured", "Off by", "Tape should read", "Long point on site"],
  tapeMeasured: (mark: string) => `Tape measured, ${mark}`,
  agrees: "agrees",
  longer: (by: string) => `${by}, longer`,
  shorter: (by: string) => `${by}, shorter`,
  differ: ({
    side,
    count,
    median,
    mean,
    least,
    most,
  }: {
    side: string;
    count: number;
    median: string;
    mean: string;
    least: string;
    most: string;
  }) => {
    const where = side === "" ? "" : `${side} jacks: `;
    return count === 1
      ? `${where}1 measured, off by ${median}.`
      : `${where}${count} measured, off by ${least} to ${most}; the middle one (median) is ${median}, their mean ${mean}.`;
  },
  grows: (by: string, over: string) =>
    `The error grows from the corner up, by ${by} over ${over} of plate: check square and pitch. One correction will not fit all.`,
  standsOut: (mark: string, by: string, others: string) =>
    `${mark} is ${by} from the median of the others, which lie within ${others} of each other: measure it once more.`,
  useCorrection: (rows: readonly string[], length: string) =>
    `Set ${rows.join(" and ")} to ${length} (what it was plus the median)`,
  clearMeasured: "Clear the tapes",
  writeCheck: "Write the check into the sheet",
  checkSheet: "Check",
  checkHeadings: ["Piece", "Tape measured", "Computed", "Long point on site", "Off by"],
  medianInSheet: "Median",

  salvage: "A jack that was cut wrong",
  salvageLead:
    "What it can still become, least loss first. Give the side and hand it was cut for, and its long point along the top edge.",
  cutAt: "Long point as cut",
  salvageSheet: "Salvage",
  writeSalvage: "Write this into the sheet",

  pitches: "Pitches",
  spacings: "Spacings",
  compared: "What",
  chartOf: (what: string) => `Bars: ${what}, by pitch and spacing`,
  writeCompare: "Write the comparison into the sheet",

  orderFrom: (boards: string) => `From boards of ${boards} (row Boards, under Ordering).`,
  kerf: "Kerf, width of the saw cut",
  orderWorking: "Working the order out.",
  orderTotal: (boards: number, length: string) => `${many(boards, "board", "boards")} to buy, ${length} in all.`,
  orderColumns: ["Board", "To buy", "For waste", "Left over"],
  boardsTooShort: (words: string) => `Boards: ${words}. Add a longer length to the row Boards, under Ordering.`,
  meters: (length: number) => `${Number(length.toFixed(2))} m`,
  sentence: (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`,
  scrollsDown: (name: string) => `${name}, scrolls`,
  planFor: (span: string, length: string, kerf: string) =>
    `For a roof of ${span} by ${length} over the plates. Kerf ${kerf}.`,
  printPlan: (roof: string) => `Print the cutting plan, roof ${roof}`,
  writeOrder: "Write order and plan into the sheet",
  orderPrices:
    "By price: in the sheet, give RAFTER.LUMBERORDER a table of boards with the headings Size, Length and Price (and Count for what is on hand) in place of the lengths. It then finds the cheapest order.",

  cardsLead: "One card for each distinct board, in black and white. Print, or save as PDF from the print window.",
  cardsOfPlan: "Cards name the boards of the cutting plan.",
  cardsNoPlan: "Open the cutting plan above first, and the cards name its boards.",
  lookAtCards: "Look at the cards",
  lookAtPlan: "Look at the plan",
  paper: "Paper",
  perPage: "Cards to a page",
  printCards: (roof: string) => `Print the cut cards, roof ${roof}`,
  cardsIntoSheet: "Insert the cards into the sheet as pictures",
  cardsDrawn: "These do not update. Insert them again after a change.",

  figures: "Your roof's figures beside the published ones",

  ask: {
    occupiedTitle: "These cells are not empty",
    occupied: (cells: readonly string[]) =>
      `${many(cells.length, "cell is", "cells are")} filled where this would go: ${listed(cells, 12)}.`,
    nothingYet: "Nothing has been written yet.",
    beside: "Further right, where it is free",
    newSheets: "On new sheets",
    over: "Overwrite them",
    overSure: (count: number) => `Yes, replace ${many(count, "cell", "cells")}`,
    cancel: "Write nothing",
    canceled: "Nothing was written.",
    differsTitle: "Which roof?",
    differsWhy: "New tables will use the block in the sheet, not the fields above.",
    asInSheet: "Fill from the block as it is",
    changedMeanwhile: "The sheet has changed meanwhile.",
    updateTitle: "Change the block in the sheet?",
    change: ({ at, from, to, formula }: { at: string; from: string; to: string; formula: boolean }) =>
      `${at}: ${from === "" ? "empty" : from} becomes ${to === "" ? "empty" : to}${formula ? " (a formula stands there)" : ""}`,
    formulasGrow: (count: number) =>
      `${many(count, "formula", "formulas")} will read the wings too. The jack schedule then needs three free columns on its right.`,
    cutAlready: ({ serve, shorten, anew }: Record<"serve" | "shorten" | "anew", number>) =>
      `Pieces already cut for the old roof: ${serve} of the new roof's serve as they are, ${shorten} are cut shorter, ${anew} cut anew. RAFTER.CHANGES lists them: copy the old block first.`,
    updateYes: "Change them",
    noRoom: "There is no free place to the right. Choose another cell, or new sheets.",
  },

  cautions: [
    "Geometry only: Longpoint sizes no member and proves no strength.",
    "Take sizes, spans, bearing, ties, bracing, uplift and the support of ridge and hips from the local code, span tables and a licensed designer.",
    "Brace hip and commons straight before you measure from them. Check the first cut against the building.",
    "When you cut or work at height, use the blade guard, eye protection and fall protection that local rules ask for.",
  ],
} as const;
