/** A stretch that wants its middle at `at` and needs `size`. */
export interface Wish {
  readonly at: number;
  readonly size: number;
}

/**
 * Moves stretches along a line until none overlaps another, each as near to its wish as its neighbours let it,
 * and inside `low` .. `high` where there is room for all of them; where there is not, they run past `high`.
 *
 * @returns the middles, in the order of the wishes.
 */
export function spread(wishes: readonly Wish[], low: number, high: number): number[] {
  const order = wishes.map((wish, index) => ({ ...wish, index })).sort((a, b) => a.at - b.at || a.index - b.index);
  // Neighbours that would overlap become one block, placed at the mean of what its members wish.
  const blocks: { start: number; size: number; sum: number; members: typeof order }[] = [];
  const place = (block: { sum: number; size: number; members: typeof order }): number =>
    Math.max(low, Math.min(block.sum / block.members.length, high - block.size));
  for (const wish of order) {
    let block = { start: 0, size: wish.size, sum: wish.at - wish.size / 2, members: [wish] };
    block.start = place(block);
    for (let last = blocks.at(-1); last && last.start + last.size > block.start; last = blocks.at(-1)) {
      blocks.pop();
      const members = [...last.members, ...block.members];
      const sum = last.sum + block.sum - last.size * block.members.length;
      block = { start: 0, size: last.size + block.size, sum, members };
      block.start = place(block);
    }
    blocks.push(block);
  }
  const middles: number[] = [];
  for (const { start, members } of blocks) {
    let next = start;
    for (const { size, index } of members) {
      middles[index] = next + size / 2;
      next += size;
    }
  }
  return middles;
}
