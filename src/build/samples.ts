import { writeFileSync } from "node:fs";
import { loadBundled } from "./loadBundled.ts";

// `npm run samples`: the sample workbooks, made from samples/*.ts and committed. A test holds them fresh.
const { sampleBytes } = await loadBundled<typeof import("./sampleBytes.ts")>("src/build/sampleBytes.ts");
for (const [name, bytes] of await sampleBytes()) {
  writeFileSync(`samples/${name}.xlsx`, bytes);
  console.log(`samples/${name}.xlsx: ${(bytes.length / 1000).toFixed(1)} kB`);
}
// The embedded sheet keeps channels open between its parts; nothing more comes through them.
process.exit();
