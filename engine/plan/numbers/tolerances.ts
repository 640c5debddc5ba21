/** What rounding may do to metres, hours, doses and money: far more than it does, far less than counts. */
export const ROUNDING = 1e-9;

/** How many whole ones it takes: what is over by rounding alone takes no further one. */
export function countUp(amount: number): number {
  return Math.ceil(amount - ROUNDING);
}
