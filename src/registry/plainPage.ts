import { escaped } from "../measure/escaped.ts";

/** A page of plain HTML in the help pages' look, light and dark, that needs nothing else to show. */
export function plainPage(title: string, body: readonly string[]): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<link rel="icon" href="data:,">
<title>${escaped(title)} - Longpoint</title>
<style>
:root { color-scheme: light dark; --ink: #1d1d1b; --paper: #fff; --line: #c9c8c4; --link: #0b57a4; --shade: #f1f0ec; }
@media (prefers-color-scheme: dark) { :root { --ink: #ececea; --paper: #1b1c1e; --line: #4a4b4f; --link: #8cc1ff; --shade: #2a2b2f; } }
body { margin: 0 auto; padding: 1rem; max-width: 48rem; font: 1rem/1.5 system-ui, sans-serif; color: var(--ink); background: var(--paper); overflow-wrap: anywhere; }
a { color: var(--link); }
code { padding: .1em .3em; background: var(--shade); font: .95em ui-monospace, monospace; box-decoration-break: clone; -webkit-box-decoration-break: clone; }
nav a { margin-right: 1rem; }
h2 { margin-top: 2rem; }
img { max-width: 100%; height: auto; }
pre { padding: .6rem; background: var(--shade); overflow-x: auto; overflow-wrap: normal; }
pre code { padding: 0; }
.wide { overflow-x: auto; }
table { border-collapse: collapse; overflow-wrap: normal; }
th, td { padding: .3rem .6rem; border: 1px solid var(--line); text-align: left; vertical-align: top; }
.words td:last-child { min-width: 13rem; }
.source { margin-top: -.75rem; font-size: .9rem; }
.wide + .source { margin-top: .4rem; }
.caution { margin-top: 2rem; padding-top: .75rem; border-top: 1px solid var(--line); }
</style>
</head>
<body>
<main>
${body.join("\n")}
</main>
</body>
</html>
`;
}
