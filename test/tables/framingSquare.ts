import type { PrintedRow, PrintedTable } from "./printed.ts";

/** Rise; common and hip per foot of common run; difference in jacks at 16 in and at 24 in o.c. */
const table = `
2    12.17  17.09  16.22  24.33
3    12.37  17.23  16.49  24.74
4    12.65  17.44  16.87  25.30
5    13.00  17.69  17.33  26.00
6    13.42  18.00  17.89  26.83
7    13.89  18.36  18.52  27.78
8    14.42  18.76  19.23  28.84
9    15.00  19.21  20.00  30.00
10   15.62  19.70  20.83  31.24
11   16.28  20.22  21.71  32.56
12   16.97  20.78  22.63  33.94
13   17.69  21.38  23.59  35.38
14   18.44  22.00  24.59  36.88
15   19.21  22.65  25.61  38.42
16   20.00  23.32  26.67  40.00
17   20.81  24.02  27.74  41.62
18   21.63  24.74  28.84  43.27`;

export const framingSquare: PrintedTable = {
  source:
    "the table on framing squares, the same on any maker's square of this kind (trade-standard table); rises 2 to 18",
  rows: table
    .trim()
    .split("\n")
    .flatMap((line): PrintedRow[] => {
      const [rise, common, hip, at16, at24] = line.split(/\s+/) as [string, string, string, string, string];
      return [
        {
          what: `rise ${rise}: common per foot of run`,
          printed: common,
          value: (ask) => ask("SLOPELEN", Number(rise), 12),
        },
        {
          what: `rise ${rise}: hip or valley per foot of run`,
          printed: hip,
          value: (ask) => ask("HIPLEN", Number(rise), 12),
        },
        {
          what: `rise ${rise}: difference in jacks, 16 in o.c.`,
          printed: at16,
          value: (ask) => ask("JACKSTEP", Number(rise), 16),
        },
        {
          what: `rise ${rise}: difference in jacks, 24 in o.c.`,
          printed: at24,
          value: (ask) => ask("JACKSTEP", Number(rise), 24),
        },
      ];
    }),
};
