/** For A4 and Letter, black only. What is read once stands in two columns, small. */
export const SHEET_STYLE = `
@page { margin: 11mm 12mm; }
.build-sheet { color: black; background: white; font: 8.5pt/1.22 sans-serif; max-width: 180mm; }
.build-sheet h2 { margin: 1.6mm 0 0.6mm; font-size: 10.5pt; border-bottom: 1px solid black; break-after: avoid; }
.build-sheet p { margin: 0 0 0.5mm; } .build-sheet ul, .build-sheet ol { margin: 0 0 0.8mm; padding-left: 5mm; }
.build-sheet table { border-collapse: collapse; width: 100%; font-size: 8pt; }
.build-sheet th, .build-sheet td { text-align: left; padding: 0.3mm 2mm 0.3mm 0; border-bottom: 1px solid #999; }
.build-sheet .number { text-align: right; font-variant-numeric: tabular-nums; }
.build-sheet tr, .build-sheet li, .build-sheet svg { break-inside: avoid; }
.build-sheet svg { vertical-align: top; } .build-sheet svg:not([width]) { width: 60%; max-height: 60mm; }
.build-sheet .boxes > li { list-style-type: "☐ "; } .build-sheet .boxes.ticked > li { list-style-type: "☑ "; }
.build-sheet :is(#sheet-stops, #sheet-cautions, #sheet-notes, #sheet-storm, #sheet-method, #sheet-cloth) > ul {
  columns: 2; column-gap: 6mm; font-size: 8pt;
}
.build-sheet #sheet-steps > ol { columns: 2; column-gap: 6mm; }
.build-sheet #sheet-parts { columns: 2; column-gap: 6mm; } .build-sheet #sheet-parts h2 { column-span: all; }
.build-sheet #sheet-parts table { break-inside: avoid; }
.build-sheet :is(#sheet-wind, #sheet-anchors) { display: inline-block; width: 48%; vertical-align: top; }
.build-sheet #sheet-wind { margin-right: 4%; } .build-sheet #sheet-wind td { white-space: nowrap; }
.build-sheet > .sheet-ink { float: right; }
`;
