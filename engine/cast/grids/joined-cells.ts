/** Parts of a grid: marked cells joined by their edges. */
export interface JoinedCells {
  /** The cells of each part, lowest first; the part with the lowest cell first. */
  parts(marked: Uint8Array): number[][];
  /** The cells of the largest part, marked. */
  largest(marked: Uint8Array): Uint8Array;
  /** Whether one part holds that share of all marked cells. */
  hangsTogether(marked: Uint8Array, share: number): boolean;
}

/** Answers for any marks on grids of one size, so that asking again takes no new room. */
export function joinedCells(columns: number, rows: number): JoinedCells {
  // The part reached last stands at its beginning.
  const queue = new Int32Array(columns * rows);
  // Which filling a cell was reached by: those of earlier questions are lower.
  const reached = new Int32Array(columns * rows);
  let filling = 0;
  /** Reaches all that is joined to a cell. @returns how many */
  const fill = (marked: Uint8Array, seed: number): number => {
    filling += 1;
    let size = 0;
    const reach = (index: number): void => {
      if (marked[index] !== 1 || reached[index] === filling) return;
      reached[index] = filling;
      queue[size++] = index;
    };
    reach(seed);
    for (let next = 0; next < size; next++) {
      const index = queue[next];
      const i = index % columns;
      if (i > 0) reach(index - 1);
      if (i < columns - 1) reach(index + 1);
      if (index >= columns) reach(index - columns);
      if (index < marked.length - columns) reach(index + columns);
    }
    return size;
  };
  /** Fills part after part, until one is told that it is enough. */
  const eachPart = (marked: Uint8Array, told: (size: number) => 'enough' | 'more'): void => {
    const before = filling;
    for (let seed = 0; seed < marked.length; seed++)
      if (marked[seed] === 1 && reached[seed] <= before && told(fill(marked, seed)) === 'enough') return;
  };
  return {
    parts(marked) {
      const found: number[][] = [];
      eachPart(marked, (size) => {
        found.push(Array.from(queue.subarray(0, size).toSorted()));
        return 'more';
      });
      return found;
    },
    largest(marked) {
      let [best, most] = [0, 0];
      eachPart(marked, (size) => {
        if (size > most) [best, most] = [filling, size];
        return 'more';
      });
      return Uint8Array.from(reached, (each) => (best > 0 && each === best ? 1 : 0));
    },
    hangsTogether(marked, share) {
      let total = 0;
      for (let index = 0; index < marked.length; index++) total += marked[index];
      let [most, elsewhere] = [0, 0];
      eachPart(marked, (size) => {
        most = Math.max(most, size);
        elsewhere += size;
        // The rest cannot make it up.
        return most >= share * total || elsewhere > (1 - share) * total ? 'enough' : 'more';
      });
      return most >= share * total;
    },
  };
}
