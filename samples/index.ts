import { bid } from "./bid.ts";
import { check } from "./check.ts";
import { compare } from "./compare.ts";
import { metric } from "./metric.ts";
import { lShaped } from "./lShaped.ts";
import type { Sample } from "./sample.ts";
import { tShaped } from "./tShaped.ts";

/** The workbooks that show the tool at work, in the order in which they are offered. */
export const samples: readonly Sample[] = [bid, compare, check, metric, lShaped, tShaped];
