/** What the pages of a packet say beside what their drawings, cards and tables do. */
export const packetWords = {
  title: "Job packet",
  parts: {
    title: "Title and key plan",
    schedule: "Schedule",
    marks: "Plate marks",
    shopping: "Boards to buy",
    cutting: "Cutting plan",
    cards: "Cut cards",
    cautions: "Cautions",
    labels: "Labels",
    strips: "Layout strips",
  },
  roof: ({
    span,
    length,
    pitch,
    spacing,
    overhang,
  }: Record<"span" | "length" | "pitch" | "spacing" | "overhang", string>) =>
    `Span ${span}, length ${length}, ${pitch} in 12, ${spacing} on center, overhang ${overhang}.`,
  untitled: "Roof",
  foot: { job: "Job", sheet: "Sheet", stamp: "Stamp", date: "Date", page: "Page" },
  pageOf: (page: number, of: number) => `${page} of ${of}`,
  partOn: (name: string, from: number, to: number) =>
    `${name} ${from === to ? `page ${from}` : `pages ${from} to ${to}`}`,
  inside: (parts: readonly string[]) => `In this packet: ${parts.join("; ")}.`,
  pieces: "Pieces",
  stamp: (stamp: string) =>
    `Stamp ${stamp}. Use only papers with this stamp together: the roof, its boards or the saw cut were others where it differs.`,
  outside: (check: string, remark: string) =>
    `${check}: outside the published figure${remark}. Ask the designer before you cut.`,
  shoppingColumns: ["Count", "Size", "Board", "For waste", "Left over"],
  total: (boards: number, length: string) => `${boards} ${boards === 1 ? "board" : "boards"}, ${length} in all.`,
  noOrder: (why: string) => `No order was worked out. ${why}`,
  noPlan: "No cutting plan without an order.",
  done: "done: ________",
  plateLead:
    "Square each mark across the plate. The X goes where the board stands, on the far side of the line from the hook.",
  longPointOn: (face: "left" | "right") => `LP on the ${face} face`,
  headEnd: "head end",
  oneOf: (number: number, of: number) => `${number} of ${of}`,
  ridgeHook: "hook at either end, both faces alike",
  stripLead: "Cut out. Butt the ends and tape them in order. Heavy line: the edge to mark. X: the board stands here.",
  strip: (number: number, of: number) => `strip ${number} of ${of}`,
  checkLine: (length: string) =>
    `This line is ${length} long. Measure it. If it is not, print again at 100 %, not fitted to the page.`,
} as const;
