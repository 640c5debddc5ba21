/** Words that agree with what a plant is called: "the lemon … it needs", "the chillies … they need". */

export interface Agreeing {
  readonly they: 'it' | 'they';
  readonly them: 'it' | 'them';
  readonly their: 'its' | 'their';
  readonly are: 'is' | 'are';
  readonly were: 'was' | 'were';
  /** A verb as it follows the name. @param plural "need" */
  does(plural: string): string;
}

const ONE: Agreeing = {
  they: 'it',
  them: 'it',
  their: 'its',
  are: 'is',
  were: 'was',
  does: (plural) => (/(?:[sxo]|ch|sh)$/.test(plural) ? `${plural}es` : `${plural}s`),
};
const MANY: Agreeing = {
  they: 'they',
  them: 'them',
  their: 'their',
  are: 'are',
  were: 'were',
  does: (plural) => plural,
};

/** Words for what goes by these names together, or by the only one. */
export function agreeingWith(...names: readonly string[]): Agreeing {
  return names.length === 1 && !isPlural(names[0]) ? ONE : MANY;
}

/** Names of single plants that end as if there were more of them. */
const SINGULAR = /^(?:cosmos|ananas|christmas)$/i;
/** And of more that do not. */
const PLURAL = /^(?:cacti|fungi|children)$/i;

/** What says where or of what, after the noun. */
const WHERE =
  'in|on|at|by|of|from|with|under|beside|near|further|farther|behind|against|for|to|along|over|above|below|round';
const AFTER_NOUN = new RegExp(`,| \\(| (?:${WHERE}) `, 'i');

/** Whether a name is that of several things: by its noun, which stands before "in", "on", "by" and the like. */
export function isPlural(name: string): boolean {
  const [head] = name.split(AFTER_NOUN);
  if (/ (?:and|&) /i.test(head)) return !/ (?:bed|pot|tub|box|tree|corner|border)$/i.test(head);
  const noun = head.trim().split(/[ -]/).at(-1) ?? '';
  return PLURAL.test(noun) || (/[^\W_]s$/i.test(noun) && !/(?:[sui]s|[’']s)$/i.test(noun) && !SINGULAR.test(noun));
}
