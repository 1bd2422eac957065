import type { CautionKind } from "../../src/roof/tables/cautions.ts";

interface Words {
  readonly check: string;
  /** The published figure, in words. */
  readonly published: (figure: string) => string;
  readonly source: string;
  /** Here, where the roof has no figure for it. */
  readonly none?: string;
  /** How it is measured. */
  readonly remark?: string;
  /** What to do where it lies outside. */
  readonly mend?: string;
}

const IRC = (section: string) => `IRC 2021, ${section}`;
const NAVY = "NAVEDTRA 14044, p. 2-11";
const PRACTICE = "trade practice";
const saw = {
  published: () => `a saw with a 7 1/4" blade tilts 45° and there cuts 1 3/4"`,
  source: PRACTICE,
  mend: "mark both faces and the side cut, cut from both and finish by hand, or use a saw that reaches",
};

/** What stands beside each figure that an inspector looks at. */
export const CAUTION_WORDS: Readonly<Record<CautionKind, Words>> = {
  "ridge thickness": {
    check: "Ridge board, thickness",
    published: (f) => `at least 1 in nominal, ${f}`,
    source: IRC("R802.3"),
    none: "no ridge board",
    mend: "use a thicker ridge",
  },
  "ridge depth": {
    check: "Ridge board, depth",
    published: (f) => `no less than the rafter's cut end, ${f}`,
    source: IRC("R802.3"),
    none: "no ridge board",
    mend: "use a deeper ridge",
  },
  "hip thickness": {
    check: "Hip, thickness",
    published: (f) => `at least 2 in nominal, ${f}`,
    source: IRC("R802.4.3"),
    mend: "use a thicker hip",
  },
  "hip depth": {
    check: "Hip, depth",
    published: (f) => `no less than the rafter's cut end, ${f}`,
    source: IRC("R802.4.3"),
    mend: "use a deeper hip",
  },
  "hip deeper than commons": {
    check: "Hip, deeper than the commons",
    published: (f) => `about ${f}`,
    source: "Canadian housing guide",
  },
  pitch: {
    check: "Pitch",
    published: (f) => `at least ${f}`,
    source: IRC("R802.4.4"),
    mend: "have ridge, hips and valleys designed as beams",
  },
  seat: {
    check: "Bearing of the seat",
    published: (f) => `at least ${f} on wood`,
    source: IRC("R802.6"),
    remark: "level width of the seat cut",
    mend: "widen the seat",
  },
  notch: {
    check: "Notch, no tail",
    published: (f) => `at most a quarter of the depth, ${f}`,
    source: IRC("R802.7, R502.8"),
    remark: "square to the slope",
    mend: "narrow the seat or use a deeper rafter",
  },
  "wood left": {
    check: "Wood above the notch, tail",
    published: (f) => `at least ${f}`,
    source: IRC("R802.7.1.1"),
    remark: "square to the slope",
    mend: "narrow the seat or use a deeper rafter",
  },
  tail: {
    check: "Tail beyond a notch",
    published: (f) => `at most ${f}`,
    source: IRC("R802.7.1.1"),
    remark: "level, plate line to tail cut",
    mend: "shorten the overhang or have the tails designed",
  },
  heel: {
    check: "Rafter above the plate",
    published: (f) => `at least ${f}`,
    source: NAVY,
    remark: "plumb, over the plate's edge",
    mend: "narrow the seat or use a deeper rafter",
  },
  "hip's heel": {
    check: "Hip above the plate",
    published: (f) => `at least ${f}`,
    source: NAVY,
    remark: "plumb, over the corner",
    mend: "narrow the seat or back the hip",
  },
  "toe below hip": {
    check: "Toe of the jacks' cut below the hip",
    published: () => "none: the whole cut bears on the hip",
    source: PRACTICE,
    mend: "use a deeper hip",
  },
  "jacks proud": {
    check: "Jacks above the hip's top corner",
    published: () => "none: sheathing lies on both",
    source: PRACTICE,
    mend: "back the hip or shift it",
  },
  "jacks' tilt": { check: "Saw tilt, jacks", ...saw },
  "hip's tilt": { check: "Saw tilt, hip's head", ...saw },
  "widest bay": {
    check: "Widest bay, corners included",
    published: (f) => `the spacing, ${f}`,
    source: PRACTICE,
    remark: "sheathing spans it",
    mend: "add a rafter or block the bay",
  },
  "valley thickness": {
    check: "Valley, thickness",
    published: (f) => `at least 2 in nominal, ${f}`,
    source: IRC("R802.4.3"),
    mend: "use a thicker valley",
  },
  "valley depth": {
    check: "Valley, depth",
    published: (f) => `no less than the rafter's cut end, ${f}`,
    source: IRC("R802.4.3"),
    mend: "use a deeper valley",
  },
  "toe below valley": {
    check: "Cuts below the valley's lower edge",
    published: () => "none: the whole cut bears on the valley",
    source: PRACTICE,
    mend: "use a deeper valley",
  },
  "valley proud": {
    check: "Long valley's corner above the main roof, past the crossing",
    published: () => "none: sheathing lies on both",
    source: PRACTICE,
    mend: "plane it off, or set the whole valley that much lower",
  },
  "toe below long valley": {
    check: "Shorter valley's toe below the long one",
    published: () => "none: the whole cut bears",
    source: PRACTICE,
    mend: "use a deeper long valley",
  },
  "valley pieces' tilt": { check: "Saw tilt, jacks on valleys", ...saw },
  "valley's tilt": { check: "Saw tilt, valley's head", ...saw },
  "broken hip": {
    check: "Broken hip's foot",
    published: () => "a post or beam as a designer says",
    source: PRACTICE,
    none: "on the wing's ridge",
    mend: "have a licensed designer say what carries it",
    remark: "only ridge and valley carry it",
  },
  "laid over": {
    check: "Load of a wing laid over",
    published: () => "rafters sized for it, as a designer says",
    source: PRACTICE,
    none: "on the main rafters",
    mend: "have a licensed designer size what lies under it",
    remark: "its valley boards and ridge bear on the main roof's sheathing and rafters",
  },
  "valley board width": {
    check: "Valley board, width",
    published: (f) => `at least ${f}: a jack's whole seat bears on it`,
    source: PRACTICE,
    remark: "across its flat",
    mend: "use a wider size in the row Valley, or block under the seats",
  },
  sizing: {
    check: "Sizes of ridge, hips and rafters",
    published: () => "span tables, or a licensed designer",
    source: IRC("chapter 8"),
    none: "not done here",
    remark: "geometry only: no member is sized, no strength is proved; the local code governs",
  },
};
