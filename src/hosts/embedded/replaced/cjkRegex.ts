// Chinese, Japanese and Korean letters, and the blocks of the marks that go with them.
const LETTERS =
  "(?=[\\p{Script=Han}\\p{Script=Katakana}\\p{Script=Hiragana}\\p{Script=Hangul}\\p{Script=Bopomofo}])[\\p{Lo}\\p{Nl}\\p{So}\\p{Lm}]";
const MARKS =
  "[\\u2FF0-\\u303F\\u30A0-\\u30FF\\u3190-\\u319F\\u31C0-\\u31EF\\u3200-\\u33FF\\uFE10-\\uFE1F\\uFE30-\\uFE6F\\uFF00-\\uFFEF]";

const set = (pattern: string) => () => ({ toRegExp: () => new RegExp(pattern, "u") });

/**
 * Stands in for the package cjk-regex in the page: the browser knows the classes of letters that the package brings as half a megabyte of lists.
 */
export const letters = set(LETTERS);
export const punctuations = set(`(?!${LETTERS})${MARKS}`);
export const all = set(`${LETTERS}|${MARKS}`);
