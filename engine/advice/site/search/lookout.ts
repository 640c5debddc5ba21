import type { Cloth } from '../../../plan/types.ts';
import type { ClothKind } from '../types.ts';
import type { Contest, Place } from './contest.ts';
import { mayMatter } from './place-for.ts';

/** Candidates worth a look are gathered up to about this many before they are looked at. */
const GATHERED = 4_000;
/** Looks between two words of how far the search has come: a few milliseconds. */
const LOOKS_A_WORD = 50;

/** What a look needs to know about places of one kind of cloth. */
export interface Sort<Where> {
  readonly kind: ClothKind;
  clothAt(where: Where): Cloth;
  /** Whether the plants may keep their light, or it would be the best if they need not; absent: it is not asked. */
  leavesLight?(where: Where, bound: number): boolean;
  /** On the search's points; of what spares no more than `enough` some value of at most that. [K·h/day] */
  sparedAt(where: Where, bound: number, enough: number): number;
}

interface Candidate<Where> {
  readonly family: number;
  readonly bound: number;
  readonly where: Where;
  readonly place: Place;
}

/** Gathers candidates whose bound is worth a look and enters them in the contest, the most promising first. */
export class Lookout<Where> {
  private gathered: Candidate<Where>[] = [];
  private looks = 0;
  private readonly contest: Contest;
  private readonly sort: Sort<Where>;
  private readonly tell: () => void;

  constructor(contest: Contest, sort: Sort<Where>, tell: () => void) {
    this.contest = contest;
    this.sort = sort;
    this.tell = tell;
  }

  add(family: number, bound: number, where: Where, place: Place): void {
    if (!this.contest.breaksTwo(family, place)) this.gathered.push({ family, bound, where, place });
  }

  /** Looks if many are gathered: their scores raise what the next must beat. */
  lookIfMany(): void {
    if (this.gathered.length >= GATHERED) this.look();
  }

  look(): void {
    const { contest, sort } = this;
    for (const { family, bound, where, place } of this.gathered.sort((a, b) => b.bound - a.bound)) {
      if (!contest.mayBeat(family, bound)) continue;
      if (!mayMatter(contest, place, bound) || contest.breaksTwo(family, place)) continue;
      if (sort.leavesLight?.(where, bound) === false) continue;
      const score = (enough: number) => sort.sparedAt(where, bound, enough);
      contest.enter(family, sort.kind, sort.clothAt(where), place, bound, score);
      if (++this.looks % LOOKS_A_WORD === 0) this.tell();
    }
    this.gathered = [];
    this.tell();
  }
}
