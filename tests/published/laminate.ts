/**
 * Checks of plies and laminates. The thickness formula and the fibre fractions are those of ISO 12215-5:2008, Annex C,
 * equation C.1 and table C.2, as read in a public implementation, not in the standard; what follows from them by
 * the rule of mixtures is worked out here to the digits shown.
 */

/** Fabric, dry g/m2, fibre fraction; mm with polyester 1.20, epoxy 1.15, and glass 2.54 with epoxy 1.10; then g/m2 of resin, fibre volume, kg/dm3, kg/m2 of laminate. */
export const layers: readonly (readonly [
  fabric: string,
  grams: number,
  fraction: number,
  polyester: number,
  epoxy: number,
  lightEpoxy: number,
  resin: number,
  volume: number,
  density: number,
  whole: number,
])[] = [
  ["CSM 225", 225, 0.3, 0.5254, 0.5444, 0.5659, 525, 0.1673, 1.4275, 0.75],
  ["CSM 300", 300, 0.3, 0.7005, 0.7259, 0.7545, 700, 0.1673, 1.4275, 1.0],
  ["CSM 450", 450, 0.3, 1.0508, 1.0888, 1.1317, 1050, 0.1673, 1.4275, 1.5],
  ["CSM 450 complex surface", 450, 0.25, 1.3008, 1.3497, 1.4044, 1350, 0.1351, 1.3838, 1.8],
  ["CSM 600", 600, 0.3, 1.401, 1.4518, 1.5089, 1400, 0.1673, 1.4275, 2.0],
  ["CSM 900", 900, 0.3, 2.1016, 2.1776, 2.2634, 2100, 0.1673, 1.4275, 3.0],
  ["WR 600", 600, 0.48, 0.776, 0.7996, 0.8271, 650, 0.302, 1.6107, 1.25],
  ["WR 800", 800, 0.48, 1.0347, 1.0661, 1.1028, 866.7, 0.302, 1.6107, 1.6667],
  ["WR 600 complex surface", 600, 0.36, 1.1233, 1.1619, 1.2059, 1066.7, 0.2087, 1.4838, 1.6667],
  ["biaxial 400", 400, 0.5, 0.4896, 0.5041, 0.5211, 400, 0.3191, 1.634, 0.8],
  ["biaxial 600", 600, 0.5, 0.7344, 0.7561, 0.7817, 600, 0.3191, 1.634, 1.2],
  ["biaxial 800", 800, 0.5, 0.9792, 1.0082, 1.0422, 800, 0.3191, 1.634, 1.6],
  ["biaxial 600 complex", 600, 0.38, 1.0502, 1.0856, 1.1262, 978.9, 0.2232, 1.5035, 1.5789],
  ["biaxial 600 vacuum", 600, 0.6, 0.5677, 0.5822, 0.5999, 400, 0.4128, 1.7615, 1.0],
  ["UD 300", 300, 0.55, 0.3217, 0.3306, 0.3413, 245.5, 0.3642, 1.6954, 0.5455],
  ["cloth 200", 200, 0.48, 0.2587, 0.2665, 0.2757, 216.7, 0.302, 1.6107, 0.4167],
  ["combi 600 biax + 225 CSM", 825, 825 / (600 / 0.5 + 225 / 0.3), 1.2598, 1.3005, 1.3475, 1125, 0.2558, 1.5479, 1.95],
];

/** Section of a fillet: inside angle deg, radius mm, mm2. Geometry. */
export const fillets: readonly (readonly [angle: number, radius: number, area: number])[] = [
  [45, 6, 44.5],
  [45, 10, 123.61],
  [45, 15, 278.13],
  [45, 20, 494.45],
  [45, 25, 772.57],
  [60, 6, 24.65],
  [60, 10, 68.49],
  [60, 15, 154.09],
  [60, 20, 273.94],
  [60, 25, 428.03],
  [75, 6, 13.93],
  [75, 10, 38.69],
  [75, 15, 87.06],
  [75, 20, 154.77],
  [75, 25, 241.83],
  [90, 6, 7.73],
  [90, 10, 21.46],
  [90, 15, 48.29],
  [90, 20, 85.84],
  [90, 25, 134.13],
  [105, 6, 4.06],
  [105, 10, 11.28],
  [105, 15, 25.39],
  [105, 20, 45.13],
  [105, 25, 70.52],
  [120, 6, 1.94],
  [120, 10, 5.38],
  [120, 15, 12.09],
  [120, 20, 21.5],
  [120, 25, 33.59],
  [135, 6, 0.77],
  [135, 10, 2.15],
  [135, 15, 4.84],
  [135, 20, 8.61],
  [135, 25, 13.45],
];

/** The joint round a tube: outer radius mm, tilt deg, perimeter mm, mean fillet section over r², long half axis mm, hole m2. Quadrature and geometry. */
export const rings: readonly (readonly [
  radius: number,
  tilt: number,
  edge: number,
  mean: number,
  longHalf: number,
  hole: number,
])[] = [
  [62.5, 0, 392.7, 0.2146, 62.5, 0.012272],
  [62.5, 15, 399.66, 0.2319, 64.7, 0.012705],
  [62.5, 30, 423.62, 0.285, 72.17, 0.01417],
  [62.5, 45, 477.52, 0.3776, 88.39, 0.017355],
  [62.5, 60, 605.53, 0.5116, 125, 0.024544],
  [75, 0, 471.24, 0.2146, 75, 0.017671],
  [75, 15, 479.59, 0.2319, 77.65, 0.018295],
  [75, 30, 508.34, 0.285, 86.6, 0.020405],
  [75, 45, 573.03, 0.3776, 106.07, 0.024991],
  [75, 60, 726.63, 0.5116, 150, 0.035343],
  [92.5, 0, 581.19, 0.2146, 92.5, 0.02688],
  [92.5, 15, 591.49, 0.2319, 95.76, 0.027828],
  [92.5, 30, 626.96, 0.285, 106.81, 0.031039],
  [92.5, 45, 706.74, 0.3776, 130.81, 0.038014],
  [92.5, 60, 896.18, 0.5116, 185, 0.053761],
  [100, 0, 628.32, 0.2146, 100, 0.031416],
  [100, 15, 639.45, 0.2319, 103.53, 0.032524],
  [100, 30, 677.79, 0.285, 115.47, 0.036276],
  [100, 45, 764.04, 0.3776, 141.42, 0.044429],
  [100, 60, 968.84, 0.5116, 200, 0.062832],
  [125, 0, 785.4, 0.2146, 125, 0.049087],
  [125, 15, 799.31, 0.2319, 129.41, 0.050819],
  [125, 30, 847.24, 0.285, 144.34, 0.056681],
  [125, 45, 955.05, 0.3776, 176.78, 0.06942],
  [125, 60, 1211.06, 0.5116, 250, 0.098175],
  [150, 0, 942.48, 0.2146, 150, 0.070686],
  [150, 15, 959.17, 0.2319, 155.29, 0.073179],
  [150, 30, 1016.69, 0.285, 173.21, 0.081621],
  [150, 45, 1146.06, 0.3776, 212.13, 0.099965],
  [150, 60, 1453.27, 0.5116, 300, 0.141372],
];

/** Bevels: hull mm; width at 8:1, 10:1, 12:1, 20:1; ground circle round a tube of 200 mm at 8:1 and 12:1. Geometry. */
export const bevels: readonly (readonly [
  hull: number,
  eight: number,
  ten: number,
  twelve: number,
  twenty: number,
  ground8: number,
  ground12: number,
])[] = [
  [6, 48, 60, 72, 120, 296, 344],
  [8, 64, 80, 96, 160, 328, 392],
  [10, 80, 100, 120, 200, 360, 440],
  [12, 96, 120, 144, 240, 392, 488],
  [15, 120, 150, 180, 300, 440, 560],
  [20, 160, 200, 240, 400, 520, 680],
  [25, 200, 250, 300, 500, 600, 800],
];

/** Pot life against that at 25 °C: temperature, doubling rule, activation energies of 44 and 57 kJ/mol (J. Appl. Polym. Sci. 56(9), 1995, 1029-1037). */
export const potLives: readonly (readonly [temperature: number, doubling: number, low: number, high: number])[] = [
  [10, 2.828, 2.561, 3.381],
  [15, 2.0, 1.851, 2.221],
  [18, 1.625, 1.532, 1.738],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: as the table prints it
  [20, 1.414, 1.354, 1.48],
  [25, 1.0, 1.0, 1.0],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: as the table prints it
  [30, 0.707, 0.746, 0.684],
  [35, 0.5, 0.562, 0.474],
];

/** Lloyd's Register, Special Service Craft, July 2022, Pt 3 Ch 3 s4.4: shell mm, local shell mm, extra plies of multidirectional 600 and of mat 450. */
export const localShells: readonly (readonly [shell: number, local: number, multidirectional: number, mat: number])[] =
  [
    [4, 6.0, 3, 2],
    [5, 7.5, 4, 3],
    [6, 9.0, 5, 3],
    [6.4, 9.6, 5, 4],
    [8, 12.0, 6, 4],
    [10, 15.0, 7, 5],
    [12, 18.0, 9, 6],
    [15, 22.5, 11, 8],
    [20, 30.0, 14, 10],
  ];

/** US Army TM 5-3820-256-24-5, page 10: laminate patched mm; plies of mat of 1.5 and 2 oz/ft2; glass g/m2; mm at 0.30, and that over the laminate. The manual prints 3.2 mm for three of 1.5 oz. */
export const patches: readonly (readonly [
  original: number,
  small: number,
  large: number,
  glass: number,
  thickness: number,
  share: number,
])[] = [
  [2.5, 3, 0, 1373.2, 3.206, 1.283],
  [2.8, 3, 0, 1373.2, 3.206, 1.145],
  [3.0, 2, 1, 1525.8, 3.563, 1.188],
  [3.3, 1, 2, 1678.3, 3.919, 1.188],
  [3.6, 0, 3, 1830.9, 4.275, 1.188],
  [4.3, 2, 2, 2136.1, 4.988, 1.16],
];
