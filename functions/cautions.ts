import { roofCells } from "./arguments/roofCells.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { cautions as listOf, type Caution } from "../src/roof/tables/cautions.ts";
import { roof } from "./arguments/roofModel.ts";
import { smallLength } from "./arguments/smallLength.ts";

interface Words {
  readonly check: string;
  /** What is published, around its figure. */
  readonly published: (figure: string) => string;
  readonly source: string;
  /** Here, where the roof has no figure for it. */
  readonly none?: string;
  /** Said after the comparison. */
  readonly remark?: string;
}

const IRC = (section: string) => `IRC 2021, ${section}`;
const PRACTICE = "common practice, no source";
const pitchWords = (side: string): Words => ({
  check: `Pitch, ${side}`,
  published: (f) => `at least ${f}; below it ridge, hips and valleys are designed as beams`,
  source: IRC("R802.4.4"),
});
const seatWords = (side: string): Words => ({
  check: `Bearing of the seat, ${side}`,
  published: (f) => `at least ${f} on wood`,
  source: IRC("R802.6"),
  remark: "level width of the seat cut",
});
const notchWords = (side: string): Words => ({
  check: `Notch at the plate, ${side}`,
  published: (f) => `at most a quarter of the depth, ${f}`,
  source: IRC("R802.7, R502.8"),
  remark: "square to the slope",
});
const tiltWords = (piece: string): Words => ({
  check: `Saw tilt, ${piece}`,
  published: () => "most portable saws tilt 45°, some 60°",
  source: PRACTICE,
});

const WORDS: Readonly<Record<string, Words>> = {
  "ridge thickness": {
    check: "Ridge board, thickness",
    published: (f) => `at least 1 in nominal, ${f}`,
    source: IRC("R802.3"),
    none: "no ridge board",
  },
  "ridge depth": {
    check: "Ridge board, depth",
    published: (f) => `no less than the rafter's cut end, ${f}`,
    source: IRC("R802.3"),
    none: "no ridge board",
  },
  "hip thickness": {
    check: "Hip, thickness",
    published: (f) => `at least 2 in nominal, ${f}`,
    source: IRC("R802.4.3"),
  },
  "hip depth": {
    check: "Hip, depth",
    published: (f) => `no less than the rafter's cut end, ${f}`,
    source: IRC("R802.4.3"),
  },
  "hip deeper than commons": {
    check: "Hip, deeper than the commons",
    published: (f) => `about ${f}`,
    source: "Canadian housing guide",
  },
  "main pitch": pitchWords("main sides"),
  "end pitch": pitchWords("ends"),
  "main seat": seatWords("main sides"),
  "end seat": seatWords("ends"),
  "main notch": notchWords("main sides"),
  "end notch": notchWords("ends"),
  "hip notch": notchWords("hip"),
  "heel left": {
    check: "Height above plate",
    published: () => "no figure",
    source: PRACTICE,
    remark: "wood left plumb over the plate's edge",
  },
  "toe below hip": {
    check: "Toe of the jacks' cut below the hip",
    published: () => "none: the whole cut bears on the hip",
    source: PRACTICE,
  },
  "jacks proud": {
    check: "Jacks above the hip's top corner",
    published: () => "none: sheathing lies on both",
    source: PRACTICE,
  },
  "main jacks' tilt": tiltWords("main jacks"),
  "end jacks' tilt": tiltWords("end jacks"),
  "hip's tilt": tiltWords("hip's head"),
  "widest bay": {
    check: "Widest bay, corners included",
    published: (f) => `the spacing, ${f}`,
    source: PRACTICE,
    remark: "sheathing spans it",
  },
  sizing: {
    check: "Sizes of ridge, hips and rafters",
    published: () => "span tables, or a licensed designer",
    source: IRC("chapter 8"),
    none: "not done here",
    remark: "geometry only: no member is sized, no strength is proved",
  },
};

const columns: readonly Column<Caution, Unit>[] = [
  column("Check", "text", ({ tag }) => WORDS[tag]!.check, 255),
  column("Here", "text", hereText, 110),
  column("Published", "text", publishedText, 520),
  column("Source", "text", ({ tag }) => WORDS[tag]!.source, 210),
  column("Remark", "text", remarkText, 420),
];

export const cautions = worksheetFunction({
  name: "CAUTIONS",
  family: "roof",
  summary:
    "What an inspector looks at on a hip roof: each figure here, the published one, its source, and how the two compare.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns: "a table of text that spills, with headings; it approves nothing, and the local code governs.",
  examples: [
    {
      cells: [roofCells({ Span: 288, Length: 432, Pitch: 6 })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Ridge board, thickness", `1 1/2"`, `at least 1 in nominal, 3/4"`, "IRC 2021, R802.3", `3/4" more here; the local code governs`],
        ["Ridge board, depth", `7 1/4"`, `no less than the rafter's cut end, 6 1/8"`, "IRC 2021, R802.3",
         `1 1/8" more here; the local code governs`],
        ["Hip, thickness", `1 1/2"`, `at least 2 in nominal, 1 1/2"`, "IRC 2021, R802.4.3", "the same here; the local code governs"],
        ["Hip, depth", `7 1/4"`, `no less than the rafter's cut end, 6 1/8"`, "IRC 2021, R802.4.3",
         `1 1/8" more here; the local code governs`],
        ["Hip, deeper than the commons", `1 3/4"`, `about 2"`, "Canadian housing guide", `1/4" less here; the local code governs`],
        ["Pitch, main sides", "6 in 12", "at least 3 in 12; below it ridge, hips and valleys are designed as beams", "IRC 2021, R802.4.4",
         "steeper here; the local code governs"],
        ["Pitch, ends", "6 in 12", "at least 3 in 12; below it ridge, hips and valleys are designed as beams", "IRC 2021, R802.4.4",
         "steeper here; the local code governs"],
        ["Bearing of the seat, main sides", `3 1/2"`, `at least 1 1/2" on wood`, "IRC 2021, R802.6",
         `2" more here; level width of the seat cut; the local code governs`],
        ["Bearing of the seat, ends", `3 1/2"`, `at least 1 1/2" on wood`, "IRC 2021, R802.6",
         `2" more here; level width of the seat cut; the local code governs`],
        ["Notch at the plate, main sides", `1 9/16"`, `at most a quarter of the depth, 1 3/8"`, "IRC 2021, R802.7, R502.8",
         `3/16" more here; square to the slope; the local code governs`],
        ["Notch at the plate, ends", `1 9/16"`, `at most a quarter of the depth, 1 3/8"`, "IRC 2021, R802.7, R502.8",
         `3/16" more here; square to the slope; the local code governs`],
        ["Notch at the plate, hip", `3 3/8"`, `at most a quarter of the depth, 1 13/16"`, "IRC 2021, R802.7, R502.8",
         `1 9/16" more here; square to the slope; the local code governs`],
        ["Height above plate", `4 3/8"`, "no figure", "common practice, no source",
         "wood left plumb over the plate's edge; the local code governs"],
        ["Toe of the jacks' cut below the hip", `0"`, "none: the whole cut bears on the hip", "common practice, no source",
         "none here; the local code governs"],
        ["Jacks above the hip's top corner", `0"`, "none: sheathing lies on both", "common practice, no source",
         "none here; the local code governs"],
        ["Saw tilt, main jacks", "45°", "most portable saws tilt 45°, some 60°", "common practice, no source",
         "within 45° here; the local code governs"],
        ["Saw tilt, end jacks", "45°", "most portable saws tilt 45°, some 60°", "common practice, no source",
         "within 45° here; the local code governs"],
        ["Saw tilt, hip's head", "45°", "most portable saws tilt 45°, some 60°", "common practice, no source",
         "within 45° here; the local code governs"],
        ["Widest bay, corners included", `2' 0"`, `the spacing, 2' 0"`, "common practice, no source",
         "the same here; sheathing spans it; the local code governs"],
        ["Sizes of ridge, hips and rafters", "not done here", "span tables, or a licensed designer", "IRC 2021, chapter 8",
         "geometry only: no member is sized, no strength is proved; the local code governs"],
      ],
      tolerance: 0.0001,
      source:
        "International Residential Code 2021, R802.3 to R802.7 and R502.8; cut end 5.5 in over the cosine of 26.57°",
    },
    {
      cells: [
        roofCells({ Span: "5 m", Length: "8 m", Pitch: "12°", "End pitch": "30°", Ridge: "none", Heel: "110 mm" }),
      ],
      // prettier-ignore
      result: [
        headings(columns),
        ["Ridge board, thickness", "no ridge board", "at least 1 in nominal, 19 mm", "IRC 2021, R802.3", "the local code governs"],
        ["Ridge board, depth", "no ridge board", "no less than the rafter's cut end, 162 mm", "IRC 2021, R802.3", "the local code governs"],
        ["Hip, thickness", "38 mm", "at least 2 in nominal, 38 mm", "IRC 2021, R802.4.3", "the same here; the local code governs"],
        ["Hip, depth", "184 mm", "no less than the rafter's cut end, 162 mm", "IRC 2021, R802.4.3",
         "22 mm more here; the local code governs"],
        ["Hip, deeper than the commons", "44 mm", "about 50 mm", "Canadian housing guide", "6 mm less here; the local code governs"],
        ["Pitch, main sides", "2.551 in 12", "at least 3 in 12; below it ridge, hips and valleys are designed as beams",
         "IRC 2021, R802.4.4", "flatter here; the local code governs"],
        ["Pitch, ends", "6.928 in 12", "at least 3 in 12; below it ridge, hips and valleys are designed as beams", "IRC 2021, R802.4.4",
         "steeper here; the local code governs"],
        ["Bearing of the seat, main sides", "156 mm", "at least 38 mm on wood", "IRC 2021, R802.6",
         "118 mm more here; level width of the seat cut; the local code governs"],
        ["Bearing of the seat, ends", "89 mm", "at least 38 mm on wood", "IRC 2021, R802.6",
         "51 mm more here; level width of the seat cut; the local code governs"],
        ["Notch at the plate, main sides", "32 mm", "at most a quarter of the depth, 35 mm", "IRC 2021, R802.7, R502.8",
         "2.6 mm less here; square to the slope; the local code governs"],
        ["Notch at the plate, ends", "45 mm", "at most a quarter of the depth, 35 mm", "IRC 2021, R802.7, R502.8",
         "9.7 mm more here; square to the slope; the local code governs"],
        ["Notch at the plate, hip", "86 mm", "at most a quarter of the depth, 46 mm", "IRC 2021, R802.7, R502.8",
         "40 mm more here; square to the slope; the local code governs"],
        ["Height above plate", "110 mm", "no figure", "common practice, no source",
         "wood left plumb over the plate's edge; the local code governs"],
        ["Toe of the jacks' cut below the hip", "0 mm", "none: the whole cut bears on the hip", "common practice, no source",
         "none here; the local code governs"],
        ["Jacks above the hip's top corner", "8.9 mm", "none: sheathing lies on both", "common practice, no source",
         "8.9 mm here; the local code governs"],
        ["Saw tilt, main jacks", "69.79°", "most portable saws tilt 45°, some 60°", "common practice, no source",
         "over 60° here: lay out both faces, cut from both, finish by hand; the local code governs"],
        ["Saw tilt, end jacks", "20.21°", "most portable saws tilt 45°, some 60°", "common practice, no source",
         "within 45° here; the local code governs"],
        ["Saw tilt, hip's head", "69.79°", "most portable saws tilt 45°, some 60°", "common practice, no source",
         "over 60° here: lay out both faces, cut from both, finish by hand; the local code governs"],
        ["Widest bay, corners included", "700 mm", "the spacing, 600 mm", "common practice, no source",
         "100 mm more here; sheathing spans it; the local code governs"],
        ["Sizes of ridge, hips and rafters", "not done here", "span tables, or a licensed designer", "IRC 2021, chapter 8",
         "geometry only: no member is sized, no strength is proved; the local code governs"],
      ],
      tolerance: 0.0001,
    },
  ],
  compute: ({ roof: { frame, pieces } }) => tableOf(columns, listOf(frame, pieces), frame.spec.unit),
});

function hereText(caution: Caution, unit: Unit): string {
  return caution.here === null ? (WORDS[caution.tag]!.none ?? "") : figure(caution, caution.here, unit);
}

function publishedText(caution: Caution, unit: Unit): string {
  const { tag, limit } = caution;
  return WORDS[tag]!.published(limit === null ? "" : figure(caution, limit.value, unit));
}

function remarkText(caution: Caution, unit: Unit): string {
  const said = [compared(caution, unit), WORDS[caution.tag]!.remark, "the local code governs"];
  return said.filter((remark) => remark).join("; ");
}

function figure({ measure }: Caution, value: number, unit: Unit): string {
  if (measure === "pitch") return `${Number((value * 12).toFixed(3))} in 12`;
  return measure === "angle" ? `${Number(value.toFixed(2))}°` : smallLength(value, unit);
}

/** How the figure here stands to the published one, in words; never whether that will do. */
function compared(caution: Caution, unit: Unit): string {
  const { here, limit, measure } = caution;
  if (here === null || limit === null) return "";
  if (measure === "angle") return tiltCompared(here);
  const off = here - limit.value;
  const by = figure(caution, Math.abs(off), unit);
  // Too little to be read off a tape: the two are the same.
  if (Math.abs(off) <= 1e-6 || by === figure(caution, 0, unit))
    return limit.value === 0 ? "none here" : "the same here";
  if (limit.value === 0) return `${by} here`;
  return `${measure === "pitch" ? `${off > 0 ? "steeper" : "flatter"} here` : `${by} ${off > 0 ? "more" : "less"} here`}`;
}

function tiltCompared(tilt: number): string {
  if (tilt <= 45 + 1e-9) return "within 45° here";
  return tilt <= 60 + 1e-9
    ? "over 45° here: lay out both faces and cut from both, or use a saw that tilts farther"
    : "over 60° here: lay out both faces, cut from both, finish by hand";
}
