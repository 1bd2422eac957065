import { level, tangent, type Ask, type PrintedTable } from "./printed.ts";

// Thicknesses of our own; the manual's rules hold for any. Its 45-degree thickness of a board is the thickness times 16.97 / 12.
const [RIDGE, HIP, VALLEY, JACK, COMMON] = [1.5, 2, 3, 1.75, 1.5];
const hipLevel = (ask: Ask, along: number): number => (along * ask("HIPRUN", 8, 1)) / ask("HIPLEN", 8, 1);
const valleyLevel = (ask: Ask, along: number): number => (along * ask("HIPRUN", 9, 1)) / ask("VALLEYLEN", 9, 1);
/** A valley cripple's line length: half the 45-degree thickness of both valleys is put back, and its own slant taken off. */
const crippleLine = (ask: Ask, distance: number): number =>
  ask("VALLEYCRIPPLE", 8, distance, VALLEY, JACK) + (VALLEY * Math.SQRT2 - JACK) * ask("SLOPELEN", 8, 1);
const halfway = (ask: Ask, long: string, short: string, ...cells: readonly unknown[]): number =>
  (ask(long, ...cells) + ask(short, ...cells)) / 2;
const rule = (thickness: number) => ({
  tolerance: (thickness / 2) * (0.005 / 12),
  why: "a rule; the printed 16.97 in 12 is what its figure is worked out from",
});
const half45 = (...thicknesses: number[]): string =>
  String((thicknesses.reduce((sum, t) => sum + t, 0) / 2) * (16.97 / 12));

export const navedtra14044: PrintedTable = {
  source: "US Navy, Builder 3 & 2, Volume 2 (NAVEDTRA 14044), chapter 2, roof framing",
  rows: [
    { what: "common, unit length, unit rise 7", printed: "13.89", value: (ask) => ask("SLOPELEN", 7, 12) },
    {
      what: "common, line length in inches, unit rise 7, span 16 ft",
      printed: "111 1/8",
      value: (ask) => ask("COMMONLEN", 7, `8'`, 0),
    },
    {
      what: "common, line length above 9 ft, unit rise 7, span 16 ft",
      printed: "3 1/8",
      value: (ask) => ask("COMMONLEN", 7, `8'`, 0) - 108,
    },
    { what: "common, unit length, unit rise 6", printed: "13.42", value: (ask) => ask("SLOPELEN", 6, 12) },
    {
      what: "common, line length in inches, unit rise 6, span 25 ft: 12.5 x 13.42",
      printed: "167.75",
      value: (ask) => ask("COMMONLEN", 6, `12' 6"`, 0),
      within: { tolerance: 12.5 * 0.005, why: "a product of 12.5 and the rounded 13.42" },
    },
    { what: "hip, unit run at a right-angled corner", printed: "16.97", value: (ask) => ask("HIPRUN", 7, 12) },
    { what: "hip, unit length, unit rise 8", printed: "18.76", value: (ask) => ask("HIPLEN", 8, 12) },
    { what: "hip, total run in feet, span 30 ft", printed: "21.21", value: (ask) => ask("HIPRUN", 8, `15'`) / 12 },
    {
      what: "total rise in feet, unit rise 8, span 30 ft",
      printed: "10",
      value: (ask) => (ask("HIPRISE", 8) * ask("HIPRUN", 8, 15)) / 12,
    },
    {
      what: "hip, line length in feet, run 21.21 ft, rise 10 ft",
      printed: "23.45",
      value: (ask) => ask("HIPLEN", 8, `15'`) / 12,
    },
    { what: "jack, unit length, unit rise 8", printed: "14.42", value: (ask) => ask("SLOPELEN", 8, 12) },
    { what: "shortest hip jack, unit rise 8, 16 in o.c.", printed: "19.23", value: (ask) => ask("JACKLINE", 8, 16) },
    {
      what: "common difference of jacks, unit rise 8, 16 in o.c.",
      printed: "19.23",
      value: (ask) => ask("JACKSTEP", 8, 16),
    },
    {
      what: "the next jack: twice 19.23",
      printed: "38.46",
      value: (ask) => ask("JACKLINE", 8, 32),
      within: { tolerance: 2 * 0.005, why: "twice a rounded figure" },
    },
    {
      what: "side cut of the jack, unit rise 8: the 10 that goes with 12",
      printed: "10",
      value: (ask) => 12 / tangent(ask("JACKEDGE", 8)),
    },
    {
      what: "hip at the ridge board: shortened half the 45-degree thickness of the ridge",
      printed: half45(RIDGE),
      value: (ask) => hipLevel(ask, ask("HIPLEN", 8, 144) - ask("HIPTORIDGE", 8, 144, RIDGE)),
      within: rule(RIDGE),
    },
    {
      what: "hip between commons: shortened half the 45-degree thickness of the common",
      printed: half45(COMMON),
      value: (ask) => hipLevel(ask, ask("HIPLEN", 8, 144) - ask("HIPTOKING", 8, 144, COMMON)),
      within: rule(COMMON),
    },
    {
      what: "hip jack, upper end: shortened half the 45-degree thickness of the hip",
      printed: half45(HIP),
      value: (ask) => level(ask, 8, ask("JACKLINE", 8, 48) - halfway(ask, "JACKLEN", "JACKSHORT", 8, 48, HIP, JACK)),
      within: rule(HIP),
    },
    {
      what: "valley jack, lower end: shortened half the 45-degree thickness of the valley",
      printed: half45(VALLEY),
      value: (ask) => 144 - 48 - level(ask, 8, halfway(ask, "VALLEYJACK", "VALLEYSHORT", 8, 48, 144, VALLEY, JACK, 0)),
      within: rule(VALLEY),
    },
    // The manual shortens the valley jack's upper end by half the 45-degree thickness of the ridge. But a valley jack is in line with the commons and
    // meets the ridge square, so half the ridge's own thickness stands in its run, level: the geometry is tested here, not the manual's word.
    {
      what: "valley jack, upper end: shortened half the ridge, level (the manual says half its 45-degree thickness)",
      printed: "0.750",
      value: (ask) =>
        level(
          ask,
          8,
          ask("VALLEYJACK", 8, 48, 144, VALLEY, JACK, 0) - ask("VALLEYJACK", 8, 48, 144, VALLEY, JACK, RIDGE),
        ),
    },
    {
      what: "hip-valley cripple: shortened half the 45-degree thickness of hip and of valley",
      printed: half45(HIP, VALLEY),
      value: (ask) => 72 - level(ask, 8, ask("CRIPPLELEN", 8, 72, HIP, VALLEY)),
      within: rule(HIP + VALLEY),
    },
    {
      what: "p. 2-28: addition of 30 ft, unit rise 9: line length of the shorter valley in feet",
      printed: "24.01",
      value: (ask) => ask("VALLEYLEN", 9, `15'`) / 12,
    },
    {
      what: "p. 2-28: bridge measure of both valleys, unit rise 9: length for a foot of common run",
      printed: "19.21",
      value: (ask) => ask("VALLEYLEN", 9, 12),
    },
    {
      what: "p. 2-28: the shorter valley, cut square, is shortened half the thickness of the longer",
      printed: "1.50",
      value: (ask) => valleyLevel(ask, ask("VALLEYLEN", 9, 180) - ask("VALLEYTOVALLEY", 9, 180, VALLEY)),
    },
    {
      what: "p. 2-27: the longer valley is shortened half the 45-degree thickness of the ridge",
      printed: half45(RIDGE),
      value: (ask) => valleyLevel(ask, ask("VALLEYLEN", 9, 144) - ask("VALLEYTORIDGE", 9, 144, RIDGE)),
      within: rule(RIDGE),
    },
    {
      what: "p. 2-33: valley cripple one spacing of 16 in from the meeting point, unit rise 8: two common differences",
      printed: "38.46",
      value: (ask) => crippleLine(ask, 32),
      within: { tolerance: 2 * 0.005, why: "twice a rounded figure" },
    },
    {
      what: "p. 2-33: the next valley cripple: four common differences",
      printed: "76.92",
      value: (ask) => crippleLine(ask, 64),
      within: { tolerance: 4 * 0.005, why: "four times a rounded figure" },
    },
  ],
};
