import { fit, parseSession } from '../src/lib/fit';
import { madeUp, trueOutcome } from '../tests/fit/sessions';
import { varied } from './zz-var';
const HELD={ kind: 'lift', from_deg: 10, to_deg: 50, duration_s: 0.8 } as const;
const which=process.argv[2]; const n=Number(process.argv[3]??30); const from=Number(process.argv[4]??1001);
const held:any={},z:any={}; let pred=0, all=0, allN=0; const times:number[]=[]; const fails:string[]=[]; const by:any={};
for(let seed=from; seed<from+n; seed++){
  const v= which==='usual'? (()=>{const m=madeUp(seed);return {...m,held:HELD,heldOutcome:trueOutcome(m.truth,HELD as any),label:'usual'}})() : varied(seed);
  const {session,truth}=v;
  const c=process.cpuUsage();
  const r=fit(parseSession({...session,tests:[...session.tests,{move:{...v.held}}]}));
  times.push((process.cpuUsage(c).user)/1e6);
  let miss='';
  for(const [k,e] of Object.entries(r.unknowns) as any){ const tr=(truth as any)[k]; const [a,b]=e.interval90; const ok=tr>=a&&tr<=b; (held[k]??=[]).push(ok?1:0); all+=ok?1:0; allN++; for(const w of v.label.split(' ').filter(Boolean)){(by[w]??=[0,0]); by[w][0]+=ok?1:0; by[w][1]++;} const zz=(tr>=e.estimate?(tr-e.estimate)/(b-e.estimate):(tr-e.estimate)/(e.estimate-a)); (z[k]??=[]).push(zz); if(!ok) miss+=` ${k} ${zz.toFixed(2)} [${a.toPrecision(3)},${e.estimate.toPrecision(3)},${b.toPrecision(3)}] true ${tr.toPrecision(3)}${e.told?' told':''};`}
  const p=r.tests.at(-1)!.predicted; const [a,b]=p?.travel_interval90??[NaN,NaN]; const o=v.heldOutcome; const ok=o.travel_m>=a&&o.travel_m<=b; if(ok)pred++; else miss+=` PRED ${o.travel_m.toFixed(2)} not in ${a?.toFixed(2)} ${b?.toFixed(2)}`;
  if(miss) console.log(seed,v.label,miss, times.at(-1)!.toFixed(1));
}
for(const k in held){const zs=z[k].filter(Number.isFinite); console.log(k.padEnd(15),(100*held[k].reduce((a:number,b:number)=>a+b)/held[k].length).toFixed(1),'of',held[k].length,'mean z',(zs.reduce((a:number,b:number)=>a+b)/zs.length*1.645).toFixed(2),'rms',(1.645*Math.sqrt(zs.reduce((a:number,b:number)=>a+b*b,0)/zs.length)).toFixed(2))}
console.log('all',(100*all/allN).toFixed(1),'pred',(100*pred/n).toFixed(1),'cpu max',Math.max(...times).toFixed(1),'mean',(times.reduce((a,b)=>a+b)/n).toFixed(2));
console.log(Object.entries(by).map(([k,[a,b]]:any)=>`${k} ${(100*a/b).toFixed(0)}%/${b}`).join(', '));
