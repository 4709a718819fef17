import { describe, expect, it } from "vitest";
import { amountAt, countOf } from "../../src/course/amount";
import { taskAtWork } from "../../src/course/at-work";
import { numbersFor, numbersTried } from "../../src/course/numbers";
import { isDrawn } from "../../src/figures/figure";
import { figureFor } from "../../src/view/course/rule-figure";
import { trainees, worked } from "../course/course";

/** The push of the wind is a curve and nothing else. */
const withFigure = worked.tasks.filter(({ file }) => file !== "wind-push.csv");

describe("a rule's own figure", { timeout: 60_000 }, () => {
  it.each(withFigure.map((task) => [task.title, task] as const))(
    "%s: is drawn from every trainee's numbers",
    (_, task) => {
      const figures = trainees(20).map((trainee) => figureFor(taskAtWork(numbersFor(worked, task, trainee))));
      expect(figures.filter((figure) => !figure || !isDrawn(figure))).toEqual([]);
      expect(new Set(figures.map((figure) => figure && isDrawn(figure) && figure.svg)).size).toBeGreaterThan(15);
    },
  );

  it.each(withFigure.map((task) => [task.title, task] as const))(
    "%s: moves with the numbers, and holds where a slider ends",
    (_, task) => {
      const { task: tried, drawn, trainee } = taskAtWork(numbersFor(worked, task, "T07"));
      const moved = tried.drawn.flatMap(({ name, amount }) => {
        const shown = [0, countOf(amount) - 1].map((place) => {
          const numbers = numbersTried(tried, trainee, new Map([...drawn, [name, amountAt(amount, place)]]));
          const figure = typeof numbers === "string" ? undefined : figureFor(numbers.numbers);
          return figure && isDrawn(figure) ? figure.says : "";
        });
        return new Set(shown).size === 2 ? [name] : [];
      });
      expect(moved.length).toBeGreaterThanOrEqual(2);
    },
  );
});
