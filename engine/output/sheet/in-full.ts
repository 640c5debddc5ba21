/** The build sheet with how it is reckoned at its end: for the command line and for files, not for the page. */

import { windSources } from '../../frame/strength/wind-sources.ts';
import { holesFactor } from '../../frame/strength/wind.ts';
import type { BuildSheet } from '../../frame/types.ts';
import { formatArea, formatMass } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { list, section, sentence, type SheetSection } from './part.ts';
import { sheetSections } from './sections.ts';

export function sheetInFull(sheet: BuildSheet, units: Units): readonly SheetSection[] {
  return [...sheetSections(sheet, units), method(sheet, units)];
}

const LABEL =
  'The percentage on a cloth’s label is the light it stops. Wind goes by the share covered with yarn, which differs ' +
  'by a few points; one number is used for both here.';

/** For those who check the figures. */
function method(sheet: BuildSheet, units: Units): SheetSection {
  return section('method', 'How it is reckoned', [
    sentence(formulas(sheet, units)),
    list([...windSources(sheet), LABEL]),
  ]);
}

/** The formulas themselves are metric, whatever the units shown: they are read by those who check them. */
function formulas({ uplift, kind, cloth: { pieces } }: BuildSheet, units: Units): string {
  const up =
    kind === 'canopy'
      ? `Uplift ${uplift.formula}, C ${uplift.coefficient.clear.toFixed(1)} (free below) to ` +
        `${uplift.coefficient.blocked.toFixed(1)} (blocked), Kp ${uplift.holes.toFixed(2)}, A ` +
        `${formatArea(uplift.area, units)}. `
      : '';
  const standing = pieces.filter(({ between }) => between !== null);
  const kept = [...new Set(standing.map(({ density }) => holesFactor(density).toFixed(2)))].join(' and ');
  const oneWind =
    standing.length > 1 && kind === 'canopy' ? '; the table has the drops that one wind strikes together' : '';
  const side =
    uplift.sideFormula === null
      ? ''
      : `Push on cloth that stands ${uplift.sideFormula}, Kp ${kept}, A its own area${oneWind}. `;
  return (
    `${up}${side}F in newtons, V in m/s, A in m². Own weight of tube and cloth ` +
    `${formatMass(uplift.ownWeight, units)}.`
  );
}
