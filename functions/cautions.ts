import { roofCells } from "./arguments/roofCells.ts";
import { lengthText } from "../src/measure/lengthText.ts";
import type { Unit } from "../src/measure/unit.ts";
import { column, headings, tableOf, type Column } from "../src/registry/columns.ts";
import { worksheetFunction } from "../src/registry/worksheetFunction.ts";
import { cautions as listOf, type Caution } from "../src/roof/tables/cautions.ts";
import { roof } from "./arguments/roofModel.ts";
import { CAUTION_WORDS as WORDS } from "./words/cautionWords.ts";

const SIDES = { Main: ", main sides", End: ", ends", Both: "" } as const;

const columns: readonly Column<Caution, Unit>[] = [
  column("Check", "text", checkText, 330),
  column("Here", "text", hereText, 110),
  column("Published", "text", publishedText, 480),
  column("Source", "text", ({ kind }) => WORDS[kind].source, 210),
  column("Remark", "text", remarkText, 420),
];

export const cautions = worksheetFunction({
  name: "CAUTIONS",
  family: "roof",
  summary: "Lists the figures that an inspector looks at, each beside the published one. Figures outside stand first.",
  parameters: [roof("roof")],
  result: "table",
  columns,
  returns: "a table of text that spills, with headings. It approves nothing; the local code governs.",
  examples: [
    {
      cells: [roofCells({ Span: 288, Length: 432, Pitch: 6 })],
      // prettier-ignore
      result: [
        headings(columns),
        ["Notch, no tail", `1 9/16"`, `at most a quarter of the depth, 1 3/8"`, "IRC 2021, R802.7, R502.8",
         `OUTSIDE by 3/16": narrow the seat or use a deeper rafter; square to the slope`],
        ["Ridge board, thickness", `1 1/2"`, `at least 1 in nominal, 3/4"`, "IRC 2021, R802.3", `3/4" more here`],
        ["Ridge board, depth", `7 1/4"`, `no less than the rafter's cut end, 6 1/8"`, "IRC 2021, R802.3", `1 1/8" more here`],
        ["Hip, thickness", `1 1/2"`, `at least 2 in nominal, 1 1/2"`, "IRC 2021, R802.4.3", "the same here"],
        ["Hip, depth", `7 1/4"`, `no less than the rafter's cut end, 6 1/8"`, "IRC 2021, R802.4.3", `1 1/8" more here`],
        ["Hip, deeper than the commons", `1 3/4"`, `about 2"`, "Canadian housing guide", `1/4" less here`],
        ["Pitch", "6 in 12", "at least 3 in 12", "IRC 2021, R802.4.4", "steeper here"],
        ["Bearing of the seat", `3 1/2"`, `at least 1 1/2" on wood`, "IRC 2021, R802.6", `2" more here; level width of the seat cut`],
        ["Saw tilt, jacks", "45°", `a saw with a 7 1/4" blade tilts 45° and there cuts 1 3/4"`, "trade practice", "that saw reaches"],
        ["Rafter above the plate", `4 3/8"`, `at least 2"`, "NAVEDTRA 14044, p. 2-11",
         `2 3/8" more here; plumb, over the plate's edge`],
        ["Hip above the plate", `4 1/8"`, `at least 2"`, "NAVEDTRA 14044, p. 2-11", `2 1/8" more here; plumb, over the corner`],
        ["Toe of the jacks' cut below the hip", `0"`, "none: the whole cut bears on the hip", "trade practice", "none here"],
        ["Jacks above the hip's top corner", `0"`, "none: sheathing lies on both", "trade practice", "none here"],
        ["Saw tilt, hip's head", "45°", `a saw with a 7 1/4" blade tilts 45° and there cuts 1 3/4"`, "trade practice",
         "that saw reaches"],
        ["Widest bay, corners included", `2' 0"`, `the spacing, 2' 0"`, "trade practice", "the same here; sheathing spans it"],
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
        ["Pitch, main sides", "2.551 in 12", "at least 3 in 12", "IRC 2021, R802.4.4",
         "OUTSIDE by 0.449 in 12: have ridge, hips and valleys designed as beams"],
        ["Saw tilt, jacks, main sides", "69.79°", `a saw with a 7 1/4" blade tilts 45° and there cuts 1 3/4"`, "trade practice",
         "OUTSIDE: mark both faces and the side cut, cut from both and finish by hand, or use a saw that reaches"],
        ["Notch, no tail, ends", "45 mm", "at most a quarter of the depth, 35 mm", "IRC 2021, R802.7, R502.8",
         "OUTSIDE by 10 mm: narrow the seat or use a deeper rafter; square to the slope"],
        ["Jacks above the hip's top corner", "9 mm", "none: sheathing lies on both", "trade practice",
         "OUTSIDE by 9 mm: back the hip or shift it"],
        ["Saw tilt, hip's head", "69.79°", `a saw with a 7 1/4" blade tilts 45° and there cuts 1 3/4"`, "trade practice",
         "OUTSIDE: mark both faces and the side cut, cut from both and finish by hand, or use a saw that reaches"],
        ["Widest bay, corners included", "700 mm", "the spacing, 600 mm", "trade practice",
         "OUTSIDE by 100 mm: add a rafter or block the bay; sheathing spans it"],
        ["Ridge board, thickness", "no ridge board", "at least 1 in nominal, 19 mm", "IRC 2021, R802.3", ""],
        ["Ridge board, depth", "no ridge board", "no less than the rafter's cut end, 162 mm", "IRC 2021, R802.3", ""],
        ["Hip, thickness", "38 mm", "at least 2 in nominal, 38 mm", "IRC 2021, R802.4.3", "the same here"],
        ["Hip, depth", "184 mm", "no less than the rafter's cut end, 162 mm", "IRC 2021, R802.4.3", "22 mm more here"],
        ["Hip, deeper than the commons", "44 mm", "about 50 mm", "Canadian housing guide", "6 mm less here"],
        ["Bearing of the seat, main sides", "156 mm", "at least 38 mm on wood", "IRC 2021, R802.6",
         "118 mm more here; level width of the seat cut"],
        ["Notch, no tail, main sides", "32 mm", "at most a quarter of the depth, 35 mm", "IRC 2021, R802.7, R502.8",
         "3 mm less here; square to the slope"],
        ["Pitch, ends", "6.928 in 12", "at least 3 in 12", "IRC 2021, R802.4.4", "steeper here"],
        ["Bearing of the seat, ends", "89 mm", "at least 38 mm on wood", "IRC 2021, R802.6",
         "51 mm more here; level width of the seat cut"],
        ["Saw tilt, jacks, ends", "20.21°", `a saw with a 7 1/4" blade tilts 45° and there cuts 1 3/4"`, "trade practice",
         "that saw reaches"],
        ["Rafter above the plate", "110 mm", "at least 51 mm", "NAVEDTRA 14044, p. 2-11",
         "59 mm more here; plumb, over the plate's edge"],
        ["Hip above the plate", "100 mm", "at least 51 mm", "NAVEDTRA 14044, p. 2-11", "49 mm more here; plumb, over the corner"],
        ["Toe of the jacks' cut below the hip", "0 mm", "none: the whole cut bears on the hip", "trade practice", "none here"],
        ["Sizes of ridge, hips and rafters", "not done here", "span tables, or a licensed designer", "IRC 2021, chapter 8",
         "geometry only: no member is sized, no strength is proved; the local code governs"],
      ],
      tolerance: 0.0001,
    },
  ],
  compute: ({ roof: { frame, pieces } }) => tableOf(columns, listOf(frame, pieces), frame.spec.unit),
});

function checkText({ kind, side, wing }: Caution): string {
  return WORDS[kind].check + (side === null ? "" : SIDES[side]) + (wing && `, wing ${wing}`);
}

function hereText({ kind, here, measure }: Caution, unit: Unit): string {
  return here === null ? (WORDS[kind].none ?? "") : figure(measure, here, unit);
}

function publishedText({ kind, limit, measure }: Caution, unit: Unit): string {
  return WORDS[kind].published(limit === null ? "" : figure(measure, limit.value, unit));
}

/** What lies outside a published figure stands out, with what to do; of the rest, how far it is inside. Never whether that will do. */
function remarkText(caution: Caution, unit: Unit): string {
  const { kind, outside } = caution;
  const { remark, mend } = WORDS[kind];
  const off = offText(caution, unit);
  const said = outside ? `OUTSIDE${off && ` by ${off}`}: ${mend}` : compared(caution, off);
  return [said, remark].filter((one) => one).join("; ");
}

function figure(measure: Caution["measure"], value: number, unit: Unit): string {
  if (measure === "pitch") return `${Number((value * 12).toFixed(3))} in 12`;
  return measure === "angle" ? `${Number(value.toFixed(2))}°` : lengthText(value, unit);
}

/** How far it is off the limit; empty where a tape does not show it. */
function offText({ here, limit, measure }: Caution, unit: Unit): string {
  if (here === null || limit === null) return "";
  const text = figure(measure, Math.abs(here - limit.value), unit);
  return text === figure(measure, 0, unit) ? "" : text;
}

function compared({ here, limit, measure }: Caution, off: string): string {
  if (measure === "angle") return "that saw reaches";
  if (here === null || limit === null) return "";
  if (limit.value === 0) return "none here";
  if (off === "") return "the same here";
  if (measure === "pitch") return "steeper here";
  return `${off} ${here > limit.value ? "more" : "less"} here`;
}
