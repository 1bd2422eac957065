import { triplets, uniform } from "../cutting/classics.ts";
import { hipRoof, randomInstance, slantedInstance, twoPitchRoof, village } from "../cutting/instances.ts";
import { realRoofs, wingedRoof } from "../cutting/roofs.ts";
import { named, seeds, workAsTheyDid } from "./orders.ts";

workAsTheyDid("orders", [
  ...named("hip roof", (seed) => hipRoof(seed, seed % 2 === 0), ...seeds(4)),
  ...named("two pitches", (seed) => twoPitchRoof(seed, seed % 2 === 0), ...seeds(4)),
  ...named("village", (seed) => village(seed, seed % 2 === 0, 2), ...seeds(2)),
  ...named("three roofs", (seed) => realRoofs(seed, 3), 5, 6, 23),
  ...named("at random", (seed) => randomInstance(seed), ...seeds(30)),
  ...named("slanted", slantedInstance, ...seeds(10)),
  ...named("with wings", (seed) => wingedRoof(seed)!, 9, 26, 39, 45, 83),
  ...named("triplets", (seed) => triplets(seed, 60), 1),
  ...named("Scholl", (seed) => uniform(seed, 200, 120, 20, 100), 1),
]);
