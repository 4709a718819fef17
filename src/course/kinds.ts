/** What notebook.json calls a page that holds a task. */
export const taskKind = "task";

/** What it calls a page that holds one task as a trainee's file has it: asked, and not solved. */
export const askedKind = "asked";
