/** The page's own style sheet; no font, picture or script is fetched. */
export const styleSheet = `
:root{color-scheme:light dark;--paper:#fbfaf6;--page:#fff;--ink:#1d1f1c;--faint:#63675f;--rule:#dcd9cf;--spine:#f1eee4;
--agree:#3b6b47;--consistent:#5a6b5d;--doubtful:#8a5a00;--differ:#9b2c20;--unseen:#5b6470;--unstated:#7a3f86;--incomparable:#6b5e4f}
@media(prefers-color-scheme:dark){:root{--paper:#171815;--page:#1f211d;--ink:#eceae2;--faint:#a4a89d;--rule:#3a3d36;--spine:#262822;
--agree:#8fcfa0;--consistent:#a9bfae;--doubtful:#efc06a;--differ:#f39a8c;--unseen:#b3bfcc;--unstated:#d9a5e4;--incomparable:#cbbba6}}
*{box-sizing:border-box}
html{scroll-padding-top:5.5rem}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 Georgia,"Times New Roman",serif}
main{max-width:1180px;margin:0 auto;padding:2rem clamp(.75rem,3vw,2rem) 4rem}
h1{font-size:clamp(1.5rem,3.4vw,2.3rem);line-height:1.15;margin:0 0 .25rem;font-weight:600;letter-spacing:-.01em}
h2{font-size:1.15rem;margin:2.75rem 0 .75rem;font-weight:600}
p{margin:.3rem 0}
.faint,small{color:var(--faint)}
code,.code{font-family:ui-monospace,Menlo,Consolas,monospace;font-size:.9em}
.caution{border-left:4px solid var(--doubtful);padding:.6rem 1rem;margin:1.25rem 0;background:var(--spine)}
.tally{display:flex;flex-wrap:wrap;gap:.5rem;padding:0;margin:1.25rem 0;list-style:none}
.tally li{flex:1 1 7.5rem;border:1px solid var(--rule);background:var(--page);border-radius:6px;padding:.55rem .75rem}
.tally b{display:block;font-size:1.5rem;line-height:1.1;font-variant-numeric:tabular-nums}
nav{position:sticky;top:0;background:var(--paper);border-bottom:1px solid var(--rule);padding:.5rem 0;z-index:1;display:flex;flex-wrap:wrap;gap:.1rem 1rem}
nav a{color:inherit;text-underline-offset:.2em;font-size:.9rem}
.spread{display:grid;grid-template-columns:minmax(0,1fr) 8.5rem minmax(0,1fr);background:var(--page);border:1px solid var(--rule);border-radius:8px;overflow:hidden}
.head{display:contents;font-size:.8rem;letter-spacing:.08em;text-transform:uppercase;color:var(--faint)}
.head>*{padding:.55rem 1rem;border-bottom:1px solid var(--rule)}
.head .spine{text-align:center}
.row{display:grid;grid-template-columns:subgrid;grid-column:1/-1;border-bottom:1px solid var(--rule)}
.row:last-child{border-bottom:0}
.row>*{padding:.7rem 1.1rem}
h3{font-size:1rem;margin:0 0 .2rem;font-weight:600}
h3 span{font-weight:400}
.left,.right{min-width:0;overflow-wrap:anywhere}
.right>small:first-child{display:block;margin-bottom:.2rem}
.side{font-size:1.05rem}
.side.silent{color:var(--faint);font-style:italic}
.spine{background:var(--spine);text-align:center;box-shadow:inset 7px 0 9px -9px #0007,inset -7px 0 9px -9px #0007}
.spine b{display:block;font-size:1.7rem;line-height:1.1}
.spine span{font-size:.82rem}
.why{color:var(--faint);font-size:.94rem;margin-top:.35rem}
.firm{display:inline-block;border:1px solid var(--rule);border-radius:99px;padding:0 .5em;font-size:.78rem;font-style:normal;margin-left:.4em}
.agree .spine{color:var(--agree)}.consistent .spine{color:var(--consistent)}.doubtful .spine{color:var(--doubtful)}
.differ .spine{color:var(--differ)}.unseen .spine{color:var(--unseen)}.unstated .spine{color:var(--unstated)}.incomparable .spine{color:var(--incomparable)}
.intervals{display:block;width:100%;max-width:24rem;height:auto;margin:.4rem 0}
.intervals text{font:11px ui-monospace,monospace;fill:var(--faint)}
.intervals .bar{stroke:var(--ink);stroke-width:3}.intervals .mean{fill:var(--ink)}
.intervals .band{fill:var(--rule);opacity:.55}.intervals .limit{stroke:var(--differ);stroke-width:2;stroke-dasharray:4 3}
.note{margin:.6rem 0 0}
table{border-collapse:collapse;width:100%;background:var(--page);font-variant-numeric:tabular-nums}
th,td{padding:.35rem .75rem;border-bottom:1px solid var(--rule);text-align:right;font-weight:400}
th:first-child,td:first-child{text-align:left}
thead th{color:var(--faint);font-size:.85rem}
.checks{list-style:none;padding:0;margin:0}
.checks li{display:grid;grid-template-columns:5.5rem 4.5rem 1fr;gap:.75rem;padding:.5rem 0;border-bottom:1px solid var(--rule)}
.checks b{color:var(--differ)}
.scroll{overflow-x:auto}
@media(max-width:640px){.spread{grid-template-columns:minmax(0,1fr) minmax(0,1fr)}.head .spine{display:none}
.row .spine{grid-column:1/-1;grid-row:1;display:flex;gap:.5rem;align-items:baseline;padding:.25rem .7rem;box-shadow:none}
.row .spine b{display:inline;font-size:1.2rem}.row>*{padding-left:.7rem;padding-right:.7rem}.checks li{grid-template-columns:auto 1fr}.checks li span{grid-column:1/-1}
nav{position:static}}
.answer h2{margin:1.25rem 0 .3rem}.answer ol,.answer ul{margin:.2rem 0;padding-left:1.6rem}.answer li{margin:.25rem 0}
.answer .grave{font-weight:600}.answer .danger .grave,.answer .halt .grave{color:var(--differ)}
.answer q{font-style:italic}.answer small{font-size:.9em}
@media print{main{padding:0}h1{font-size:14pt}main>p{font-size:8pt;line-height:1.2;margin:0}
.answer{break-after:page;font-size:7.5pt;line-height:1.2}.answer h2{font-size:9pt;margin:.35rem 0 .1rem}.answer p,.answer li,.answer ol,.answer ul{margin-top:0;margin-bottom:0}.answer q+q{display:none}nav{display:none}.row,.tally li{break-inside:avoid}body{background:#fff}}
`;
