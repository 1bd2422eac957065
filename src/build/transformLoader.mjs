/** For the bundler: a function given as an option, over a file. Plain JavaScript, as the bundler loads it by itself, in the tests too. */
export default function transformLoader(source) {
  return this.getOptions().transform(source);
}
