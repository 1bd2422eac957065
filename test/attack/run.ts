import { cells } from "./cells.attack.ts";
import { files } from "./files.attack.ts";
import { soak } from "./soak.attack.ts";
import { undo } from "./undo.attack.ts";

// `npm run attack -- [seconds] [seed]`: goes at the program with random cases for so long (60 seconds unless told), and prints the seed that does it again.
const [seconds = 60, seed = Date.now() % 1_000_000] = process.argv.slice(2).map(Number);
const attacks = [cells, files, undo, soak];
let failed = 0;
for (const { name, run } of attacks) {
  const until = performance.now() + (seconds * 1000) / attacks.length;
  const { tried, found } = await run(seed, () => performance.now() < until);
  console.log(`${name}: ${tried} tried, ${found.length} found (seed ${seed})`);
  for (const one of found) console.log(`  ${one}`);
  failed += found.length;
}
process.exitCode = failed === 0 ? 0 : 1;
