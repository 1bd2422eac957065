/** Help for the rows of the eaves. */
export const eaveHelp = {
  "Tail cut":
    "How the tails of commons and jacks end. Level: plumb as deep as the board on them, then level for a soffit.",
  Fascia: "Size of the board along the eaves. Leave it empty, or type none, to order it elsewhere.",
  "Sub-fascia": "Size of the board between tails and fascia. Empty: none.",
  Blocking:
    "Blocks over the plates: between the rafters, in the bay beside each hip, or both. They are listed and ordered.",
} as const;

/** Help for the rows of an order and its papers. */
export const orderHelp = {
  "End trim": "Off every board, both ends together. Empty: 1/2 in or 12 mm. 0 where boards come trimmed.",
  "Allow crown down":
    "yes lets a jack lie end for end, its crown down, where that saves a board or money. no: every crown up.",
  Waste: "Percent added to areas and to board feet.",
  Spares: "Extra commons to order. Any jack can come out of one.",
  "Job name": "Stands on every cut card and on the cutting plan.",
} as const;
