/** How many letters must be changed, put in or left out to make one text of the other. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let k = 1; k <= b.length; k++) {
      const same = a[i - 1] === b[k - 1] ? 0 : 1;
      next.push(Math.min((row[k] ?? 0) + 1, (next[k - 1] ?? 0) + 1, (row[k - 1] ?? 0) + same));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

/** The names that are spelt most like a wrong one, at most three; none when all are far off. */
export function namesNear(wrong: string, names: readonly string[]): string[] {
  const [low, most] = [wrong.toLowerCase(), Math.max(2, Math.floor(wrong.length / 4))];
  return names
    .map((name) => ({ name, off: distance(low, name.toLowerCase()) }))
    .filter(({ off }) => off <= most)
    .sort((a, b) => a.off - b.off)
    .slice(0, 3)
    .map(({ name }) => name);
}
