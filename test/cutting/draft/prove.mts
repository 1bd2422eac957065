import { realRoofs, lengthsOf } from "./test/cutting/roofs.ts";
import { planCutsNow } from "./test/cutting/planCutsNow.ts";
import { planOf } from "./test/cutting/checkPlan.ts";
const [,, from, to, roofs, widest, crown] = process.argv;
const tally: Record<string,{n:number,p:number,slow:number,gap:number}> = {};
for (let seed=Number(from); seed<=Number(to); seed++) {
  const list = { ...realRoofs(seed, Number(roofs), Number(widest||480)), crownDown: crown==="1" };
  const n = lengthsOf(list);
  const a = process.cpuUsage();
  const plan = planOf(planCutsNow(list.pieces, list.boards, list));
  const u = process.cpuUsage(a); const ms=(u.user+u.system)/1000;
  const key = n<100?"<100":n<=200?"100-200":n<=300?"200-300":">300";
  const t = tally[key] ??= {n:0,p:0,slow:0,gap:0};
  t.n++; t.p+=plan.proved?1:0; t.slow=Math.max(t.slow,ms); t.gap=Math.max(t.gap,plan.cost/plan.bound-1);
  if(!plan.proved) console.log(`seed ${seed}: ${n} lengths, ${list.pieces.reduce((s,p)=>s+p.count,0)} pieces, ${ms.toFixed(0)} ms, gap ${((plan.cost/plan.bound-1)*100).toFixed(3)}% ${plan.sizes.map(s=>s.size+(s.proved?" ok":" open")).join()}`);
}
console.log(JSON.stringify({roofs,widest,crown,tally}));
