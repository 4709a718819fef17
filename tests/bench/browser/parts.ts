export { editsBench } from "./edits";
export { openingBench } from "./opening";
export { inBrowser } from "./served";
export { studyBench } from "./study";
