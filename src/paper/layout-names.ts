/** The sheets that go out on paper, by the names that the terminal takes, in the order of the job. */
export const layoutTitles = {
  "job-sheet": "Job sheet",
  materials: "Materials list",
  estimate: "Estimate for the customer",
  "hand-over": "Hand-over record",
  service: "Service card",
  templates: "Full-size templates",
} as const;

export type LayoutName = keyof typeof layoutTitles;

export const layoutNames = Object.keys(layoutTitles) as readonly LayoutName[];

export const isLayoutName = (name: string): name is LayoutName => Object.hasOwn(layoutTitles, name);
