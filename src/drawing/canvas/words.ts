/** Every word that a drawing or a cut card shows, in one place for translation. */
export const WORDS = {
  left: "left hand",
  right: "right hand",
  plain: "no hand",
  leftShort: "L",
  rightShort: "R",
  longPoint: "Long point",
  shortPoint: "Short point",
  longPointShort: "LP",
  shortPointShort: "SP",
  line: "Line",
  tape: "Tape",
  shortestBoard: "Shortest board",
  tail: "Tail",
  heel: "Heel",
  seat: "Seat",
  overhang: "Overhang",
  notch: "Notch",
  plumbCut: "Plumb cut",
  sawTilt: "Saw tilt",
  edgeAngle: "Edge angle",
  squareAcross: "square across",
  plate: "Plate",
  each: "@",
  sideView: "Side view",
  topView: "Top edge, from above",
  foot: "Foot, as it stands",
  head: "Head, from above",
  longPointFace: {
    left: "LP on left face, facing uphill",
    right: "LP on right face, facing uphill",
    plain: "both faces alike",
  },
  toHead: "To the head",
  hip: "Hip",
  plan: "Framing plan",
  corner: "Corner",
  frame: "3-D frame",
  hands: { left: "Left", right: "Right" },
  plateMain: "Main plate, to the near edge",
  plateEnd: "End plate",
  hipMarks: "Up the hip",
  hipMarksEnd: "Up the hip, end side",
  handKey: "Hollow: left hand. Filled: right hand.",
  handLetters: "L and R: left and right hand.",
  handSeen: "Stand outside and look up the hip to tell the hand.",
  mainSide: "main side",
  endSide: "end side",
  faces: { left: "Left face, facing uphill", right: "Right face, facing uphill" },
  markFrom: "Marks from the corner's plumb line, squared across",
  ridge: "Ridge",
  ridgeMarks: "Both faces: from the end to each one's near side",
  setOut: "Setting out along the main plate, center to center",
  apex: "Apex, from above",
  ridgePast: "Ridge past the apex",
  endKingShort: "End king common short",
  hipTops: "Top of the hip, facing uphill",
  dropped: (length: string) => `Dropped ${length}, plumb`,
  proud: (length: string, side: string) => `Jacks of the ${side} stand ${length} proud of the hip`,
  backed: (main: string, end: string) =>
    main === end ? `Backed ${main} both ways` : `Backed ${main} main side, ${end} end side`,
  shifted: (main: string, end: string) => `Faces ${main} to the main side, ${end} to the end side`,
  courses: "Sheets by courses",
  sheets: (count: number) => (count === 1 ? "1 sheet" : `${count} sheets`),
  plane: (side: string, numbers: readonly number[], sheets: number): string =>
    `${side} ${numbers.length === 1 ? `plane ${numbers[0]}` : `planes ${numbers.join(" and ")}, each`}: ${sheets === 1 ? "1 sheet" : `${sheets} sheets`}`,
  course: ({
    number,
    edge,
    start,
    sheets,
    offCut,
    kept,
  }: {
    number: number;
    edge: string;
    start: string | null;
    sheets: number;
    offCut: string | null;
    kept: boolean;
  }): string =>
    `Course ${number}, ${edge}: ${[...(start === null ? [] : [`off-cut ${start}`]), ...(sheets === 0 ? [] : [sheets === 1 ? "1 sheet" : `${sheets} sheets`])].join(", ")}${offCut === null ? "" : `, ${offCut} left, ${kept ? "starts the next" : "waste"}`}`,
  sticks: {
    title: "Cutting plan",
    boards: ({
      first,
      times,
      size,
      length,
      left,
    }: Record<"first" | "times", number> & Record<"size" | "length" | "left", string>) =>
      `${times === 1 ? `Board ${first}` : `Boards ${first} to ${first + times - 1}, ${times} times`}: ${size}, ${length}; left over ${left}`,
    alike: (count: string, mark: string, each: string) => `${count} × ${mark}, each ${each}`,
    key: "Heavy line: a piece's top edge, along which it is measured. Where that is the lower edge the piece is turned end for end, its crown down: take a straight board. Dashed: the cut on the far face. Hatched: left over.",
  },
  card: {
    members: {
      ridge: "Ridge",
      common: "Common",
      "king common": "King common",
      hip: "Hip",
      "broken hip": "Broken hip",
      valley: "Valley",
      jack: "Jack",
      "valley jack": "Valley jack",
      "hip-valley cripple": "Hip-valley cripple",
      "valley cripple": "Valley cripple",
      "jack to the valley": "Jack to the valley",
    },
    sides: { Main: "main side", End: "end side", Both: "main and end sides" },
    marksTitle: "jacks on it",
    sheet: "Cut cards",
    checkTape: "Tape check, seat to long point",
    checkTapeHead: "Tape check, seat to head",
    toHead: "To the head",
    boardLength: "Length",
    counts: { left: "left", right: "right", plain: "in all" },
    board: (size: string, board: string, need: string) =>
      `Take a ${size} of ${board}, crown up. The piece needs ${need}.`,
    noBoard: (size: string, need: string) => `No board on hand is long enough. The piece needs ${need} of ${size}.`,
    head: (rise: string, run: string) =>
      `Head: square on ${rise} and ${run}, plumb line on the ${rise} side. Saw square across.`,
    headJack: (rise: string, run: string, tilt: string) =>
      `Head, on the long-point face (left jack: left face; right jack: right face; facing uphill): square on ${rise} and ${run}, plumb line on the ${rise} side. Saw from that face, tilt ${tilt}; the far face is shorter.`,
    hipHead: (rise: string, run: string, own: string) =>
      `Head: square on ${rise} and ${run} (or ${own} and 12), plumb line on the ${rise} side.`,
    cheeks: (tilt: string, back: string) =>
      `Cheeks: from a plumb line on each face, ${back} back along the top from the point, tilt ${tilt}: the middle comes out longer.`,
    cheeksTwo: (main: string, mainBack: string, end: string, endBack: string) =>
      `Cheeks, from a plumb line on each face, so far back along the top from the point: main side's face ${mainBack}, tilt ${main}; end side's ${endBack}, tilt ${end}.`,
    cheekOne: (side: string, tilt: string) =>
      `One cheek, from the ${side}'s face: tilt ${tilt}, the far face comes out shorter.`,
    mainFace: "Main side: right face of a right hip, left face of a left hip, facing uphill.",
    hook: (length: string) => `Hook the long point. Mark ${length} down the top edge, plumb: the building line.`,
    hookHip: (length: string) =>
      `Hook the middle of the head. Mark ${length} down the middle of the top; the plumb line there stands over the corner.`,
    hookHead: (length: string) => `Hook the head. Mark ${length} down the top edge, plumb: the building line.`,
    tiltBack: "Set the saw back to 0°.",
    seat: (heel: string, seat: string) =>
      `Down that line ${heel} to the bird's-mouth corner; seat cut level from there, uphill, ${seat}.`,
    tail: (tail: string, overhang: string) =>
      `From the same line ${tail} on down the top edge (${overhang} level): plumb tail cut.`,
    tailHip: (tail: string, overhang: string) =>
      `On down the middle of the top ${tail} (${overhang} level): the tail's end.`,
    tailBoth: (tilt: string) => `Cut the tail to a point, ${tilt} from each face, so both fascias lie flat.`,
    tailTwo: (main: string, end: string) =>
      `Cut the tail to a point, ${main} from the main side's face and ${end} from the end side's, so both fascias lie flat.`,
    tailOne: (fascia: string, face: string, tilt: string) =>
      `Cut the tail along the ${fascia}'s fascia, the only one it meets: tilt ${tilt} from the ${face}'s face.`,
    noTail: "No tail: the plumb line over the plate is the end cut.",
    ridge: (length: string) => `Cut both ends square, ${length} long.`,
    ridgeSides: "Square each mark down both faces; an X goes on the far side of the line.",
    ridgeHips: "The cheek of a hip covers each face from an end to the farther line of H.",
    marks:
      "Hook the plumb line over the corner. Lay off each mark up the top and square it across; the slanted lines are the sides of the jacks.",
    mirror: "Drawn for the right hand; the left hand is its mirror image.",
    pastSaws: "(past most saws: cut from both faces)",
    roof: (span: string, length: string, pitch: string, endPitch: string) =>
      `Roof ${span} by ${length}, ${pitch} in 12${endPitch === pitch ? "" : `, ends ${endPitch} in 12`}.`,
    cautions:
      "Geometry only: no size or strength is proved. Follow the local code, span tables and a licensed designer. Check the first cut against the building. Use blade guard, eye protection and fall protection as local rules ask.",
  },
} as const;

/** The same keys, any texts. */
export type Words = Texts<typeof WORDS>;
type Texts<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...given: infer Given) => string
      ? (...given: Given) => string
      : Texts<T[K]>;
};
