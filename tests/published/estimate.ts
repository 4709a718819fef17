/** Checks of three-point estimates and of spreads that move together. */

/**
 * Activities: network, name, low, likely, high, mean, variance. 1: Taylor, Introduction to Management Science, solved
 * PERT example, means and variances as printed. 2: a public worked exercise with 14 activities, its three estimates
 * read there, mean and variance by the formulas.
 */
export const activities: readonly (readonly [
  network: number,
  name: string,
  low: number,
  likely: number,
  high: number,
  mean: number,
  variance: number,
])[] = [
  [1, "1", 5, 8, 17, 9, 4],
  [1, "2", 7, 10, 13, 10, 1],
  [1, "3", 3, 5, 7, 5, 0.4444],
  [1, "4", 1, 3, 5, 3, 0.4444],
  [1, "5", 4, 6, 8, 6, 0.4444],
  [1, "6", 3, 3, 3, 3, 0],
  [1, "7", 3, 4, 5, 4, 0.1111],
  [2, "A", 5, 5, 7, 5.3333, 0.1111],
  [2, "B", 1, 2, 5, 2.3333, 0.4444],
  [2, "C", 5, 5, 5, 5, 0],
  [2, "D", 4, 8, 13, 8.1667, 2.25],
  [2, "E", 1, 10, 17, 9.6667, 7.1111],
  [2, "F", 1, 5, 7, 4.6667, 1],
  [2, "G", 2, 6, 9, 5.8333, 1.3611],
  [2, "H", 4, 4, 6, 4.3333, 0.1111],
  [2, "I", 2, 7, 10, 6.6667, 1.7778],
  [2, "J", 2, 4, 7, 4.1667, 0.6944],
  [2, "K", 6, 10, 13, 9.8333, 1.3611],
  [2, "L", 2, 6, 6, 5.3333, 0.4444],
  [2, "M", 2, 2, 3, 2.1667, 0.0278],
  [2, "N", 7, 7, 12, 7.8333, 0.6944],
];

/** Equal lines: how many, how far they move together, spread over that of independent lines. Identity √(1 + ρ(n − 1)). */
export const equalLines: readonly (readonly [lines: number, common: number, ratio: number])[] = [
  [2, 0, 1],
  [2, 0.1, 1.0488],
  [2, 0.2, 1.0954],
  [2, 0.3, 1.1402],
  [2, 0.5, 1.2247],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: as the table prints it
  [2, 1, 1.4142],
  [4, 0, 1],
  [4, 0.1, 1.1402],
  [4, 0.2, 1.2649],
  [4, 0.3, 1.3784],
  [4, 0.5, 1.5811],
  [4, 1, 2],
  [6, 0, 1],
  [6, 0.1, 1.2247],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: as the table prints it
  [6, 0.2, 1.4142],
  [6, 0.3, 1.5811],
  [6, 0.5, 1.8708],
  [6, 1, 2.4495],
  [9, 0, 1],
  [9, 0.1, 1.3416],
  [9, 0.2, 1.6125],
  [9, 0.3, 1.8439],
  [9, 0.5, 2.2361],
  [9, 1, 3],
  [12, 0, 1],
  [12, 0.1, 1.4491],
  [12, 0.2, 1.7889],
  [12, 0.3, 2.0736],
  [12, 0.5, 2.5495],
  [12, 1, 3.4641],
  [20, 0, 1],
  [20, 0.1, 1.7029],
  [20, 0.2, 2.1909],
  [20, 0.3, 2.5884],
  [20, 0.5, 3.2404],
  [20, 1, 4.4721],
  [30, 0, 1],
  [30, 0.1, 1.9748],
  [30, 0.2, 2.6077],
  [30, 0.3, 3.1145],
  [30, 0.5, 3.937],
  [30, 1, 5.4772],
];

/** Nine invented lines of an estimate: variance of a triangular spread, money². */
export const nineVariances: readonly number[] = [
  2716.667, 28888.889, 28888.889, 77222.222, 65000.0, 21666.667, 1805.556, 10972.222, 10555.556,
];

/** Sum of their means. */
export const nineMean = 9993.3333;

/** Those nine lines: how far they move together, spread, then what holds in 50, 80 and 90 of 100 cases, and 80 of 100 over the sum of the likeliest, 9030. Identity and the normal table. */
export const nineLines: readonly (readonly [
  common: number,
  spread: number,
  half: number,
  eighty: number,
  ninety: number,
  over: number,
])[] = [
  [0, 497.7, 9993, 10412, 10631, 1382],
  [0.1, 630.7, 9993, 10524, 10802, 1494],
  [0.2, 740.1, 9993, 10616, 10942, 1586],
  [0.25, 789.1, 9993, 10657, 11005, 1627],
  [0.3, 835.3, 9993, 10696, 11064, 1666],
  [0.5, 998.9, 9993, 10834, 11273, 1804],
  [0.75, 1171.7, 9993, 10979, 11495, 1949],
  [1, 1322.1, 9993, 11106, 11688, 2076],
];

/** Chance that a normal sum stays below a limit: source, mean, variance, limit, chance, half a unit of its last digit. */
export const chances: readonly (readonly [
  source: string,
  mean: number,
  variance: number,
  limit: number,
  chance: number,
  within: number,
])[] = [
  ["Taylor, Introduction to Management Science (prints .9633 with z rounded)", 24, 5, 28, 0.9632, 5e-5],
  ["public yacht-building exercise", 21, 4, 17, 0.0228, 5e-5],
  ["public yacht-building exercise", 21, 4, 20, 0.3085, 5e-5],
  ["public yacht-building exercise", 21, 4, 23, 0.8413, 5e-5],
  ["public yacht-building exercise", 21, 4, 25, 0.9772, 5e-5],
  ["Hillier and Lieberman, construction example, from memory", 44, 9, 47, 0.8413, 5e-5],
  ["Heizer and Render, paper mill example, from memory", 15, 3.11, 16, 0.7157, 2e-3],
  ["public worked exercise with 14 activities", 50.8333, 11.1944, 55, 0.8935, 5e-5],
  ["public exercise, P(T ≥ 224) = 0.1587", 214, 100, 224, 0.8413, 5e-5],
  ["project-management study text, one spread", 103, 14.98, 106.87, 0.8413, 5e-4],
  ["project-management study text, two spreads", 103, 14.98, 110.74, 0.9772, 5e-4],
];
