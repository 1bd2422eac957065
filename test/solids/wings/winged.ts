import type { Shop } from "../shop.ts";
import { bearersOf } from "./bearers.ts";
import type { Bearers } from "./bearers.ts";
import { layoutOf } from "./layout.ts";
import type { Layout } from "./layout.ts";
import type { WingedPlan } from "./plan.ts";
import { raftersOf } from "./rafters.ts";
import type { Rafter } from "./rafters.ts";
import { stationsOf } from "./stations.ts";

/** A roof with wings, every board cut and in its place. */
export interface WingedRoof {
  readonly plan: WingedPlan;
  readonly layout: Layout;
  readonly bearers: Bearers;
  readonly rafters: readonly Rafter[];
}

/** Frames a roof with wings from its plan. */
export function frameWinged(shop: Shop, plan: WingedPlan): WingedRoof {
  const layout = layoutOf(plan);
  const bearers = bearersOf(shop, layout);
  return { plan, layout, bearers, rafters: raftersOf(shop, layout, bearers, stationsOf(shop, layout, bearers)) };
}
