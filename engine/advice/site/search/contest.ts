import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type { Cloth } from '../../../plan/types.ts';
import type { ClothKind, SiteRule } from '../types.ts';

/** A piece of cloth, what it spares on the search's points [K·h/day], and what it costs. */
export interface Scored {
  readonly cloth: Cloth;
  readonly kind: ClothKind;
  readonly spared: number;
  /** Money in the plan's currency, or m² of cloth where no price is known. */
  readonly cost: number;
  /** Whether our own cautions speak against it. */
  readonly cautioned: boolean;
}

/**
 * What can be told from nodes alone of a place for cloth: 'no' place at all, one that may keep every rule ('unsure':
 * who sees it is not told), or one that breaks a rule and would be the best without it ('hidden' stands for 'glimpsed'
 * too).
 */
export type Place = 'no' | 'free' | 'unsure' | 'hidden' | 'height';

/** What judges a candidate besides its bound. */
export interface Judges {
  /**
   * Quickly told: 'ground' where it cannot hang, else the rules it breaks by its place and height, who sees it left
   * out.
   */
  objectionsToPlace(cloth: Cloth): 'ground' | readonly SiteRule[];
  /** Whether all posts of its frame can stand; dear where nobody asked yet about its form. */
  postsStand(cloth: Cloth): boolean;
  isHidden(cloth: Cloth): boolean;
  /** Whether what is seen of it is little. */
  isGlimpsed(cloth: Cloth): boolean;
  /** All of these; 'hidden' stands for 'glimpsed' too. */
  objections(cloth: Cloth): 'ground' | readonly SiteRule[];
  /** Whether cloth hung together costs more than may be spent; never where no price is known. */
  isTooDear(cloth: readonly Cloth[]): boolean;
  /** Whether one does wherever it stands. */
  isTooDearAnywhere(cloth: Cloth): boolean;
  /** Rules that are dear to ask about: light left, of cloth hung together. Asked only of what would win. */
  lateObjections(cloth: readonly Cloth[]): 'ground' | readonly SiteRule[];
  /** One of them, sooner told; `null`: there are none. */
  keptFromBy(cloth: readonly Cloth[]): 'ground' | SiteRule | null;
  /** What it costs where it stands, as `Scored.cost`; Infinity: it cannot be built. */
  cost(cloth: Cloth): number;
  /** The same at the place of its form where it is cheapest. */
  leastCost(cloth: Cloth): number;
  isCautioned(cloth: Cloth): boolean;
}

/** What a rule costs is told to this: what spares less more without it is not looked for. Our choice. */
const WORTH_A_PRICE = 1.02;

/** All cloth of one form for one lane; what has the same form costs the same wherever the wind is as kind. */
interface Family {
  readonly lane: number;
  readonly sample: () => Cloth;
  /** `null`: nobody asked yet. */
  cost: number | null;
  cautioned: boolean;
  tooDear: boolean;
}

/** What a contest has come to. */
export interface Standings {
  /** What the best spares. [K·h/day] */
  readonly best: number;
  /** One a lane: what none in it beats in money and effect. */
  readonly fronts: readonly (readonly Scored[])[];
  readonly without: readonly (readonly [SiteRule, Scored])[];
  /** Places held against what they could spare. */
  readonly candidates: number;
}

/**
 * What no other beats in money and effect: for every sum of money the cloth that spares most for it, and the best of
 * all if one rule fell. A candidate is scored only where its bound beats what is as cheap or cheaper, so that for every
 * sum the best is the best of all candidates, in whatever order they enter: of equals `inOrder` tells. Cloth that our
 * own cautions speak against beats none that they do not.
 */
export class Contest {
  /** What a family's next candidate must beat. */
  readonly toBeat: number[] = [];
  candidates = 0;
  private readonly families: Family[] = [];
  private readonly firstOf = new Map<string, number>();
  private readonly bestWithout = new Map<SiteRule, Scored>();
  private fronts: Scored[][];
  private leader = 0;
  private leaderUncautioned = 0;
  /** What every family's next candidate must beat. */
  private least: number;
  private readonly lanes: number;
  private readonly judges: Judges;
  private readonly worthShowing: number;
  private readonly floor: number;

  /**
   * @param lanes in which cloth is told apart: what is best in one beats nothing in another
   * @param worthShowing candidates that spare less than this share of the best are not pursued
   * @param floor nor are those that spare no more than this [K·h/day]
   */
  constructor(lanes: number, judges: Judges, worthShowing: number, floor: number) {
    this.lanes = lanes;
    this.judges = judges;
    this.worthShowing = worthShowing;
    this.floor = Math.max(ROUNDING, floor);
    this.least = this.floor;
    this.fronts = Array.from({ length: lanes }, () => []);
  }

  standings(): Standings {
    const worth = (one: Scored) =>
      one.spared > this.worthShowing * (one.cautioned ? this.leader : this.leaderUncautioned);
    return {
      best: this.leader,
      fronts: this.fronts.map((front) => front.filter(worth).sort(inOrder)),
      without: [...this.bestWithout]
        .filter(([, { spared }]) => spared > WORTH_A_PRICE * this.leader)
        .sort(([one], [other]) => compareTexts(one, other)),
      candidates: this.candidates,
    };
  }

  /**
   * The family of a form in the first lane; those of the other lanes follow it.
   * @param key the same for all that has this form @param sample one of them
   */
  familyOf(key: string, sample: () => Cloth): number {
    let first = this.firstOf.get(key);
    if (first !== undefined) return first;
    first = this.families.length;
    this.firstOf.set(key, first);
    for (let lane = 0; lane < this.lanes; lane++) {
      this.families.push({ lane, sample, cost: null, cautioned: true, tooDear: false });
      this.toBeat.push(this.least);
    }
    return first;
  }

  /** Whether anything with a bound may be worth a look, whatever its family. */
  mayMatter(bound: number): boolean {
    return bound > this.least;
  }

  /** Whether a bound may be worth a closer look: all that can be told where nobody asked for the price yet. */
  mayBeat(family: number, bound: number): boolean {
    return bound > this.toBeat[family];
  }

  /** Whether a place breaks two rules, as far as is known: a rule of its own, and its family is too dear anywhere. */
  breaksTwo(family: number, place: Place): boolean {
    return (place === 'hidden' || place === 'height') && this.families[family].tooDear;
  }

  /** Whether it is. Asks for the price, which is dear. */
  private beats(family: number, bound: number): boolean {
    if (bound <= this.toBeat[family]) return false;
    const asked = this.families[family];
    if (asked.cost !== null) return true;
    const sample = asked.sample();
    asked.cost = this.judges.leastCost(sample);
    asked.cautioned = this.judges.isCautioned(sample);
    asked.tooDear = this.judges.isTooDearAnywhere(sample);
    this.toBeat[family] = this.toBeatBy(asked, asked.cost);
    return bound > this.toBeat[family];
  }

  /** Whether a candidate that breaks one rule would be the best without that rule. */
  beatsWithout(rule: SiteRule, bound: number): boolean {
    return bound > this.toBeatWithout(rule);
  }

  /**
   * Asks the cheap questions first, and the dear ones only of what would win by what it spares.
   * @param place what is known of it from nodes
   * @param score works out what the candidate spares, or, where that is no more than `enough`, some value of at most
   *   that; called only where it may matter
   */
  enter(
    family: number,
    kind: ClothKind,
    cloth: Cloth,
    place: Place,
    bound: number,
    score: (enough: number) => number,
  ): void {
    const early = this.earlyObjections(family, cloth, place, bound);
    if (early === 'ground' || early.length > 1 || (early.length === 1 && !this.beatsWithout(early[0], bound))) return;
    if (!this.beats(family, bound)) return;
    const { lane, cautioned } = this.families[family];
    const cost = this.judges.cost(cloth);
    const objections: readonly SiteRule[] = this.judges.isTooDear([cloth]) ? [...early, 'budget'] : early;
    if (objections.length > 1) return;
    // What keeps a rule must beat what is no dearer than it is where it stands.
    const enough = objections.length === 0 ? this.threshold(lane, cost, cautioned) : this.toBeatWithout(objections[0]);
    const spared = bound > enough ? score(enough) : 0;
    if (spared <= enough) return;
    const entry = { cloth, kind, spared, cost, cautioned };
    // Its own price is sooner told than its light; what is beaten would not be the best without a rule either.
    const wins = !this.isBeaten(lane, entry);
    if (objections.length === 0 && !wins) return;
    const broken = this.brokenBy(cloth, objections, spared);
    if (broken === null && wins) this.win(lane, entry);
    else if (broken?.length === 1) this.keepWithout(broken[0], entry);
  }

  /** What tells about the place quickly, and how much is seen of what is seen. */
  private earlyObjections(family: number, cloth: Cloth, place: Place, bound: number): 'ground' | readonly SiteRule[] {
    const isSeen = place === 'hidden' || (place !== 'free' && !this.judges.isHidden(cloth));
    // How much of it is seen is dear to ask, and what is too dear besides is no candidate.
    if (isSeen && this.families[family].tooDear) return ['hidden', 'budget'];
    const seen = isSeen ? [this.seenHow(cloth, bound)] : [];
    // What is seen and cannot matter so is not asked about the ground, which is dearer.
    if (isSeen && !this.beatsWithout(seen[0], bound)) return seen;
    const early = this.judges.objectionsToPlace(cloth);
    return early === 'ground' ? early : [...early, ...seen];
  }

  private seenHow(cloth: Cloth, bound: number): 'glimpsed' | 'hidden' {
    return this.beatsWithout('glimpsed', bound) && this.judges.isGlimpsed(cloth) ? 'glimpsed' : 'hidden';
  }

  /**
   * The rules that cloth breaks which spares so much, all of them where it matters; `null`: it keeps every rule.
   * @param told of `earlyObjections`, and its price
   */
  private brokenBy(cloth: Cloth, told: readonly SiteRule[], spared: number): readonly SiteRule[] | null {
    if (!this.judges.postsStand(cloth)) return [];
    const seen = this.judges.isHidden(cloth) ? [] : [this.seenHow(cloth, spared)];
    const broken = [...told.filter((rule) => rule !== 'hidden' && rule !== 'glimpsed'), ...seen];
    if (broken.length > 1 || (broken.length === 1 && !this.beatsWithout(broken[0], spared))) return [];
    const kept = this.judges.keptFromBy([cloth]);
    if (kept === null) return broken.length === 0 ? null : broken;
    // What breaks one rule is no candidate if it breaks a second.
    if (kept === 'ground' || broken.length === 1 || !this.beatsWithout(kept, spared)) return [];
    const late = this.judges.lateObjections([cloth]);
    return late === 'ground' ? [] : late;
  }

  /** What a family's next candidate must beat at its price. */
  private toBeatBy({ lane, cautioned, tooDear }: Family, cost: number): number {
    return tooDear ? this.toBeatWithout('budget') : this.threshold(lane, cost, cautioned);
  }

  /** What cloth at a price must beat, but for rounding. */
  private threshold(lane: number, cost: number, cautioned: boolean): number {
    if (cost === Infinity) return Infinity;
    let most = this.worthShowing * (cautioned ? this.leader : this.leaderUncautioned);
    for (const other of this.fronts[lane])
      if (other.cost <= cost && (cautioned || !other.cautioned)) most = Math.max(most, other.spared);
    return Math.max(this.floor, most - ROUNDING);
  }

  private isBeaten(lane: number, entry: Scored): boolean {
    return entry.cost === Infinity || this.fronts[lane].some((other) => beats(other, entry));
  }

  private win(lane: number, entry: Scored): void {
    this.fronts[lane] = [...this.fronts[lane].filter((other) => !beats(entry, other)), entry];
    const leads = entry.spared > this.leader || (!entry.cautioned && entry.spared > this.leaderUncautioned);
    this.leader = Math.max(this.leader, entry.spared);
    if (!entry.cautioned) this.leaderUncautioned = Math.max(this.leaderUncautioned, entry.spared);
    this.least = Math.max(this.floor, this.worthShowing * this.leaderUncautioned - ROUNDING);
    for (const [f, family] of this.families.entries()) {
      if (family.cost === null) this.toBeat[f] = Math.max(this.toBeat[f], this.least);
      else if (leads || family.lane === lane) this.toBeat[f] = this.toBeatBy(family, family.cost);
    }
  }

  private keepWithout(rule: SiteRule, scored: Scored): void {
    // Who may be seen plainly may be seen a little.
    for (const fallen of rule === 'glimpsed' ? (['glimpsed', 'hidden'] as const) : [rule]) {
      const best = this.bestWithout.get(fallen);
      if (best === undefined || inOrder(scored, best) < 0) this.bestWithout.set(fallen, scored);
    }
    if (rule !== 'budget') return;
    for (const [f, { cost, tooDear }] of this.families.entries())
      if (cost !== null && tooDear) this.toBeat[f] = this.toBeatWithout(rule);
  }

  private toBeatWithout(rule: SiteRule): number {
    return (
      Math.max(WORTH_A_PRICE * this.leader, this.bestWithout.get(rule)?.spared ?? 0, this.floor + ROUNDING) - ROUNDING
    );
  }
}

/** Whether the one leaves no reason to hang the other, in the same lane. */
function beats(one: Scored, other: Scored): boolean {
  if (one.cost > other.cost || one.spared < other.spared || (one.cautioned && !other.cautioned)) return false;
  const isEqual = one.cost === other.cost && one.spared === other.spared && one.cautioned === other.cautioned;
  return !isEqual || inOrder(one, other) <= 0;
}

/** What spares most first; of equals the cheapest, the thinnest, the lowest, and then by its text. */
export function inOrder(one: Scored, other: Scored): number {
  return (
    other.spared - one.spared ||
    one.cost - other.cost ||
    one.cloth.density - other.cloth.density ||
    one.cloth.height - other.cloth.height ||
    compareTexts(JSON.stringify(one.cloth), JSON.stringify(other.cloth))
  );
}

function compareTexts(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}
