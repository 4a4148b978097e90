import type { Paper } from './Paper.js';

/** Sheet and margins; the number of the page stands at the foot where the browser can write it. */
const sheets: Readonly<Record<Paper, string>> = {
  A4: 'size: A4; margin: 18mm 16mm 20mm',
  Letter: 'size: letter; margin: 0.7in 0.65in 0.8in',
};

/** @internal Style of a report page: black on white, one accent, serif; in print the sheet, nothing cut, no colour needed. */
export const pageStyle = (paper: Paper): string => `
:root { color-scheme: light; --ink: #1c1c1a; --soft: #54544f; --rule: #c9c9c2; --accent: #7a3b12; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 2rem 1.2rem 4rem; max-width: 52rem; color: var(--ink); background: #fff; font: 1rem/1.5 Georgia, 'Times New Roman', serif; overflow-wrap: anywhere; }
h1 { font-size: 1.7rem; font-weight: normal; margin: 0 0 .3rem; }
h2 { font-size: 1.15rem; font-weight: normal; margin: 2.2rem 0 .6rem; padding-bottom: .2rem; border-bottom: 1px solid var(--rule); }
h3 { font-size: 1rem; margin: 1.1rem 0 .3rem; }
p { margin: .4rem 0; }
.lead { color: var(--soft); }
.invented { border: 2px dashed var(--accent); color: var(--accent); padding: .5rem .8rem; margin: 1rem 0; }
dl { display: grid; grid-template-columns: minmax(9rem, 14rem) 1fr; gap: .15rem 1rem; margin: .8rem 0; }
dt { color: var(--soft); } dd { margin: 0; min-width: 0; }
.wide { overflow-x: auto; } .wide + .wide { margin-top: 1.2rem; } .wide:focus-visible { outline: 2px solid var(--accent); outline-offset: 3px; }
table { border-collapse: collapse; width: 100%; font-size: .93rem; }
caption { text-align: left; color: var(--soft); padding-bottom: .3rem; position: sticky; left: 0; max-width: calc(100vw - 2.4rem); }
th, td { text-align: left; vertical-align: top; padding: .28rem .6rem .28rem 0; border-bottom: 1px solid var(--rule); font-weight: normal; min-width: 2.5em; overflow-wrap: break-word; hyphens: auto; }
table:has(thead th:nth-child(8)) { font-size: .82rem; } table:has(thead th:nth-child(8)) :is(th, td) { padding-right: .35rem; }
thead th { color: var(--soft); vertical-align: bottom; } bdi { overflow-wrap: anywhere; }
tbody th:not(.short, .number) { min-width: 9em; } .blank { min-width: 7em; } .short { white-space: nowrap; }
.number { text-align: right; overflow-wrap: normal; font-variant-numeric: tabular-nums; } .number + :is(td, th):not(.number, .short) { padding-left: .3rem; }
.stamp { display: block; color: var(--accent); font-size: .82rem; font-style: italic; } .stamp:lang(zh) { font-style: normal; }
.source { color: var(--soft); font-size: .85rem; }
ul.findings { list-style: none; padding: 0; } ul.findings li { padding: .35rem 0 .35rem .9rem; border-left: 3px solid var(--rule); margin: .35rem 0; }
ul.findings li.fault { border-left-color: var(--accent); } ul.findings li.caution { border-left-style: double; border-left-width: 5px; border-left-color: var(--accent); }
.remedy { color: var(--soft); }
figure { margin: 1.2rem 0; } figure svg { width: 100%; height: auto; } figcaption { color: var(--soft); font-size: .93rem; }
code { font-size: .85rem; white-space: pre-wrap; }
@page { ${sheets[paper]}; @bottom-right { content: counter(page) ' / ' counter(pages); font: 8pt Georgia, 'Times New Roman', serif; } }
@media print, (min-width: 52rem) { td:has(> .stamp) { min-width: 17rem; } }
@media (max-width: 34rem) { dl { display: block; } dd { margin-bottom: .4rem; } }
@media print {
  :root { font-size: 10pt; } body { padding: 0; max-width: none; }
  h1, h2, h3, caption { break-after: avoid; } h2 + p { break-after: avoid; }
  figure, tr, dt, dd, .invented { break-inside: avoid; } thead { display: table-header-group; } thead + tbody tr:first-child { break-before: avoid; } tr:has(> th[scope='rowgroup']) { break-after: avoid; } table:not(:has(tbody tr:nth-child(9))) { break-inside: avoid; } .wide { overflow: visible; } caption { max-width: none; position: static; }
  p, li { orphans: 3; widows: 3; } figure svg { max-height: 110mm; }
}
`;
