/** Of the build sheet: what the tube bears, what the wind does, and what holds the frame down. */

import { formatForce, formatSlight } from '../../frame/layout/lengths.ts';
import { groundPlace } from '../../frame/strength/grounds.ts';
import { STEEL } from '../../frame/strength/tube.ts';
import { LEAN_ON_POST, LEAN_ON_RAIL } from '../../frame/strength/wind-plan.ts';
import type { BuildSheet } from '../../frame/types.ts';
import { formatCut, formatMass, formatSpeed, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { section, sentence, type SheetSection, table } from './part.ts';

export function strength(sheet: BuildSheet, units: Units): SheetSection {
  const roof = sheet.kind === 'canopy';
  const spans = table(
    [
      'rail',
      'span',
      'sag',
      'span/sag',
      roof ? 'bears gusts, free below' : 'bears gusts',
      ...(roof ? ['blocked below'] : []),
    ],
    sheet.spans.map((span) => [
      span.rail,
      formatCut(span.span, units),
      formatSlight(span.sag, units),
      span.sagRatio.toFixed(0),
      formatSpeed(Math.floor(span.gust.clear), units),
      ...(roof ? [formatSpeed(Math.floor(span.gust.blocked), units)] : []),
    ]),
    [1, 2, 3, 4, 5],
  );
  const [longest] = sheet.spans.toSorted((a, b) => b.span - a.span);
  const limit = (stressMPa: number): string => {
    const share = (stressMPa * 1e6) / STEEL.allowable;
    return `${formatShare(share)} of what the tube bears${share > 1 ? ': TOO MUCH' : ''}`;
  };
  return section('strength', 'What the tube bears', [
    spans,
    sentence(
      `Somebody who leans on the middle of the longest rail with ${formatForce(LEAN_ON_RAIL, units)} bends it ` +
        `${formatSlight(longest.leaned.sag, units)}, ${limit(longest.leaned.stressMPa)}.`,
    ),
    sentence(postWords(sheet, limit, units)),
  ]);
}

function postWords({ kind, post }: BuildSheet, limit: (stressMPa: number) => string, units: Units): string {
  const push = formatForce(LEAN_ON_POST, units);
  const bends =
    post.bracedMPa === null
      ? `A post of ${formatCut(post.height, units)} that only its foot holds gives ` +
        `${formatSlight(post.leaned.sag, units)} when its top is pushed with ${push}, ${limit(post.leaned.stressMPa)}.`
      : `Pushed with ${push} at its top, a post of ${formatCut(post.height, units)} with its ` +
        `${kind === 'canopy' ? 'braces' : 'stay'} bends to ${limit(post.bracedMPa)}.`;
  return (
    `${bends} Downwards it would carry ${formatForce(post.strength, units)} and has to carry ` +
    `${formatForce(post.load, units)}.`
  );
}

export function wind(sheet: BuildSheet, units: Units): SheetSection {
  const { uplift } = sheet;
  const roof = sheet.kind === 'canopy';
  const side = uplift.rows.some((row) => row.sidePush > 0);
  const head = [
    'gust',
    ...(roof ? ['uplift, free below', 'uplift, blocked below'] : []),
    ...(side ? ['side push'] : []),
  ];
  const rows = uplift.rows.map((row) => [
    `${formatSpeed(row.gust, units)}`,
    ...(roof ? [formatForce(row.uplift.clear, units), formatForce(row.uplift.blocked, units)] : []),
    ...(side ? [formatForce(row.sidePush, units)] : []),
  ]);
  const blocked =
    uplift.blockedBy.length > 0
      ? `Here the hard end counts: the wind is caught by ${uplift.blockedBy.join(', ')}.`
      : 'Nothing near this roof catches the wind below it, so the mild end counts, as long as nothing is stacked ' +
        'or grown up under it.';
  return section('wind', 'Wind', [table(head, rows, [1, 2, 3]), ...(roof ? [sentence(blocked)] : [])]);
}

export function anchors(sheet: BuildSheet, units: Units): SheetSection {
  const { anchors: plan } = sheet;
  const rows = plan.posts.map((post) => [
    `${post.count} × ${post.post}`,
    range(post.ballast.clear, post.ballast.blocked, units),
  ]);
  const where = plan.ground === null ? 'Anchors: not worked out' : `Anchors ${groundPlace(plan.ground)}`;
  const loads = sheet.kind === 'canopy' ? [table(['post', 'weight needed, free to blocked'], rows, [1])] : [];
  return section('anchors', where, [...loads, ...plan.sentences.map(sentence)]);
}

function range(low: number, high: number, units: Units): string {
  return `${formatMass(Math.ceil(low), units)} to ${formatMass(Math.ceil(high), units)}`;
}
