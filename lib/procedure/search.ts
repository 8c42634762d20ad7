/**
 * Finds by halving.
 *
 * @param isReached false up to some index, true from there on
 * @returns the first index below `count` at which it is true; `count` where it is true for none
 */
export const firstIndex = (count: number, isReached: (index: number) => boolean): number => {
  let [low, high] = [0, count]
  while (low < high) {
    const middle = (low + high) >> 1
    if (isReached(middle)) high = middle
    else low = middle + 1
  }
  return low
}
