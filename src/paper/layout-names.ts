import { say } from "../words/say";

/** The sheets that go out on paper, by the names that the terminal takes, in the order of the job. */
export const layoutTitles = {
  "job-sheet": say`Job sheet`,
  materials: say`Materials list`,
  estimate: say`Estimate for the customer`,
  "hand-over": say`Hand-over record`,
  service: say`Service card`,
  templates: say`Full-size templates`,
} as const;

export type LayoutName = keyof typeof layoutTitles;

export const layoutNames = Object.keys(layoutTitles) as readonly LayoutName[];

export const isLayoutName = (name: string): name is LayoutName => Object.hasOwn(layoutTitles, name);
