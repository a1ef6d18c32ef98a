/** Sober, high in contrast in the sun, one column; on paper without colour. */
export const planStyle = `
:root{color-scheme:light}
*{box-sizing:border-box}
body{margin:0;background:#f3f3ef;color:#1c1c1a;font:16px/1.45 system-ui,sans-serif}
main{max-width:42rem;margin:0 auto;padding:12px}
header,section{background:#fff;border:1px solid #c9c9c2;padding:12px 14px;margin:0 0 10px;overflow-wrap:anywhere}
header{border-top:6px solid #2b4a5e}
h1{font-size:1.3rem;line-height:1.25;margin:.1rem 0}
h2{font-size:1.05rem;line-height:1.3;margin:0 0 .4rem}
h2 span{display:inline-block;min-width:1.6rem;color:#2b4a5e}
h3{font-size:.8rem;margin:.8rem 0 .1rem;color:#55554f}
p{margin:.25rem 0}
ul{margin:0;padding-left:1.1rem}
li{margin:.15rem 0}
.kind,.when{color:#55554f;font-size:.9rem}
.hold{border-left:6px solid #2b4a5e}
.alert{border:2px solid #8c2f1b}
.trade{color:#55554f}
.go{border-left:3px solid #3c6e47;padding-left:1.5rem}
.stop{border-left:3px solid #8c2f1b;padding-left:1.5rem}
.sign li::after{content:" ____________________"}
.hour{margin-top:.8rem;border-top:1px solid #c9c9c2;padding-top:.5rem}
input{font:inherit;padding:.3rem;min-height:44px;min-width:8rem;border:1px solid #77776f;background:#fff}
.line,input.moved{background:#fff}
@media print{body{background:#fff;font-size:11pt}main{max-width:none;padding:0}header,section{border-color:#000;break-inside:avoid}input{border:0;border-bottom:1px solid #000;min-height:0}}
`.trim();

/**
 * Moves the hours on the page as the timeline does: a step begins when all before it have ended, or at its real hour, the
 * one nearest to what was planned. The waits stay those of the plan: another temperature is another plan.
 */
export const planScript = `
(function(){
var plan=JSON.parse(document.getElementById('plan').textContent),DAY=86400;
function seconds(t){var p=t.split(':');return p[0]*3600+p[1]*60}
var start=seconds(plan.start.split(' ').pop());
function clock(s){var m=Math.ceil((start+s)/60-1e-6),d=Math.floor(m/1440),r=m-d*1440;
var c=('0'+Math.floor(r/60)).slice(-2)+':'+('0'+r%60).slice(-2);return d===0?c:'day '+(d+1)+' '+c}
function move(){
var ends={},begins={},last=0;
plan.steps.forEach(function(s){
var ready=0,note='';
s.after.forEach(function(a){ready=Math.max(ready,ends[a]||0)});
var field=document.querySelector('[data-step="'+s.id+'"]'),at=ready;
if(field&&field.value){var r=seconds(field.value);at=r+Math.round((start+ready-r)/DAY)*DAY-start;
if(at<ready-30)note=' (before the end of the step in front of it: the hour does not release it)'}
begins[s.id]=at;ends[s.id]=at+s.lasts;last=Math.max(last,ends[s.id]);
var text=(field&&field.value?'began ':'not before ')+clock(at);
text+=!s.known?'; time not known':s.lasts===0?'':', to '+clock(ends[s.id]);
document.getElementById('when-'+s.id).textContent=text+note});
document.getElementById('return').textContent='Back in service: '+(plan.open?'not known, not before ':'')+clock(last)+'.'}
document.querySelectorAll('[data-step]').forEach(function(f){f.addEventListener('input',move)});
})();
`.trim();
