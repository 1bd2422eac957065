import { tangent, type PrintedTable } from "./printed.ts";

export const hodgson: PrintedTable = {
  source: "Fred T. Hodgson, ABC of the Steel Square and Its Uses (about 1908)",
  rows: [
    { what: "common, per foot of run, rise 9", printed: "15", value: (ask) => ask("SLOPELEN", 9, 12) },
    { what: "hip, per foot of common run, rise 9", printed: "19 1/4", value: (ask) => ask("HIPLEN", 9, 12) },
    {
      what: "hip, per foot of common run, rise 9, in decimals",
      printed: "19.21",
      value: (ask) => ask("HIPLEN", 9, 12),
    },
    { what: "common, per foot of run, rise 10", printed: "15 5/8", value: (ask) => ask("SLOPELEN", 10, 12) },
    { what: "hip, per foot of common run, rise 10", printed: "19 3/4", value: (ask) => ask("HIPLEN", 10, 12) },
    {
      what: "hip, per foot of common run, rise 10, in decimals",
      printed: "19.70",
      value: (ask) => ask("HIPLEN", 10, 12),
    },
    {
      what: "octagon jack, side cut, rise 9: the 5 on the tongue that goes with 15 on the blade",
      printed: "5",
      value: (ask) => 15 / tangent(ask("JACKEDGE", 9, "", 135)),
    },
    // Drawn to scale in the book, so it prints no figures; these are of its triangle, worked out by hand: 9 and 14 ft, then 16.64 and 9 ft.
    {
      what: "hips to one point, 18 ft x 28 ft, rise 9 ft: hip run in feet from the long side",
      printed: "16.64",
      value: (ask) => ask("HIPRUN", "9 in 9", `9'`, "9 in 14") / 12,
    },
    {
      what: "hips to one point, 18 ft x 28 ft, rise 9 ft: hip run in feet from the short side",
      printed: "16.64",
      value: (ask) => ask("HIPRUN", "9 in 14", `14'`, "9 in 9") / 12,
    },
    {
      what: "hips to one point, 18 ft x 28 ft, rise 9 ft: hip length in feet",
      printed: "18.92",
      value: (ask) => ask("HIPLEN", "9 in 9", `9'`, "9 in 14") / 12,
    },
  ],
};
