const place = "athwart.trainee";

interface Kept {
  trainee: string;
  /** What was typed, by course, trainee and task, then by answer. */
  answers: Record<string, Record<string, string>>;
}

/** Who works here and what was typed so far, kept in this browser and sent nowhere. */
export class TraineeMemory {
  private kept: Kept = { trainee: "", answers: {} };

  constructor() {
    try {
      const found: unknown = JSON.parse(localStorage.getItem(place) ?? "{}");
      if (isKept(found)) this.kept = found;
    } catch {
      // A browser that keeps nothing, or another program's text under this name: the answers last as long as the window.
    }
  }

  get trainee(): string {
    return this.kept.trainee;
  }

  setTrainee(trainee: string): void {
    this.kept.trainee = trainee;
    this.keep();
  }

  typed(work: string, answer: string): string {
    return this.kept.answers[work]?.[answer] ?? "";
  }

  type(work: string, answer: string, text: string): void {
    this.kept.answers[work] = { ...this.kept.answers[work], [answer]: text };
    this.keep();
  }

  /** Forgets the trainee and everything that was typed. */
  forget(): void {
    this.kept = { trainee: "", answers: {} };
    this.keep();
  }

  private keep(): void {
    try {
      localStorage.setItem(place, JSON.stringify(this.kept));
    } catch {
      // As above.
    }
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isKept = (value: unknown): value is Kept =>
  isRecord(value) &&
  typeof value.trainee === "string" &&
  isRecord(value.answers) &&
  Object.values(value.answers).every(
    (typed) => isRecord(typed) && Object.values(typed).every((text) => typeof text === "string"),
  );
