import { turned } from '../../engine/index.ts';
import type { Feature, Plan, PlanPoint } from '../../engine/index.ts';
import { pointToMillimetre, toMillimetre } from './snap.ts';

function withFeature(plan: Plan, id: string, to: (f: Feature) => Feature): Plan {
  return { ...plan, features: plan.features.map((f) => (f.id === id ? to(f) : f)) };
}
function mapPoints(f: Feature, to: (p: PlanPoint) => PlanPoint): Feature {
  switch (f.kind) {
    case 'wall': case 'hedge': case 'screen': case 'eye': return { ...f, path: f.path.map(to) };
    case 'building': case 'bed': case 'keepout': return { ...f, outline: f.outline.map(to) };
    case 'canopy': return { ...f, center: to(f.center) };
    default: return { ...f, at: to(f.at) };
  }
}
export function newId(plan: Plan, base: string): string {
  const taken = new Set(plan.features.map(({ id }) => id));
  for (let n = 1; ; n += 1) if (!taken.has(`${base}-${n}`)) return `${base}-${n}`;
}
export function addFeature(plan: Plan, feature: Omit<Feature, 'id'>): { plan: Plan; id: string } {
  const id = newId(plan, feature.kind);
  return { id, plan: { ...plan, features: [...plan.features, { id, ...feature } as Feature] } };
}
export function changeFeature(plan: Plan, id: string, changes: Partial<Record<string, unknown>>): Plan {
  return withFeature(plan, id, (f) => {
    const next: Record<string, unknown> = { ...f, ...changes };
    for (const key of Object.keys(next)) if (next[key] === undefined) delete next[key];
    return next as unknown as Feature;
  });
}
export function moveFeature(plan: Plan, id: string, by: PlanPoint): Plan {
  return withFeature(plan, id, (f) => mapPoints(f, (p) => pointToMillimetre([p[0] + by[0], p[1] + by[1]])));
}
export function turnFeature(plan: Plan, id: string, turn: number, pivot: PlanPoint): Plan {
  return withFeature(plan, id, (f) => {
    const next = mapPoints(f, (p) => pointToMillimetre(turned(p, pivot, turn)));
    return next.kind === 'canopy' ? { ...next, turn: toMillimetre(((next.turn ?? 0) + turn) % 360) } : next;
  });
}
function corners(f: Feature, to: (points: readonly PlanPoint[]) => readonly PlanPoint[]): Feature {
  if ('path' in f) return { ...f, path: to(f.path) };
  if ('outline' in f) return { ...f, outline: to(f.outline) };
  return f;
}
export function moveCorner(plan: Plan, id: string, index: number, to: PlanPoint): Plan {
  return withFeature(plan, id, (f) => corners(f, (ps) => {
    const closed = ps.length > 3 && ps[0][0] === ps.at(-1)![0] && ps[0][1] === ps.at(-1)![1];
    return ps.map((p, i) => (i === index || (closed && (index === 0 || index === ps.length - 1) && (i === 0 || i === ps.length - 1)) ? to : p));
  }));
}
export function insertCorner(plan: Plan, id: string, index: number, at: PlanPoint): Plan {
  return withFeature(plan, id, (f) => corners(f, (ps) => ps.toSpliced(index, 0, at)));
}
export function removeCorner(plan: Plan, id: string, index: number): Plan {
  return withFeature(plan, id, (f) => corners(f, (ps) => ps.toSpliced(index, 1)));
}
export function removeFeature(plan: Plan, id: string): Plan {
  return { ...plan, features: plan.features.filter((f) => f.id !== id) };
}
export function duplicateFeature(plan: Plan, id: string, by: PlanPoint): { plan: Plan; id: string } {
  const found = plan.features.find((f) => f.id === id)!;
  const { id: _, ...rest } = found;
  const added = addFeature(plan, rest);
  return { id: added.id, plan: moveFeature(added.plan, added.id, by) };
}
