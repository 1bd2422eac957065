import { randomInstance, slantedInstance } from "../cutting/instances.ts";
import { named, seeds, workAsTheyDid } from "./orders.ts";

workAsTheyDid("manyOrders", [
  ...named("at random", (seed) => randomInstance(seed), ...seeds(270, 31)),
  ...named("slanted", slantedInstance, ...seeds(90, 11)),
]);
