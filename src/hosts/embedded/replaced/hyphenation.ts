/** Stands in for the sheet's lists of how words are parted, a file for each of 76 languages: no cell parts its words. */
export default null;
