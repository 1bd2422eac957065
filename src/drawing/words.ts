/** Every word that a drawing or a cut card shows, in one place for translation. */
export const WORDS = {
  left: "left hand", right: "right hand", plain: "no hand", leftShort: "L", rightShort: "R",
  longPoint: "Long point", shortPoint: "Short point", longPointShort: "LP", shortPointShort: "SP", line: "Line",
  tape: "Tape", shortestBoard: "Shortest board", tail: "Tail", heel: "Heel", seat: "Seat", overhang: "Overhang", notch: "Notch",
  plumbCut: "Plumb cut", sawTilt: "Saw tilt", edgeAngle: "Edge angle", squareAcross: "square across", plate: "Plate", each: "@",
  sideView: "Side view", topView: "Top edge, from above", foot: "Foot, as it stands", head: "Head, from above",
  longPointFace: { left: "LP on the left face, looking up", right: "LP on the right face, looking up", plain: "both faces alike" },
  sideFace: { main: "Face to the main side", end: "Face to the end side", both: "Side face; the other is its mirror image" },
  fromCorner: "Marks from the corner's plumb line, squared across", cheeks: "Head from above", drop: "drop", backing: "backing", headRun: "To the head",
  plan: "Framing plan", corner: "Corner", frame: "The frame in the round", hands: { left: "Left", right: "Right" },
  plateMain: "Main plate, to the near edge", plateEnd: "End plate", hipMarks: "Up the hip", hipMarksEnd: "Up the hip, end side",
  handKey: "Hollow: left hand. Filled: right hand.", handLetters: "L and R: left and right hand",
  handSeen: "Hands as seen from outside, looking up the hip",
} as const;

/** The same keys, any texts. */
export type Words = Texts<typeof WORDS>;
type Texts<T> = { readonly [K in keyof T]: T[K] extends string ? string : Texts<T[K]> };
