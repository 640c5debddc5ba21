/**
 * Words by which a page tells somebody to do a risky thing, and the beginnings of the cautions that must then stand on
 * it.
 */
const RISKS: readonly (readonly [task: string, told: RegExp, cautions: readonly string[]])[] = [
  [
    'spray',
    /coat of clay|spray reflective|spray on a|powder in \d/i,
    ['Sprays: the label is the law', 'Heat: work before 11'],
  ],
  [
    'hang cloth',
    /\b(put|hang|take) (the )?cloth|cloth (up|down)\b|have cloth/i,
    ['Take the cloth off before a storm', 'Heat: work before 11'],
  ],
  [
    'climb',
    /\b(step ladder|cloth up(:| at the latest:)|put the cloth of)/i,
    ['Ladders: a step ladder, set fully open'],
  ],
  ['dig', /\bdig the holes|before you dig\b/i, ['you know what is under the ground', 'a power line runs above']],
  ['mix concrete', /\bmix the concrete\b/i, ['Wet cement burns skin']],
  ['cut', /\bmark and cut\b|No other way of cutting/i, ['Cutting: goggles']],
  ['build', /Build sheet|what to build|cloth\. It takes/i, ['Orientation only. Wind loads']],
  ['go out in the heat to measure', /How to (take a reading|read a leaf)/i, ['Heat: work before 11']],
  [
    'cover for frost',
    /put the cover on|cover the .* before sunset|have ready: the frost cover/i,
    ['A closed cover catches far more wind'],
  ],
];

/** Every caution that a page should carry for what it tells, and does not. */
export function cautionsMissing(page: string): string[] {
  // A calendar folds its lines, and escapes commas; a page of HTML escapes quotes alone.
  const text = page
    .replaceAll('\r\n ', '')
    .replaceAll(/\\([,;])/g, '$1')
    .replaceAll(/\s+/g, ' ');
  return RISKS.flatMap(([task, told, cautions]) =>
    told.test(text)
      ? cautions.filter((caution) => !text.includes(caution)).map((caution) => `${task}: ${caution}`)
      : [],
  );
}

/** The risks a page tells of. */
export function risksTold(page: string): string[] {
  const text = page.replaceAll(/\s+/g, ' ');
  return RISKS.filter(([, told]) => told.test(text)).map(([task]) => task);
}
