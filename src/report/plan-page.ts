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
summary{cursor:pointer;padding-right:1.2rem;position:relative;list-style:none}
summary::-webkit-details-marker{display:none}
summary::after{content:"+";position:absolute;right:0;top:0;font-weight:700;color:#2b4a5e}
details[open]>summary::after{content:"\\2212"}
summary h2,summary p{margin:0}
.step ul{margin-top:.45rem}
.step li>b:first-child{color:#2b4a5e}
p{margin:.25rem 0}
ul{margin:0;padding-left:1.1rem}
li{margin:.15rem 0}
.kind,.when{color:#55554f;font-size:.9rem}
.hold{border-left:6px solid #2b4a5e}
.alert{border:2px solid #8c2f1b}
.trade{color:#55554f}
.go{border-left:3px solid #3c6e47;padding-left:1.5rem}
.stop{border-left:3px solid #8c2f1b;padding-left:1.5rem}
.call,.sign{list-style:none;padding:0}
.blank{min-width:0;width:7rem;padding:.1rem .3rem;min-height:2rem}
.place{white-space:nowrap}
.sign .blank{width:14rem;max-width:100%}
.fields{display:grid;grid-template-columns:1fr 1fr;gap:.3rem .6rem}
.hourly{list-style:none;padding:0;margin:.3rem 0;display:grid;grid-template-columns:repeat(auto-fill,minmax(9.5rem,1fr));gap:.15rem .8rem}
.hourly li{display:flex;gap:.3rem;align-items:center;margin:0}
.hourly span{min-width:1.7rem;text-align:right;color:#55554f}
.hourly input{min-width:0;width:100%;min-height:2.2rem}
.hour{margin-top:.8rem;border-top:1px solid #c9c9c2;padding-top:.5rem}
input{font:inherit;text-indent:0;padding:.3rem;min-height:44px;min-width:8rem;border:1px solid #77776f;background:#fff}
.hour{display:flex;flex-wrap:wrap;gap:.4rem 1rem;align-items:center}
.hour input[type=checkbox]{min-width:1.6rem;min-height:1.6rem;vertical-align:middle}
.fault{color:#8c2f1b;font-weight:700}
.fault:empty{display:none}
.skipped{border:3px solid #8c2f1b}
output.skipped{border:0;color:#8c2f1b;font-weight:700}
input:invalid{box-shadow:none}
button{font:inherit;min-height:44px;padding:.3rem .8rem;border:1px solid #77776f;background:#fff}
.bring ul{list-style:none;padding:0}
.bring li{padding-left:2rem;text-indent:-2rem}
.bring input[type=checkbox]{min-height:1.4rem;min-width:1.4rem;margin-left:0;vertical-align:middle}
label>input[type=text],input[type=tel]{width:100%;min-width:0}
.bring li input[type=text]{width:9rem;min-height:2rem}
@media (max-width:640px){body{font-size:15px;line-height:1.35}main{padding:6px}header,section{padding:8px 10px;margin:0 0 6px}h3{margin:.45rem 0 0}ul{padding-left:.95rem}summary{margin:-4px 0}section:has(>details:not([open])){padding-bottom:6px}}
@page{size:A4;margin:10mm 10mm 12mm;@bottom-right{content:"Page " counter(page) " of " counter(pages);font:8pt sans-serif}}
@media print{details::details-content{content-visibility:visible;block-size:auto}summary::after{display:none}button{display:none}input[type=time]:invalid{color:transparent}input[type=time]::-webkit-calendar-picker-indicator{display:none}body{background:#fff;font-size:8.5pt;line-height:1.245}main{max-width:none;padding:0;columns:2;column-gap:5mm}header,section{border:0;border-top:1px solid #000;padding:.7mm 0 0;margin:0 0 1.2mm}header{border-top:3px solid #000;column-span:all}.bring li{break-inside:avoid;padding-left:5.6mm;text-indent:-5.6mm}.kind,.when{font-size:1em}.go li,.stop li{break-inside:avoid}.hold{border-left:3px solid #000;padding-left:2mm}.alert{border:2px solid #000;padding:1mm 2mm}h1{font-size:13pt}h2{font-size:9.4pt;margin:0;break-after:avoid}summary{break-after:avoid;padding:0}summary h2{display:inline;margin-right:1.5mm}summary p{display:inline-block}h2 span{min-width:0;margin-right:1mm}h3{font-size:7.4pt;margin:.8mm 0 0;break-after:avoid}p,li{margin:0}ul{padding-left:4mm}.go,.stop{padding-left:5mm}.call,.sign,.hour{break-before:avoid}.hour{margin-top:.5mm;padding-top:.3mm}input{border:0;border-bottom:1px solid #000;min-height:0;padding:0}.step ul{margin-top:.5mm}.step li>b:first-child{color:#000}input[type=time],input[type=text],input[type=tel]{min-height:3.5mm;height:3.5mm;font-size:8pt}.blank,.bring li input[type=text]{width:17mm;min-height:3mm;height:3mm}.sign .blank{width:32mm}.hourly{grid-template-columns:repeat(auto-fill,minmax(19mm,1fr));gap:.4mm 2mm}.hourly input{min-height:3.6mm}.hourly span{min-width:4mm}.fields{gap:.4mm 3mm}.fields input{min-height:3.4mm}.hour input[type=checkbox],.bring input[type=checkbox]{min-height:3mm;min-width:3mm;height:3mm;width:3mm}}
`.trim();
