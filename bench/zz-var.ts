import { seededRandom, simulate } from '../src/lib/model';
import { trueOutcome, MOVES } from '../tests/fit/sessions';
// an outsider's varied sessions
export function varied(seed:number){
  const r=seededRandom(seed*7919+13); const uni=(a:number,b:number)=>a+(b-a)*r(); const normal=()=>Math.sqrt(-2*Math.log(1-r()))*Math.cos(2*Math.PI*r());
  const pick=<T>(xs:T[])=>xs[Math.floor(r()*xs.length)];
  const material=pick(['fluorocarbon','nylon','braid']);
  const mass=pick([0.0071,0.0106,0.0142,0.0213,0.0283]);
  const drag=6e-4*(mass/0.0142)**(2/3);
  const gear:any={water:{depth_m:uni(1.5,6)},line:{material,diameter_m:pick([0.00028,0.00033,0.0004])},bait:{mass_kg:mass,drag_area_m2:drag},rod:{length_m:uni(1.7,2.2),pivot_height_m:1.2},start:{bait_x_m:uni(8,22),slack_m:0.15}};
  const mode=pick(['normal','uniform']);
  const truth:any= mode==='normal'?{reach_m:gear.rod.length_m*(1+0.1*normal()),elevation_deg:8*normal(),slack_m:Math.max(0,0.15+0.1*normal()),drag_area_m2:drag*Math.exp(0.4*normal()),lift_to_drag:Math.min(Math.max(0.2+0.12*normal(),0),0.5)}
   :{reach_m:gear.rod.length_m*uni(.82,1.18),elevation_deg:uni(-15,15),slack_m:uni(0,.4),drag_area_m2:drag*2**uni(-1,1),lift_to_drag:uni(0,.4)};
  const kind=pick(['both','both','both','sweeps','lifts']); let moves=[...MOVES];
  if(kind!=='both') moves=moves.filter(m=>m.kind===kind.slice(0,-1));
  const n=pick([3,5,6,8,12,12]); moves=moves.slice(0,n);
  const noise=pick(['said nothing','said nothing','cm','5%']);
  const columns=pick(['both','both','both','travel','mixed']);
  const known:any={}; const slackKnown=r()<.25; if(slackKnown){truth.slack_m=pick([0,0.05,0.1]); known.slack_m=truth.slack_m;}
  const outlier=r()<.1? Math.floor(r()*moves.length):-1;
  const really=gear;
  const sdOf=(v:number)=>noise==='cm'?0.015:noise==='5%'?Math.max(.05*Math.abs(v),.01):Math.max(.15*Math.abs(v),.02);
  const tests:any[]=[];
  moves.forEach((move,i)=>{ let o; try{o=trueOutcome(truth,move,really);}catch{return;} 
    const st=sdOf(o.travel_m), sh=sdOf(o.peak_height_m);
    const t:any={move,travel_m:o.travel_m+st*normal()*(1)+(i===outlier?6*st*(r()<.5?-1:1):0)};
    if(noise!=='said nothing') t.travel_sd_m=st;
    const hasH=columns==='both'||(columns==='mixed'&&r()<.5);
    if(hasH){t.peak_height_m=Math.max(0,o.peak_height_m+sh*normal()); if(noise!=='said nothing')t.height_sd_m=sh;}
    tests.push(t);});
  const held={kind:'lift',from_deg:10,to_deg:50,duration_s:0.8} as const;
  return {session:{gear,tests,known},truth,held,heldOutcome:trueOutcome(truth,held as any,gear),label:[material,mode,kind,n,noise,columns,slackKnown?'slack known':'',outlier>=0?'outlier':''].join(' ')};
}
