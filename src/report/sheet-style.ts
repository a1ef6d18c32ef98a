/** A step on a narrow page: what a table holds in rows is one paragraph. */
function compact(media: string): string {
  const inline = ['', ' tbody', ' tr', ' th', ' td'].flatMap((part) => [
    `.calculation .symbols${part}`,
    `.calculation .rows${part}`,
  ]);
  return `${media}{${inline.join(',')}{display:inline;padding:0;min-width:0;white-space:normal}.calculation .symbols tr::after,.calculation .rows tr::after{content:"; "}.calculation .symbols td::before,.calculation .rows td::before{content:" "}.calculation td:empty{display:none}}`;
}

/**
 * The style of every page with mathematics: fonts with roots and brackets that grow. Named, since the one that a browser takes
 * for mathematics may be missing: without such a font the root over a fraction reads as one over its numerator.
 */
export const mathFonts =
  'math{font-family:"STIX Two Math","Cambria Math","Latin Modern Math","Libertinus Math","DejaVu Math TeX Gyre",math}';

/** Typeset as a book of worked solutions: one serif column, rules instead of boxes; black on white on paper. */
export function sheetStyle(title: string): string {
  const running = title.replaceAll(/["\\<>\n]/gu, ' ');
  return `
:root{color-scheme:light}
body{margin:0;background:#fff;color:#161616;font:16px/1.45 Georgia,"Times New Roman","DejaVu Serif",serif}
.hoopwright-sheet{max-width:46rem;margin:0 auto;padding:1.2rem 1rem;overflow-wrap:anywhere}
h1{font-size:1.5rem;line-height:1.2;margin:0 0 .3rem;padding-bottom:.4rem;border-bottom:3px double #161616}
h2{font-size:1.2rem;margin:1.6rem 0 .4rem;border-bottom:1px solid #161616}
h3{font-size:1.05rem;margin:1.2rem 0 .3rem}
h4{font-size:1rem;margin:1rem 0 .2rem;break-after:avoid}
h2,h3{break-after:avoid}
.exercises~.answers{break-before:page}
small{font-weight:400;font-style:italic;font-size:.85em;color:#444}
p{margin:.35rem 0}
ul{margin:.3rem 0;padding-left:1.2rem}
table{border-collapse:collapse;margin:.3rem 0}
th,td{padding:.08rem .7rem .08rem 0;text-align:left;vertical-align:top;font-weight:400}
.rows th{min-width:8.5rem;color:#444;overflow-wrap:normal}
.symbols th{text-align:right}
.symbols td:nth-child(2){white-space:nowrap}
.columns th{border-bottom:1px solid #161616;font-style:italic}
.columns th{overflow-wrap:normal}
.number{text-align:right}td.number{white-space:nowrap}
.equation{margin:.4rem 0 .4rem 1.2rem;overflow-x:auto;break-inside:avoid}
.line{display:flex;align-items:center;gap:1.2em;padding:.14em 0}
math{font-size:1.08em}
${mathFonts}
.on-paper{display:none}
.note{color:#444;font-style:italic;font-size:.9em}
.figures{display:flex;flex-wrap:wrap;gap:.4rem 1rem;align-items:flex-start}
figure{margin:0;flex:1 1 320px;max-width:440px;break-inside:avoid}
figure svg{width:100%;height:auto}
.verdict{font-size:1.1rem;font-weight:700}
.signatures{width:100%;border:1px solid #161616;margin:.8rem 0;break-inside:avoid}
.signatures td,.signatures th{border:1px solid #161616;padding:.25rem .4rem;height:1.6rem}.signatures tbody th{width:16%}.signatures td{width:28%}
@page{size:A4;margin:14mm 12mm 13mm 15mm;@top-left{content:"${running}";font:8pt Georgia,serif}@top-right{content:"hoopwright";font:8pt Georgia,serif}@bottom-right{content:"Page " counter(page) " of " counter(pages);font:8pt Georgia,serif}}
${compact('@media (max-width:40em)')}
@media (max-width:40em){.columns{font-size:.8em}.columns th,.columns td{padding-right:.3rem;white-space:normal;overflow-wrap:anywhere}.columns td:first-child,.columns th:first-child,.columns td:nth-child(2),.columns th:last-child,.columns td:last-child{overflow-wrap:break-word}}
@media print{body{font:6.6pt/1.12 "Times New Roman","Liberation Serif","DejaVu Serif Condensed",Georgia,serif}.signatures{margin:.5em 0}.signatures td,.signatures th{height:4.2mm;padding:.4mm 1mm}.hoopwright-sheet{max-width:none;padding:0}
.step{margin:.45em 0 0;line-height:1.25}.step h4,.step p,.step .equation,.step .line,.step ul,.step li{display:inline;padding:0;margin:0}.step h4::after,.step p::after,.step li::after,.step .equation::after{content:" "}.step .line+.line::before{content:"\\2003"}.step li::after{content:"; "}.equation{overflow:visible}.line mphantom{display:none}math{font-size:.95em}.line .note{padding:0 .3em}
.size-2{font-size:.86em}.size-3{font-size:.72em}.size-4 math{display:none}.on-paper{display:inline}
.figures{display:block;columns:2;column-gap:5mm}figure{max-width:none}figure svg{max-height:62mm}
.answer,.calculation,.evidence,.cautions,.warnings,.assumed-values,.sources,.end-of-life{columns:2;column-gap:6mm;font-size:.93em}.the-case-as-given{columns:4;column-gap:4mm;font-size:.87em}.the-case-as-given .rows th{min-width:0}.the-case-as-given td,.the-case-as-given th{padding-right:.4em}
.answer .rows{width:100%}.answer th,.answer td{padding-right:.4em}.answer .rows td:nth-child(2){white-space:nowrap}h2{column-span:all;font-size:1.25em;margin:.6em 0 .2em}h3{font-size:1.12em;margin:.5em 0 .1em}h4{font-size:1.03em;margin:.4em 0 0}p,table,ul{margin:.08em 0}h1{font-size:1.7em}.evidence li{display:inline}.evidence li::after{content:"; "}.evidence ul{padding:0}}
${compact('@media print')}
`.trim();
}
