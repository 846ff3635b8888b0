import { networkBuilder } from "./tests/bench/network-builder.ts";
import { plan } from "#lib/plan/road/plan";
import { seededFarm } from "#demo/seeded-farm";
const f=seededFarm(1,{bedCount:240,bookingCount:600} as any);
const b=networkBuilder(f);
const med=(w:any,n:number)=>{const t:number[]=[];for(let i=0;i<n;i++){const s=performance.now();w();t.push(performance.now()-s)}t.sort((a,b)=>a-b);return [t[0],t[n>>1]].map(x=>x.toFixed(2)).join(" ")};
med(b,5);console.log("build", med(b,25)); med(()=>plan(f,2027 as any),4); console.log("plan", med(()=>plan(f,2027 as any),12));
