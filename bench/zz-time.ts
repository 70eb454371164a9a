import { simulate, parseScenario, ScenarioRun } from '../src/lib/model';
import { MOVES, NOMINAL, madeUp } from '../tests/fit/sessions';
const {truth}=madeUp(1);
const sc=(m:any,seg:number,hold:number)=>({...NOMINAL,rod:{...NOMINAL.rod,length_m:truth.reach_m},bait:{...NOMINAL.bait,drag_area_m2:truth.drag_area_m2,lift_to_drag:.2},start:{...NOMINAL.start,slack_m:truth.slack_m},move:m,hold_s:hold,numerics:{segments:seg}});
for(let w=0;w<5;w++) for(const m of MOVES) simulate(sc(m,20,6));
const time=(f:()=>void,k=5)=>{const t=performance.now();for(let i=0;i<k;i++)f();return ((performance.now()-t)/k).toFixed(2)};
for(const m of MOVES){ console.log(JSON.stringify(m), [20,40].map(seg=>['start',time(()=>{new ScenarioRun(parseScenario(sc(m,seg,6)),false)}),'hold0',time(()=>simulate(sc(m,seg,0))),'hold2',time(()=>simulate(sc(m,seg,2))),'hold6',time(()=>simulate(sc(m,seg,6)))].join(' ')).join(' | '));
 console.log([0,1,2,3,4,6,10].map(h=>{const r=simulate(sc(m,20,h)); return h+': '+r.travel_m.toFixed(4)+' '+r.peak_height_m.toFixed(3)}).join('  '));}
