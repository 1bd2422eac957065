import { Marked, Renderer, type Tokens } from "marked";
import { escaped } from "../measure/escaped.ts";
import { plainPage } from "../registry/plainPage.ts";

/** functions/GUIDE.md as a help page: the drawings of a phone's width on a phone, and links that stay among the help pages. */
export function guidePage(markdown: string): string {
  const usual = new Renderer();
  /** The heading above what is being written: two tables may have the same columns. */
  let above = "";
  const marked = new Marked({
    renderer: {
      heading({ tokens, depth, text }: Tokens.Heading) {
        above = text;
        return `<h${depth} id="${anchorOf(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
      },
      table(token: Tokens.Table) {
        return `<div class="wide words" tabindex="0" role="region" aria-label="${escaped(`${above}: ${token.header.map(({ text }) => text).join(", ")}`)}">${usual.table.call(this, token)}</div>\n`;
      },
      image({ href, text }: Tokens.Image) {
        return `<picture><source media="(max-width: 45rem)" srcset="${escaped(narrowName(href))}"><img src="${escaped(href)}" alt="${escaped(text)}"></picture>`;
      },
      link({ href, tokens }: Tokens.Link) {
        return `<a href="${escaped(pageOf(href))}">${this.parser.parseInline(tokens)}</a>`;
      },
    },
  });
  const title = /^# (.+)$/m.exec(markdown)![1]!;
  return plainPage(title, [
    `<nav><a href="index.html">All functions</a></nav>`,
    marked.parse(markdown, { async: false }).trim(),
  ]);
}

/** Where a phone's drawing stands beside a page's: drawings/narrow/plan.svg. */
export function narrowName(href: string): string {
  return href.replace(/([^/]+)$/, "narrow/$1");
}

/** The name that a repository gives to a heading, so that one link serves on both. */
function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\- ]/gu, "")
    .replaceAll(" ", "-");
}

/** A function's section of the reference is a page of its own here. */
function pageOf(href: string): string {
  return href
    .replace(/^REFERENCE\.md#(\w+)$/, (_, name: string) => `${name.toUpperCase()}.html`)
    .replace(/^REFERENCE\.md$/, "index.html");
}
