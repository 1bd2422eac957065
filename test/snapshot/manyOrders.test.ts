import { randomInstance, slantedInstance } from "../cutting/instances.ts";
import { wingedRoof } from "../cutting/roofs.ts";
import { named, seeds, workAsTheyDid } from "./orders.ts";

workAsTheyDid("manyOrders", [
  ...named("at random", (seed) => randomInstance(seed), ...seeds(270, 31)),
  ...named("slanted", slantedInstance, ...seeds(90, 11)),
  ...named(
    "with wings",
    (seed) => wingedRoof(seed)!,
    5,
    12,
    16,
    18,
    24,
    25,
    27,
    28,
    34,
    38,
    40,
    50,
    51,
    52,
    57,
    65,
    68,
    69,
  ),
  ...named("with wings", (seed) => wingedRoof(seed)!, 70, 71, 72, 73, 75, 78, 88, 91, 102, 104, 108, 110),
]);
