import { chanceFrom, drawDriver, driveSession, type DriverKind } from "./demo-data/drivers.ts";
import { median } from "#numbers";
import { stepAtChange } from "#stats";
const N=Number(process.env.N??60), seed0=Number(process.env.SEED??9000);
function claim(kind: DriverKind, each: number, seed: number, share=0){
 const chance=chanceFrom(seed*7919+13); for(let i=0;i<20;i++)chance();
 const driver=drawDriver(kind,chance,20*each*2);
 const history=Array.from({length:2*each},(_,n)=>{const times=driveSession(driver,{lapsBefore:20*n,laps:20,extra:n<each?0:share},chance); return {lapsBefore:20*n,laps:20,medianMs:median(times) as number};});
 const s=stepAtChange({history,afterSession:each}); if(!s.known) throw new Error();
 const {low,high}=s.value; const truth=share*driver.baseMs; return {claim: low>0?1:high<0?-1:0, held: low<=truth&&truth<=high, width:(high-low)/driver.baseMs};
}
for (const kind of ["flat","exponential","power","linear","stopped","slower"] as DriverKind[]) {
 const cols=[2,4,7,12].map(each=>{const r=Array.from({length:N},(_,i)=>claim(kind,each,seed0+i)); const f=r.filter(x=>x.claim<0).length/N, sl=r.filter(x=>x.claim>0).length/N; return `${each}: ${(f+sl).toFixed(3)} (f ${f.toFixed(2)} s ${sl.toFixed(2)}) w ${(100*r.reduce((a,x)=>a+x.width,0)/N).toFixed(2)}%`;});
 console.log(kind, cols.join(" | "));
}
