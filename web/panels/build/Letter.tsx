import {
  type Cloth,
  bottomOf,
  boundsOf,
  dayWords,
  distanceToEdge,
  footprintOf,
  formatCut,
  formatLength,
  formatShare,
  openRing,
  sideDrawing,
  dateWords,
} from '../../../engine/index.ts';
import type { BuildSheet, LetterPictures, Plan, SightCut } from '../../../engine/index.ts';
import { calledById } from '../../map/drawing/feature-edits.ts';
import { plan, units } from '../../state/yard.ts';
import { siteNow } from '../parts/typed.ts';
import { Ink } from './Parts.tsx';
import { SightPicture } from './SightPicture.tsx';

interface Props {
  readonly thing: Cloth;
  readonly sheet: BuildSheet;
  readonly built: Plan;
  readonly pictures: LetterPictures;
}

/**
 * A page for whoever has to allow the frame: where it stands, how high, and from where it can be seen. No word of heat.
 */
export function Letter({ thing, sheet, built, pictures }: Props) {
  const { rules } = built.site;
  const length = (metres: number): string => formatLength(metres, units.value);
  const highest = Math.max(...sheet.settingOut.posts.map((post) => post.height));
  return (
    <article class="letter">
      <p>
        <bdi>{built.name ?? 'Yard'}</bdi>, {dateWords(siteNow().date)}
      </p>
      <p class="letter-blanks">
        To: ____________________________ From: ____________________________
        <br />
        Address of the yard: ______________________________________________
      </p>
      <h1>A frame with shade cloth: may it stand?</h1>
      <p>
        I ask leave to put up{' '}
        {thing.kind === 'canopy' ? 'a roof of shade cloth on posts' : 'an upright screen of shade cloth'} in my yard, as
        drawn below. It is a frame of tube that comes apart, with a knitted net tied to it;{' '}
        {thing.kind === 'canopy' && thing.onWall === true
          ? 'its back hangs from a wall, fixed by somebody licensed for it'
          : 'nothing is fastened to a wall'}
        . The net comes off before storms.
      </p>
      <ul>
        <li>Size between post middles: {sizeWords(thing)}.</li>
        <li>
          Highest point: <strong>{length(highest)}</strong> above the ground
          {rules?.maxHeight === undefined ? '' : `; the rule allows ${length(rules.maxHeight)}`}.
        </li>
        <li>
          Nearest the boundary: {length(nearestBoundary(thing, built))}
          {rules?.setback === undefined ? '' : `; the rule asks for ${length(rules.setback)}`}.
        </li>
        <li>Cloth up: {monthsWords(thing)}.</li>
        <li>Cloth: stops {formatShare(thing.density)} of the light. Colour: ______________</li>
        {rules?.note !== undefined && <li>Rule as I know it: {rules.note}</li>}
      </ul>
      <h2>The yard from above</h2>
      <Ink svg={pictures.yard} />
      <p class="quiet">Broken lines: the cloth. {yardWords(built)}</p>
      <h2>The frame from the side</h2>
      <Ink svg={sideDrawing(sheet, units.value)} />
      <h2>May it be seen over the wall?</h2>
      {pictures.cuts.length === 0 && (
        <p>No place to look in from is drawn on the plan. Seen from the street: ______________</p>
      )}
      {pictures.cuts.map((cut) => (
        <figure key={cut.eye}>
          <SightPicture cut={cut} />
          <figcaption>{cutWords(cut)}</figcaption>
        </figure>
      ))}
      <p>Sizes are from the owner’s own plan. Local rules and the authority’s decision come first.</p>
      <Signatures />
    </article>
  );
}

/** Who asks, and who agrees. */
function Signatures() {
  return (
    <p class="letter-blanks">
      Asked by: ______________________ Date: ____________
      <br />
      Agreed, yes or no: ______________ By: ______________________ Date: ____________
    </p>
  );
}

function sizeWords(thing: Cloth): string {
  if (thing.kind === 'canopy')
    return `${formatCut(thing.length, units.value)} by ${formatCut(thing.width, units.value)}`;
  return `${formatCut(
    thing.path.slice(1).reduce((sum, [x, y], k) => sum + Math.hypot(x - thing.path[k][0], y - thing.path[k][1]), 0),
    units.value,
  )} long, from ${formatLength(bottomOf(thing), units.value)} above the ground`;
}

/** When the cloth hangs, the season where nothing else is said: the frame itself stays. */
function monthsWords({ up }: Cloth): string {
  const { from, to } = up ?? plan.value.season;
  return `${dayWords(from)} to ${dayWords(to)}; the frame stands all year`;
}

function nearestBoundary(thing: Cloth, { site }: Plan): number {
  const ring = openRing(site.boundary);
  return Math.min(...footprintOf(thing).map((corner) => distanceToEdge(corner, ring)));
}

function yardWords({ site }: Plan): string {
  const { minX, minY, maxX, maxY } = boundsOf(site.boundary);
  return `The yard measures ${formatLength(maxX - minX, units.value)} by ${formatLength(maxY - minY, units.value)}.`;
}

function cutWords({ eye, eyeHeight, far, hidden, shows }: SightCut): string {
  const from =
    `From ${calledById(eye)}, ${formatLength(eyeHeight, units.value)} up and ` +
    `${formatLength(far, units.value)} away`;
  return hidden ? `${from}: not visible.` : `${from}: ${formatLength(shows, units.value)} of its height can be seen.`;
}
