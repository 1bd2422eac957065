import * as z from "zod/mini";
import { readRemembered, type Remembered } from "../state/remembered.ts";

const Asked = z.object({ roof: z.unknown() });

/** The roof behind the # of a page's address; null for anything else, whoever wrote it there. */
export function askedRoof(hash: string): Remembered | null {
  try {
    const { data } = Asked.safeParse(JSON.parse(decodeURIComponent(hash.slice(1))));
    return data ? readRemembered(JSON.stringify(data.roof) ?? "") : null;
  } catch {
    return null;
  }
}
