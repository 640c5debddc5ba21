import type { CanopyNodes } from './canopy-grid.ts';

/** What each post of a canopy holds down, by column and row; shares add up to 1, and 0 where no post stands. */
export type PostShares = (column: number, row: number) => number;

/**
 * A post holds down the cloth half-way to its neighbours. Where one is left out, the two rails that cross there take
 * half of its share each, and give it to the posts next along them as a lever does: more to the nearer. The halves are
 * this project's own: how the rails part it depends on how stiff each is.
 */
export function postShares({ across, along, role, inTheWay }: CanopyNodes): PostShares {
  const whole = { corner: 1, edge: 2, inner: 4 };
  const cells = 4 * across * along;
  const place = (column: number, row: number): number => row * (across + 1) + column;
  const shares = new Float64Array((across + 1) * (along + 1));
  const give = (column: number, row: number, share: number): void => void (shares[place(column, row)] += share);
  /** Steps from a place to the next post that stands. Outer ones always do. */
  const stepsTo = (column: number, row: number, right: number, forward: number): number => {
    let steps = 1;
    while (inTheWay(column + steps * right, row + steps * forward) !== undefined) steps++;
    return steps;
  };
  for (let row = 0; row <= along; row++) {
    for (let column = 0; column <= across; column++) {
      const share = whole[role(column, row)] / cells;
      if (inTheWay(column, row) === undefined) {
        give(column, row, share);
        continue;
      }
      for (const [right, forward] of [
        [1, 0],
        [0, 1],
      ] as const) {
        const ahead = stepsTo(column, row, right, forward);
        const behind = stepsTo(column, row, -right, -forward);
        give(column + ahead * right, row + ahead * forward, ((share / 2) * behind) / (ahead + behind));
        give(column - behind * right, row - behind * forward, ((share / 2) * ahead) / (ahead + behind));
      }
    }
  }
  return (column, row) => shares[place(column, row)];
}
