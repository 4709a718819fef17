import * as z from "zod";

// The page's content policy forbids text that becomes code, which the library would otherwise try.
z.config({ jitless: true });

export { z };
