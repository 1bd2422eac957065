import { tangent, type PrintedTable } from "./printed.ts";

/** A minor roof of 6 feet run at 10 in 12 on a major one at 8 in 12. Its valley rises 5 feet. */
export const griffith: PrintedTable = {
  source: "Griffith, Carpentry (about 1916), uneven pitches, fig. 88",
  rows: [
    {
      what: "run of the valley in feet, for 7 1/2 ft on the major roof",
      printed: "9.60",
      value: (ask) => Math.sqrt((ask("VALLEYLEN", 8, `7' 6"`, 10) / 12) ** 2 - 5 ** 2),
    },
    {
      what: "the same valley from its minor side, a run of 6 ft",
      printed: "9.60",
      value: (ask) => Math.sqrt((ask("VALLEYLEN", 10, `6'`, 8) / 12) ** 2 - 5 ** 2),
    },
    {
      what: "an inch of half the major ridge, over the side cut of 38 degrees 40 minutes, in the valley's run",
      printed: String(Math.hypot(1, tangent(38 + 40 / 60))),
      value: (ask) =>
        ((ask("VALLEYTORIDGE", 8, 90, 1, 10) - ask("VALLEYTORIDGE", 8, 90, 3, 10)) * ask("HIPRUN", 8, 90, 10)) /
        ask("VALLEYLEN", 8, 90, 10),
      within: { tolerance: 0.00015, why: "half a minute of the angle printed" },
    },
  ],
};
