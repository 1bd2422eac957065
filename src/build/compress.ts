import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";
import { ROOT } from "./root.ts";

const { BROTLI_PARAM_QUALITY, BROTLI_PARAM_LGWIN, BROTLI_PARAM_SIZE_HINT } = constants;

/** Scripts and styles with a hash of their content in the name: what stands beside one can never be older than it. */
const SQUEEZED = /\.[0-9a-f]{8}\.(?:js|css)$/;
/** Less is sent as it is. */
const LEAST = 1_000;

/** How each way to compress is named at the end of a file, as servers look for it. */
const WAYS = {
  br: (bytes: Uint8Array) =>
    promisify(brotliCompress)(bytes, {
      params: { [BROTLI_PARAM_QUALITY]: 11, [BROTLI_PARAM_LGWIN]: 24, [BROTLI_PARAM_SIZE_HINT]: bytes.length },
    }),
  gz: (bytes: Uint8Array) => promisify(gzip)(bytes, { level: 9 }),
} as const;

/**
 * Puts each script and style of a built folder beside itself as Brotli and as gzip, for servers that send such files: ours, and many that serve folders.
 *
 * The best compression takes half a minute, so what has not changed since the last build is taken from `kept`.
 */
export async function compress(
  folder: string,
  kept = join(ROOT, "node_modules/.cache/longpoint/compressed"),
): Promise<void> {
  mkdirSync(kept, { recursive: true });
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) => SQUEEZED.test(file));
  const used = new Set<string>();
  await Promise.all(
    files.flatMap((file) => {
      const bytes = readFileSync(join(folder, file));
      if (bytes.length < LEAST) return [];
      const hash = createHash("sha256").update(bytes).digest("hex").slice(0, 32);
      return (Object.keys(WAYS) as (keyof typeof WAYS)[]).map(async (way) => {
        const name = `${hash}.${way}`;
        used.add(name);
        const before = join(kept, name);
        if (!existsSync(before)) writeFileSync(before, await WAYS[way](bytes));
        writeFileSync(join(folder, `${file}.${way}`), readFileSync(before));
      });
    }),
  );
  for (const file of readdirSync(kept)) if (!used.has(file)) rmSync(join(kept, file));
}
