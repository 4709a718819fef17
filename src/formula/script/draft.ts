import { readExpression } from "../read";
import { expressionScript, testScript } from "./expression";

/** How a draft names its variables and gives up: the text of one function, or a part of a longer one. */
export interface DraftStyle {
  /** Stands before the numbers of all variables, so that two drafts can share a scope. */
  readonly prefix: string;
  /** Statement that refuses. */
  readonly refuse: string;
}

/**
 * The text of a function while its steps are written: lines, variables by the names of the definition, and the
 * tables that the lines read. Names never reach the text; variables are numbered.
 */
export class Draft {
  readonly lines: string[] = [];
  readonly tables: string[] = [];
  private readonly variables = new Map<string, string>();
  private made = 0;

  constructor(readonly style: DraftStyle) {}

  /** A variable that no name of the definition stands for. */
  spare(): string {
    return `${this.style.prefix}v${this.made++}`;
  }

  /** Gives a name its variable. @throws Error when the name is taken. */
  add(name: string): string {
    if (this.variables.has(name) || name === "pi") throw new Error(`${name} is defined twice`);
    const variable = this.spare();
    this.variables.set(name, variable);
    return variable;
  }

  /** Lets a name stand for a text, for example a constant for its digits. */
  stand(name: string, text: string): void {
    this.variables.set(name, text);
  }

  /** The variable of a name. @throws Error when it is not defined yet. */
  at(name: string): string {
    const variable = this.variables.get(name);
    if (variable === undefined) throw new Error(`${name} is not defined before its use`);
    return variable;
  }

  line(text: string): void {
    this.lines.push(text);
  }

  /** Writes data once, before the function, and gives its variable. */
  table(data: string): string {
    const name = `${this.style.prefix}t${this.tables.length}`;
    this.tables.push(`const ${name}=${data};`);
    return name;
  }

  run(text: string): string {
    return expressionScript(readExpression(text), this.variables);
  }

  test(text: string): string {
    return testScript(readExpression(text), this.variables);
  }

  refuseUnless(test: string): void {
    this.line(`if(!(${test})){${this.style.refuse}}`);
  }
}
