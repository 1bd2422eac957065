type TailFigure = "middle" | "main" | "wing" | "mainTilt" | "wingTilt";
type HeelFigure = Exclude<TailFigure, "middle"> | "mainDown" | "wingDown";

type CourseFigures = Record<"number" | "sheets", number> &
  Record<"edge" | "first", string> & { offCutOf: number | null };
type BoardFigures = Record<"first" | "times", number> & Record<"size" | "length" | "left", string>;

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
  shortBack: (length: string) => `SP ${length} back`,
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
  wing: (letter: string) => `Wing ${letter}`,
  valleys: {
    of: (letter: string) => `Valleys of wing ${letter}, from above`,
    foot: "Foot over the inner corner: the heel follows both plate lines, the tail both fascias",
    crossing: "Crossing: the shorter valley butts the long one, the ridge its point between them",
    ridges: "Level ridges: the valleys in their corners",
    broken: "Crossing: valley and broken hip against the wing's ridge",
    long: "Head of the long valley on the main ridge",
  },
  corner: "Corner",
  plates: "Plates and ridges, marked from the hook of the tape",
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
  plane: (side: string, plane: number, sheets: number): string =>
    `${side} plane ${plane}: ${sheets === 1 ? "1 new sheet" : `${sheets} new sheets`}`,
  course: ({ number, edge, first, offCutOf, sheets }: CourseFigures): string =>
    `Course ${number}, ${edge}: first piece ${first}${offCutOf === null ? "" : ` off sheet ${offCutOf}`}, ${sheets} new`,
  sticks: {
    title: "Cutting plan",
    boards: ({ first, times, size, length, left }: BoardFigures) =>
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
      "valley board": "Valley board",
      "hip-valley cripple": "Hip-valley cripple",
      "valley cripple": "Valley cripple",
      "jack to the valley": "Jack to the valley",
      fascia: "Fascia",
      "sub-fascia": "Sub-fascia",
      block: "Block",
    },
    sides: { Main: "main side", End: "end side", Both: "main and end sides" },
    marksTitle: "jacks on it",
    sheet: "Cut cards",
    keyPlan: "Where it goes",
    checkTape: "Tape check, seat to long point",
    checkTapeHead: "Tape check, seat to head",
    checkTapeHip: "Tape check, plate corner to head",
    toHead: "To the head",
    boardLength: "Length",
    counts: { left: "left", right: "right", plain: "to cut" },
    done: "done: ________",
    goesOn: (title: string) => `${title}, continued`,
    noteOf: (mark: string, note: string) => `(${mark}) ${note}`,
    need: (size: string, need: string) => `Use a ${size} at least ${need}, crown up.`,
    trimmed: (need: string) => `${need} long with its ends trimmed`,
    needFlat: (size: string, need: string) => `Use a ${size} at least ${need}.`,
    untrimmed: (need: string) => `${need} long`,
    fromPlan: (places: readonly string[]) =>
      `Cut from the plan's ${places.join("; ")}. Count the pieces from the left end.`,
    place: ({ first, last, length, at }: { first: number; last: number; length: string; at: readonly number[] }) =>
      `${first === last ? `board ${first}` : `boards ${first} to ${last}`} (${length}), piece ${at.join(" and ")}`,
    moreBoards: (count: number) => `${count} more boards`,
    ridgeLong: "Where no board is that long, join it over a rafter. The cutting plan says where.",
    head: (rise: string, run: string, angle: string) =>
      `Head: square on ${rise} and ${run} (${angle}), plumb line on the ${rise} side. Saw square across.`,
    headJack: (rise: string, run: string, angle: string) =>
      `Head, on the long-point face: square on ${rise} and ${run} (${angle}), plumb line on the ${rise} side. Left jack, left face; right jack, right face, facing uphill.`,
    sawJack: (tilt: string) => `Saw from that face at tilt ${tilt}; the far face is shorter.`,
    sideCut: (angles: readonly string[]) => `Side cut across the top, to check: ${angles.join(" and ")}.`,
    pastSaw: (tilts: readonly string[]) =>
      `NOT IN ONE PASS: ${tilts.join(" and ")} is past a 7 1/4" (184 mm) blade. Mark both plumb lines and the side cut on top. Cut from both faces and finish by hand, or use a saw that reaches.`,
    hipHead: (rise: string, run: string, own: string, angle: string) =>
      `Head: square on ${rise} and ${run} (or ${own} and 12, ${angle}), plumb line on the ${rise} side.`,
    cheeks: (tilt: string, back: string) =>
      `Cheeks: mark a plumb line on each face, ${back} back along the top from the point. Saw both at tilt ${tilt}; the middle comes out longer.`,
    cheeksTwo: (main: string, mainBack: string, end: string, endBack: string) =>
      `Cheeks: mark a plumb line on each face, back along the top from the point. Main side's face ${mainBack}, tilt ${main}. End side's face ${endBack}, tilt ${end}.`,
    cheekOne: (side: string, tilt: string) =>
      `Saw one cheek from the ${side}'s face, tilt ${tilt}. The far face comes out shorter.`,
    mainFace: "Main side: a right hip's right face, a left hip's left, facing uphill.",
    hook: (length: string) =>
      `Hook the long point. Mark ${length} down the top edge; the plumb line there is the building line.`,
    hookHip: (length: string) =>
      `Hook the middle of the head. Mark ${length} down the middle of the top; the plumb line there stands over the corner.`,
    hookHead: (length: string) =>
      `Hook the head. Mark ${length} down the top edge; the plumb line there is the building line.`,
    tiltBack: "Set the saw back to 0°.",
    seat: (heel: string, seat: string) =>
      `Mark the bird's-mouth corner ${heel} down that line. Cut the seat level from there, uphill, ${seat}.`,
    longSeat: "It is long: the hip crosses the corner, and both plates carry it.",
    tail: (tail: string, overhang: string) =>
      `Go on ${tail} down the top edge (${overhang} level). Cut the tail plumb there.`,
    tailSquare: (tail: string, overhang: string) =>
      `Go on ${tail} down the top edge (${overhang} level). Cut the tail square there.`,
    tailLevel: (tail: string, overhang: string, plumb: string, soffit: string) =>
      `Go on ${tail} down the top edge (${overhang} level). Cut ${plumb} plumb there, then ${soffit} level.`,
    tailLong: (tail: string) =>
      `Leave the tail at least ${tail} long, down the middle of the top. Cut it in place, to the line of the tails on both sides.`,
    tailLevelHip: (plumb: string) => `There ${plumb} plumb, then level for the soffit.`,
    tailHip: (tail: string, overhang: string) =>
      `Go on ${tail} down the middle of the top (${overhang} level) to the tail's end.`,
    tailBoth: (tilt: string) => `Cut the tail to a point, ${tilt} from each face, so both fascias lie flat.`,
    tailTwo: (main: string, end: string) =>
      `Cut the tail to a point, so both fascias lie flat: ${main} from the main side's face, ${end} from the end side's.`,
    tailOne: (fascia: string, face: string, tilt: string) =>
      `Cut the tail along the ${fascia}'s fascia, the only one it meets: tilt ${tilt} from the ${face}'s face.`,
    noTail: "No tail: the plumb line over the plate is the end cut.",
    setJack: (plate: string, hip: string) =>
      `Set its near edge at ${plate} on the plate, its center at ${hip} up the hip.`,
    ridge: (length: string) => `Cut both ends square, ${length} long.`,
    ridgeSides: "Square each mark down both faces. Put an X on the far side of the line.",
    ridgeHips: "The cheek of a hip covers each face from an end to the farther line of H.",
    marks:
      "Hook the plumb line over the corner. Lay off each mark up the top and square it across. The slanted lines are the sides of the jacks.",
    mirror: "Drawn for the right hand; the left hand is its mirror image.",
    othersCarry:
      "Drawn for one of these hips. Others carry other pieces: take their marks from the jack schedule, column Hip mark.",
    roof: (span: string, length: string, pitch: string, endPitch: string) =>
      `Roof ${span} by ${length}, ${pitch} in 12${endPitch === pitch ? "" : `, ends ${endPitch} in 12`}.`,
    packet: ({ job, date, stamp }: { job: string; date: string; stamp: string }) =>
      `${job === "" ? "" : `${job}. `}${date}. Stamp ${stamp}.`,
    number: (number: number, of: number) => `Card ${number} of ${of}.`,
    cautions:
      "Geometry only: follow local code, span tables and a licensed designer. Brace hip and commons straight. Check the first cut against the building. Use blade guard, eye protection, fall protection.",
    /** Of roofs with wings: valleys and what stands on them. */
    wings: {
      wingSide: "wing side",
      longValley: "long valley",
      facing: {
        own: "left piece, left face; right piece, right face; facing uphill",
        other: "left piece, right face; right piece, left face; facing uphill",
        left: "left face, facing uphill",
        right: "right face, facing uphill",
      },
      head: (rise: string, face: string, tilt: string) =>
        `Head, on its longer face (${face}): square on ${rise} and 12, plumb line on the ${rise} side. Saw from that face, tilt ${tilt}; the far face is shorter.`,
      foot: (face: string, length: string, tilt: string) =>
        `Foot, on its longer face (${face}): hook the head on that face. Mark ${length} down the top edge, plumb line. Saw from that face, tilt ${tilt}; the far face is shorter.`,
      faces: (long: string, short: string) => `Check the top edges: ${long} on the longer face, ${short} on the other.`,
      facesAlike: (long: string) => `Check the top edges: ${long} on both faces.`,
      hook: (face: string, length: string) =>
        `Hook the head (${face}). Mark ${length} down the top edge; the plumb line there is the building line.`,
      overFoot: (face: string, at: string, tilt: string) =>
        `Foot, on its longer face (${face}): ${at} the building line along the top, plumb line. Saw from that face, tilt ${tilt}: it stands on the valley.`,
      overSeat: (heel: string) =>
        `Mark ${heel} down the building line. Cut a level seat from there, uphill: it stands on the plate too.`,
      past: (length: string) => `${length} past`,
      shortOf: (length: string) => `${length} short of`,
      tail: (face: string, long: string, short: string, tilt: string) =>
        `Tail, on the face away from the inner corner (${face}): go on ${long} down the top edge, plumb line. Saw from that face, tilt ${tilt}; the other face ends at ${short}.`,
      setFoot: (mark: string) => `Set the center of its foot ${mark} up the valley.`,
      setHead: (mark: string, bearer: string) => `Set the center of its head ${mark} up the ${bearer}.`,
      valleyHead: (rise: string, run: string, own: string) =>
        `Head: square on ${rise} and ${run} (or ${own} and 12), plumb line on the ${rise} side.`,
      square: "Saw it square across.",
      cheekOne: (side: string, tilt: string, by: string) =>
        `One cheek, from the ${side}'s face: tilt ${tilt}; the other face ends ${by} sooner along the top.`,
      cheeksTwo: (main: string, mainBack: string, wing: string, wingBack: string) =>
        `Two cheeks, from a plumb line on each face, so far back along the top from the point: main side's face ${mainBack}, tilt ${main}; wing side's ${wingBack}, tilt ${wing}.`,
      mainFace: "Main side: a left valley's left face, a right valley's right face, facing uphill.",
      hookValley: (length: string) =>
        `Hook the farthest point of the head. Mark ${length} down the top and square it across: the inner corner's line.`,
      heel: ({ main, wing, mainDown, wingDown, mainTilt, wingTilt }: Record<HeelFigure, string>) =>
        `Heel, a point turned uphill. Go on down the top edge: ${main} on the main side's face, ${wing} on the wing side's. Down plumb lines there ${mainDown} and ${wingDown} to the bird's-mouth corners. Saw to the middle, tilts ${mainTilt} and ${wingTilt}.`,
      seat: (seat: string) => `Cut the seat level from that point, uphill, ${seat} on the middle.`,
      tailNotch: ({ middle, main, wing, mainTilt, wingTilt }: Record<TailFigure, string>) =>
        `Notch the tail, so both fascias meet in it. From the inner corner's line: ${middle} down the middle, ${main} down the main side's face, ${wing} down the wing side's. Saw to the middle, tilts ${mainTilt} and ${wingTilt}.`,
      tailOne: ({ fascia, main, wing, tilt }: Record<"fascia" | "main" | "wing" | "tilt", string>) =>
        `Cut the tail along the ${fascia}'s fascia, the nearer one. From the inner corner's line: ${main} down the main side's face, ${wing} down the wing side's; tilt ${tilt}.`,
      noTail: "No tail: the heel's point is the end of the board.",
      crossing: (at: string, by: string) =>
        `The crossing is ${at} up from the inner corner's line. From there up the wing side's corner stands ${by} proud: plane it off.`,
      hookBroken: (length: string) =>
        `Hook the middle of the head. Mark ${length} down the middle of the top and square it across: the crossing's line.`,
      brokenFoot: ({ main, end, mainTilt, endTilt }: Record<"main" | "end" | "mainTilt" | "endTilt", string>) =>
        `Foot: plumb lines ${main} that line on the main side's face, ${end} it on the end side's. Saw from each face to the middle, tilts ${mainTilt} and ${endTilt}.`,
      brokenFootOne: ({ main, end, tilt }: Record<"main" | "end" | "tilt", string>) =>
        `Foot, one cheek: plumb lines ${main} that line on the main side's face, ${end} it on the end side's; tilt ${tilt}.`,
      above: (length: string) => `${length} above`,
      below: (length: string) => `${length} below`,
      brokenDanger: "NOTHING BUT RIDGE AND VALLEY carries its foot. Shore it until a designer's support is in.",
      ridgePoint: (length: string, back: string, tilt: string) =>
        `Cut the outer end square. Point the inner end: ${length} to its tip on the middle, each face ${back} shorter, tilt ${tilt}.`,
      ridgeLaid: (top: string, bottom: string, angle: string) =>
        `Cut the outer end square. Cut the inner end ${angle} from square: ${top} along the top, ${bottom} along the bottom.`,
      ridgeSheathing: "The slanted end lies on the main roof's sheathing, its top in line with the wing's rafters.",
      seatMark: (face: string, length: string, rise: string, seat: string) =>
        `Foot, on its longer face (${face}): hook the head. Mark ${length} down the top edge. From there lay out a level line, square on ${rise} and 12, level on the 12 side: ${seat} to the underside.`,
      seatSaw: (tilt: string) =>
        `Saw along that line from the longer face, tilt ${tilt}, so the seat lies flat on the valley board; the far face is shorter.`,
      setToe: (mark: string) =>
        `Set the center of its toe ${mark} up the outer edge of the valley board, from that edge's lower end.`,
      boardLower: (angle: string) => `Lay the board flat. Cut its lower end ${angle} from square across the flat.`,
      boardUpper: (length: string, angle: string) =>
        `Hook the lower end's long point. Mark ${length} along that edge, the outer one. Cut the upper end ${angle} from square, the other way round: the inner edge is the shorter one.`,
      boardSet: (back: string, bevel: string) =>
        `Snap the valley line on the sheathing. Nail the board flat, its square outer edge ${back} inside that line, its lower end over the plate line. Or bevel that edge ${bevel} from square and set it on the line.`,
      marks:
        "Hook the plumb line over the inner corner. Lay off each mark up the top and square it across. The slanted lines are the sides of what meets it there.",
      boardToes: (hand: string, marks: string) =>
        `Mark the centers of the toes along the outer edge, from its lower end. ${hand}: ${marks}.`,
      acrossFlat: "Cut across the flat",
      ridgeValleys: "The point goes between the two valleys, its top in line with the wing's rafters.",
      leftFace: "Left face",
      rightFace: "Right face",
      leftEdge: "Left edge",
      rightEdge: "Right edge",
      footEnd: "Foot",
      headEnd: "Head",
      outerEnd: "Outer end",
      innerEnd: "Inner end",
      fromAbove: (hand: string) => `Both ends from above, cut short between: ${hand}`,
    },
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
