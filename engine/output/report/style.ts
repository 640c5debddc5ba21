/** How the report looks: on paper two pages, in full only where somebody asks for that. */
export const STYLE = `
@page { margin: 15mm; }
body { color: black; background: white; font: 11pt/1.4 sans-serif; max-width: 180mm; margin: 0 auto; padding: 4mm; }
h1 { font-size: 18pt; margin: 0; } h2 { font-size: 13pt; border-bottom: 1px solid black; break-after: avoid; }
h3 { font-size: 11pt; break-after: avoid; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 1mm 2mm; border-bottom: 1px solid #999; }
.number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
.rough { border: 2px solid black; padding: 1mm 2mm; font-weight: bold; }
svg { display: block; } svg:not([width]) { width: 100%; max-height: 140mm; }
figure { margin: 0 0 4mm; } .key svg { max-height: 9mm; }
tr, li, figure { break-inside: avoid; } thead { display: table-header-group; } p, li { overflow-wrap: anywhere; }
#cautions li { list-style-type: "☐ "; }
@media screen { svg[width] { max-width: 100%; height: auto; } }
@media print {
  body { max-width: none; padding: 0; }
  :not(.in-full) > main .more { display: none; }
  :not(.in-full) > main { font-size: 8.5pt; line-height: 1.22; }
  :not(.in-full) > main h1 { font-size: 15pt; }
  :not(.in-full) > main h2 { margin: 2.5mm 0 1mm; font-size: 11pt; }
  :not(.in-full) > main :is(ul, p, figure) { margin-block: 0 1mm; }
  :not(.in-full) > main :is(th, td) { padding: 0.5mm 2mm; }
  :not(.in-full) > main .key svg { max-height: 6mm; }
  :not(.in-full) > main #cautions { font-size: 8pt; }
  #options { break-inside: avoid; }
}
`;
