import type { Canopy, Screen } from '../../../plan/types.ts';
import type { ClothKind, SiteRule } from '../types.ts';

/** A piece of cloth and what it spares on the search's points. [K·h/day] */
export interface Scored {
  readonly cloth: Canopy | Screen;
  readonly kind: ClothKind;
  readonly spared: number;
}

/** What judges a candidate besides its bound, the cheap questions first. */
export interface Judges {
  /** 'ground' where it cannot stand, else the rules it breaks by its place and height. */
  objections(cloth: Canopy | Screen): 'ground' | readonly SiteRule[];
  /** Rules that are dear to ask about: light left, budget, of cloth hung together. Asked only of what would win. */
  lateObjections(cloth: readonly (Canopy | Screen)[]): 'ground' | readonly SiteRule[];
}

/** Candidates that spare less than this share of the best are not pursued, whatever their family. */
const WORTH_SHOWING = 0.1;
/** Bounds are sums in another order than scores. */
const ROUNDING = 1e-9;

/**
 * The best of each family of candidates (like in kind, area and place), and the best of all if one rule fell. A
 * candidate is scored only where its bound beats its family's best, so the best of a family is the best of all its
 * candidates.
 */
export class Contest {
  readonly bests: (Scored | null)[];
  /** What a family's next candidate must beat. */
  readonly toBeat: Float64Array;
  /** Best that breaks this rule and no other. */
  readonly without = new Map<SiteRule, Scored>();
  candidates = 0;
  forbidden = 0;
  scored = 0;
  /** The highest bound that was not looked at since enough was scored; 0: all were. */
  unseen = 0;
  private leader = 0;
  /** What every family's next candidate must beat. */
  private least = ROUNDING;
  private readonly judges: Judges;
  private readonly maxScores: number;

  /** @param maxScores candidates scored in full, at most */
  constructor(families: number, judges: Judges, maxScores: number) {
    this.bests = Array.from({ length: families }, () => null);
    this.toBeat = new Float64Array(families).fill(ROUNDING);
    this.judges = judges;
    this.maxScores = maxScores;
  }

  /** Whether anything with a bound may be worth a look, whatever its family. */
  mayMatter(bound: number): boolean {
    return bound > this.least;
  }

  /** Whether a bound is worth a closer look. */
  beats(family: number, bound: number): boolean {
    return bound > this.toBeat[family];
  }

  /** Whether a candidate that breaks one rule would be the best without that rule. */
  beatsWithout(rule: SiteRule, bound: number): boolean {
    return bound > this.toBeatWithout(rule);
  }

  /** @param score works out what the candidate spares; called only where it may matter */
  enter(family: number, kind: ClothKind, cloth: Canopy | Screen, bound: number, score: () => number): void {
    if (!this.isOpen) {
      this.unseen = Math.max(this.unseen, bound);
      return;
    }
    const early = this.judges.objections(cloth);
    if (early === 'ground' || early.length > 1 || (early.length === 1 && !this.beatsWithout(early[0], bound))) {
      this.forbidden++;
      return;
    }
    // What breaks one rule is no candidate if it breaks a second: that is quicker to ask than what it spares.
    if (early.length === 1 && !this.keepsLate(cloth)) {
      this.forbidden++;
      return;
    }
    const spared = score();
    this.scored++;
    if (early.length === 1) {
      this.keepWithout(early[0], { cloth, kind, spared });
      return;
    }
    if (spared <= this.toBeat[family]) return;
    const late = this.judges.lateObjections([cloth]);
    if (late === 'ground' || late.length > 1) this.forbidden++;
    else if (late.length === 1) {
      this.forbidden++;
      this.keepWithout(late[0], { cloth, kind, spared });
    } else this.win(family, { cloth, kind, spared });
  }

  /** Whether more may be scored. */
  get isOpen(): boolean {
    return this.scored < this.maxScores;
  }

  get best(): number {
    return this.leader;
  }

  private win(family: number, scored: Scored): void {
    this.bests[family] = scored;
    this.toBeat[family] = Math.max(this.toBeat[family], scored.spared + ROUNDING);
    if (scored.spared <= this.leader) return;
    this.leader = scored.spared;
    this.least = Math.max(ROUNDING, WORTH_SHOWING * this.leader);
    for (let f = 0; f < this.toBeat.length; f++) this.toBeat[f] = Math.max(this.toBeat[f], this.least);
  }

  private keepWithout(rule: SiteRule, scored: Scored): void {
    // Who may be seen plainly may be seen a little.
    for (const fallen of rule === 'glimpsed' ? (['glimpsed', 'hidden'] as const) : [rule])
      if (this.beatsWithout(fallen, scored.spared)) this.without.set(fallen, scored);
  }

  private toBeatWithout(rule: SiteRule): number {
    return Math.max(this.leader, this.without.get(rule)?.spared ?? 0) + ROUNDING;
  }

  private keepsLate(cloth: Canopy | Screen): boolean {
    const late = this.judges.lateObjections([cloth]);
    return late !== 'ground' && late.length === 0;
  }
}
